package walebook.bench;

import java.io.BufferedOutputStream;
import java.io.OutputStream;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicLong;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import walebook.act.classroom.ExportTerm;
import walebook.book.Book;
import walebook.book.open.SqliteFiles;
import walebook.sheet.ExportProgress;
import walebook.sheet.TermChoice;
import walebook.tables.SharedTables;
import walebook.words.Words;

/**
 * A term of 100,000 pieces in 30 columns, from the book to the closed file, beside POI's own
 * streaming writer that is fed the very same values from memory; by turns in one run. The peak of
 * the heap is the program's alone: the values of the other are let go before its turn.
 */
public final class ExportTermBench {
  private static final int PIECES = Integer.getInteger("walebook.pieces", 100_000);
  private static final int COLUMNS = 30;
  private static final int WARM_UP = 2;
  private static final int TURNS = 5;

  private ExportTermBench() {}

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
    Path file = folder.resolve("term.walebook");
    UUID of = new ClassOfPieces(PIECES).make(file, files);
    try (Book book = files.open(file, Clock.systemUTC()).value()) {
      ExportTerm export =
          new ExportTerm(book, Words.english(), SharedTables.read(), Clock.systemUTC());
      Set<String> keys = new LinkedHashSet<>();
      ExportTerm.columnKeys().stream().limit(COLUMNS).forEach(keys::add);
      TermChoice choice = TermChoice.CODES.inColumns(keys);
      Path ours = folder.resolve("ours.xlsx");
      List<Long> wall = new ArrayList<>();
      List<Long> plain = new ArrayList<>();
      long peak = 0;
      for (int i = 0; i < WARM_UP + TURNS; i++) {
        System.gc();
        try (Peak watched = new Peak()) {
          long begin = System.nanoTime();
          export.export(ours, of, choice, true, ExportProgress.UNHEARD).value();
          wall.add(System.nanoTime() - begin);
          peak = Math.max(peak, watched.bytes());
        }
        plain.add(plain(folder.resolve("plain.xlsx"), ours));
      }
      print(wall.subList(WARM_UP, wall.size()), plain.subList(WARM_UP, plain.size()), peak);
    }
  }

  /**
   * How long the other takes; its values are read before and let go after, so that neither of the
   * two has to do with less room for the other's sake.
   */
  private static long plain(Path file, Path ours) throws Exception {
    Object[][] values = values(ours);
    System.gc();
    long begin = System.nanoTime();
    plain(file, values);
    return System.nanoTime() - begin;
  }

  private static void plain(Path file, Object[][] values) throws Exception {
    try (SXSSFWorkbook workbook = new SXSSFWorkbook();
        OutputStream out = new BufferedOutputStream(Files.newOutputStream(file), 1 << 16)) {
      Sheet sheet = workbook.createSheet("Pieces");
      for (int i = 0; i < values.length; i++) {
        Row row = sheet.createRow(i);
        for (int c = 0; c < values[i].length; c++) {
          Object value = values[i][c];
          if (value instanceof Double number) {
            Cell cell = row.createCell(c);
            cell.setCellValue(number);
          } else if (value != null) {
            row.createCell(c).setCellValue(value.toString());
          }
        }
      }
      workbook.write(out);
    }
  }

  /** The values of the table of pieces as they stand in our own file. */
  private static Object[][] values(Path file) throws Exception {
    List<Object[]> rows = new ArrayList<>();
    try (ReadableWorkbook workbook = new ReadableWorkbook(file.toFile())) {
      var sheet = workbook.findSheet("Pieces").orElseThrow();
      try (var stream = sheet.openStream()) {
        stream.forEach(
            row -> {
              Object[] values = new Object[COLUMNS];
              for (int c = 0; c < COLUMNS && c < row.getCellCount(); c++) {
                var cell = row.getCell(c);
                if (cell != null && cell.getValue() != null) {
                  boolean number = cell.getType() == org.dhatim.fastexcel.reader.CellType.NUMBER;
                  values[c] = number ? (Object) cell.asNumber().doubleValue() : cell.getText();
                }
              }
              rows.add(values);
            });
      }
    }
    if (rows.size() != PIECES + 1) {
      throw new IllegalStateException("not every piece went out: " + rows.size());
    }
    return rows.toArray(Object[][]::new);
  }

  /** The most of the heap that was in use, garbage and all, looked at every few milliseconds. */
  private static final class Peak implements AutoCloseable {
    private final AtomicLong most = new AtomicLong();
    private final Thread watcher = new Thread(this::watch, "peak");

    Peak() {
      watcher.setDaemon(true);
      watcher.start();
    }

    private void watch() {
      try {
        while (true) {
          long used = ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed();
          most.accumulateAndGet(used, Math::max);
          Thread.sleep(5);
        }
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
    }

    long bytes() {
      return most.get();
    }

    @Override
    public void close() {
      watcher.interrupt();
    }
  }

  private static double median(List<Long> times) {
    List<Long> sorted = times.stream().sorted().toList();
    return sorted.get(sorted.size() / 2) / 1e9;
  }

  private static void print(List<Long> ours, List<Long> plain, long peak) {
    System.out.println(
        String.format(
            Locale.ROOT,
            "export of %,d pieces x %d columns: %.2f s; POI's streaming writer alone %.2f s"
                + " (medians of %d); ratio %.2f, wanted at most 1.5; peak of the heap %d MB of a"
                + " limit of %d MB, wanted under 256",
            PIECES,
            COLUMNS,
            median(ours),
            median(plain),
            TURNS,
            median(ours) / median(plain),
            peak >> 20,
            Runtime.getRuntime().maxMemory() >> 20));
  }
}
