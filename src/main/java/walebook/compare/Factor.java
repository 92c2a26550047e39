package walebook.compare;

import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.quantity.Show;
import walebook.record.Keyed;
import walebook.record.Needle;
import walebook.record.ResultLine;
import walebook.record.SetTo;

/** What pieces can be told apart by. */
public enum Factor implements Keyed {
  CLOTH("cloth"),
  GRAIN("grain"),
  STITCH("stitch"),
  WIDTH("dial-width"),
  LENGTH("dial-length"),
  NEEDLE("needle"),
  HEM_METHOD("hem-method"),
  FEED("differential-feed"),
  PRESSURE("pressure"),
  STABILISER("stabiliser"),
  MACHINE("machine"),
  STUDENT("student");

  private final String key;

  Factor(String key) {
    this.key = key;
  }

  @Override
  public String key() {
    return key;
  }

  /** The piece's level of this factor; a key or a number as text, empty where it has none. */
  public String level(ResultLine piece) {
    SetTo set = piece.setTo();
    return switch (this) {
      case CLOTH -> set.clothId().toString();
      case GRAIN -> set.grain().key();
      case STITCH -> set.stitchName();
      case WIDTH -> number(set.dialWidth());
      case LENGTH -> number(set.dialLength());
      case NEEDLE -> needle(set.needle());
      case HEM_METHOD -> set.hemMethod();
      case FEED -> number(set.feed());
      case PRESSURE -> key(set.pressure());
      case STABILISER -> set.stabiliser();
      case MACHINE -> id(set.machineId());
      case STUDENT -> piece.studentId().toString();
    };
  }

  /** True when levels are keys of rows in the book rather than words. */
  public boolean isOfRows() {
    return this == CLOTH || this == MACHINE || this == STUDENT;
  }

  private static String number(@Nullable Double value) {
    return value == null ? "" : Show.upTo(value, 2);
  }

  private static String key(@Nullable Keyed value) {
    return value == null ? "" : value.key();
  }

  private static String id(@Nullable UUID value) {
    return value == null ? "" : value.toString();
  }

  private static String needle(@Nullable Needle needle) {
    return needle == null ? "" : needle.point().key() + " " + needle.nm();
  }
}
