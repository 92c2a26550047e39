package walebook.sheet;

/** How a column's cells are shown: number format, width and wrapping. */
public enum Format {
  WORD("General", 14, false),
  TEXT("General", 22, false),
  TITLE("General", 40, false),
  LONG_TEXT("General", 50, true),
  WHOLE("0", 9, false),
  /** With as many decimal places as were typed. */
  TYPED("General", 9, false),
  /** The same in a narrow column, its header written upwards. */
  NARROW_TYPED("General", 7, false),
  /** A small number in a narrow column, its header written upwards. */
  TALLY("0", 6, false),
  /** A number with one decimal place in such a column. */
  NARROW("0.0", 7, false),
  /** The same with two. */
  NARROW_HUNDREDTHS("0.00", 7, false),
  TENTHS("0.0", 10, false),
  HUNDREDTHS("0.00", 10, false),
  DAY("yyyy-mm-dd", 12, false),
  MOMENT("yyyy-mm-dd hh:mm", 18, false);

  private final String pattern;
  private final int width;
  private final boolean wrapped;

  Format(String pattern, int width, boolean wrapped) {
    this.pattern = pattern;
    this.width = width;
    this.wrapped = wrapped;
  }

  String pattern() {
    return pattern;
  }

  /** Usual width in characters. */
  int width() {
    return width;
  }

  /** Whether its cells are words. */
  boolean isWords() {
    return switch (this) {
      case WORD, TEXT, TITLE, LONG_TEXT -> true;
      default -> false;
    };
  }

  /** Whether a whole number is written without decimal places. */
  boolean isWhole() {
    return this == WHOLE || this == TALLY || this == TYPED || this == NARROW_TYPED;
  }

  /** Whether the header is written upwards. */
  boolean isUpright() {
    return switch (this) {
      case TALLY, NARROW, NARROW_HUNDREDTHS, NARROW_TYPED -> true;
      default -> false;
    };
  }

  boolean isWrapped() {
    return wrapped;
  }
}
