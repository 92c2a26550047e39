package walebook.drawing;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** The common faults that have a picture. */
public enum FaultKind {
  POPPED_STITCHES("popped-stitches"),
  SKIPPED_STITCHES("skipped-stitches"),
  TUNNELLING("tunnelling"),
  WAVY_SEAM("wavy-seam"),
  LETTUCED_EDGE("frilled-edge"),
  PUCKERING("puckering"),
  NEEDLE_HOLES("needle-holes"),
  LADDER("ladders"),
  GRINNING("grinning"),
  HEM_FLIPPING("hem-flips"),
  BULK_AT_CROSSING("bulk"),
  THREAD_NEST("thread-nest");

  private final String code;

  FaultKind(String code) {
    this.code = code;
  }

  /** Its key in the table of faults, such as {@code popped-stitches}. */
  public String code() {
    return code;
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
