package walebook.sheet;

/** How a column's cells are shown: number format, width and wrapping. */
public enum Format {
  WORD("General", 14, false),
  TEXT("General", 22, false),
  TITLE("General", 40, false),
  LABEL("General", 58, false),
  LONG_TEXT("General", 50, true),
  WHOLE("0", 9, false),
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
      case WORD, TEXT, TITLE, LABEL, LONG_TEXT -> true;
      case WHOLE, TENTHS, HUNDREDTHS, DAY, MOMENT -> false;
    };
  }

  boolean isWrapped() {
    return wrapped;
  }
}
