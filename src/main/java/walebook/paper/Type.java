package walebook.paper;

/**
 * How a text is set.
 *
 * @param points its size, 1/72 inch
 * @param bold whether it is heavy
 */
record Type(double points, boolean bold) {
  /** Nothing that is to be read at a copier's quality is smaller. */
  static final Type BODY = new Type(9.5, false);

  static final Type STRONG = new Type(9.5, true);
  static final Type SMALL = new Type(8, false);
  static final Type SMALL_STRONG = new Type(8, true);
  static final Type HEADING = new Type(12, true);
  static final Type TITLE = new Type(18, true);

  /** From one base line to the next, mm. */
  double leadingMm() {
    return Ink.mm(points * 1.26);
  }

  /** From the top of a line to its base line, mm. */
  double ascentMm() {
    return Ink.mm(points * 0.98);
  }

  Type at(double otherPoints) {
    return new Type(otherPoints, bold);
  }
}
