package walebook.act.piece;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.ImageIO;

/** Pictures made smaller and written as JPEG. */
final class PhotoSize {
  private PhotoSize() {}

  /** The picture on white, its longer side at most so many pixels; halved step by step. */
  static BufferedImage within(BufferedImage image, int most) {
    BufferedImage now = image;
    while (Math.max(now.getWidth(), now.getHeight()) > 2 * most) {
      now = drawn(now, (now.getWidth() + 1) / 2, (now.getHeight() + 1) / 2);
    }
    double scale = Math.min(1, (double) most / Math.max(now.getWidth(), now.getHeight()));
    return drawn(
        now,
        (int) Math.max(1, Math.round(now.getWidth() * scale)),
        (int) Math.max(1, Math.round(now.getHeight() * scale)));
  }

  static byte[] jpeg(BufferedImage image) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    if (!ImageIO.write(image, "jpg", out)) {
      throw new IOException("no writer of JPEG");
    }
    return out.toByteArray();
  }

  private static BufferedImage drawn(BufferedImage image, int wide, int high) {
    BufferedImage drawn = new BufferedImage(wide, high, BufferedImage.TYPE_INT_RGB);
    Graphics2D on = drawn.createGraphics();
    on.setColor(Color.WHITE);
    on.fillRect(0, 0, wide, high);
    on.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    on.drawImage(image, 0, 0, wide, high, null);
    on.dispose();
    return drawn;
  }
}
