package walebook.record;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A photo without its picture: what a list needs.
 *
 * @param thumbnail a small JPEG or PNG
 */
@SuppressWarnings("ArrayRecordComponent")
public record PhotoInfo(
    UUID id,
    @Nullable UUID pieceId,
    @Nullable UUID clothId,
    String caption,
    String mediaType,
    int widthPx,
    int heightPx,
    byte[] thumbnail,
    Stamp stamp) {
  public PhotoInfo {
    if ((pieceId == null) == (clothId == null)) {
      throw new IllegalArgumentException("a photo belongs to a piece or to a cloth");
    }
    Check.within("widthPx", widthPx, 1, 100_000);
    Check.within("heightPx", heightPx, 1, 100_000);
  }
}
