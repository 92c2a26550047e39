package walebook.paper;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * QR codes (ISO/IEC 18004) as squares, at the highest level of error correction: a code of six
 * signs then takes the smallest symbol, and a third of it may be soiled by a copier or a staple.
 */
final class QrInk {
  /** The standard's quiet zone, in modules. */
  static final int QUIET = 4;

  private QrInk() {}

  /** Draws a code in a square of this side, quiet zone included. */
  static void draw(Ink ink, String content, double x, double y, double sideMm) throws IOException {
    ByteMatrix modules = modules(content);
    int across = modules.getWidth() + 2 * QUIET;
    double module = sideMm / across;
    List<double[]> dark = new ArrayList<>();
    for (int row = 0; row < modules.getHeight(); row++) {
      for (int column = 0; column < modules.getWidth(); column++) {
        if (modules.get(column, row) == 1) {
          dark.add(new double[] {x + (column + QUIET) * module, y + (row + QUIET) * module});
        }
      }
    }
    ink.squares(dark, module);
  }

  private static ByteMatrix modules(String content) {
    try {
      return Encoder.encode(content, ErrorCorrectionLevel.H).getMatrix();
    } catch (WriterException e) {
      throw new IllegalArgumentException("too long for a code: " + content, e);
    }
  }
}
