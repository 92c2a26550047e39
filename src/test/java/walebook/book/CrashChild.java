package walebook.book;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import walebook.act.bring.BringInPieces;
import walebook.act.bring.BringPlan;
import walebook.act.bring.ReadSpreadsheet;
import walebook.act.bring.Spreadsheet;
import walebook.act.bring.Trial;
import walebook.act.bring.match.BringWhat;
import walebook.act.bring.match.DayOrder;
import walebook.book.open.SqliteCare;
import walebook.book.open.SqliteFiles;
import walebook.record.By;
import walebook.record.PieceCode;
import walebook.record.TestPiece;
import walebook.tables.SharedTables;
import walebook.words.Words;

/**
 * The process that {@link CrashTest} kills: does one chore over and over and says on its standard
 * output what is done. A chore of another room is added here and in {@link CrashTest.Chore}.
 */
public final class CrashChild {
  /** How many pieces go into the book in one step. */
  static final int BATCH = 20;

  /** More often than any test waits for. */
  private static final int WITHOUT_END = 100_000;

  private static final String HEADERS =
      "Code;Student;Date;Fabric;Grain;Stitch;Width;Length;Needle;Gauge (cm);Result;Stretched to"
          + " (cm)\n";
  private static final String ROW =
      ";S01;5.10.2026;Grey jersey;crosswise;304;2,5;2,5;jersey 75/11;10;gave;14,2\n";

  private final Path folder;
  private final int times;
  private final PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
  private final Random random = new SecureRandom();
  private final Set<String> taken = new HashSet<>();

  private CrashChild(Path folder, int times) {
    this.folder = folder;
    this.times = times;
  }

  /** A chore, its folder, and how many times it is done: without end if that is left out. */
  public static void main(String[] args) throws Exception {
    CrashChild child =
        new CrashChild(Path.of(args[1]), args.length > 2 ? Integer.parseInt(args[2]) : WITHOUT_END);
    switch (CrashTest.Chore.valueOf(args[0])) {
      case SAVE -> child.save();
      case MANY_IN_ONE_STEP -> child.manyInOneStep();
      case BRING_IN -> child.bringIn();
      case BACK_UP -> child.backUp();
      case RESTORE -> child.restore();
      case MIGRATE -> child.migrate();
    }
  }

  private Path file() {
    return folder.resolve("class.walebook");
  }

  /** The book's first piece again under a code of its own. */
  private TestPiece like(TestPiece one) {
    String code = PieceCode.draw(random);
    while (!taken.add(code)) {
      code = PieceCode.draw(random);
    }
    return Classroom.like(one, code);
  }

  private static Book open(Path file) {
    return new SqliteFiles().open(file, Clock.systemUTC()).value();
  }

  private TestPiece first(Book book) {
    List<TestPiece> all = book.pieces().list(PieceFilter.ALL);
    all.forEach(each -> taken.add(each.code()));
    return all.get(0);
  }

  private void save() {
    try (Book book = open(file())) {
      TestPiece one = first(book);
      out.println("ready");
      for (int i = 0; i < times; i++) {
        TestPiece next = like(one);
        book.pieces().add(next);
        out.println("saved " + next.code());
      }
    }
  }

  private void manyInOneStep() {
    try (Book book = open(file())) {
      TestPiece one = first(book);
      out.println("ready");
      for (int i = 0; i < times; i++) {
        List<TestPiece> batch = new ArrayList<>();
        for (int j = 0; j < BATCH; j++) {
          batch.add(like(one));
        }
        String codes = String.join(" ", batch.stream().map(TestPiece::code).toList());
        out.println("begun " + codes);
        book.inOneStep(
            () -> {
              batch.forEach(book.pieces()::add);
              return Boolean.TRUE;
            });
        out.println("done " + codes);
      }
    }
  }

  /** Brings a spreadsheet in, its rows under codes that are known, so that they can be counted. */
  private void bringIn() throws Exception {
    Words words = Words.english();
    SharedTables tables = SharedTables.read();
    try (Book book = open(file())) {
      TestPiece one = first(book);
      ReadSpreadsheet read = new ReadSpreadsheet(book, words);
      Path sheet = folder.resolve("rows.csv");
      out.println("ready");
      for (int i = 0; i < times; i++) {
        List<String> codes = new ArrayList<>();
        StringBuilder rows = new StringBuilder(HEADERS);
        for (int j = 0; j < BATCH; j++) {
          codes.add(like(one).code());
          rows.append(codes.get(j)).append(ROW);
        }
        Files.writeString(sheet, rows);
        Spreadsheet brought =
            read.open(sheet, BringWhat.PIECES)
                .flatMap(file -> read.read(file, file.usual(), BringWhat.PIECES))
                .value();
        BringPlan plan =
            new BringPlan(
                BringWhat.PIECES,
                brought,
                read.guess(brought, BringWhat.PIECES),
                one.whose().classId(),
                one.whose().studentId(),
                DayOrder.DAY_FIRST,
                false,
                true);
        out.println("begun " + String.join(" ", codes));
        Trial trial =
            new BringInPieces(book, tables, words, Clock.systemUTC(), random)
                .bring(plan, By.named("Tutor"))
                .value();
        if (trial.stepId() == null) {
          throw new IllegalStateException("not brought in: " + trial.fates());
        }
        out.println("done " + String.join(" ", codes));
      }
    }
  }

  /** Backs up again and again while another thread saves. */
  private void backUp() throws Exception {
    try (Book book = open(file())) {
      TestPiece one = first(book);
      out.println("ready");
      Thread saver =
          new Thread(
              () -> {
                for (int i = 0; i < times; i++) {
                  TestPiece next = like(one);
                  book.pieces().add(next);
                  out.println("saved " + next.code());
                }
              });
      saver.setDaemon(true);
      saver.start();
      for (int i = 0; i < times; i++) {
        BookCopy copy =
            new SqliteCare().backUp(file(), BookCopy.Why.ASKED, null, Clock.systemUTC()).value();
        out.println("copied " + copy.file());
      }
    }
  }

  private void restore() {
    out.println("ready");
    for (int i = 0; i < times; i++) {
      Path copy = folder.resolve(i % 2 == 0 ? "few.walebook" : "many.walebook");
      new SqliteCare().restore(file(), copy, Clock.systemUTC()).value();
      out.println("restored " + copy.getFileName());
    }
  }

  private void migrate() throws Exception {
    out.println("ready");
    for (int i = 0; i < times; i++) {
      String name = "old-" + Ids.next();
      Path half = Files.copy(folder.resolve("old.template"), folder.resolve(name + ".half"));
      Path whole =
          Files.move(half, folder.resolve(name + ".walebook"), StandardCopyOption.ATOMIC_MOVE);
      open(whole).close();
      out.println("migrated " + whole);
    }
  }
}
