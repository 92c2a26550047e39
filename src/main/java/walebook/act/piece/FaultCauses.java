package walebook.act.piece;

import java.util.List;
import walebook.record.FaultSeen;
import walebook.seam.Fault;
import walebook.seam.LikelyCause;

/**
 * A fault seen on a piece with its likely causes in order.
 *
 * @param fault its row in the table
 */
public record FaultCauses(FaultSeen seen, Fault fault, List<LikelyCause> causes) {
  public FaultCauses {
    causes = List.copyOf(causes);
  }
}
