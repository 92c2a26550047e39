package walebook.desk.lessons;

/** The parts of the form in which a pack is written. */
public enum WritePart {
  TEXT,
  PLAN,
  NEEDS,
  ABOUT;

  /** The part in which a field stands. */
  static WritePart of(String field) {
    if (field.equals("lesson") || field.startsWith("steps")) {
      return TEXT;
    } else if (field.startsWith("plan") || field.startsWith("success")) {
      return PLAN;
    } else if (field.startsWith("materials") || field.startsWith("cautions")) {
      return NEEDS;
    }
    return ABOUT;
  }
}
