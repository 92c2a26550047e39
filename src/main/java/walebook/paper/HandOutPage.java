package walebook.paper;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.jspecify.annotations.Nullable;
import walebook.lesson.Block;
import walebook.lesson.LessonPack;
import walebook.lesson.LessonText;
import walebook.lesson.PackPicture;
import walebook.lesson.PiecesPlan;
import walebook.lesson.Plan;
import walebook.lesson.Run;
import walebook.lesson.Success;
import walebook.words.Words;

/**
 * A lesson on one page. What does not fit is set smaller, then shortened; a remark at the foot says
 * so.
 */
final class HandOutPage {
  private static final double GUTTER = 6;
  private static final double STEPS = 0.6;

  private final Sheets sheets;
  private final LessonPack pack;
  private final Words words;
  private final HandOutCut cut;
  private final Type body;
  private final Type strong;

  private HandOutPage(Sheets sheets, LessonPack pack, Words words, HandOutCut cut) {
    this.sheets = sheets;
    this.pack = pack;
    this.words = words;
    this.cut = cut;
    this.body = new Type(cut.points(), false);
    this.strong = new Type(cut.points(), true);
  }

  /** The richest page that fits; the caller closes it. */
  static Sheets fitting(PaperSize size, LessonPack pack, Words words) throws IOException {
    Sheets sheets = Sheets.upright(size);
    for (HandOutCut cut : HandOutCut.RICHEST_FIRST) {
      sheets.again();
      new HandOutPage(sheets, pack, words, cut).draw();
      if (sheets.count() == 1) {
        return sheets;
      }
    }
    sheets.close();
    throw new IllegalStateException("the shortest hand-out must fit a page");
  }

  private void draw() throws IOException {
    double full = sheets.widthMm() - 2 * Flow.MARGIN;
    Flow head = new Flow(sheets);
    head.text(cut.shortened(pack.about().title()), new Type(cut.points() * 2, true));
    head.text(cut.shortened(pack.about().summary()), body);
    head.text(words.say("paper.hand-out.minutes", pack.about().minutes()), body);
    head.rule(Ink.THICK);
    head.skip(1);
    pictures(head);
    double top = head.y();
    double wide = (full - GUTTER) * STEPS;
    Flow main = new Flow(sheets, Flow.MARGIN, wide, top);
    steps(main);
    figures(main);
    aside(new Flow(sheets, Flow.MARGIN + wide + GUTTER, full - GUTTER - wide, top));
    String foot = words.say(cut.shortens() ? "paper.hand-out.shortened" : "paper.hand-out.whole");
    Flow.feet(sheets, foot, words);
  }

  private void steps(Flow flow) throws IOException {
    flow.heading(words.say("paper.hand-out.steps"), strong.at(cut.points() + 2));
    List<LessonText.Step> steps = pack.text().steps();
    int nth = 0;
    for (LessonText.Step step : steps) {
      int minutes = minutes(step.heading());
      String heading = cut.shortened(step.heading());
      String says = minutes == 0 ? heading : words.say("paper.hand-out.step", heading, minutes);
      flow.item(++nth + ".", says, strong);
      // What runs over is drawn again, smaller: no need to finish it.
      if (nth > 3 * cut.items() || sheets.count() > 1) {
        return;
      }
      step(flow, step);
      flow.skip(0.8);
    }
  }

  private int minutes(String heading) {
    return pack.teaching().steps().stream()
        .filter(each -> each.heading().equals(heading))
        .mapToInt(LessonPack.StepTime::minutes)
        .findFirst()
        .orElse(0);
  }

  /** The first paragraph's beginning, and what is numbered. */
  private void step(Flow flow, LessonText.Step step) throws IOException {
    boolean said = cut.sentences() == 0;
    List<Block> blocks = step.blocks();
    for (Block block : blocks) {
      if (block instanceof Block.Paragraph && !said) {
        int at = blocks.indexOf(block);
        boolean numbered =
            at + 1 < blocks.size()
                && blocks.get(at + 1) instanceof Block.Items next
                && next.numbered();
        // The points of a numbered list stand below it anyway.
        List<Block> lead = blocks.subList(at, numbered ? at + 1 : blocks.size());
        flow.text(cut.beginning(plain(lead)), body);
        said = true;
      } else if (block instanceof Block.Items list && list.numbered() && cut.sentences() > 0) {
        int number = list.start();
        for (List<Block> item : cut.some(list.items())) {
          flow.item(letter(number++), cut.beginning(plain(item)), body);
        }
      }
    }
  }

  private static String letter(int number) {
    return number <= 26 ? (char) ('a' + number - 1) + ")" : number + ")";
  }

