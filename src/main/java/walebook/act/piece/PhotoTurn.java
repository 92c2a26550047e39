package walebook.act.piece;

import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/**
 * How a camera held the picture: cameras write the pixels as they lie and note the turn beside
 * them, in the orientation tag of EXIF (CIPA DC-008, tag 274).
 *
 * @param orientation 1 to 8; 1 is upright
 */
record PhotoTurn(int orientation) {
  private static final int TAG = 274;
  private static final PhotoTurn UPRIGHT = new PhotoTurn(1);

  /** The turn that a file notes; upright when it notes none that can be read. */
  static PhotoTurn of(byte[] file) {
    ByteBuffer bytes = ByteBuffer.wrap(file);
    if (file.length < 4 || bytes.getShort(0) != (short) 0xFFD8) {
      return UPRIGHT;
    }
    int at = 2;
    while (at + 10 <= file.length && (file[at] & 0xFF) == 0xFF) {
      int marker = file[at + 1] & 0xFF;
      int length = bytes.getShort(at + 2) & 0xFFFF;
      boolean exif = marker == 0xE1 && bytes.getInt(at + 4) == 0x45786966;
      if (exif && at + 2 + length <= file.length && length > 22) {
        return inTags(bytes.slice(at + 10, length - 8));
      }
      if (marker == 0xDA || length < 2) {
        return UPRIGHT;
      }
      at += 2 + length;
    }
    return UPRIGHT;
  }

  private static PhotoTurn inTags(ByteBuffer tiff) {
    tiff.order(tiff.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
    int at = tiff.getInt(4);
    if (at < 8 || at > tiff.limit() - 2) {
      return UPRIGHT;
    }
    int count = tiff.getShort(at) & 0xFFFF;
    for (int i = 0; i < count && at + 14 + 12 * i <= tiff.limit(); i++) {
      int entry = at + 2 + 12 * i;
      if ((tiff.getShort(entry) & 0xFFFF) == TAG) {
        int noted = tiff.getShort(entry + 8) & 0xFFFF;
        return noted >= 1 && noted <= 8 ? new PhotoTurn(noted) : UPRIGHT;
      }
    }
    return UPRIGHT;
  }

  /** The picture upright. */
  BufferedImage turn(BufferedImage image) {
    if (orientation == 1) {
      return image;
    }
    int wide = image.getWidth();
    int high = image.getHeight();
    boolean across = orientation >= 5;
    BufferedImage turned =
        new BufferedImage(across ? high : wide, across ? wide : high, BufferedImage.TYPE_INT_RGB);
    Graphics2D on = turned.createGraphics();
    on.drawImage(image, transform(wide, high), null);
    on.dispose();
    return turned;
  }

  private AffineTransform transform(int wide, int high) {
    return switch (orientation) {
      case 2 -> new AffineTransform(-1, 0, 0, 1, wide, 0);
      case 3 -> new AffineTransform(-1, 0, 0, -1, wide, high);
      case 4 -> new AffineTransform(1, 0, 0, -1, 0, high);
      case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
      case 6 -> new AffineTransform(0, 1, -1, 0, high, 0);
      case 7 -> new AffineTransform(0, -1, -1, 0, high, wide);
      case 8 -> new AffineTransform(0, -1, 1, 0, 0, wide);
      default -> new AffineTransform();
    };
  }
}
