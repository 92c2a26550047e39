package walebook.paper;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import walebook.drawing.CuttingPlanPicture;
import walebook.kit.ClothToBuy;
import walebook.kit.Kit;
import walebook.kit.KitLine;
import walebook.kit.Roll;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.words.Words;
import walebook.working.Message;
import walebook.working.Working;

/**
 * The shopping list of a lesson: what to buy with boxes to tick, how to cut it, what it rests on.
 */
final class KitPages {
  private static final double ROW = 6.5;
  private static final double TWO_ON_A_PAGE = 0.8;
  private static final double[] SHARES = {1, 0.9, TWO_ON_A_PAGE, 0.72};
  private static final Type TEXT = new Type(10.5, false);

  private final Flow flow;
  private final KitPaper paper;
  private final Kit kit;
  private final Words words;

  private KitPages(Flow flow, KitPaper paper, Words words) {
    this.flow = flow;
    this.paper = paper;
    this.kit = paper.kit();
    this.words = words;
  }

  static void draw(Sheets sheets, KitPaper paper, Words words) throws IOException {
    KitPages pages = new KitPages(new Flow(sheets), paper, words);
    pages.head();
    pages.list();
    pages.room();
    pages.assumptions();
    List<ClothToBuy> cloths = paper.kit().cloths();
    for (int i = 0; i < cloths.size(); i++) {
      pages.cloth(cloths.get(i), i + 1 < cloths.size());
    }
    Flow.feet(sheets, words.say("paper.kit.title", paper.title()), words);
  }

  private void head() throws IOException {
    flow.text(words.say("paper.kit.title", paper.title()), Type.TITLE);
    if (!paper.when().isEmpty()) {
      flow.text(paper.when(), Type.BODY);
    }
    flow.text(words.say("paper.kit.for", kit.students()), Type.HEADING);
    flow.skip(2);
  }

  private void list() throws IOException {
    List<PaperTable.Column> columns =
        PaperTable.filling(
            flow,
            List.of(
                PaperTable.Column.of("", 7),
                PaperTable.Column.of(words.say("paper.kit.what"), 95),
                new PaperTable.Column(words.say("paper.kit.each"), 23, true),
                new PaperTable.Column(words.say("paper.kit.class"), 28, true),
                new PaperTable.Column(words.say("paper.kit.cost"), 24, true)));
    PaperTable table = new PaperTable(flow, words, columns, TEXT, ROW);
    table.head();
    for (KitLine each : kit.lines()) {
      Double cost = each.cost();
      table.row(
          List.of(
              PaperTable.Cell.toTick(),
              PaperTable.Cell.of(words.say(each.what())),
              PaperTable.Cell.of(amount(each.perStudent(), each.unit())),
              PaperTable.Cell.strong(amount(each.forClass(), each.unit())),
              PaperTable.Cell.of(cost == null ? "" : Show.fixed(cost, 2))));
    }
    flow.skip(1.5);
    if (kit.unpriced() < kit.lines().size()) {
      String sum = Show.fixed(kit.cost(), 2);
      flow.text(words.say("paper.kit.sum", sum, kit.unpriced()), Type.STRONG);
    }
  }

  private static String amount(@Nullable Double value, Unit unit) {
    return value == null ? "" : (Show.upTo(value, 2) + " " + unit.sign()).strip();
  }

  private void room() throws IOException {
    if (paper.room().isEmpty()) {
      return;
    }
    flow.skip(3);
    flow.heading(words.say("paper.kit.room"), Type.HEADING);
    double side = Ink.mm(TEXT.points());
    for (String each : paper.room()) {
      flow.need(TEXT.leadingMm());
      flow.ink().frame(flow.left() + 1.2, flow.y() + 0.5, side, side, Ink.THIN);
      flow.indented(each, TEXT, side + 4);
      flow.skip(1);
    }
  }

  /** What the amounts rest on, each said once. */
  private void assumptions() throws IOException {
    Set<String> says = new LinkedHashSet<>();
    says.add(words.say("paper.kit.spare", Show.upTo(kit.sparePercent(), 1)));
    List<Message> messages = new ArrayList<>(kit.says());
    for (ClothToBuy each : kit.cloths()) {
      says.add(bought(each.name(), each.roll()));
      says.add(apart(each.roll().marginMm()));
      messages.addAll(each.working().assumptions());
    }
    Working thread = kit.thread();
    if (thread != null) {
      messages.addAll(thread.assumptions());
    }
    messages.forEach(each -> says.add(words.say(each)));
    flow.skip(3);
    flow.heading(words.say("paper.kit.rests-on"), Type.HEADING);
    for (String each : says) {
      flow.item("•", each, Type.BODY);
    }
  }

  private String bought(String name, Roll roll) {
    String wide = Show.length(roll.usableMm(), paper.unit());
    return roll.changes()
        ? words.say(
            "paper.kit.bought-washed",
            name,
            wide,
            signed(roll.alongChangePercent()),
            signed(roll.acrossChangePercent()))
        : words.say("paper.kit.bought", name, wide);
  }

  private String apart(double marginMm) {
    return marginMm > 0
        ? words.say("paper.kit.apart", Show.length(marginMm, paper.unit()))
        : words.say("paper.kit.edge-to-edge");
  }

  private static String signed(double percent) {
    String size = Show.upTo(Math.abs(percent), 2) + " %";
    return percent < 0 ? "−" + size : percent > 0 ? "+" + size : size;
  }

  /** Smaller where that saves a page, never so small that pieces can't be told apart. */
  private void cloth(ClothToBuy cloth, boolean moreToCome) throws IOException {
    String title = words.say("paper.kit.cut", cloth.plan().placed().size());
    CuttingPlanPicture picture = new CuttingPlanPicture(title, cloth.plan(), paper.unit());
    double head = Type.HEADING.leadingMm() + 7;
    double wide = 0;
    for (double share : SHARES) {
      double high = Flow.place(picture, words, share * flow.width()).heightMm() + head;
      if (high <= flow.room()) {
        wide = share * flow.width();
        break;
      }
    }
    if (wide == 0) {
      flow.need(flow.room() + 1);
      wide = (moreToCome ? TWO_ON_A_PAGE : 1) * flow.width();
    } else {
      flow.skip(4);
    }
    String buy = Show.upTo(cloth.buyMm() / Unit.METRE.inBase(), 2);
    flow.text(words.say("paper.kit.cloth", cloth.name(), buy), Type.HEADING);
    flow.skip(1);
    flow.drawing(picture, words, wide);
  }
}
