package walebook.bench;

import java.io.BufferedOutputStream;
import java.io.OutputStream;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
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
import java.util.function.ToLongFunction;
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
 * the heap is the program's alone: the values of the other are let go before its turn. On a machine
 * that has other work to do the processor's time says more than the clock's.
 *
 * <p>{@code -Dwalebook.pieces=400000 -Dwalebook.alone=true} writes more pieces, and without the
 * other, whose values need a heap of their own: what is in use must hardly grow.
 */
public final class ExportTermBench {
  private static final int PIECES = Integer.getInteger("walebook.pieces", 100_000);
  private static final int COLUMNS = 30;
  private static final int WARM_UP = Integer.getInteger("walebook.warm-up", 2);
  private static final int TURNS = Integer.getInteger("walebook.turns", 5);

  private static final boolean ALONE = Boolean.getBoolean("walebook.alone");

  private final List<Turn> ours = new ArrayList<>();
  private final List<Turn> plain = new ArrayList<>();
  private long peak;
  private long live;

  private ExportTermBench() {}

  /** What one turn took, in ns: by the clock, and of the processor by all threads. */
  private record Turn(long wall, long processor) {
    static Turn begin() {
      return new Turn(System.nanoTime(), processorTime());
    }

    Turn end() {
      return new Turn(System.nanoTime() - wall, processorTime() - processor);
    }

    private static long processorTime() {
      return ((com.sun.management.OperatingSystemMXBean)
              ManagementFactory.getOperatingSystemMXBean())
          .getProcessCpuTime();
    }
  }

  public static void main(String[] args) throws Exception {
    Path folder = Files.createTempDirectory("walebook-bench");
    try {
      new ExportTermBench().run(folder);
    } finally {
      Folders.delete(folder);
    }
  }

  private void run(Path folder) throws Exception {
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
      for (int i = 0; i < WARM_UP + TURNS; i++) {
        System.gc();
        try (Peak watched = new Peak()) {
          Turn begun = Turn.begin();
          export.export(ours, of, choice, true, ExportProgress.UNHEARD).value();
          keep(i, this.ours, begun.end());
          peak = Math.max(peak, watched.bytes());
          live = Math.max(live, watched.live());
        }
        if (!ALONE) {
          keep(i, plain, plain(folder.resolve("plain.xlsx"), ours));
        }
      }
    }
    print();
  }

  private static void keep(int nth, List<Turn> turns, Turn turn) {
    if (nth >= WARM_UP) {
      turns.add(turn);
    }
  }

  /**
   * How long the other takes; its values are read before and let go after, so that neither of the
   * two has to do with less room for the other's sake.
   */
  private static Turn plain(Path file, Path ours) throws Exception {
    Object[][] values = values(ours);
    System.gc();
    Turn begun = Turn.begin();
    plain(file, values);
    return begun.end();
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

  /** The most of the heap that was in use, looked at every few milliseconds. */
  private static final class Peak implements AutoCloseable {
    private final AtomicLong most = new AtomicLong();
    private final AtomicLong mostLive = new AtomicLong();
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
          mostLive.accumulateAndGet(afterCollection(), Math::max);
          Thread.sleep(5);
        }
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
    }

    private static long afterCollection() {
      long sum = 0;
      for (MemoryPoolMXBean pool : ManagementFactory.getMemoryPoolMXBeans()) {
        if (pool.getType() == MemoryType.HEAP && pool.getCollectionUsage() != null) {
          sum += pool.getCollectionUsage().getUsed();
        }
      }
      return sum;
    }

    /** The most that a collection of garbage left. */
    long live() {
      return mostLive.get();
    }

    long bytes() {
      return most.get();
    }

    @Override
    public void close() {
      watcher.interrupt();
    }
  }

  private static double median(List<Turn> turns, ToLongFunction<Turn> of) {
    long[] sorted = turns.stream().mapToLong(of).sorted().toArray();
    return sorted[sorted.length / 2] / 1e9;
  }

  private void print() {
    print(
        "export of %,d pieces x %d columns: %.2f s, of the processor %.2f s (medians of %d); peak"
            + " of the heap %d MB of a limit of %d MB, wanted under 256, %d MB after collections",
        PIECES,
        COLUMNS,
        median(ours, Turn::wall),
        median(ours, Turn::processor),
        TURNS,
        peak >> 20,
        Runtime.getRuntime().maxMemory() >> 20,
        live >> 20);
    if (!ALONE) {
      print(
          "POI's streaming writer alone: %.2f s, of the processor %.2f s; ratio %.2f, wanted at"
              + " most 1.5, of the processor %.2f",
          median(plain, Turn::wall),
          median(plain, Turn::processor),
          median(ours, Turn::wall) / median(plain, Turn::wall),
          median(ours, Turn::processor) / median(plain, Turn::processor));
    }
  }

  private static void print(String says, Object... numbers) {
    System.out.println(String.format(Locale.ROOT, says, numbers));
  }
}
