package walebook.record;

/**
 * A fault on a piece.
 *
 * @param fault key of a row in the table of faults
 * @param severity 0 none, 1 found when looked for, 2 seen at arm's length, 3 seen across a table
 */
public record FaultSeen(String fault, FaultPlace place, int severity, FaultWhen when) {
  public FaultSeen {
    Check.text("fault", fault);
    Check.within("severity", severity, 0, 3);
  }
}
