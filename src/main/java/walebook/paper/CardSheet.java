package walebook.paper;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import walebook.words.Words;

/** Record cards, four to a page, with lines to cut along. */
final class CardSheet {
  private static final double MARGIN = 7;
  private static final double PAD = 3;
  private static final double QR = 18;
  private static final double TALLEST = 9;

  private CardSheet() {}

  static void draw(Sheets sheets, List<RecordCard> cards, Words words, PaperProgress progress)
      throws IOException {
    if (cards.isEmpty()) {
      Ink ink = sheets.page();
      Type type = Type.BODY;
      ink.text(Flow.MARGIN, Flow.MARGIN + type.ascentMm(), words.say("paper.cards.none"), type);
    }
    double wide = sheets.widthMm() / 2;
    double high = sheets.heightMm() / 2;
    for (int i = 0; i < cards.size(); i++) {
      Ink ink = i % 4 == 0 ? sheets.page() : sheets.page(i / 4);
      if (i % 4 == 0) {
        ink.line(wide, MARGIN, wide, sheets.heightMm() - MARGIN, Ink.THIN, 1, 2);
        ink.line(MARGIN, high, sheets.widthMm() - MARGIN, high, Ink.THIN, 1, 2);
      }
      boolean right = i % 2 == 1;
      boolean low = i % 4 >= 2;
      double x = right ? wide + PAD : MARGIN;
      double y = low ? high + PAD : MARGIN;
      card(ink, cards.get(i), x, y, wide - MARGIN - PAD, high - MARGIN - PAD, words);
      progress.at((double) (i + 1) / cards.size());
    }
  }

  private static void card(
      Ink ink, RecordCard card, double x, double y, double wide, double high, Words words)
      throws IOException {
    PieceSlip slip = card.slip();
    Type code = new Type(18, true);
    ink.text(x, y + code.ascentMm() * 0.9, slip.spoken(), code);
    double room = wide - QR - 1;
    String who = slip.control() ? words.say("paper.label.control", slip.who()) : slip.who();
    ink.text(x, y + 10.6, Wrap.cut(ink, who, Type.STRONG, room), Type.STRONG);
    ink.text(x, y + 14.8, Wrap.cut(ink, card.lesson(), Type.SMALL, room), Type.SMALL);
    QrInk.draw(ink, slip.code(), x + wide - QR, y - 1.5, QR);
    double top = y + QR - 1.5;
    List<List<CardField>> rows = rows(card.fields());
    double step = Math.min(TALLEST, (y + high - top) / Math.max(1, rows.size()));
    for (List<CardField> row : rows) {
      row(ink, row, x, top, wide, step);
      top += step;
    }
    ink.line(x, top, x + wide, top, Ink.THIN);
  }

  /** As many fields in a row as their shares allow; a group begins a row. */
  static List<List<CardField>> rows(List<CardField> fields) {
    List<List<CardField>> rows = new ArrayList<>();
    List<CardField> row = new ArrayList<>();
    int used = 0;
    for (CardField field : fields) {
      if (!row.isEmpty() && (field.first() || used + field.share() > CardField.WHOLE)) {
        rows.add(row);
        row = new ArrayList<>();
        used = 0;
      }
      row.add(field);
      used += field.share();
    }
    if (!row.isEmpty()) {
      rows.add(row);
    }
    return rows;
  }

  /** The last field of a row takes what is left of it. */
  private static void row(
      Ink ink, List<CardField> row, double x, double y, double wide, double high)
      throws IOException {
    double line = row.get(0).first() ? Ink.THICK : Ink.THIN;
    ink.line(x, y, x + wide, y, line);
    double left = x;
    for (int i = 0; i < row.size(); i++) {
      boolean last = i == row.size() - 1;
      double own = last ? x + wide - left : wide * row.get(i).share() / CardField.WHOLE;
      field(ink, row.get(i), left + (i == 0 ? 0 : 1), y, own - (i == 0 ? 1 : 2), high);
      left += own;
      if (!last) {
        ink.line(left, y, left, y + high, Ink.THIN);
      }
    }
  }

  private static void field(Ink ink, CardField field, double x, double y, double wide, double high)
      throws IOException {
    Type label = Type.SMALL;
    double labelBase = y + label.ascentMm() + 0.1;
    ink.text(x, labelBase, Wrap.cut(ink, field.label(), label, wide), label);
    double base = y + high - 1;
    if (!field.unit().isEmpty()) {
      ink.end(x + wide, base, field.unit(), label);
    }
    if (!field.filled().isEmpty()) {
      Type type = fitting(ink, field.filled(), wide);
      ink.text(x, base, Wrap.cut(ink, field.filled(), type, wide), type);
    } else if (!field.boxes().isEmpty()) {
      boxes(ink, field.boxes(), x, base, wide);
    }
  }

  private static Type fitting(Ink ink, String text, double wide) throws IOException {
    Type type = Type.STRONG;
    double is = ink.width(text, type);
    return is <= wide ? type : type.at(Math.max(Type.SMALL.points(), type.points() * wide / is));
  }

  private static void boxes(Ink ink, List<String> boxes, double x, double base, double wide)
      throws IOException {
    Type type = Type.SMALL;
    double side = 2.4;
    double words = 0;
    for (String box : boxes) {
      words += ink.width(box, type) + side + 0.8;
    }
    double gap = Math.max(0.8, Math.min(4, (wide - words) / Math.max(1, boxes.size() - 1)));
    double left = x;
    for (String box : boxes) {
      ink.frame(left, base - side + 0.2, side, side, Ink.THIN);
      ink.text(left + side + 0.8, base, box, type);
      left += side + 0.8 + ink.width(box, type) + gap;
    }
  }
}
