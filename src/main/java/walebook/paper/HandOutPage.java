package walebook.paper;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.IntStream;
import walebook.lesson.LessonPack;
import walebook.lesson.LessonText;
import walebook.lesson.PiecesPlan;
import walebook.lesson.Plan;
import walebook.lesson.Success;
import walebook.paper.HandOutPart.Kind;
import walebook.words.Words;

/** A lesson in two columns: why, the plan and the cautions first, then what the hands do. */
final class HandOutPage {
  private static final double GUTTER = 6;

  /** Letters below which a first sentence says too little by itself. */
  private static final int BRIEF = 25;

  private final Sheets sheets;
  private final HandOutPaper paper;
  private final LessonPack pack;
  private final Words words;
  private final Set<HandOutPart> kept;
  private final Type body;
  private final Type strong;
  private final Type heading;

  /**
   * A page to be drawn.
   *
   * @param points size of the text
   * @param kept what is shown
   */
  HandOutPage(
      Sheets sheets, HandOutPaper paper, Words words, double points, Set<HandOutPart> kept) {
    this.sheets = sheets;
    this.paper = paper;
    this.pack = paper.pack();
    this.words = words;
    this.kept = kept;
    this.body = new Type(points, false);
    this.strong = new Type(points, true);
    this.heading = strong.at(points + 1.5);
  }

  /** Draws it; on more than one page when that is too much. */
  void draw(boolean shortened) throws IOException {
    Flow head = new Flow(sheets);
    if (keeps(Kind.TITLE, 0)) {
      head.text(title(), strong.at(body.points() * 1.9));
    }
    summary(head);
    head.text(words.say("paper.hand-out.minutes", pack.about().minutes()), body);
    head.rule(Ink.THICK);
    head.skip(1);
    if (keeps(Kind.PICTURES, 0)) {
      new HandOutPictures(sheets, pack, words, strong).draw(head, keeps(Kind.MORE_PICTURES, 0));
    }
    Flow columns = Flow.columns(sheets, GUTTER, head.y());
    list(columns, "paper.hand-out.aims", Kind.AIM, pack.teaching().aims());
    plan(columns);
    cautions(columns);
    steps(columns);
    List<String> success = pack.success().stream().map(Success::says).toList();
    list(columns, "paper.hand-out.success", Kind.SUCCESS, success);
    List<String> figures =
        pack.teaching().figures().stream()
            .map(each -> words.say("paper.hand-out.figure", each.says(), each.source()))
            .toList();
    list(columns, "paper.hand-out.figures", Kind.FIGURE, figures);
    String foot = words.say(shortened ? "paper.hand-out.shortened" : "paper.hand-out.whole");
    Flow.feet(sheets, foot, words);
  }

  private boolean keeps(Kind kind, int nth) {
    return kept.contains(new HandOutPart(kind, nth));
  }

  /** What runs over is drawn again with less: no need to finish it. */
  private boolean isOver() {
    return sheets.count() > 1;
  }

  /** The whole title, or the first sentence of one that is a text. */
  private String title() {
    String title = paper.named(pack.about().title());
    return title.length() <= 160 ? title : HandOutText.sentences(title).get(0);
  }

  private void summary(Flow flow) throws IOException {
    List<String> sentences = HandOutText.sentences(paper.named(pack.about().summary()));
    if (keeps(Kind.MORE_SUMMARY, 0)) {
      flow.text(String.join(" ", sentences), body);
    } else if (keeps(Kind.SUMMARY, 0)) {
      flow.text(sentences.get(0), body);
    }
  }

  private void steps(Flow flow) throws IOException {
    List<LessonText.Step> steps = pack.text().steps();
    if (steps.isEmpty() || !keeps(Kind.STEP, 0)) {
      return;
    }
    flow.heading(words.say("paper.hand-out.steps"), heading);
    for (int i = 0; i < steps.size() && !isOver(); i++) {
      if (keeps(Kind.STEP, i)) {
        LessonText.Step step = steps.get(i);
        int minutes = minutes(step.heading());
        String says = paper.named(step.heading());
        String line = minutes == 0 ? says : words.say("paper.hand-out.step", says, minutes);
        flow.need(2 * body.leadingMm());
        flow.item(i + 1 + ".", line, strong);
        step(flow, step, i);
        flow.skip(0.8);
      }
    }
  }

