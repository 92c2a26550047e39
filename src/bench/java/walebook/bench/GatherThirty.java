package walebook.bench;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import walebook.act.book.MakeDemoBook;
import walebook.act.gather.GatherBooks;
import walebook.book.Book;
import walebook.book.Ids;
import walebook.book.PieceFilter;
import walebook.book.gather.GatherProgress;
import walebook.book.open.SqliteFiles;
import walebook.book.sqlite.SqliteLink;
import walebook.record.By;
import walebook.record.PhotoInfo;
import walebook.record.PieceCode;
import walebook.record.Stamp;
import walebook.record.TestPiece;
import walebook.record.Whose;

/**
 * Thirty books of a hundred pieces with photos gathered, backup, checks and all, beside a bare
 * ATTACH and INSERT…SELECT of the same rows into a copy of the same book: same settings, by turns.
 */
public final class GatherThirty {
  private static final int BOOKS = 30;
  private static final int PIECES = 100;
  private static final int PHOTO = 150_000;
  private static final int ROUNDS = 3;
  private static final List<String> TABLES =
      List.of("test_piece", "piece_pull", "fault_seen", "photo", "photo_image");

  private GatherThirty() {}

  public static void main(String[] args) throws Exception {
    Path folder = Files.createTempDirectory("walebook-bench");
    try {
      run(folder);
    } finally {
      Folders.delete(folder);
    }
  }

  private static void run(Path folder) throws Exception {
    SqliteFiles files = new SqliteFiles();
    Clock clock = Clock.systemUTC();
    Path tutor = folder.resolve("tutor.walebook");
    new MakeDemoBook(files, clock).make(tutor, MakeDemoBook.SEED).value().close();
    List<Path> books = new ArrayList<>();
    // The bare insert knows no way out of two pieces with one code, so there are none.
    Set<String> codes = new HashSet<>();
    for (int i = 0; i < BOOKS; i++) {
      books.add(student(files, clock, tutor, folder.resolve("s" + i + ".walebook"), i, codes));
    }
    List<Double> ratios = new ArrayList<>();
    for (int round = 0; round < ROUNDS; round++) {
      Path ours = Files.copy(tutor, folder.resolve("ours" + round + ".walebook"));
      Path bare = Files.copy(tutor, folder.resolve("bare" + round + ".walebook"));
      double plain = round % 2 == 0 ? bare(bare, books) : 0;
      double gather = gather(files, clock, ours, books);
      plain = plain == 0 ? bare(bare, books) : plain;
      ratios.add(gather / plain);
      System.out.println(
          String.format(
              Locale.ROOT,
              "gather %.2f s, bare ATTACH and INSERT…SELECT %.2f s, ratio %.2f, wanted under 2",
              gather,
              plain,
              gather / plain));
      Files.delete(ours);
      Files.delete(bare);
    }
    System.out.println(
        String.format(Locale.ROOT, "median ratio %.2f", ratios.stream().sorted().toList().get(1)));
  }

  private static Path student(
      SqliteFiles files, Clock clock, Path tutor, Path file, int number, Set<String> codes)
      throws Exception {
    Files.copy(tutor, file);
    try (Connection link = SqliteLink.migrator(file)) {
      SqliteLink.run(link, "UPDATE book_info SET id = '" + Ids.next() + "'");
    }
    Random random = new Random(number);
    try (Book book = files.open(file, clock).value()) {
      TestPiece like =
          book.pieces().list(PieceFilter.ALL).stream()
              .filter(each -> each.parent() == null)
              .findFirst()
              .orElseThrow();
      book.inOneStep(
          () -> {
            for (int k = 0; k < PIECES; k++) {
              TestPiece piece = again(like, PieceCode.draw(random), clock);
              if (codes.add(piece.code()) && !book.lessons().isCodeTaken(piece.code())) {
                book.pieces().add(piece);
                photo(book, piece.id(), random, clock);
              }
            }
            return file;
          });
    }
    return file;
  }

  private static TestPiece again(TestPiece like, String code, Clock clock) {
    Whose was = like.whose();
    return new TestPiece(
        Ids.next(),
        code,
        new Whose(was.classId(), was.studentId(), was.lessonId(), null, was.sewnOn()),
        like.cloth(),
        like.setting(),
        like.measure(),
        like.seen(),
        null,
        Stamp.fresh(clock.instant()));
  }

  private static void photo(Book book, UUID piece, Random random, Clock clock) {
    byte[] image = new byte[PHOTO];
    random.nextBytes(image);
    byte[] thumbnail = new byte[6000];
    random.nextBytes(thumbnail);
    book.photos()
        .add(
            new PhotoInfo(
                Ids.next(),
                piece,
                null,
                "",
                "image/jpeg",
                1600,
                1200,
                thumbnail,
                Stamp.fresh(clock.instant())),
            image);
  }

  private static double gather(SqliteFiles files, Clock clock, Path tutor, List<Path> books)
      throws Exception {
    try (Book book = files.open(tutor, clock).value()) {
      long begin = System.nanoTime();
      new GatherBooks(book, files, clock)
          .gather(books, true, By.NOBODY, GatherProgress.UNHEARD)
          .books()
          .forEach(
              each -> {
                if (each.pieces() != each.photos() || each.pieces() < PIECES - 5) {
                  throw new IllegalStateException("not gathered: " + each);
                }
              });
      return (System.nanoTime() - begin) / 1e9;
    }
  }

  private static double bare(Path tutor, List<Path> books) throws SQLException {
    long begin = System.nanoTime();
    try (Connection link = SqliteLink.gatherer(tutor)) {
      for (int i = 0; i < books.size(); i++) {
        SqliteLink.run(link, "ATTACH '" + books.get(i) + "' AS b" + i);
      }
      SqliteLink.run(link, "BEGIN IMMEDIATE");
      for (int i = 0; i < books.size(); i++) {
        for (String table : TABLES) {
          String from = " SELECT * FROM b" + i + "." + table + " s";
          SqliteLink.run(
              link,
              "INSERT INTO main."
                  + table
                  + from
                  + " WHERE NOT EXISTS (SELECT 1 FROM main."
                  + table
                  + " m WHERE m.id = s.id)");
        }
      }
      SqliteLink.run(link, "COMMIT");
    }
    return (System.nanoTime() - begin) / 1e9;
  }
}