  /** The first paragraph; one that ends in a colon takes the list it announces along. */
  private static String plain(List<Block> blocks) {
    String lead = "";
    for (Block block : blocks) {
      if (!lead.isEmpty()) {
        return block instanceof Block.Items list ? lead + " " + points(list) : closed(lead);
      }
      if (block instanceof Block.Paragraph paragraph) {
        lead = Run.plain(paragraph.runs()).strip();
        if (!lead.endsWith(":")) {
          return lead;
        }
      }
    }
    return closed(lead);
  }

  private static String points(Block.Items list) {
    return list.items().stream()
        .map(each -> plain(each).strip().replaceAll("[.;,]$", ""))
        .collect(Collectors.joining("; ", "", "."));
  }

  private static String closed(String lead) {
    return lead.endsWith(":") ? lead.substring(0, lead.length() - 1) + "." : lead;
  }

  /** All pictures in a row of one height, each under the number of its step. */
  private void pictures(Flow flow) throws IOException {
    List<Shown> row = shown();
    if (row.isEmpty()) {
      return;
    }
    double ratios = row.stream().mapToDouble(Shown::ratio).sum();
    double gaps = GUTTER * (row.size() - 1);
    double high = Math.min(cut.pictureMm(), (flow.width() - gaps) / ratios);
    flow.need(high + body.leadingMm() + 2);
    double x = flow.left();
    for (Shown each : row) {
      String says = words.say("paper.hand-out.picture", each.step());
      flow.ink().text(x, flow.y() + body.ascentMm(), says, strong);
      flow.ink().image(each.image(), x, flow.y() + body.leadingMm(), high * each.ratio(), high);
      x += high * each.ratio() + GUTTER;
    }
    flow.skip(high + body.leadingMm() + 2);
  }

  /** A picture and the number of the step that shows it. */
  private record Shown(PDImageXObject image, int step) {
    double ratio() {
      return (double) image.getWidth() / image.getHeight();
    }
  }

  private List<Shown> shown() {
    List<Shown> shown = new ArrayList<>();
    int nth = 0;
    for (LessonText.Step step : pack.text().steps()) {
      nth++;
      for (Block block : step.blocks()) {
        if (block instanceof Block.Picture picture && shown.size() < cut.pictures()) {
          PDImageXObject image = image(picture.shownFile());
          if (image != null) {
            shown.add(new Shown(image, nth));
          }
        }
      }
    }
    return shown;
  }

  private @Nullable PDImageXObject image(String file) {
    for (PackPicture each : pack.files().pictures()) {
      if (each.fileName().equals(file)) {
        return sheets.kept(each);
      }
    }
    return null;
  }

  private void aside(Flow flow) throws IOException {
    list(flow, "paper.hand-out.aims", pack.teaching().aims());
    cautions(flow);
    list(flow, "paper.hand-out.plan", plan());
    list(flow, "paper.hand-out.success", pack.success().stream().map(Success::says).toList());
  }

  /** Cautions are the last thing to be shortened, and then it is said beside them. */
  private void cautions(Flow flow) throws IOException {
    List<String> all =
        pack.teaching().cautions().stream().map(LessonPack.PackCaution::says).toList();
    if (cut.keepsCautions()) {
      flow.heading(words.say("paper.hand-out.cautions"), strong.at(cut.points() + 2));
      for (String each : all) {
        flow.item("!", each, body);
      }
    } else {
      list(flow, "paper.hand-out.cautions", all);
      flow.text(words.say("paper.hand-out.more-cautions"), strong);
    }
    flow.text(words.say("paper.hand-out.local-rules"), body);
    flow.skip(1);
  }

  private void figures(Flow flow) throws IOException {
    List<String> figures = new ArrayList<>();
    for (LessonPack.Figure each : pack.teaching().figures()) {
      figures.add(words.say("paper.hand-out.figure", each.says(), each.source()));
    }
    list(flow, "paper.hand-out.figures", figures);
  }

  private List<String> plan() {
    Plan plan = pack.plan();
    List<String> lines = new ArrayList<>();
    lines.add(plan.question());
    for (Plan.ClothSlot slot : plan.cloths()) {
      lines.add(words.say("paper.hand-out.cloth", slot.slot(), slot.says()));
    }
    if (plan instanceof PiecesPlan pieces) {
      for (PiecesPlan.Factor factor : pieces.factors()) {
        String levels = String.join(", ", factor.levels());
        lines.add(words.say("paper.hand-out.factor", factor.says(), levels));
      }
    }
    lines.add(words.say("paper.hand-out.tier-core", plan.tiers().core().says()));
    lines.add(words.say("paper.hand-out.tier-standard", plan.tiers().standard().says()));
    lines.add(words.say("paper.hand-out.tier-own", plan.tiers().own().says()));
    return lines;
  }

  private void list(Flow flow, String headingKey, List<String> points) throws IOException {
    if (points.isEmpty()) {
      return;
    }
    flow.heading(words.say(headingKey), strong.at(cut.points() + 2));
    for (String each : cut.some(points, 2)) {
      flow.item("•", cut.shortened(each), body);
    }
    flow.skip(1);
  }
}
