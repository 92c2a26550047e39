package walebook.bench;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import walebook.act.classroom.CompareFair;
import walebook.book.Book;
import walebook.book.open.SqliteFiles;
import walebook.compare.Factor;
import walebook.compare.FairQuestion;
import walebook.compare.Outcome;
import walebook.record.SchoolClass;

/**
 * One class's comparison, for each outcome, in a book of a million pieces beside the bare rows of
 * the same class, asked by the command-line tool {@code sqlite3}; by turns in one run, another
 * class each time. The tool's time is told with its own start and without (less the median of
 * asking it for nothing). A book made before may be named.
 *
 * <p>Without the tool on the path nothing is measured, and that is said.
 */
public final class CompareOneClass {
  private static final int WARM = 400;
  private static final int UNCOUNTED = 20;
  private static final int MEASURED = 100;
  private static final String COLUMNS =
      "id, code, class_id, student_id, sewn_on, cloth_id, grain, stitch_name, dial_width,"
          + " dial_length, needle_point, needle_nm, hem_method, differential_feed, pressure,"
          + " stabiliser, machine_id, seam_end, gauge_mm, end_mm, edge_before_mm, edge_sewn_mm,"
          + " edge_pressed_mm, grade, sewing_minutes";

  private CompareOneClass() {}

  public static void main(String[] args) throws Exception {
    Path folder = Files.createTempDirectory("walebook-bench");
    try {
      run(args.length == 0 ? folder.resolve("million.walebook") : Path.of(args[0]));
    } finally {
      Folders.delete(folder);
    }
  }

  private static void run(Path file) throws Exception {
    try {
      ask(file, "SELECT 1");
    } catch (IOException e) {
      System.out.println("compare: the tool sqlite3 is not there, so nothing was measured");
      return;
    }
    SqliteFiles files = new SqliteFiles();
    if (!Files.exists(file)) {
      new MillionPieces().make(file, files);
    }
    try (Book book = files.open(file, Clock.systemUTC()).value()) {
      List<UUID> classes = book.classes().all().stream().map(SchoolClass::id).toList();
      for (Outcome outcome : Outcome.values()) {
        warm(book, classes, outcome);
      }
      for (Outcome outcome : Outcome.values()) {
        measure(book, file, classes, outcome);
      }
    }
  }

  /** All outcomes first: what is measured last would else be measured warmest. */
  private static void warm(Book book, List<UUID> classes, Outcome outcome) {
    CompareFair act = new CompareFair(book);
    for (int i = 0; i < WARM; i++) {
      act.compare(which(classes.get((i * 31) % classes.size())), question(outcome));
    }
  }

  private static FairQuestion question(Outcome outcome) {
    return FairQuestion.of(outcome, List.of(Factor.STITCH, Factor.WIDTH)).mattering(2.0);
  }

  private static void measure(Book book, Path file, List<UUID> classes, Outcome outcome)
      throws Exception {
    FairQuestion question = question(outcome);
    CompareFair act = new CompareFair(book);
    List<Long> ours = new ArrayList<>();
    List<Long> tool = new ArrayList<>();
    List<Long> start = new ArrayList<>();
    for (int i = 0; i < UNCOUNTED + MEASURED; i++) {
      UUID id = classes.get((i * 31) % classes.size());
      String rows = "SELECT " + COLUMNS + " FROM test_piece WHERE class_id = '" + id + "'";
      if (i % 2 == 0) {
        ours.add(timed(() -> act.compare(which(id), question)));
        tool.add(timed(() -> ask(file, rows)));
      } else {
        tool.add(timed(() -> ask(file, rows)));
        ours.add(timed(() -> act.compare(which(id), question)));
      }
      start.add(timed(() -> ask(file, "SELECT 1")));
    }
    print(outcome, median(ours), median(tool), median(start));
  }

  private static CompareFair.Which which(UUID id) {
    return new CompareFair.Which(List.of(id), null, null, false);
  }

  private static boolean ask(Path file, String sql) throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder("sqlite3", "-readonly", file.toString(), sql)
            .redirectErrorStream(true)
            .start();
    try (InputStream out = process.getInputStream()) {
      out.transferTo(OutputStream.nullOutputStream());
    }
    return process.waitFor() == 0;
  }

  /** Work that is timed. */
  private interface Work {
    Object run() throws Exception;
  }

  private static long timed(Work work) throws Exception {
    long begin = System.nanoTime();
    work.run();
    return System.nanoTime() - begin;
  }

  private static void print(Outcome outcome, double ours, double tool, double start) {
    System.out.println(
        String.format(
            Locale.ROOT,
            "compare %s: %.2f ms; bare rows by sqlite3 %.2f ms, of these its start %.2f ms"
                + " (medians of %d); ratio %.2f with its start, %.2f without; wanted at most 2",
            outcome.key(),
            ours / 1e6,
            tool / 1e6,
            start / 1e6,
            MEASURED,
            ours / tool,
            ours / (tool - start)));
  }

  private static double median(List<Long> times) {
    List<Long> sorted = times.subList(UNCOUNTED, times.size()).stream().sorted().toList();
    return sorted.get(sorted.size() / 2);
  }
}
