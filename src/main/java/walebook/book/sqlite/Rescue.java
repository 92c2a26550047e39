package walebook.book.sqlite;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import walebook.book.RescueNames;
import walebook.book.RescueReport;
import walebook.book.pages.PageFile;
import walebook.book.pages.Row;
import walebook.book.pages.Trees;

/**
 * Reads a damaged book page by page into a new one of today's shape. The damaged file is only ever
 * read. A row comes out when its whole record can be read and the new book takes it; indexes, which
 * name the rows a second time, tell what is missing.
 */
public final class Rescue {
  private final PageFile file;
  private final Trees trees;
  private final Map<String, Integer> roots = new LinkedHashMap<>();
  private final Map<String, Long> badCells = new LinkedHashMap<>();
  private final TreeSet<String> torn = new TreeSet<>();

  private Rescue(PageFile file) {
    this.file = file;
    this.trees = new Trees(file);
  }

  /**
   * Rescues.
   *
   * @param into must not exist; appears when it is complete
   * @return null when the file holds nothing that a book would
   */
  public static @Nullable RescueReport run(Path damaged, Path into, RescueNames names, Clock clock)
      throws IOException, SQLException {
    Path half = into.resolveSibling(into.getFileName() + ".part");
    clear(half);
    try (PageFile file = PageFile.open(damaged)) {
      RescueReport report = new Rescue(file).into(half, into, names, clock);
      if (report != null) {
        Backups.force(half);
        Files.move(half, into, StandardCopyOption.ATOMIC_MOVE);
      }
      return report;
    } finally {
      clear(half);
    }
  }

  private static void clear(Path half) throws IOException {
    for (String end : List.of("", "-wal", "-shm", "-journal")) {
      Files.deleteIfExists(half.resolveSibling(half.getFileName() + end));
    }
  }

  private @Nullable RescueReport into(Path half, Path into, RescueNames names, Clock clock)
      throws IOException, SQLException {
    readRoots();
    int shape = shape();
    List<RescueReport.Table> tables = new ArrayList<>();
    TreeSet<String> lostPieces = new TreeSet<>();
    int standIns;
    try (Connection link = SqliteLink.scratch(half)) {
      Migrations.applyTo(link, shape);
      SqliteLink.run(link, "BEGIN IMMEDIATE");
      Map<String, RescuedTable> wanted = RescuedTable.all(link);
      for (RescuedTable table : wanted.values()) {
        walk(table);
      }
      if (!torn.isEmpty()) {
        trees.loose(row -> takeLoose(wanted, row));
      }
      for (RescuedTable table : wanted.values()) {
        table.close();
      }
      if (wanted.values().stream().allMatch(RescuedTable::isEmpty)) {
        return null;
      }
      standIns = new Mending(link, names, clock).run();
      for (RescuedTable table : wanted.values()) {
        tables.add(count(table, lostPieces));
      }
      SqliteLink.run(link, "COMMIT");
      Migrations.applyTo(link, Migrations.newest());
    }
    tables.removeIf(each -> each.out() == 0 && each.lost() == 0);
    return new RescueReport(into, tables, trees.badPages(), List.copyOf(lostPieces), standIns);
  }

  /** Where each tree begins, by the name of its table or index. */
  private void readRoots() throws IOException {
    trees.walk(
        1,
        row -> {
          if (row.values().size() == 5 && row.values().get(3) instanceof Long root) {
            roots.putIfAbsent(row.text(1), (int) Math.min(Integer.MAX_VALUE, root));
          }
        });
  }

  /** The shape by the header, or else by the newest script whose tables are there. */
  private int shape() throws IOException, SQLException {
    int said = file.shape();
    if (said >= 1 && said <= Migrations.newest()) {
      return said;
    }
    for (int shape = Migrations.newest(); shape > 1; shape--) {
      try (Connection fresh = Migrations.inMemory(shape)) {
        if (roots.keySet().containsAll(RescuedTable.names(fresh))) {
          return shape;
        }
      }
    }
    return roots.isEmpty() ? Migrations.newest() : 1;
  }

  private void walk(RescuedTable table) throws IOException {
    Integer root = roots.get(table.name());
    if (root == null) {
      torn.add(table.name());
      return;
    }
    Trees.Walk walk =
        trees.walk(root, row -> badCells.merge(table.name(), table.take(row), Long::sum));
    badCells.merge(table.name(), walk.badCells(), Long::sum);
    if (walk.badPages() > 0) {
      torn.add(table.name());
    }
  }

  /** A row whose tree is torn goes to the first torn table that takes it. */
  private void takeLoose(Map<String, RescuedTable> wanted, Row row) {
    for (String name : torn) {
      RescuedTable table = wanted.get(name);
      if (table != null && table.fits(row) && table.take(row) == 0) {
        return;
      }
    }
  }

  /** What came out of a table, and what its indexes name beyond that. */
  private RescueReport.Table count(RescuedTable table, Set<String> lostPieces)
      throws IOException, SQLException {
    long lost = table.gone(index(table.name(), 1)).size();
    if (table.name().equals("test_piece")) {
      lostPieces.addAll(table.goneCodes(index(table.name(), 2)));
      lost = Math.max(lost, lostPieces.size());
    }
    return new RescueReport.Table(
        table.name(), table.out(), Math.max(lost, badCells.getOrDefault(table.name(), 0L)));
  }

  /** The first column of a table's own index, as far as it can be read. */
  private Set<String> index(String table, int number) throws IOException {
    Set<String> named = new TreeSet<>();
    Integer root = roots.get("sqlite_autoindex_" + table + "_" + number);
    if (root != null) {
      trees.walk(root, row -> named.add(row.text(0)));
    }
    named.remove("");
    return named;
  }
}
