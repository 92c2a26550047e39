package walebook.compare;

import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.quantity.Show;
import walebook.record.Keyed;
import walebook.record.Needle;
import walebook.record.TestPiece;

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
  public String level(TestPiece piece) {
    return switch (this) {
      case CLOTH -> piece.cloth().clothId().toString();
      case GRAIN -> piece.cloth().grain().key();
      case STITCH -> piece.setting().stitchName();
      case WIDTH -> number(piece.setting().dialWidth());
      case LENGTH -> number(piece.setting().dialLength());
      case NEEDLE -> needle(piece.setting().needle());
      case HEM_METHOD -> piece.setting().hemMethod();
      case FEED -> number(piece.setting().differentialFeed());
      case PRESSURE -> key(piece.setting().pressure());
      case STABILISER -> piece.setting().stabiliser();
      case MACHINE -> id(piece.setting().machineId());
      case STUDENT -> piece.whose().studentId().toString();
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
