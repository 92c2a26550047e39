package walebook.desk.look;

/**
 * How large everything is shown.
 *
 * @param percent 100 to 200
 */
public record TextSize(int percent) {
  public static final TextSize USUAL = new TextSize(100);

  /** Height of body text at 100 %, in pixels. */
  public static final double BODY_PX = 15;

  private static final int LEAST = 100;
  private static final int MOST = 200;
  private static final int STEP = 10;

  public TextSize {
    if (percent < LEAST || percent > MOST) {
      throw new IllegalArgumentException("percent must be 100 to 200: " + percent);
    }
  }

  /** One step up, or the same at the end. */
  public TextSize larger() {
    return new TextSize(Math.min(MOST, percent + STEP));
  }

  /** One step down, or the same at the end. */
  public TextSize smaller() {
    return new TextSize(Math.max(LEAST, percent - STEP));
  }

  double px() {
    return BODY_PX * percent / 100;
  }
}
