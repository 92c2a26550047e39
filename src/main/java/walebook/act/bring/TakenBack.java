package walebook.act.bring;

import java.io.Serial;

/** Ends a step so that nothing of it stays, and carries out what was found in it. */
final class TakenBack extends RuntimeException {
  @Serial private static final long serialVersionUID = 1;
  private final transient Trial trial;

  TakenBack(Trial trial) {
    super("taken back on purpose", null, false, false);
    this.trial = trial;
  }

  Trial trial() {
    return trial;
  }
}
