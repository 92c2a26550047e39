package walebook.drawing;

/** The forms of stitch that can be drawn. */
public enum StitchForm {
  STRAIGHT,
  ZIGZAG,
  THREE_STEP_ZIGZAG,
  OVERLOCK,
  COVERSTITCH;

  /** The key of its name. */
  public String key() {
    return switch (this) {
      case STRAIGHT -> "drawing.stitch.straight";
      case ZIGZAG -> "drawing.stitch.zigzag";
      case THREE_STEP_ZIGZAG -> "drawing.stitch.three-step";
      case OVERLOCK -> "drawing.stitch.overlock";
      case COVERSTITCH -> "drawing.stitch.cover";
    };
  }
}
