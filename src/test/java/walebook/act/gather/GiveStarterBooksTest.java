package walebook.act.gather;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.Statement;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.book.DemoBook;
import walebook.book.Book;
import walebook.book.Classroom;
import walebook.book.PieceFilter;
import walebook.book.gather.FromBook;
import walebook.book.sqlite.SqliteLink;
import walebook.problem.Problem;
import walebook.record.SchoolClass;
import walebook.record.Student;

/** A student's own small book out of the tutor's, and back. */
class GiveStarterBooksTest {
  @TempDir Path folder;

  @Test
  void aStarterBookHoldsTheStudentsPlanAndNobodyElsesNameAndComesBackAsTheSame() throws Exception {
    Path tutor = folder.resolve("tutor.walebook");
    DemoBook.copyTo(tutor);
    Path out = folder.resolve("out");
    try (Book book = Hall.FILES.open(tutor, Classroom.CLOCK).value()) {
      SchoolClass of = book.classes().all().get(0);
      GiveStarterBooks give = new GiveStarterBooks(book, Hall.FILES, Classroom.CLOCK);
      List<Path> written = give.give(of, out, false, false).value();
      List<Student> students = book.enrolments().studentsOf(of.id());
      assertThat(written).hasSameSizeAs(students);
      String first = Hall.hash(written.get(0));
      assertThat(give.give(of, out, false, false).problems().stream().map(Problem::code))
          .hasSameSizeAs(students)
          .containsOnly("book.exists");
      assertThat(Hall.hash(written.get(0))).isEqualTo(first);
      for (int i = 0; i < students.size(); i++) {
        Student me = students.get(i);
        try (Book own = Hall.FILES.open(written.get(i), Classroom.CLOCK).value()) {
          assertThat(own.enrolments().studentsOf(of.id())).containsExactly(me);
          assertThat(own.cloths().all()).isEqualTo(book.cloths().all());
          assertThat(own.machines().all()).isEqualTo(book.machines().all());
          assertThat(own.lessons().of(of.id())).isEqualTo(book.lessons().of(of.id()));
          assertThat(own.lessons().planOf(of.id(), me.id()))
              .isEqualTo(book.lessons().planOf(of.id(), me.id()));
          assertThat(own.readingPlans().ofClass(of.id()))
              .isNotEmpty()
              .isEqualTo(book.readingPlans().of(of.id(), me.id()));
          assertThat(own.students().all())
              .filteredOn(each -> !each.id().equals(me.id()))
              .allSatisfy(each -> assertThat(each.name()).isEqualTo(each.alias()));
          assertThat(own.garments().all()).isEmpty();
        }
        try (Connection link = SqliteLink.migrator(written.get(i))) {
          assertThat(SqliteLink.ask(link, "PRAGMA foreign_key_check")).isEmpty();
        }
      }
      int pieces = book.pieces().count(PieceFilter.ALL);
      String before = Hall.content(tutor);
      List<FromBook> back = Hall.gather(book, true, written.toArray(Path[]::new)).books();
      assertThat(back)
          .allSatisfy(
              each -> {
                assertThat(each.problem()).isNull();
                assertThat(List.of(each.added(), each.taken(), each.conflicts(), each.kept()))
                    .containsOnly(0);
              });
      assertThat(book.pieces().count(PieceFilter.ALL)).isEqualTo(pieces);
      assertThat(Hall.content(tutor)).isEqualTo(before);
    }
    assertThat(out).isDirectoryNotContaining(each -> each.toString().endsWith(".part"));
  }

  @Test
  void whatBothChangedSinceItWasGivenOutIsAConflictAndWhatOneDidIsNot() throws Exception {
    Path tutor = folder.resolve("tutor.walebook");
    Classroom room = Classroom.in(tutor);
    Hall.remark(room.book, "at first", 0);
    Path out = folder.resolve("out");
    List<Path> given =
        new GiveStarterBooks(room.book, Hall.FILES, Classroom.CLOCK)
            .give(room.schoolClass, out, true, false)
            .value();
    room.close();
    assertThat(given.get(0).getFileName()).hasToString("ada-pier.walebook");
    Hall.remark(given.get(0), "Ada's", -9);
    assertThat(Hall.gather(tutor, given.get(0)).books().get(0).taken()).isEqualTo(1);
    assertThat(Hall.remarkOf(tutor)).isEqualTo("Ada's");
    Hall.remark(given.get(1), "Bo's", 9);
    assertThat(Hall.gather(tutor, given.get(1)).books().get(0).conflicts()).isEqualTo(1);
    assertThat(Hall.remarkOf(tutor)).isEqualTo("Ada's");
  }

  /** A table that nobody thought of would be left behind without a word. */
  @Test
  void eachTableIsGatheredOrLeftOutOnPurpose() throws Exception {
    Path file = folder.resolve("book.walebook");
    Classroom.in(file).close();
    try (Connection link = SqliteLink.migrator(file);
        Statement ask = link.createStatement();
        ResultSet found =
            ask.executeQuery(
                "SELECT group_concat(name) FROM sqlite_schema WHERE type = 'table'"
                    + " AND name NOT LIKE 'sqlite_%'")) {
      assertThat(walebook.book.sqlite.gather.Tables.known())
          .containsExactlyInAnyOrder(found.getString(1).split(","));
    }
    assertThat(Files.exists(file)).isTrue();
  }
}
