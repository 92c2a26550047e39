package walebook.book;

import java.io.Serial;
import java.util.UUID;

/** A change was refused for the sake of a row. */
public abstract sealed class RowRefused extends RuntimeException permits StaleRow, StillUsed {
  @Serial private static final long serialVersionUID = 1;

  private final String table;
  private final UUID id;

  RowRefused(String why, String table, UUID id) {
    super(why + ": " + table + " " + id);
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
