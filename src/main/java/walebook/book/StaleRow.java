package walebook.book;

import java.io.Serial;
import java.util.UUID;

/** A row was changed elsewhere since it was read: read it again, then decide. */
public final class StaleRow extends RuntimeException {
  @Serial private static final long serialVersionUID = 1;

  private final String table;
  private final UUID id;

  public StaleRow(String table, UUID id) {
    super("changed elsewhere: " + table + " " + id);
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
