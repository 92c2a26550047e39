package walebook.desk.typing;

import java.util.List;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.jspecify.annotations.Nullable;

/** Where one types in the grid, and where each key leads. */
final class GridCursor {
  private final List<CardRow> rows;
  private final ReadOnlyObjectWrapper<@Nullable Spot> at = new ReadOnlyObjectWrapper<>(this, "at");
  private List<String> columns = List.of();
  private List<String> toFill = List.of();

  /** A row and a column. */
  record Spot(int row, String column) {}

  GridCursor(List<CardRow> rows) {
    this.rows = rows;
  }

  /**
   * The columns that are shown.
   *
   * @param filled by hand on each card; Enter skips the others
   */
  void columns(List<String> shown, List<String> filled) {
    columns = List.copyOf(shown);
    toFill = List.copyOf(filled);
  }

  ReadOnlyObjectProperty<@Nullable Spot> atProperty() {
    return at.getReadOnlyProperty();
  }

  /**
   * Goes to a cell, if one can type there. A field that takes the focus says so here: going where
   * one is already must not fire within the firing, for the property then loses listeners that are
   * let go meanwhile and stumbles over their places.
   */
  void go(int row, String column) {
    Spot next = new Spot(row, column);
    if (!next.equals(at.get())
        && row >= 0
        && row < rows.size()
        && rows.get(row).cell(column) != null) {
      at.set(next);
    }
  }

  /** The first card that is not logged, at its first empty field. */
  void begin() {
    for (int row = 0; row < rows.size(); row++) {
      if (!rows.get(row).isLogged() && !toFill.isEmpty()) {
        go(row, toFill.get(0));
        return;
      }
    }
  }

  /** Up or down in the same column, past rows that have nothing to type there. */
  void vertical(int way) {
    Spot now = at.get();
    if (now == null) {
      begin();
      return;
    }
    for (int row = now.row() + way; row >= 0 && row < rows.size(); row += way) {
      if (rows.get(row).cell(now.column()) != null) {
        go(row, now.column());
        return;
      }
    }
  }

  /** To the neighbouring field, on into the next or the last row at the end. */
  void horizontal(int way) {
    along(columns, way, false);
  }

  /** On to the next field that is filled by hand, past cards that are logged. */
  void onward(boolean down, int way) {
    Spot now = at.get();
    if (now == null) {
      begin();
    } else if (!down) {
      along(toFill, way, true);
    } else {
      down(now, way);
    }
  }

  private void along(List<String> among, int way, boolean pastLogged) {
    Spot now = at.get();
    if (now == null || among.isEmpty()) {
      begin();
      return;
    }
    int column = among.indexOf(now.column());
    if (column < 0) {
      column = way > 0 ? before(among, now.column()) : after(among, now.column());
    }
    int row = now.row();
    for (int tried = 0; tried < rows.size() * among.size() + 1; tried++) {
      column += way;
      if (column < 0 || column >= among.size()) {
        row += way;
        column = way > 0 ? 0 : among.size() - 1;
      }
      if (row < 0 || row >= rows.size()) {
        return;
      }
      CardRow next = rows.get(row);
      boolean passed = pastLogged && row != now.row() && next.isLogged();
      if (!passed && next.cell(among.get(column)) != null) {
        go(row, among.get(column));
        return;
      }
    }
  }

  /** The last of some columns that stands before one of all. */
  private int before(List<String> among, String column) {
    int place = columns.indexOf(column);
    int found = -1;
    for (int i = 0; i < among.size(); i++) {
      if (columns.indexOf(among.get(i)) < place) {
        found = i;
      }
    }
    return found;
  }

  private int after(List<String> among, String column) {
    return Math.min(among.size(), before(among, column) + 1);
  }

  private void down(Spot now, int way) {
    for (int row = now.row() + way; row >= 0 && row < rows.size(); row += way) {
      if (!rows.get(row).isLogged() && rows.get(row).cell(now.column()) != null) {
        go(row, now.column());
        return;
      }
    }
    int column = toFill.indexOf(now.column()) + way;
    if (column < 0 || column >= toFill.size()) {
      return;
    }
    int first = way > 0 ? 0 : rows.size() - 1;
    for (int row = first; row >= 0 && row < rows.size(); row += way) {
      if (!rows.get(row).isLogged()) {
        go(row, toFill.get(column));
        return;
      }
    }
  }
}
