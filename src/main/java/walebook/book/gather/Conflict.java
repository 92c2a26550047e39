package walebook.book.gather;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;

/**
 * Something that only a person can decide, both sides beside each other.
 *
 * @param entity the kind of record: its table's name
 * @param title what the record is called: its name, code or title
 * @param fields those that differ
 * @param found when it was found first
 */
public record Conflict(
    UUID id,
    Why why,
    String entity,
    String title,
    String bookName,
    String fileName,
    List<Field> fields,
    Instant found) {

  /** Why a person is asked. */
  public enum Why {
    /** Changed in both books since they were last one. */
    BOTH_CHANGED("both-changed"),
    /** Removed here, changed there. */
    REMOVED_HERE("removed-here"),
    /** Two records with one code, one number or one plan; theirs was given a free one meanwhile. */
    TWIN("twin"),
    /** Made in both books under one name; both are kept meanwhile. */
    SAME_NAME("same-name");

    private final String key;

    Why(String key) {
      this.key = key;
    }

    public String key() {
      return key;
    }

    public static Why of(String key) {
      for (Why each : values()) {
        if (each.key.equals(key)) {
          return each;
        }
      }
      throw new IllegalArgumentException("no such reason: " + key);
    }
  }

  /**
   * A value as a book holds it.
   *
   * @param table that it stands in
   * @param text what a reference refers to is given by its name; empty where that isn't known
   */
  public record Value(String table, String column, String text) {}

  /**
   * A field that differs, each side as rows of values: one row with one value for a column, a row
   * for each part such as a pull, none for nothing.
   *
   * @param name the column's or the part's name
   * @param mine as this book has it
   * @param theirs as the other has it
   */
  public record Field(String name, List<List<Value>> mine, List<List<Value>> theirs) {
    public Field {
      mine = List.copyOf(mine);
      theirs = List.copyOf(theirs);
    }

    /** A side as the book holds it, for programs; empty for nothing. */
    public static String raw(List<List<Value>> side) {
      return side.stream()
          .map(row -> row.stream().map(Value::text).collect(Collectors.joining(" ")))
          .collect(Collectors.joining("; "));
    }
  }

  public Conflict {
    fields = List.copyOf(fields);
  }
}
