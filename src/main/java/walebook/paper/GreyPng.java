package walebook.paper;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.Set;
import java.util.zip.InflaterInputStream;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceGray;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.jspecify.annotations.Nullable;

/**
 * A grey PNG for a page, its packed rows as they are: a document packs pictures the same way (ISO
 * 32000-1, 7.4.4.4, predictor 15; PNG by ISO/IEC 15948). The library turns grey into colours and
 * packs them anew, which takes longer than all else of a page and half as much room again.
 */
final class GreyPng {
  private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
  private static final int HEADER = 0x49484452;
  private static final int HEADER_BYTES = 13;
  private static final int ROWS = 0x49444154;
  private static final int TRANSPARENT = 0x74524e53;
  private static final int END = 0x49454e44;

  /** A piece's length, name and check sum, each of four bytes. */
  private static final int AROUND = 12;

  private static final int GREY = 0;

  /** Bits of a dot; sixteen are more than paper shows. */
  private static final Set<Integer> GREYS = Set.of(1, 2, 4, 8);

  private static final int MOST_SIDE = 20_000;
  private static final int ANY_PNG_FILTER = 15;
  private static final int LAST_FILTER = 4;

  private GreyPng() {}

  /**
   * The picture, or null for one that is no plain grey PNG of usual size: in colours, with
   * see-through parts, or interlaced.
   *
   * @throws IOException when it is one that can't be read
   */
  static @Nullable PDImageXObject of(PDDocument document, byte[] bytes) throws IOException {
    if (!Arrays.equals(SIGNATURE, 0, SIGNATURE.length, bytes, 0, Math.min(8, bytes.length))) {
      return null;
    }
    ByteBuffer in = ByteBuffer.wrap(bytes, SIGNATURE.length, bytes.length - SIGNATURE.length);
    ByteArrayOutputStream rows = new ByteArrayOutputStream(bytes.length);
    int width = 0;
    int height = 0;
    int bits = 0;
    while (in.remaining() >= AROUND) {
      int length = in.getInt();
      int name = in.getInt();
      int at = in.position();
      boolean isCut = length < (name == HEADER ? HEADER_BYTES : 0) || length > in.remaining() - 4;
      if (isCut || name == TRANSPARENT) {
        return null;
      }
      switch (name) {
        case HEADER -> {
          width = in.getInt(at);
          height = in.getInt(at + 4);
          bits = in.get(at + 8);
          boolean interlaced = in.get(at + 12) != 0;
          boolean sized = width > 0 && width <= MOST_SIDE && height > 0 && height <= MOST_SIDE;
          if (in.get(at + 9) != GREY || !GREYS.contains(bits) || interlaced || !sized) {
            return null;
          }
        }
        case ROWS -> rows.write(bytes, at, length);
        case END -> {
          return width == 0 ? null : packed(document, rows.toByteArray(), width, height, bits);
        }
        default -> {}
      }
      in.position(at + length + 4);
    }
    return null;
  }

  /** Rows that are damaged would be noticed on the page only. */
  private static void unpack(byte[] rows, int width, int height, int bits) throws IOException {
    byte[] row = new byte[1 + (width * bits + 7) / 8];
    try (InputStream in = new InflaterInputStream(new ByteArrayInputStream(rows))) {
      for (int i = 0; i < height; i++) {
        if (in.readNBytes(row, 0, row.length) < row.length || row[0] < 0 || row[0] > LAST_FILTER) {
          throw new IOException("row " + i + " of " + height);
        }
      }
      // The check sum stands behind the last row.
      in.read();
    }
  }

  private static PDImageXObject packed(
      PDDocument document, byte[] rows, int width, int height, int bits) throws IOException {
    unpack(rows, width, height, bits);
    PDImageXObject image =
        new PDImageXObject(
            document,
            new ByteArrayInputStream(rows),
            COSName.FLATE_DECODE,
            width,
            height,
            bits,
            PDDeviceGray.INSTANCE);
    COSDictionary how = new COSDictionary();
    how.setInt(COSName.PREDICTOR, ANY_PNG_FILTER);
    how.setInt(COSName.COLORS, 1);
    how.setInt(COSName.BITS_PER_COMPONENT, bits);
    how.setInt(COSName.COLUMNS, width);
    image.getCOSObject().setItem(COSName.DECODE_PARMS, how);
    return image;
  }
}
