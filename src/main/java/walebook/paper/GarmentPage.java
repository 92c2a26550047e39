package walebook.paper;

import java.io.IOException;
import java.util.List;
import walebook.drawing.Drawing;
import walebook.drawing.VerdictMark;
import walebook.words.Words;

/** One page of answers for the sewing table; what does not fit is set smaller, then left out. */
final class GarmentPage {
  private static final double GUTTER = 6;

  private final Sheets sheets;
  private final GarmentPaper paper;
  private final Words words;
  private final Cut cut;
  private final Type body;
  private final Type strong;

  /** How large, and how much of the workings, the drawings and the lists. */
  private record Cut(double points, int working, double drawingMm, int items) {
    static final List<Cut> RICHEST_FIRST =
        List.of(
            new Cut(9.5, 4, 80, 99),
            new Cut(9, 3, 70, 99),
            new Cut(8.5, 2, 60, 99),
            new Cut(8, 1, 50, 99),
            new Cut(8, 0, 40, 99),
            new Cut(8, 0, 0, 20),
            new Cut(8, 0, 0, 8),
            new Cut(8, 0, 0, 3));
  }

  private GarmentPage(Sheets sheets, GarmentPaper paper, Words words, Cut cut) {
    this.sheets = sheets;
    this.paper = paper;
    this.words = words;
    this.cut = cut;
    this.body = new Type(cut.points(), false);
    this.strong = new Type(cut.points(), true);
  }

  /** The richest page that fits; the caller closes it. */
  static Sheets fitting(PaperSize size, GarmentPaper paper, Words words) throws IOException {
    Sheets sheets = Sheets.upright(size);
    for (Cut cut : Cut.RICHEST_FIRST) {
      sheets.again();
      new GarmentPage(sheets, paper, words, cut).draw();
      if (sheets.count() == 1) {
        return sheets;
      }
    }
    sheets.close();
    throw new IllegalStateException("the shortest garment sheet must fit a page");
  }

  private void draw() throws IOException {
    Flow head = new Flow(sheets);
    String name = Wrap.lines(head.ink(), paper.name(), Type.TITLE, head.width(), 2).get(0);
    head.text(name, Type.TITLE);
    for (String line : paper.lines()) {
      head.text(line, body);
    }
    String whole = words.say(VerdictMark.key(paper.verdict(), paper.reckonedOnly()));
    head.verdict(paper.verdict(), whole, words, Type.HEADING);
    head.rule(Ink.THICK);
    head.skip(1);
    double wide = (head.width() - GUTTER) * 0.6;
    double top = head.y();
    Flow answers = new Flow(sheets, Flow.MARGIN, wide, top);
    answers(answers);
    double left = Flow.MARGIN + wide + GUTTER;
    Flow aside = new Flow(sheets, left, head.width() - GUTTER - wide, top);
    aside(aside);
    drawings(answers, aside);
    boolean shortened = cut.items() < 99 || cut.drawingMm() == 0;
    String foot = shortened ? "paper.garment.shortened" : "paper.garment.foot";
    Flow.feet(sheets, words.say(foot), words);
  }

  private void answers(Flow flow) throws IOException {
    flow.heading(words.say("paper.garment.answers"), Type.HEADING);
    for (GarmentPaper.Line each : some(paper.answers())) {
      flow.verdict(each.verdict(), each.about(), words, strong);
      String word = words.say(VerdictMark.key(each.verdict(), each.reckonedOnly()));
      if (each.reckonedOnly() || each.says().isEmpty()) {
        flow.text(word, body);
      }
      if (!each.says().isEmpty()) {
        flow.text(each.says(), body);
      }
      if (!each.weakest().isEmpty()) {
        flow.text(each.weakest(), body);
      }
      List<String> working = each.working();
      int from = Math.max(0, working.size() - cut.working());
      for (String line : working.subList(from, working.size())) {
        flow.indented(line, Type.SMALL, 4);
      }
      flow.skip(1.6);
    }
  }

  private void aside(Flow flow) throws IOException {
    if (!paper.advice().isEmpty()) {
      flow.heading(words.say("paper.garment.to-do"), Type.HEADING);
      int nth = 0;
      for (String each : some(paper.advice())) {
        flow.item(++nth + ".", each, body);
      }
      flow.skip(2);
    }
    for (String each : some(paper.cautions())) {
      flow.item("!", each, body);
    }
    if (!paper.girths().isEmpty()) {
      flow.skip(2);
      flow.text(paper.girths(), body);
    }
    flow.skip(2);
  }

  /** Each drawing goes where the column ends sooner, so that many need not be small. */
  private void drawings(Flow answers, Flow aside) throws IOException {
    if (cut.drawingMm() > 0) {
      for (Drawing each : paper.drawings()) {
        Flow flow = answers.y() < aside.y() ? answers : aside;
        flow.drawing(each, words, Math.min(flow.width(), cut.drawingMm()));
        flow.skip(2);
      }
    }
  }

  private <T> List<T> some(List<T> list) {
    return list.subList(0, Math.min(cut.items(), list.size()));
  }
}
