package walebook.act.book;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import walebook.act.gather.GatherBooks;
import walebook.book.Book;
import walebook.book.BookBytes;
import walebook.book.Classroom;
import walebook.book.Ids;
import walebook.book.PieceFilter;
import walebook.book.RawRows;
import walebook.book.gather.GatherProgress;
import walebook.book.open.SqliteFiles;
import walebook.book.sqlite.SqliteLink;
import walebook.record.By;
import walebook.record.CheckedBy;
import walebook.record.Cloth;
import walebook.record.Criterion;
import walebook.record.CriterionTag;
import walebook.record.Draft;
import walebook.record.Feedback;
import walebook.record.Help;
import walebook.record.Mark;
import walebook.record.MarkedValue;
import walebook.record.Marking;
import walebook.record.Note;
import walebook.record.PhotoInfo;
import walebook.record.PieceCheck;
import walebook.record.Priced;
import walebook.record.Student;
import walebook.record.TestPiece;

/**
 * The demo class with something in each table of the file, for tests that none may be forgotten by.
 * A new table is filled here.
 */
public final class FullBook {
  private static final SqliteFiles FILES = new SqliteFiles();
  private static final By TUTOR = By.named("Tutor");
  private static final LocalDate DAY = LocalDate.of(2026, 10, 5);

  private static final BookBytes MADE = BookBytes.of(FullBook::fill);

  private FullBook() {}

  /** Puts a copy there, closed. */
  public static void copyTo(Path file) {
    MADE.copyTo(file);
  }

  private static void fill(Path file) throws Exception {
    DemoBook.copyTo(file);
    try (Book book = FILES.open(file, Classroom.CLOCK).value()) {
      List<TestPiece> pieces =
          book.pieces().list(PieceFilter.ALL).stream()
              .filter(each -> isUnchecked(book, each))
              .toList();
      Student first = book.students().all().get(0);
      book.history().madeBy(new By(first.name(), first.id(), null));
      onPiece(book, pieces.get(0));
      onPiece(book, pieces.get(1));
      book.assessments().bank("Even feed.");
      book.kitPrices().keep(Priced.of("Needles, jersey 75", false), 0.5);
      book.kitPrices().keep(Priced.metreOf(book.cloths().all().get(2).id()), 8.5);
      book.drafts().keep(new Draft("piece", "Tutor", Map.of("remark", "half typed")));
      book.bin().put("test_piece", pieces.get(1).id(), TUTOR);
      Cloth cloth = book.cloths().all().get(0);
      book.cloths().update(Classroom.remarked(cloth, "soft", Classroom.NOW));
      UUID last = book.history().lastDone(null);
      book.history().undo(java.util.Objects.requireNonNull(last), TUTOR);
    }
    shelve(file);
    differ(file);
  }

  private static boolean isUnchecked(Book book, TestPiece piece) {
    return Arrays.stream(CheckedBy.values())
        .allMatch(by -> book.assessments().check(piece.id(), by) == null);
  }

  private static void onPiece(Book book, TestPiece piece) {
    Criterion criterion =
        new Criterion(
            Ids.next(),
            piece.whose().classId(),
            piece.code(),
            "Chooses",
            1,
            Set.of(Marking.REASONING),
            Classroom.FRESH);
    book.assessments().keep(criterion);
    book.assessments().tag(CriterionTag.onPiece(criterion.id(), piece.id()));
    for (CheckedBy by : CheckedBy.values()) {
      book.assessments()
          .keep(
              new PieceCheck(
                  Ids.next(),
                  piece.id(),
                  by,
                  Map.of(Marking.REASONING, 3),
                  Help.NONE,
                  DAY,
                  Classroom.FRESH));
    }
    book.assessments()
        .add(new Feedback(Ids.next(), piece.id(), DAY, "Well told.", "M", Classroom.FRESH));
    book.photos()
        .add(
            new PhotoInfo(
                Ids.next(),
                piece.id(),
                null,
                "the edge",
                "image/jpeg",
                4,
                3,
                new byte[] {9, 8},
                Classroom.FRESH),
            new byte[] {1, 2, 3});
    book.notes()
        .add(new Note(Ids.next(), Note.About.PIECE, piece.id(), "M", "dry", Classroom.FRESH));
    book.marks().put(MarkedValue.GRADE, piece.id(), Mark.SET_ASIDE, "wet", TUTOR, Ids.next());
  }

  private static void shelve(Path file) throws SQLException {
    try (Connection link = SqliteLink.migrator(file)) {
      SqliteLink.run(
          link,
          "INSERT INTO shelved_pack (id, pack_id, created_at, changed_at) SELECT '"
              + Ids.next()
              + "', id, created_at, changed_at FROM pack LIMIT 1");
    }
  }

  /** A copy and the book say different things of one cloth. */
  private static void differ(Path file) throws Exception {
    Path copy = Files.copy(file, file.resolveSibling("copy-" + file.getFileName()));
    for (Path each : List.of(file, copy)) {
      try (Book book = FILES.open(each, Classroom.CLOCK).value()) {
        book.cloths()
            .update(
                Classroom.remarked(
                    book.cloths().all().get(1), "by " + each.getFileName(), Classroom.NOW));
      }
    }
    try (Book book = FILES.open(file, Classroom.CLOCK).value()) {
      new GatherBooks(book, FILES, Classroom.CLOCK)
          .gather(List.of(copy), true, TUTOR, GatherProgress.UNHEARD);
    }
    Files.delete(copy);
  }

  /** Every row of every table of a closed book. */
  public static Map<String, List<String>> rows(Path file) throws SQLException {
    Map<String, List<String>> all = new TreeMap<>();
    try (Connection link = SqliteLink.migrator(file)) {
      for (String table :
          RawRows.column(
              link,
              "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%'")) {
        String columns =
            String.join(
                " || '|' || ",
                RawRows.column(
                    link,
                    "SELECT 'quote(\"' || name || '\")' FROM pragma_table_info('" + table + "')"));
        all.put(
            table, RawRows.column(link, "SELECT " + columns + " FROM " + table + " ORDER BY 1"));
      }
    }
    return all;
  }
}
