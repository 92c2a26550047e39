package walebook.compare;

import java.util.HashMap;
import java.util.Map;
import walebook.book.Book;
import walebook.record.Machine;

/** The shown names of levels that are keys of rows. */
public final class Names {
  private final Map<String, String> shown;

  private Names(Map<String, String> shown) {
    this.shown = Map.copyOf(shown);
  }

  /**
   * Reads the names from a book.
   *
   * @param aliases true to show students' aliases in the place of their names
   */
  public static Names of(Book book, boolean aliases) {
    Map<String, String> shown = new HashMap<>();
    book.cloths().all().forEach(each -> shown.put(each.id().toString(), each.name()));
    for (Machine each : book.machines().all()) {
      shown.put(each.id().toString(), each.label());
    }
    book.students()
        .all()
        .forEach(each -> shown.put(each.id().toString(), aliases ? each.alias() : each.name()));
    return new Names(shown);
  }

  /** A level as people read it. */
  public String show(Factor factor, String level) {
    return factor.isOfRows() ? shown.getOrDefault(level, "") : level;
  }

  /** The name of any row's key; empty when the book has none. */
  public String of(Object id) {
    return shown.getOrDefault(id.toString(), "");
  }
}
