package walebook.paper;

import java.io.IOException;
import java.util.List;
import walebook.record.Grain;
import walebook.words.Words;

/** Labels for test pieces. */
final class LabelSheet {
  private static final double PAD = 1.8;
  private static final double MOST_QR = 22;
  private static final double ARROW = 4.2;
  private static final double LOW = 30;

  private LabelSheet() {}

  /**
   * Sheets of labels.
   *
   * @param start the first label to print on, from 1: those before it are used up
   */
  static void draw(
      Sheets sheets,
      LabelGrid grid,
      List<PieceSlip> slips,
      int start,
      Words words,
      PaperProgress progress)
      throws IOException {
    int at = start - 1;
    Ink ink = sheets.page();
    for (int i = 0; i < slips.size(); i++) {
      if (at == grid.perSheet()) {
        at = 0;
        ink = sheets.page();
      }
      draw(ink, slips.get(i), grid.left(at), grid.top(at), grid, words);
      at++;
      progress.at((double) (i + 1) / slips.size());
    }
  }

  private static void draw(Ink ink, PieceSlip slip, double x, double y, LabelGrid grid, Words words)
      throws IOException {
    double high = grid.heightMm() - 2 * PAD;
    // The square's quiet zone is the label's margin at the same time.
    double qr = Math.min(MOST_QR, Math.min(high - ARROW + PAD, grid.widthMm() * 0.42));
    double left = x + grid.widthMm() - qr;
    QrInk.draw(ink, slip.code(), left, y, qr);
    double room = grid.widthMm() - PAD - qr;
    double top = y + PAD;
    double bottom = y + grid.heightMm() - PAD;
    Type code = code(ink, slip.spoken(), room, high);
    ink.text(x + PAD, top + code.ascentMm() * 0.85, slip.spoken(), code);
    top += code.leadingMm() * 0.92;
    grain(ink, slip, left + 1, bottom - ARROW / 2, qr - 1 - PAD / 2);
    lines(ink, slip, grid.heightMm() < LOW, words, x + PAD, top, room, bottom);
  }

  private static Type code(Ink ink, String code, double room, double high) throws IOException {
    double points = Math.min(20, high * 0.625);
    Type type = new Type(points, true);
    double wide = ink.width(code, type);
    return wide <= room ? type : type.at(points * room / wide);
  }

  /** The student on one line, then the settings, then the machine on the last line. */
  private static void lines(
      Ink ink,
      PieceSlip slip,
      boolean brief,
      Words words,
      double x,
      double top,
      double room,
      double bottom)
      throws IOException {
    Type type = Type.SMALL;
    double step = type.leadingMm() * 0.9;
    int most = (int) Math.floor((bottom - top + 0.6) / step);
    double y = top;
    String who = slip.control() ? words.say("paper.label.control", slip.who()) : slip.who();
    ink.text(
        x, y + type.ascentMm(), Wrap.cut(ink, who, Type.SMALL_STRONG, room), Type.SMALL_STRONG);
    y += step;
    int left = most - 2;
    for (String what : brief ? slip.brief() : slip.what()) {
      for (String line : Wrap.lines(ink, what, type, room, left)) {
        ink.text(x, y + type.ascentMm(), line, type);
        y += step;
        left--;
      }
      if (left <= 0) {
        break;
      }
    }
    ink.text(x, bottom - step + type.ascentMm(), Wrap.cut(ink, slip.machine(), type, room), type);
  }

  /** Under the code: an arrow along the wales when the label lies along the seam, and its word. */
  private static void grain(Ink ink, PieceSlip slip, double x, double middle, double wide)
      throws IOException {
    double half = ARROW / 2;
    double at = x + half + 0.3;
    double slope = slip.grain() == Grain.BIAS ? half * 0.8 : 0;
    if (slip.grain() == Grain.WALE) {
      ink.arrow(at - half, middle, at + half, middle, 0.45);
    } else {
      ink.arrow(at - slope, middle + half, at + slope, middle - half, 0.45);
    }
    String says = Wrap.cut(ink, slip.grainSays(), Type.SMALL, wide - ARROW);
    ink.text(at + half + 0.8, middle + 1.0, says, Type.SMALL);
  }
}
