package walebook.drawing;

/** What a colour is for; which colour it is depends on the {@link Palette}. */
public enum Role {
  /** The window behind everything. */
  PAPER,
  /** What a picture stands on. */
  CARD,
  /** Text and thread. */
  INK,
  /** Secondary text and quiet lines. */
  SOFT,
  /** Rules, borders, grids: decoration only. */
  LINE,
  /** Undyed cloth. */
  CLOTH,
  ACCENT,
  /** A light shade of the accent behind text or marks. */
  WASH,
  MET,
  TOO_CLOSE,
  NOT_MET,
  SERIES_1,
  SERIES_2,
  SERIES_3,
  SERIES_4,
  SERIES_5;

  /**
   * The colour of a series, told apart by its mark's shape first.
   *
   * @param index 0 to 4
   */
  public static Role series(int index) {
    return switch (index) {
      case 0 -> SERIES_1;
      case 1 -> SERIES_2;
      case 2 -> SERIES_3;
      case 3 -> SERIES_4;
      case 4 -> SERIES_5;
      default -> throw new IllegalArgumentException("index of a series must be 0 to 4: " + index);
    };
  }
}
