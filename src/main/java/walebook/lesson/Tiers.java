package walebook.lesson;

import walebook.record.Tier;

/** How much of a plan each tier takes on. */
public record Tiers(Share core, Share standard, Share own) {
  /**
   * A tier's share.
   *
   * @param cells combinations each student takes on, beside the control
   * @param says what the student is told
   */
  public record Share(int cells, String says) {
    public Share {
      if (cells < 1) {
        throw new IllegalArgumentException("cells must be at least 1: " + cells);
      }
    }
  }

  public Share of(Tier tier) {
    return switch (tier) {
      case CORE -> core;
      case STANDARD -> standard;
      case OWN -> own;
    };
  }
}
