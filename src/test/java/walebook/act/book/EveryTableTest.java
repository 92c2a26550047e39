package walebook.act.book;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.gather.GiveStarterBooks;
import walebook.book.Book;
import walebook.book.BookDifference;
import walebook.book.Classroom;
import walebook.book.RawRows;
import walebook.book.RescueNames;
import walebook.book.RescueReport;
import walebook.book.open.SqliteCare;
import walebook.book.open.SqliteFiles;
import walebook.book.sqlite.Differences;
import walebook.book.sqlite.SqliteLink;
import walebook.record.SchoolClass;
import walebook.record.Student;

/** A table that came later is rescued, restored, kept private and kept back like the first ones. */
class EveryTableTest {
  private static final SqliteFiles FILES = new SqliteFiles();
  private static final RescueNames NAMES =
      new RescueNames("Rescued book", "Lost term", "Lost class", "Lost student", "Lost cloth");

  @TempDir Path folder;
  private Path file;

  @BeforeEach
  void make() throws Exception {
    file = folder.resolve("full.walebook");
    FullBook.copyTo(file);
  }

  @Test
  void everyRowOfEveryTableIsRescued() throws Exception {
    Map<String, List<String>> rows = FullBook.rows(file);
    assertThat(rows).allSatisfy((table, all) -> assertThat(all).as(table).isNotEmpty());
    Path into = folder.resolve("rescued.walebook");
    RescueReport report = new SqliteCare().rescue(file, into, NAMES, Classroom.CLOCK).value();
    assertThat(report.lost()).isZero();
    assertThat(FullBook.rows(into)).isEqualTo(rows);
  }

  /** Whatever is lost, what is left is a book whose references lead somewhere. */
  @Test
  void whateverTableIsLostTheRestIsABook() throws Exception {
    for (String table : FullBook.rows(file).keySet()) {
      Path torn = Files.copy(file, folder.resolve("torn-" + table + ".walebook"));
      try (Connection link = SqliteLink.migrator(torn)) {
        SqliteLink.run(link, "DELETE FROM " + table);
      }
      Path into = folder.resolve("from-" + table + ".walebook");
      RescueReport report = new SqliteCare().rescue(torn, into, NAMES, Classroom.CLOCK).value();
      assertThat(report.out()).as(table).isPositive();
      try (Connection link = SqliteLink.migrator(into)) {
        assertThat(SqliteLink.ask(link, "PRAGMA foreign_key_check")).as(table).isEmpty();
      }
      try (Book book = FILES.open(into, Classroom.CLOCK).value()) {
        assertThat(book.info()).isNotNull();
      }
      Files.delete(torn);
      Files.delete(into);
    }
  }

