package walebook.sheet.in;

/**
 * What stands in one cell, as text of a known kind; nothing in it is ever run.
 *
 * @param text a number with a decimal point, a day as {@code 2026-10-05}, words as they are
 * @param formula true where a formula stands and the text is what it last came to
 */
public record InCell(Kind kind, String text, boolean formula) {
  /** What the file itself says that the cell holds. */
  public enum Kind {
    EMPTY,
    TEXT,
    NUMBER,
    DAY,
    /** A date that can't be: before 1900, or the 29 February 1900 that never was. */
    NO_DAY,
    /** An error such as {@code #DIV/0!}. */
    ERROR,
    /** A formula whose result the file does not hold. */
    UNKNOWN
  }

  public static final InCell EMPTY = new InCell(Kind.EMPTY, "", false);

  public static InCell words(String text) {
    return text.isBlank() ? EMPTY : new InCell(Kind.TEXT, text, false);
  }

  public boolean isEmpty() {
    return kind == Kind.EMPTY;
  }

  /** True where no value can be taken from the cell. */
  public boolean isBroken() {
    return kind == Kind.ERROR || kind == Kind.UNKNOWN || kind == Kind.NO_DAY;
  }
}
