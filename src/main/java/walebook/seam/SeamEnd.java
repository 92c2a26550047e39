package walebook.seam;

/** How a stretched test piece ended. */
public enum SeamEnd {
  /** A stitch broke or the cloth tore at the seam: the length is a value. */
  GAVE("gave"),
  /** The cloth stopped first: the length is a lower bound of what the seam can do. */
  HELD("held");

  private final String key;

  SeamEnd(String key) {
    this.key = key;
  }

  /** The word used in files and on the command line. */
  public String key() {
    return key;
  }

  /** The end of a word, {@code gave} or {@code held}. */
  public static SeamEnd of(String key) {
    for (SeamEnd end : values()) {
      if (end.key.equals(key)) {
        return end;
      }
    }
    throw new IllegalArgumentException("end must be gave or held: " + key);
  }
}
