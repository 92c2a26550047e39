package walebook.act.gather;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.Statement;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.function.Consumer;
import walebook.book.Book;
import walebook.book.Classroom;
import walebook.book.gather.GatherProgress;
import walebook.book.open.SqliteFiles;
import walebook.book.sqlite.SqliteLink;
import walebook.record.By;
import walebook.record.Cloth;

/** A tutor's book and copies of it that students work on, for tests. */
final class Hall {
  static final SqliteFiles FILES = new SqliteFiles();
  static final By TUTOR = By.named("Mara Lock");

  /** Tables whose rows tell what a book holds, without how it was gathered. */
  private static final List<String> CONTENT =
      List.of(
          "tutor",
          "student",
          "term",
          "school_class",
          "class_student",
          "machine",
          "machine_stitch",
          "machine_dial",
          "cloth",
          "pack",
          "lesson",
          "cloth_reading",
          "planned_piece",
          "planned_reading",
          "test_piece",
          "piece_pull",
          "fault_seen",
          "photo",
          "photo_image",
          "note",
          "garment_sheet",
          "garment_girth",
          "private_girth",
          "value_mark");

  private Hall() {}

  static GatherBooks.Gathered gather(Path tutor, Path... books) {
    return at(tutor, book -> gather(book, true, books));
  }

  static GatherBooks.Gathered gather(Book book, boolean really, Path... books) {
    try {
      return new GatherBooks(book, FILES, Classroom.CLOCK)
          .gather(List.of(books), really, TUTOR, GatherProgress.UNHEARD);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  static <T> T at(Path file, java.util.function.Function<Book, T> work) {
    try (Book book = FILES.open(file, Classroom.CLOCK).value()) {
      return work.apply(book);
    }
  }

  static void work(Path file, Consumer<Book> work) {
    at(
        file,
        book -> {
          work.accept(book);
          return file;
        });
  }

  /** A copy of a closed book. */
  static Path copy(Path of, String name) throws IOException {
    return Files.copy(of, of.resolveSibling(name));
  }

  /** Changes the remark of the first cloth, at a clock that may be wrong by hours. */
  static void remark(Path file, String remark, int hours) {
    work(file, book -> remark(book, remark, hours));
  }

  static void remark(Book book, String remark, int hours) {
    Cloth was = book.cloths().all().get(0);
    Clock clock = Clock.offset(Classroom.CLOCK, Duration.ofHours(hours));
    book.cloths().update(Classroom.remarked(was, remark, clock.instant()));
  }

  static String remarkOf(Path file) {
    return at(file, book -> book.cloths().all().get(0).remark());
  }

  /** Every row of what the book holds, in one text. */
  static String content(Path file) throws Exception {
    List<String> all = new ArrayList<>();
    try (Connection link = SqliteLink.migrator(file);
        Statement ask = link.createStatement()) {
      for (String table : CONTENT) {
        String columns;
        try (ResultSet found =
            ask.executeQuery(
                "SELECT group_concat('quote(\"' || name || '\")', ' || ''|'' || ') FROM"
                    + " pragma_table_info('"
                    + table
                    + "')")) {
          columns = found.getString(1);
        }
        try (ResultSet rows =
            ask.executeQuery("SELECT " + columns + " FROM " + table + " ORDER BY id")) {
          while (rows.next()) {
            all.add(table + " " + rows.getString(1));
          }
        }
      }
    }
    return String.join("\n", all);
  }

  static String hash(Path file) throws Exception {
    return HexFormat.of()
        .formatHex(MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file)));
  }
}
