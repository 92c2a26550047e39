package walebook.book.sqlite;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import walebook.book.BookCopy;

/** Whole copies of a book in a folder beside it; age thins them out. */
public final class Backups {
  private static final String END = ".walebook";
  private static final String STAMP = "yyyy-MM-dd'T'HH-mm-ss";
  private static final int STAMP_LENGTH = 19;
  private static final int KEY_LENGTH = 8;
  private static final DateTimeFormatter NAME =
      DateTimeFormatter.ofPattern(STAMP, Locale.ROOT).withZone(ZoneOffset.UTC);

  private Backups() {}

  /** The folder of a book's copies. */
  public static Path folder(Path book) {
    return book.resolveSibling(book.getFileName() + ".backups");
  }

  /** The copies, newest first; files of other names are left out. */
  public static List<BookCopy> list(Path book) throws IOException {
    return listIn(folder(book), "");
  }

  private static List<BookCopy> listIn(Path folder, String begin) throws IOException {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    List<BookCopy> copies = new ArrayList<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path each : files.toList()) {
        String name = each.getFileName().toString();
        if (name.startsWith(begin) && name.endsWith(END)) {
          add(copies, each, name.substring(begin.length()));
        }
      }
    }
    copies.sort(
        Comparator.comparing(BookCopy::madeAt)
            .thenComparing(each -> each.file().toString())
            .reversed());
    return copies;
  }

  private static void add(List<BookCopy> copies, Path file, String name) throws IOException {
    try {
      Instant at = Instant.from(NAME.parse(name.substring(0, STAMP_LENGTH)));
      copies.add(new BookCopy(file, at, why(name), Files.size(file)));
    } catch (DateTimeException | IndexOutOfBoundsException e) {
      // Somebody else's file; it is neither offered nor ever deleted.
      return;
    }
  }

  private static BookCopy.Why why(String name) {
    for (BookCopy.Why each : BookCopy.Why.values()) {
      if (!each.sign().isEmpty() && name.startsWith("-" + each.sign(), STAMP_LENGTH)) {
        return each;
      }
    }
    return BookCopy.Why.ROUTINE;
  }

  /** True when the book or its log was written to after the newest copy was made. */
  public static boolean changed(Path book) throws IOException {
    List<BookCopy> have = list(book);
    return have.isEmpty()
        || Files.getLastModifiedTime(have.get(0).file()).compareTo(written(book)) < 0;
  }

  private static FileTime written(Path book) throws IOException {
    FileTime own = Files.getLastModifiedTime(book);
    Path log = book.resolveSibling(book.getFileName() + "-wal");
    if (!Files.exists(log) || Files.size(log) == 0) {
      return own;
    }
    FileTime late = Files.getLastModifiedTime(log);
    return late.compareTo(own) > 0 ? late : own;
  }

  /** Makes a copy if the book changed since the last one, then lets go what age has thinned. */
  public static void roll(Path book, Clock clock) throws IOException, SQLException {
    if (changed(book)) {
      make(book, clock, BookCopy.Why.ROUTINE, "");
      thin(list(book), clock);
    }
  }

  /** Makes a copy before the shape changes; these are never let go by themselves. */
  public static Path beforeMigration(Path book, Clock clock, int shape)
      throws IOException, SQLException {
    return make(book, clock, BookCopy.Why.BEFORE_MIGRATION, "-" + shape).file();
  }

  /** Makes a copy before other books are gathered into this one. */
  public static Path beforeGathering(Path book, Clock clock) throws IOException, SQLException {
    return make(book, clock, BookCopy.Why.BEFORE_GATHERING).file();
  }

  /** Makes a copy for a reason and lets go what age has thinned. */
  public static BookCopy make(Path book, Clock clock, BookCopy.Why why)
      throws IOException, SQLException {
    BookCopy made = make(book, clock, why, "");
    thin(list(book), clock);
    return made;
  }

  private static BookCopy make(Path book, Clock clock, BookCopy.Why why, String more)
      throws IOException, SQLException {
    Files.createDirectories(folder(book));
    Instant now = clock.instant();
    String name = NAME.format(now) + (why.sign().isEmpty() ? "" : "-" + why.sign()) + more;
    Path copy = free(folder(book), name);
    copy(book, copy);
    return new BookCopy(copy, now, why, Files.size(copy));
  }

  private static Path free(Path folder, String name) {
    Path copy = folder.resolve(name + END);
    for (int next = 2; Files.exists(copy); next++) {
      copy = folder.resolve(name + "-" + next + END);
    }
    return copy;
  }

  /**
   * Puts a finished copy into a second folder too, under the book's name and the end of its key,
   * and thins there: copies of another book of that name are none of this one's.
   */
  public static void alsoInto(Path folder, Path book, BookCopy copy, Clock clock)
      throws IOException {
    String name = book.getFileName().toString();
    String begin =
        (name.endsWith(END) ? name.substring(0, name.length() - END.length()) : name)
            + "-"
            + endOfKey(copy.file())
            + "-";
    Path there = folder.resolve(begin + copy.file().getFileName());
    Path half = there.resolveSibling(there.getFileName() + ".part");
    Files.copy(copy.file(), half, StandardCopyOption.REPLACE_EXISTING);
    force(half);
    Files.move(half, there, StandardCopyOption.ATOMIC_MOVE);
    thin(listIn(folder, begin), clock);
  }

  /** The part of a book's key that chance made. */
  private static String endOfKey(Path copy) throws IOException {
    try (Connection link = SqliteLink.onlyLook(copy)) {
      String key = SqliteLink.ask(link, "SELECT id FROM book_info");
      return key.substring(Math.max(0, key.length() - KEY_LENGTH));
    } catch (SQLException e) {
      throw new IOException(e);
    }
  }

  private static void thin(List<BookCopy> copies, Clock clock) throws IOException {
    for (BookCopy old : Thinning.goers(copies, clock.instant(), clock.getZone())) {
      Files.deleteIfExists(old.file());
    }
  }

  /**
   * Copies a book whole into a new file, which appears only when it is complete and its check
   * passed.
   */
  public static void copy(Path book, Path copy) throws IOException, SQLException {
    Path half = copy.resolveSibling(copy.getFileName() + ".part");
    Files.deleteIfExists(half);
    try {
      try (Connection link = SqliteLink.watcher(book);
          PreparedStatement into = link.prepareStatement("VACUUM INTO ?")) {
        into.setString(1, half.toAbsolutePath().toString());
        into.execute();
      }
      try (Connection link = SqliteLink.watcher(half)) {
        String state = SqliteLink.ask(link, "PRAGMA quick_check(1)");
        if (!state.equals("ok")) {
          throw new SQLException("the copy is not whole: " + state);
        }
      }
      force(half);
      Files.move(half, copy, StandardCopyOption.ATOMIC_MOVE);
    } finally {
      Files.deleteIfExists(half);
    }
  }

  /** Waits until a file is on the disk. */
  static void force(Path file) throws IOException {
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
      channel.force(true);
    }
  }
}
