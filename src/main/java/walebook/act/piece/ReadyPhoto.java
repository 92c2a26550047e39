package walebook.act.piece;

/**
 * A photo that is ready to be kept: made small, and free of all that a camera writes beside the
 * picture.
 *
 * @param name the file it came from, for people
 * @param image JPEG
 * @param thumbnail JPEG
 */
@SuppressWarnings("ArrayRecordComponent")
public record ReadyPhoto(String name, byte[] image, int widthPx, int heightPx, byte[] thumbnail) {
  public static final String MEDIA_TYPE = "image/jpeg";

  public ReadyPhoto {
    if (widthPx < 1 || heightPx < 1) {
      throw new IllegalArgumentException("widthPx and heightPx must be at least 1");
    }
  }
}
