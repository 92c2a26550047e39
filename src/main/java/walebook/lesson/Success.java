package walebook.lesson;

import walebook.record.Keyed;

/**
 * A criterion the program can check.
 *
 * @param value the limit: percent, points of percent, a grade or a count, by its kind
 * @param says what the student reads
 */
public record Success(Kind kind, double value, String says) {
  /** What is checked. */
  public enum Kind implements Keyed {
    /** Seam stretch over the cloth's in the same direction, percent; a held seam meets it. */
    SEAM_SHARE_AT_LEAST("seam_share_at_least"),
    /** Seam stretch in percent of the gauge; a seam that held so far meets it. */
    SEAM_STRETCH_AT_LEAST("seam_stretch_at_least"),
    /** Change of the edge's length either way, percent, after pressing where that was measured. */
    EDGE_CHANGE_AT_MOST("edge_change_at_most"),
    /** Share of the extension that came back, percent. */
    RECOVERY_AT_LEAST("recovery_at_least"),
    /** Grade 1 to 5. */
    APPEARANCE_AT_LEAST("appearance_at_least"),
    /** Largest less smallest of one student's readings of the same thing, points of percent. */
    READINGS_AGREE_WITHIN("readings_agree_within"),
    /** Pieces, or readings in a lesson of readings, in the student's log. */
    LOGGED_AT_LEAST("logged_at_least");

    private final String key;

    Kind(String key) {
      this.key = key;
    }

    @Override
    public String key() {
      return key;
    }
  }
}