  private int minutes(String heading) {
    return pack.teaching().steps().stream()
        .filter(each -> each.heading().equals(heading))
        .mapToInt(LessonPack.StepTime::minutes)
        .findFirst()
        .orElse(0);
  }

  private void step(Flow flow, LessonText.Step step, int nth) throws IOException {
    if (!keeps(Kind.POINTS, nth)) {
      return;
    }
    boolean around = keeps(Kind.AROUND, nth);
    List<HandOutText.Point> points = HandOutText.points(step);
    boolean numbered = points.stream().anyMatch(HandOutText.Point::numbered);
    List<String> sentences = HandOutText.lead(step.blocks());
    if (!sentences.isEmpty() && (around || !numbered)) {
      boolean brief = sentences.get(0).length() < BRIEF;
      int most = around ? 3 : brief ? 2 : 1;
      flow.text(paper.named(HandOutText.beginning(sentences, most)), body);
    }
    int letter = 1;
    for (HandOutText.Point each : points) {
      if (isOver()) {
        return;
      }
      boolean all = keeps(Kind.MORE_POINTS, nth);
      String says = HandOutText.beginning(each.sentences(), all ? Integer.MAX_VALUE : 1);
      if (each.numbered()) {
        flow.item(letter(letter++), paper.named(says), body);
      } else if (each.isWhole() && (around || (!numbered && sentences.isEmpty()))) {
        flow.item("•", paper.named(says), body);
      }
    }
  }

  private static String letter(int number) {
    return number <= 26 ? (char) ('a' + number - 1) + ")" : number + ")";
  }

  private void cautions(Flow flow) throws IOException {
    List<LessonPack.PackCaution> all = pack.teaching().cautions();
    flow.heading(words.say("paper.hand-out.cautions"), heading);
    boolean whole = true;
    for (int i = 0; i < all.size() && !isOver(); i++) {
      if (keeps(Kind.CAUTION, i)) {
        flow.item("!", paper.named(all.get(i).says()), body);
      } else {
        whole = false;
      }
    }
    if (!whole) {
      flow.text(words.say("paper.hand-out.more-cautions"), strong);
    }
    flow.text(words.say("paper.hand-out.local-rules"), body);
    flow.skip(1);
  }

  private void plan(Flow flow) throws IOException {
    Plan plan = pack.plan();
    flow.heading(words.say("paper.hand-out.plan"), heading);
    if (keeps(Kind.QUESTION, 0)) {
      flow.text(paper.named(plan.question()), body);
    }
    if (keeps(Kind.CLOTHS, 0)) {
      for (Plan.ClothSlot slot : plan.cloths()) {
        flow.item("•", cloth(slot), body);
      }
    }
    if (keeps(Kind.FACTORS, 0) && plan instanceof PiecesPlan pieces) {
      for (PiecesPlan.Factor each : pieces.factors()) {
        String says =
            words.say("paper.hand-out.factor", paper.named(each.says()), paper.levels(each));
        flow.item("•", says, body);
      }
    }
    if (keeps(Kind.TIERS, 0)) {
      String core = paper.named(plan.tiers().core().says());
      flow.item("•", words.say("paper.hand-out.tier-core", core), body);
      String standard = paper.named(plan.tiers().standard().says());
      flow.item("•", words.say("paper.hand-out.tier-standard", standard), body);
      String own = paper.named(plan.tiers().own().says());
      flow.item("•", words.say("paper.hand-out.tier-own", own), body);
    }
    flow.skip(1);
  }

  private String cloth(Plan.ClothSlot slot) {
    String name = paper.cloths().get(slot.slot());
    return name == null
        ? words.say("paper.hand-out.cloth", slot.slot().toUpperCase(Locale.ROOT), slot.says())
        : words.say("paper.hand-out.room-cloth", name, slot.says());
  }

  private void list(Flow flow, String headingKey, Kind kind, List<String> points)
      throws IOException {
    List<String> shown =
        IntStream.range(0, points.size())
            .filter(each -> keeps(kind, each))
            .mapToObj(points::get)
            .toList();
    if (shown.isEmpty() || isOver()) {
      return;
    }
    flow.heading(words.say(headingKey), heading);
    for (String each : shown) {
      flow.item("•", paper.named(each), body);
    }
    flow.skip(1);
  }
}
