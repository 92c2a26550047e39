package walebook.compare;

import org.jspecify.annotations.Nullable;
import walebook.record.Keyed;
import walebook.record.MarkedValue;
import walebook.record.ResultLine;

/** What pieces are compared in. */
public enum Outcome implements Keyed {
  /** The seam's stretch over the cloth's, percent. */
  SEAM_SHARE("seam-share", MarkedValue.SEAM_STRETCH),
  /** The seam's stretch, percent. */
  SEAM_STRETCH("seam-stretch", MarkedValue.SEAM_STRETCH),
  /** Change of the edge's length by sewing, percent. */
  EDGE_CHANGE("edge-change", MarkedValue.EDGE_CHANGE),
  /** Look, 1 to 5. */
  GRADE("grade", MarkedValue.GRADE),
  /** Whether the cloth stopped before the seam gave. */
  HELD("held", MarkedValue.SEAM_STRETCH),
  /** Minutes at the machine. */
  TIME("time", null);

  private final String key;
  private final @Nullable MarkedValue marked;

  Outcome(String key, @Nullable MarkedValue marked) {
    this.key = key;
    this.marked = marked;
  }

  @Override
  public String key() {
    return key;
  }

  /** What a difference is counted in, as a key of the bundle: points of percent or other. */
  public String unit() {
    return switch (this) {
      case GRADE -> "compare.unit.grades";
      case TIME -> "compare.unit.minutes";
      case SEAM_SHARE, SEAM_STRETCH, EDGE_CHANGE, HELD -> "compare.unit.points";
    };
  }

  /** The value whose mark sets a piece aside for this outcome; null where none is marked. */
  public @Nullable MarkedValue marked() {
    return marked;
  }

  /** True when a held piece is only a lower bound. */
  public boolean isOfSeam() {
    return this == SEAM_SHARE || this == SEAM_STRETCH;
  }

  /** True when it is a rate of yes and no rather than a value. */
  public boolean isRate() {
    return this == HELD;
  }

  /** The piece's value, null where it has none; a rate is 1 for held and 0 for gave. */
  public @Nullable Double value(PieceResult piece) {
    return switch (this) {
      case SEAM_SHARE -> piece.seamShare();
      case SEAM_STRETCH -> piece.seamStretch();
      case EDGE_CHANGE -> piece.edgeChange();
      case GRADE -> piece.grade() == null ? null : Double.valueOf(piece.grade());
      case TIME -> piece.sewingMinutes();
      case HELD -> piece.end() == null ? null : Double.valueOf(piece.held() ? 1 : 0);
    };
  }

  /**
   * True for a piece whose seam was pulled and that lacks this value all the same: its cloth's
   * stretch is what is not known.
   */
  boolean lacksStretch(ResultLine piece) {
    return this == SEAM_SHARE && piece.seamStretch() != null;
  }

  /** How good a value is, higher for better: an edge is best unchanged, a time is best short. */
  public double goodness(double value) {
    return switch (this) {
      case EDGE_CHANGE -> -Math.abs(value);
      case TIME -> -value;
      case SEAM_SHARE, SEAM_STRETCH, GRADE, HELD -> value;
    };
  }
}
