package walebook.book;

import java.io.Serial;
import java.util.UUID;

/** Something else rests on the row, so it cannot be taken away by itself. */
public final class StillUsed extends RowRefused {
  @Serial private static final long serialVersionUID = 1;

  /** Names what rests on it. */
  public StillUsed(String table, UUID id) {
    super("still used by", table, id);
  }
}
