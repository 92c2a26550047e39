package walebook.book.sqlite.gather;

import java.util.Set;
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
}
