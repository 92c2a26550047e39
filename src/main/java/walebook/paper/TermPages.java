package walebook.paper;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import walebook.drawing.Drawing;
import walebook.drawing.VerdictMark;
import walebook.words.Words;

/** A student's term: what was sewn, each piece with its drawing and photos, and lines to sign. */
final class TermPages {
  private static final double PHOTO = 34;
  private static final double DRAWING = 92;

  private final Flow flow;
  private final Words words;

  private TermPages(Flow flow, Words words) {
    this.flow = flow;
    this.words = words;
  }

  static void draw(Sheets sheets, TermPaper term, Words words, PaperProgress progress)
      throws IOException {
    Flow flow = new Flow(sheets);
    TermPages pages = new TermPages(flow, words);
    flow.text(term.who(), Type.TITLE);
    for (String line : term.lines()) {
      flow.text(line, Type.BODY);
    }
    flow.skip(2);
    for (String lesson : term.lessons()) {
      flow.item("•", lesson, Type.BODY);
    }
    flow.skip(2);
    pages.table(term.pieces());
    if (!term.pieces().isEmpty()) {
      flow.skip(4);
      flow.heading(words.say("paper.term.pieces"), Type.HEADING);
    }
    int done = 0;
    for (TermPaper.Piece piece : term.pieces()) {
      pages.piece(piece);
      progress.at((double) ++done / term.pieces().size());
    }
    pages.sign();
    Flow.feet(sheets, words.say("paper.term.foot", term.who()), words);
  }

  private void table(List<TermPaper.Piece> pieces) throws IOException {
    if (pieces.isEmpty()) {
      flow.text(words.say("paper.term.none"), Type.BODY);
      return;
    }
    List<PaperTable.Column> columns =
        PaperTable.filling(
            flow,
            List.of(
                PaperTable.Column.of(words.say("paper.term.code"), 20),
                PaperTable.Column.of(words.say("paper.term.sewn"), 21),
                PaperTable.Column.of(words.say("paper.term.cloth"), 36),
                PaperTable.Column.of(words.say("paper.term.settings"), 42),
                PaperTable.Column.of(words.say("paper.term.ended"), 26),
                new PaperTable.Column(words.say("paper.term.stretch"), 17, true),
                new PaperTable.Column(words.say("paper.term.grade"), 14, true),
                PaperTable.Column.of(words.say("paper.term.verdict"), 28)));
    PaperTable table = new PaperTable(flow, words, columns, Type.SMALL, 5);
    table.head();
    for (TermPaper.Piece piece : pieces) {
      table.row(
          List.of(
              PaperTable.Cell.strong(piece.code()),
              PaperTable.Cell.of(piece.sewnOn()),
              PaperTable.Cell.of(piece.cloth()),
              PaperTable.Cell.of(piece.settings()),
              PaperTable.Cell.of(piece.ended()),
              PaperTable.Cell.of(piece.stretch()),
              PaperTable.Cell.of(piece.grade()),
              PaperTable.Cell.marked(
                  words.say(VerdictMark.key(piece.verdict())), piece.verdict())));
    }
  }

  /** The drawing to the left, the sentence and what was seen to the right, photos below. */
  private void piece(TermPaper.Piece piece) throws IOException {
    Drawing drawing = piece.drawing();
    double wide = Math.min(DRAWING, flow.width() * 0.5);
    Flow.Placed placed = drawing == null ? null : Flow.place(drawing, words, wide);
    double beside = flow.left() + (placed == null ? 0 : wide + 5);
    double room = flow.width() - (beside - flow.left());
    Ink now = flow.ink();
    List<String> says = Wrap.lines(now, piece.says(), Type.BODY, room - 6);
    List<String> seen =
        piece.seen().isEmpty() ? List.of() : Wrap.lines(now, piece.seen(), Type.BODY, room);
    double high =
        Math.max(
            placed == null ? 0 : placed.heightMm(),
            (says.size() + seen.size()) * Type.BODY.leadingMm() + 1);
    flow.need(high + 8);
    flow.rule(Ink.THIN);
    flow.text(words.say("paper.term.piece", piece.code(), piece.settings()), Type.STRONG);
    Ink ink = flow.ink();
    double y = flow.y() + 0.5;
    if (placed != null) {
      PictureInk.draw(ink, placed.picture(), flow.left(), y, placed.scale());
    }
    Flow.mark(ink, piece.verdict(), words, beside, y + 0.2, 4);
    double base = y + Type.BODY.ascentMm();
    for (String line : says) {
      ink.text(beside + 6, base, line, Type.BODY);
      base += Type.BODY.leadingMm();
    }
    for (String line : seen) {
      ink.text(beside, base, line, Type.BODY);
      base += Type.BODY.leadingMm();
    }
    flow.skip(high + 1.5);
    photos(piece.photos());
  }

  private void photos(List<TermPaper.Photo> photos) throws IOException {
    double x = flow.left();
    for (TermPaper.Photo each : photos) {
      PDImageXObject image = flow.sheets().image(each.bytes(), "photo");
      if (image == null) {
        flow.text(words.say("paper.term.photo-unread"), Type.BODY);
        continue;
      }
      double ratio = (double) image.getWidth() / image.getHeight();
      double wide = Math.min(flow.width(), PHOTO * ratio);
      double high = wide / ratio;
      if (x > flow.left() && x + wide > flow.left() + flow.width()) {
        flow.skip(PHOTO + 2);
        x = flow.left();
      }
      if (flow.need(PHOTO + 2)) {
        x = flow.left();
      }
      flow.ink().image(image, x, flow.y(), wide, high);
      x += wide + 2;
    }
    if (x > flow.left()) {
      flow.skip(PHOTO + 2);
    }
  }

  private void sign() throws IOException {
    flow.need(26);
    flow.skip(16);
    double third = (flow.width() - 12) / 3;
    String[] who = {
      words.say("paper.term.sign-student"),
      words.say("paper.term.sign-tutor"),
      words.say("paper.term.sign-date")
    };
    for (int i = 0; i < who.length; i++) {
      double x = flow.left() + i * (third + 6);
      flow.ink().line(x, flow.y(), x + third, flow.y(), Ink.THIN);
      flow.ink().text(x, flow.y() + 4, who[i], Type.SMALL);
    }
  }
}