  /** What a person typed may name somebody anywhere: the stand-in is put wherever text can be. */
  @Test
  void aNameTypedIntoAnyColumnOfAnyTableIsGone() throws Exception {
    String name = "Wenna Tidewater";
    Student student;
    try (Book book = FILES.open(file, Classroom.CLOCK).value()) {
      Student was = book.students().all().get(0);
      student =
          new Student(was.id(), name, was.alias(), was.tier(), was.stamp().next(Classroom.NOW));
      book.students().update(student);
    }
    List<String> typed = typeEverywhere(name);
    assertThat(typed)
        .contains(
            "criterion.says",
            "feedback.says",
            "feedback.made_by",
            "bank_comment.says",
            "kit_price.what",
            "gather_conflict.theirs_json",
            "gather_conflict.who",
            "gathered_book.name",
            "gathered_book.file_name",
            "row_added.who",
            "change_log.before_json",
            "bin_item.rows_json",
            "draft_field.typed");
    try (Book book = FILES.open(file, Classroom.CLOCK).value()) {
      book.privacy().rename(student.id(), student.alias(), student.alias());
      book.privacy().scrub();
    }
    String bytes =
        new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1)
            .toLowerCase(java.util.Locale.ROOT);
    assertThat(bytes.contains("tidewater")).isFalse();
    assertThat(bytes.contains("wenna")).isFalse();
  }

  /** Puts the name wherever the tables' rules let it stand; gives the columns back. */
  private List<String> typeEverywhere(String name) throws SQLException {
    List<String> typed = new ArrayList<>();
    try (Connection link = SqliteLink.migrator(file)) {
      for (String table : FullBook.rows(file).keySet()) {
        if (List.of("student", "tutor", "book_info").contains(table)) {
          continue;
        }
        for (String column :
            RawRows.column(
                link,
                "SELECT name FROM pragma_table_info('"
                    + table
                    + "') WHERE type = 'TEXT' AND name NOT LIKE '%\\_id' ESCAPE '\\'"
                    + " AND name NOT LIKE '%\\_on' ESCAPE '\\' AND name NOT"
                    + " IN ('id', 'entity', 'of_table', 'of_column', 'form', 'owner', 'field')"
                    + " AND name NOT IN (SELECT \"from\" FROM pragma_foreign_key_list('"
                    + table
                    + "'))")) {
          String value =
              column.endsWith("_json")
                  ? "json_set(" + column + ", '$.said', 'by " + name + "')"
                  : column.equals("file_name")
                      ? "'" + name.toLowerCase(java.util.Locale.ROOT).replace(' ', '-') + ".x'"
                      : "'by " + name + ".'";
          try {
            SqliteLink.run(
                link,
                "UPDATE "
                    + table
                    + " SET "
                    + column
                    + " = "
                    + value
                    + " WHERE id = (SELECT id FROM "
                    + table
                    + " LIMIT 1)");
            typed.add(table + "." + column);
          } catch (SQLException e) {
            // A column for words of the program: nobody types there.
            assertThat(e.getMessage()).contains("CONSTRAINT");
          }
        }
      }
    }
    return typed;
  }

  @Test
  void goingBackIsNeverCalledNothingWhenARowOfAnyTableDiffers() throws Exception {
    Set<String> told = new TreeSet<>(Differences.TABLES);
    told.addAll(Differences.DETAILS);
    assertThat(told).isEqualTo(FullBook.rows(file).keySet());
    for (String table : Differences.TABLES) {
      Path other = Files.copy(file, folder.resolve("other-" + table + ".walebook"));
      assertThat(difference(other).isNone()).as(table).isTrue();
      try (Connection link = SqliteLink.migrator(other)) {
        SqliteLink.run(link, "UPDATE " + table + " SET row_version = row_version + 1");
      }
      assertThat(difference(other).isNone()).as(table).isFalse();
      Files.delete(other);
    }
  }

  private BookDifference difference(Path other) {
    return new SqliteCare().difference(file, other).value();
  }

  @Test
  void aStarterBookHoldsNothingOfOthersWhateverTheBookHolds() throws Exception {
    Path out = folder.resolve("out");
    List<Path> written;
    List<Student> students;
    try (Book book = FILES.open(file, Classroom.CLOCK).value()) {
      SchoolClass of = book.classes().all().get(0);
      students = book.enrolments().studentsOf(of.id());
      written =
          new GiveStarterBooks(book, FILES, Classroom.CLOCK).give(of, out, false, false).value();
    }
    for (int i = 0; i < written.size(); i++) {
      Map<String, List<String>> rows = FullBook.rows(written.get(i));
      assertThat(rows.keySet()).isEqualTo(FullBook.rows(file).keySet());
      for (String table :
          List.of(
              "change_log",
              "row_added",
              "step_mirror",
              "bin_item",
              "kept_blob",
              "draft",
              "draft_field",
              "garment_sheet",
              "private_girth",
              "note",
              "photo",
              "photo_image",
              "bank_comment",
              "kit_price",
              "gather_conflict")) {
        assertThat(requireNonNull(rows.get(table))).as(table).isEmpty();
      }
      // What was said and asked of pieces comes along for the student's own pieces alone.
      try (Connection link = SqliteLink.migrator(written.get(i))) {
        assertThat(SqliteLink.ask(link, "PRAGMA foreign_key_check")).isEmpty();
        String others =
            "SELECT count(*) FROM test_piece WHERE student_id <> '" + students.get(i).id() + "'";
        assertThat(SqliteLink.ask(link, others)).isEqualTo("0");
      }
      String bytes = new String(Files.readAllBytes(written.get(i)), StandardCharsets.UTF_8);
      for (Student each : students) {
        assertThat(bytes.contains(each.name()))
            .as(each.name() + " in the book of " + students.get(i).name())
            .isEqualTo(each.equals(students.get(i)));
      }
    }
  }
}
