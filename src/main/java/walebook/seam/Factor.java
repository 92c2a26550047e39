package walebook.seam;

/** The one thing that a remedy changes on the next piece. */
public enum Factor {
  STITCH("stitch"),
  WIDTH("width"),
  LENGTH("length"),
  NEEDLE_POINT("needle-point"),
  NEEDLE_SIZE("needle-size"),
  NEEDLE_NEW("needle-new"),
  NEEDLE_GAP("needle-gap"),
  THREAD("thread"),
  TENSION_TOP("tension-top"),
  TENSION_UNDER("tension-under"),
  PRESSURE("pressure"),
  DIFFERENTIAL_FEED("differential-feed"),
  FOOT("foot"),
  PLATE("plate"),
  SPEED("speed"),
  STABILISER("stabiliser"),
  HEM("hem"),
  HANDLING("handling"),
  PRESSING("pressing"),
  WASHING("washing"),
  ALLOWANCE("allowance"),
  BAND("band"),
  CUTTING("cutting"),
  CLOTH("cloth");

  private final String key;

  Factor(String key) {
    this.key = key;
  }

  /** The word used in the table. */
  public String key() {
    return key;
  }
}
