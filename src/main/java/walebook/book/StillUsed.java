package walebook.book;

import java.io.Serial;
import java.util.UUID;

/** Something else rests on the row, so it cannot be taken away by itself. */
public final class StillUsed extends RuntimeException {
  @Serial private static final long serialVersionUID = 1;

  private final String table;
  private final UUID id;

  /** Names what rests on it. */
  public StillUsed(String table, UUID id) {
    super("still used by: " + table + " " + id);
    this.table = table;
    this.id = id;
  }

  public String table() {
    return table;
  }

  public UUID id() {
    return id;
  }
}
