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
 * the heap is the program's part of it alone: the values of the other stand in a file meanwhile.
 */
public final class ExportTermBench {
  private static final int PIECES = 100_000;
  private static final int COLUMNS = 30;
  private static final int TURNS = 3;

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
      long peak = 0;
      for (int i = 0; i < TURNS; i++) {
        System.gc();
        resetPeaks();
        long begin = System.nanoTime();
        export.export(ours, of, choice, true, ExportProgress.UNHEARD).value();
        wall.add(System.nanoTime() - begin);
        peak = Math.max(peak, peak());
      }
      Object[][] values = values(ours);
      List<Long> plain = new ArrayList<>();
      for (int i = 0; i < TURNS; i++) {
        System.gc();
        long begin = System.nanoTime();
        plain(folder.resolve("plain.xlsx"), values);
        plain.add(System.nanoTime() - begin);
        begin = System.nanoTime();
        export.export(ours, of, choice, true, ExportProgress.UNHEARD).value();
        wall.add(System.nanoTime() - begin);
      }
      print(wall, plain, peak);
    }
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

  private static void resetPeaks() {
    ManagementFactory.getMemoryPoolMXBeans().forEach(MemoryPoolMXBean::resetPeakUsage);
  }

  private static long peak() {
    return ManagementFactory.getMemoryPoolMXBeans().stream()
        .filter(each -> each.getType() == MemoryType.HEAP)
        .mapToLong(each -> each.getPeakUsage().getUsed())
        .sum();
  }

  private static double median(List<Long> times) {
    List<Long> sorted = times.stream().sorted().toList();
    return sorted.get(sorted.size() / 2) / 1e9;
  }

  private static void print(List<Long> ours, List<Long> plain, long peak) {
    List<Long> warm = ours.subList(TURNS, ours.size());
    System.out.println(
        String.format(
            Locale.ROOT,
            "export of %,d pieces x %d columns: %.2f s; POI's streaming writer alone %.2f s"
                + " (medians of %d); ratio %.2f, wanted at most 1.5; peak of the heap %d MB of a"
                + " limit of %d MB, wanted under 256",
            PIECES,
            COLUMNS,
            median(warm),
            median(plain),
            TURNS,
            median(warm) / median(plain),
            peak >> 20,
            Runtime.getRuntime().maxMemory() >> 20));
  }
}
