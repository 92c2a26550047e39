package walebook.drawing;

import java.util.Arrays;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** The common faults that have a picture. */
public enum FaultKind {
  POPPED_STITCHES,
  SKIPPED_STITCHES,
  TUNNELLING,
  WAVY_SEAM,
  LETTUCED_EDGE,
  PUCKERING,
  NEEDLE_HOLES,
  LADDER,
  GRINNING,
  HEM_FLIPPING,
  BULK_AT_CROSSING,
  THREAD_NEST;

  /** Its name in tables, such as {@code popped-stitches}. */
  public String code() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The fault of a code, or null when it has no picture. */
  public static @Nullable FaultKind of(String code) {
    return Arrays.stream(values())
        .filter(kind -> kind.code().equals(code))
        .findFirst()
        .orElse(null);
  }

  /** The key of what its picture shows. */
  public String key() {
    return switch (this) {
      case POPPED_STITCHES -> "drawing.fault.popped-stitches";
      case SKIPPED_STITCHES -> "drawing.fault.skipped-stitches";
      case TUNNELLING -> "drawing.fault.tunnelling";
      case WAVY_SEAM -> "drawing.fault.wavy-seam";
      case LETTUCED_EDGE -> "drawing.fault.lettuced-edge";
      case PUCKERING -> "drawing.fault.puckering";
      case NEEDLE_HOLES -> "drawing.fault.needle-holes";
      case LADDER -> "drawing.fault.ladder";
      case GRINNING -> "drawing.fault.grinning";
      case HEM_FLIPPING -> "drawing.fault.hem-flipping";
      case BULK_AT_CROSSING -> "drawing.fault.bulk-at-crossing";
      case THREAD_NEST -> "drawing.fault.thread-nest";
    };
  }
}
