package walebook.book.sqlite;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.Clock;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Whole copies of a book in a folder beside it; the newest few are kept. */
public final class Backups {
  /** How many are kept. */
  public static final int KEPT = 8;

  private static final DateTimeFormatter NAME =
      DateTimeFormatter.ofPattern("yyyy-MM-dd'T'HH-mm-ss", Locale.ROOT).withZone(ZoneOffset.UTC);

  private Backups() {}

  /** The folder of a book's copies. */
  public static Path folder(Path book) {
    return book.resolveSibling(book.getFileName() + ".backups");
  }

  /** The copies, newest first. */
  public static List<Path> list(Path book) throws IOException {
    Path folder = folder(book);
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(each -> each.getFileName().toString().endsWith(".walebook"))
          .sorted(Comparator.reverseOrder())
          .toList();
    }
  }

  /** Makes a copy if the book changed since the last one, then lets the oldest go. */
  public static void roll(Path book, Clock clock) throws IOException, SQLException {
    List<Path> have = list(book);
    if (!have.isEmpty()
        && Files.getLastModifiedTime(have.get(0)).compareTo(Files.getLastModifiedTime(book)) >= 0) {
      return;
    }
    make(book, clock, "");
    List<Path> rolling = new ArrayList<>(list(book));
    rolling.removeIf(each -> each.getFileName().toString().contains("-before-shape-"));
    for (Path old : rolling.subList(Math.min(KEPT, rolling.size()), rolling.size())) {
      Files.delete(old);
    }
  }

  /** Makes a copy before the shape changes; these are never let go by themselves. */
  public static Path beforeMigration(Path book, Clock clock, int shape)
      throws IOException, SQLException {
    return make(book, clock, "-before-shape-" + shape);
  }

  /** Makes a copy before other books are gathered into this one. */
  public static Path beforeGathering(Path book, Clock clock) throws IOException, SQLException {
    return make(book, clock, "-before-gathering");
  }

  private static Path make(Path book, Clock clock, String why) throws IOException, SQLException {
    Files.createDirectories(folder(book));
    Path copy = folder(book).resolve(NAME.format(clock.instant()) + why + ".walebook");
    copy(book, copy);
    return copy;
  }

  /** Copies a book whole into a new file, which appears only when it is complete. */
  public static void copy(Path book, Path copy) throws IOException, SQLException {
    Path half = copy.resolveSibling(copy.getFileName() + ".part");
    Files.deleteIfExists(half);
    try (Connection link = SqliteLink.migrator(book);
        PreparedStatement into = link.prepareStatement("VACUUM INTO ?")) {
      into.setString(1, half.toAbsolutePath().toString());
      into.execute();
    }
    Files.move(half, copy, java.nio.file.StandardCopyOption.ATOMIC_MOVE);
  }
}
