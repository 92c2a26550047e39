package walebook.paper;

import walebook.record.Keyed;

/** A sheet of paper, upright; mm. */
public enum PaperSize implements Keyed {
  /** ISO 216. */
  A4("a4", 210, 297),
  /** ANSI/ASME Y14.1 size A: 8.5 by 11 inches. */
  LETTER("letter", 215.9, 279.4);

  private final String key;
  private final double widthMm;
  private final double heightMm;

  PaperSize(String key, double widthMm, double heightMm) {
    this.key = key;
    this.widthMm = widthMm;
    this.heightMm = heightMm;
  }

  @Override
  public String key() {
    return key;
  }

  public double widthMm() {
    return widthMm;
  }

  public double heightMm() {
    return heightMm;
  }
}
