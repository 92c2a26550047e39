package walebook.quantity;

/** The units that Walebook works in; inside, lengths are mm, areas' mass g/m², shares percent. */
public enum Unit {
  MM("mm", 1),
  CM("cm", 10),
  /** The inch is 25.4 mm exactly (international inch, 1959). */
  INCH("in", 25.4),
  PERCENT("%", 1),
  /** Percentage points: a difference or an uncertainty of percentages. */
  POINTS("points", 1),
  GRAM("g", 1),
  GRAM_PER_M2("g/m²", 1),
  PER_CM("/cm", 1),
  RATIO("", 1),
  COUNT("", 1),
  SECOND("s", 1),
  METRE("m", 1000);

  private final String sign;
  private final double inBase;

  Unit(String sign, double inBase) {
    this.sign = sign;
    this.inBase = inBase;
  }

  /** The sign printed behind a number; empty for pure numbers. */
  public String sign() {
    return sign;
  }

  /** How many base units (mm for lengths) one of this is. */
  public double inBase() {
    return inBase;
  }

  /** True for mm, cm, in and m. */
  public boolean isLength() {
    return this == MM || this == CM || this == INCH || this == METRE;
  }
}
