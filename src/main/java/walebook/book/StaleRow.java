package walebook.book;

import java.io.Serial;
import java.util.UUID;

/** A row was changed elsewhere since it was read: read it again, then decide. */
public final class StaleRow extends RowRefused {
  @Serial private static final long serialVersionUID = 1;

  public StaleRow(String table, UUID id) {
    super("changed elsewhere", table, id);
  }
}
