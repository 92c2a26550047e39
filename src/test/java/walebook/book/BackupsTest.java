package walebook.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.open.SqliteCare;
import walebook.book.open.SqliteFiles;
import walebook.book.sqlite.Backups;
import walebook.record.SeamEnd;

/** A copy is made on opening when there is something new, a few are kept, each can be opened. */
class BackupsTest {
  @TempDir Path folder;

  /** Opens and closes the book some days later, having changed it or not. */
  private static void open(Path file, int day, boolean changed) throws Exception {
    if (changed) {
      Instant later = Instant.now().plus(Duration.ofDays(day + 1));
      Files.setLastModifiedTime(file, FileTime.from(later));
    }
    Clock clock = Clock.offset(Classroom.CLOCK, Duration.ofDays(day));
    new SqliteFiles().open(file, clock).value().close();
  }

  private Path book() {
    Path file = folder.resolve("class.walebook");
    Classroom.in(file).close();
    return file;
  }

  @Test
  void aCopyIsMadeWhenTheBookChanged() throws Exception {
    Path file = book();
    open(file, 1, true);
    List<BookCopy> one = Backups.list(file);
    assertThat(one).hasSize(1);
    Files.setLastModifiedTime(
        one.get(0).file(), FileTime.from(Instant.now().plus(Duration.ofDays(9))));
    open(file, 2, false);
    assertThat(Backups.list(file)).hasSize(1);
  }

  @Test
  void thoseThatAgeHasThinnedGo() throws Exception {
    Path file = book();
    for (int day = 1; day <= 11; day++) {
      open(file, day, true);
    }
    List<BookCopy> kept = Backups.list(file);
    assertThat(kept).hasSize(9);
    assertThat(kept.get(0).file().getFileName().toString()).startsWith("2026-10-16");
  }

  @Test
  void aCopyIsAWholeBook() throws Exception {
    Path file = folder.resolve("class.walebook");
    String code;
    try (Classroom room = Classroom.in(file)) {
      var piece = room.piece(SeamEnd.GAVE, 131);
      code = piece.code();
      room.book.pieces().add(piece);
    }
    open(file, 1, true);
    Path restored =
        Files.copy(Backups.list(file).get(0).file(), folder.resolve("restored.walebook"));
    try (Book book = new SqliteFiles().open(restored, Classroom.CLOCK).value()) {
      assertThat(book.pieces().byCode(code)).isNotNull();
      assertThat(book.students().all()).hasSize(2);
    }
  }

  /** Last year's class and this year's, both on the same stick: each is thinned by itself. */
  @Test
  void booksOfOneNameKeepTheirCopiesApartInASecondFolder() throws Exception {
    Path stick = Files.createDirectory(folder.resolve("stick"));
    List<Path> books = new ArrayList<>();
    for (String year : List.of("last", "now")) {
      Path file = Files.createDirectory(folder.resolve(year)).resolve("class.walebook");
      try (Classroom room = Classroom.in(file)) {
        if (year.equals("last")) {
          room.book.pieces().add(room.piece(SeamEnd.GAVE, 140));
        }
      }
      books.add(file);
    }
    SqliteCare care = new SqliteCare();
    care.backUp(books.get(0), BookCopy.Why.ASKED, stick, Classroom.CLOCK).value();
    for (int day = 0; day < 40; day += 10) {
      Clock later = Clock.offset(Classroom.CLOCK, Duration.ofMinutes(1).plusDays(day));
      care.backUp(books.get(1), BookCopy.Why.ASKED, stick, later).value();
    }
    List<Long> pieces = new ArrayList<>();
    try (var copies = Files.list(stick)) {
      for (Path copy : copies.toList()) {
        pieces.add(care.pieces(copy).value());
      }
    }
    assertThat(pieces).contains(1L).contains(0L);
  }
}
