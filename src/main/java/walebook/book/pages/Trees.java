package walebook.book.pages;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Walks the trees of a file. Each page is visited once over all walks, so broken pointers can lead
 * neither in circles nor into another tree that was walked before.
 */
public final class Trees {
  private final PageFile file;
  private final BitSet seen = new BitSet();
  private int badPages;

  public Trees(PageFile file) {
    this.file = file;
  }

  /**
   * What a walk met.
   *
   * @param badCells cells on readable pages that held no row
   * @param badPages pages of the tree that could not be read
   */
  public record Walk(long badCells, int badPages) {}

  /** Pages that could not be read, over all walks. */
  public int badPages() {
    return badPages;
  }

  /** The rows of the tree under a page, of a table or of an index. */
  public Walk walk(int root, Consumer<Row> rows) throws IOException {
    Deque<Integer> waiting = new ArrayDeque<>();
    waiting.push(root);
    long badCells = 0;
    int bad = 0;
    int kind = -1;
    while (!waiting.isEmpty()) {
      int number = waiting.pop();
      if (!file.holds(number) || seen.get(number)) {
        bad++;
        continue;
      }
      seen.set(number);
      Cells page = new Cells(file, number);
      boolean table = page.kind() == Cells.TABLE_LEAF || page.kind() == Cells.TABLE_INSIDE;
      kind = kind < 0 && page.makesSense() ? (table ? 1 : 0) : kind;
      if (!page.makesSense() || kind != (table ? 1 : 0)) {
        // Not this tree's: whatever lies there may still be found as a loose page.
        seen.clear(number);
        bad++;
        continue;
      }
      if (page.isInside()) {
        List<Integer> below = page.below();
        for (int i = below.size() - 1; i >= 0; i--) {
          waiting.push(below.get(i));
        }
      }
      if (page.kind() != Cells.TABLE_INSIDE) {
        badCells += rows(page, rows);
      }
    }
    badPages += bad;
    return new Walk(badCells, bad);
  }

  private static long rows(Cells page, Consumer<Row> rows) throws IOException {
    long bad = 0;
    for (int i = 0; i < page.count(); i++) {
      Optional<Row> row = page.row(i);
      row.ifPresent(rows);
      bad += row.isPresent() ? 0 : 1;
    }
    return bad;
  }

  /** Rows on leaves that no walk came to and that are not marked as free. */
  public void loose(Consumer<Row> rows) throws IOException {
    BitSet free = free();
    for (int number = 1; number <= file.pages(); number++) {
      if (seen.get(number) || free.get(number)) {
        continue;
      }
      Cells page = new Cells(file, number);
      if (page.kind() == Cells.TABLE_LEAF && page.makesSense()) {
        rows(page, rows);
      }
    }
  }

  private BitSet free() throws IOException {
    BitSet free = new BitSet();
    int trunk = file.firstFree();
    while (file.holds(trunk) && !free.get(trunk)) {
      free.set(trunk);
      var page = file.page(trunk);
      int leaves = Math.min(page.getInt(4), page.capacity() / 4 - 2);
      for (int i = 0; i < leaves; i++) {
        int leaf = page.getInt(8 + 4 * i);
        if (file.holds(leaf)) {
          free.set(leaf);
        }
      }
      trunk = page.getInt(0);
    }
    return free;
  }
}
