package walebook.act.book;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import walebook.act.gather.GatherBooks;
import walebook.act.gather.GiveStarterBooks;
import walebook.book.Book;
import walebook.book.BookCopy;
import walebook.book.BookTrouble;
import walebook.book.Classroom;
import walebook.book.PieceFilter;
import walebook.book.gather.GatherProgress;
import walebook.book.open.SqliteCare;
import walebook.book.open.SqliteFiles;
import walebook.book.sqlite.SqliteLink;
import walebook.problem.Answer;
import walebook.record.By;
import walebook.record.SeamEnd;
import walebook.record.TestPiece;
import walebook.words.Words;

/**
 * Works in a folder on a very small disk until it is full, and on; each line it prints is checked
 * by {@link DiskFullTest}.
 */
final class DiskFullChild {
  private static final SqliteFiles FILES = new SqliteFiles();
  private static final Words WORDS = Words.english();
  private static final int SAVES = 20_000;

  private final Path disk;
  private final Path file;

  private DiskFullChild(Path disk) {
    this.disk = disk;
    this.file = disk.resolve("class.walebook");
  }

  /** Given the small disk and a student's book on a large one. */
  public static void main(String[] args) throws Exception {
    DiskFullChild child = new DiskFullChild(Path.of(args[0]));
    child.work(Path.of(args[1]));
  }

  private static void say(String line) {
    System.out.println(line);
  }

  private void work(Path student) throws Exception {
    int saved = 0;
    Classroom room = Classroom.in(file);
    fill(room.book, room.piece(SeamEnd.GAVE, 140), 60_000, 4);
    Path copy =
        new SqliteCare().backUp(file, BookCopy.Why.ASKED, null, Classroom.CLOCK).value().file();
    Path ballast = disk.resolve("ballast");
    leave(ballast, 200_000);
    try {
      for (int i = 0; i < SAVES; i++) {
        room.book.pieces().add(room.piece(SeamEnd.GAVE, 120 + i % 50));
        saved++;
      }
    } catch (BookTrouble e) {
      say("saving " + e.code());
    }
    int before = room.book.pieces().count(PieceFilter.ALL);
    try {
      room.book.inOneStep(
          () -> {
            for (int i = 0; i < 300; i++) {
              room.book.pieces().add(room.piece(SeamEnd.GAVE, 130));
            }
            return before;
          });
      say("in one go none");
    } catch (BookTrouble e) {
      say("in one go " + e.code());
    }
    say("half of a go " + (room.book.pieces().count(PieceFilter.ALL) - before));
    Files.delete(ballast);
    room.book.pieces().add(room.piece(SeamEnd.GAVE, 154));
    saved++;
    say("with room again " + (room.book.pieces().count(PieceFilter.ALL) - before));
    leave(ballast, 20_000);
    gather(room, student, "gathering");
    Answer<BookCopy> backup =
        new SqliteCare().backUp(file, BookCopy.Why.ASKED, null, Clock.systemUTC());
    say("backup " + said(backup));
    starter(room);
    room.close();
    String full = hash();
    say("opening " + opened());
    say("going back " + said(new SqliteCare().restore(file, copy, Clock.systemUTC())));
    say("unchanged " + hash().equals(full));
    say("left over " + leftOver());
    Files.delete(ballast);
    try (Book book = FILES.open(file, Classroom.CLOCK).value()) {
      say("lost " + (saved + 4 - book.pieces().count(PieceFilter.ALL)));
      book.pieces().add(room.piece(SeamEnd.GAVE, 155));
      say("goes on " + (book.pieces().count(PieceFilter.ALL) - saved - 4));
    }
    try (var link = SqliteLink.migrator(file)) {
      say("check " + SqliteLink.ask(link, "PRAGMA integrity_check"));
    }
  }

  private static void fill(Book book, TestPiece like, int bytes, int count) {
    for (int i = 0; i < count; i++) {
      TestPiece piece =
          Classroom.like(like, walebook.record.PieceCode.draw(new java.util.Random(1000 + i)));
      book.pieces().add(piece);
      book.photos().add(Classroom.photo(piece.id()), new byte[bytes]);
    }
  }

  /** Fills the disk but for some room. */
  private static void leave(Path ballast, long bytes) throws IOException {
    byte[] block = new byte[4096];
    try (OutputStream out = Files.newOutputStream(ballast)) {
      while (true) {
        out.write(block);
      }
    } catch (IOException e) {
      try (FileChannel channel = FileChannel.open(ballast, StandardOpenOption.WRITE)) {
        channel.truncate(Math.max(0, channel.size() - bytes));
      }
    }
  }

  private void gather(Classroom room, Path student, String as) throws Exception {
    try {
      GatherBooks.Gathered came =
          new GatherBooks(room.book, FILES, Classroom.CLOCK)
              .gather(List.of(student), true, By.NOBODY, GatherProgress.UNHEARD);
      say(as + " " + came.books());
    } catch (BookTrouble e) {
      say(as + " " + e.code());
    }
  }

  private void starter(Classroom room) {
    try {
      Answer<List<Path>> given =
          new GiveStarterBooks(room.book, FILES, Classroom.CLOCK)
              .give(room.schoolClass, disk.resolve("out"), false, false);
      say("starter books " + said(given));
    } catch (BookTrouble e) {
      say("starter books " + e.code() + " " + e.getMessage());
    }
  }

  private String opened() {
    Answer<Book> answer = FILES.open(file, Classroom.CLOCK);
    if (answer.isGood()) {
      answer.value().close();
      return "good";
    }
    return said(answer);
  }

  private static String said(Answer<?> answer) {
    if (answer.isGood()) {
      return "good";
    }
    String sentence = WORDS.say(answer.problems().get(0));
    return answer.problems().get(0).code() + " " + sentence.replaceAll("\\s+", " ");
  }

  private String hash() throws Exception {
    byte[] bytes = Files.readAllBytes(file);
    return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
  }

  private List<String> leftOver() throws IOException {
    List<String> half = new ArrayList<>();
    try (Stream<Path> all = Files.walk(disk)) {
      all.filter(Files::isRegularFile)
          .map(each -> Objects.requireNonNull(each.getFileName()).toString())
          .filter(name -> name.endsWith(".part") || name.endsWith(".half"))
          .forEach(half::add);
    }
    return half;
  }
}
