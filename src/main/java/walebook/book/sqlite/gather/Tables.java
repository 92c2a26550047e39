package walebook.book.sqlite.gather;

import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** The tables that gathering knows what to do with. */
public final class Tables {
  private Tables() {}

  /** Those that are gathered, their parts, and those left out on purpose. */
  public static Set<String> known() {
    Set<String> known = new TreeSet<>(Kind.LEFT_OUT);
    for (Kind kind : Kind.ALL) {
      known.add(kind.table());
      kind.parts().forEach(part -> known.add(part.table()));
    }
    return known;
  }

  /** Those that a person may have to decide about, and their parts: the columns shown of each. */
  public static Map<String, List<String>> decided(Path book) throws SQLException {
    Map<String, List<String>> all = new TreeMap<>();
    try (Link link = new Link(book)) {
      for (Kind kind : Kind.ALL) {
        if (!kind.isHistory()) {
          all.put(kind.table(), shown(link, kind.table(), ""));
          for (Kind.Part part : kind.parts()) {
            if (link.blobs(part.table()).isEmpty()) {
              all.put(part.table(), shown(link, part.table(), part.owner()));
            }
          }
        }
      }
    }
    return all;
  }

  private static List<String> shown(Link link, String table, String owner) throws SQLException {
    List<String> shown = new ArrayList<>(link.columns(table));
    shown.removeAll(AsJson.STAMPS);
    shown.removeAll(link.blobs(table));
    shown.removeAll(List.of("id", owner));
    return shown;
  }
}
