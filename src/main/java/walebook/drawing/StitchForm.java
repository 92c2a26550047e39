package walebook.drawing;

import walebook.seam.StitchType;

/** The forms of stitch that can be drawn. */
public enum StitchForm {
  STRAIGHT,
  ZIGZAG,
  THREE_STEP_ZIGZAG,
  OVERLOCK,
  COVERSTITCH;

  /** The form that a stitch type is drawn in. */
  public static StitchForm of(StitchType type) {
    if (!type.hasWidth()) {
      return STRAIGHT;
    }
    if (type.stepsPerSwing() > 1) {
      return THREE_STEP_ZIGZAG;
    }
    return switch (type.machines().get(0)) {
      case "overlocker" -> OVERLOCK;
      case "coverstitch", "other" -> COVERSTITCH;
      default -> ZIGZAG;
    };
  }

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
