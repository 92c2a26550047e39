package walebook.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import walebook.kit.CutPiece;
import walebook.kit.CuttingPlan;
import walebook.kit.Placed;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.words.Words;
import walebook.working.Message;

/**
 * Pieces as they lie on a cloth or a scrap, to scale: its length runs from left to right, its width
 * from top to bottom. Each kind of piece has a letter, told below.
 *
 * @param title what is cut
 * @param unit lengths are shown in
 */
public record CuttingPlanPicture(String title, CuttingPlan plan, Unit unit) implements Drawing {
  private static final double LEFT = 14;
  private static final double RIGHT = 96;
  private static final double TOP = 58;
  private static final double LINE = 20;
  private static final double INDENT = 18;
  private static final double SMALLEST_LETTER = 15;

  public CuttingPlanPicture {
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(plan, "plan");
    if (!(plan.acrossMm() > 0 && plan.alongMm() > 0)) {
      throw new IllegalArgumentException("a cloth without length or width can't be drawn");
    }
  }

  /** A kind's letter: A to Z, then AA, AB … */
  static String letter(int kind) {
    String last = String.valueOf((char) ('A' + kind % 26));
    return kind < 26 ? last : letter(kind / 26 - 1) + last;
  }

  @Override
  public double leastWidth() {
    return 300;
  }

  @Override
  public double ownWidth() {
    return 560;
  }

  @Override
  public Picture at(double width, Words words) {
    double wide = takenWidth(width);
    double scale = Math.min((wide - LEFT - RIGHT) / plan.alongMm(), 0.7 * wide / plan.acrossMm());
    double along = plan.alongMm() * scale;
    double across = plan.acrossMm() * scale;
    Sketch sketch = new Sketch();
    String heading = TextWidth.fit(title, Sketch.LABEL, wide - 2 * LEFT);
    sketch.bold(LEFT, 18, heading, Shape.Anchor.START, Role.INK);
    measures(sketch, along, across, wide);
    sketch.rect(LEFT, TOP, along, across, Role.CLOTH, Pen.solid(Role.SOFT, 1));
    for (Placed each : plan.placed()) {
      piece(sketch, each, scale);
    }
    double base = TOP + across + 24;
    Arrow.both(sketch, LEFT, base - 4, LEFT + 60, base - 4, Pen.solid(Role.INK, 1.8));
    line(sketch, wide, LEFT + 70, base, words.say("drawing.cutting.grain"));
    for (int kind = 0; kind < plan.pieces().size(); kind++) {
      int count = plan.count(kind);
      if (count > 0) {
        double indent = LEFT;
        for (String says : lines(legend(words, kind, count), wide - 2 * LEFT - INDENT)) {
          base += LINE;
          line(sketch, wide, indent, base, says);
          indent = LEFT + INDENT;
        }
      }
    }
    return sketch.picture(wide, base + 14, says());
  }

  private void measures(Sketch sketch, double along, double across, double wide) {
    Pen pen = Pen.solid(Role.SOFT, 1.2);
    Arrow.both(sketch, LEFT, TOP - 10, LEFT + along, TOP - 10, pen);
    sketch.text(LEFT, TOP - 18, show(plan.alongMm()), Shape.Anchor.START, Role.INK);
    double x = LEFT + along + 10;
    Arrow.both(sketch, x, TOP, x, TOP + across, pen);
    String says = TextWidth.fit(show(plan.acrossMm()), Sketch.LABEL, wide - x - 12);
    sketch.text(x + 8, TOP + across / 2 + 4, says, Shape.Anchor.START, Role.INK);
  }

  private static void piece(Sketch sketch, Placed each, double scale) {
    double x = LEFT + each.yMm() * scale;
    double y = TOP + each.xMm() * scale;
    double w = each.alongMm() * scale;
    double h = each.acrossMm() * scale;
    sketch.rect(x, y, w, h, Role.CARD, Pen.solid(Role.INK, 1.2));
    String letter = letter(each.piece());
    if (h >= SMALLEST_LETTER && w >= TextWidth.of(letter, Sketch.LABEL) + 4) {
      sketch.text(x + w / 2, y + h / 2 + 4.5, letter, Shape.Anchor.MIDDLE, Role.INK);
    }
  }

  private String legend(Words words, int kind, int count) {
    CutPiece piece = plan.pieces().get(kind);
    return words.say(
        piece.turnable() ? "drawing.cutting.piece-free" : "drawing.cutting.piece",
        letter(kind),
        count,
        piece.name(),
        show(piece.acrossMm()),
        show(piece.alongMm()));
  }

  /** A text in as many lines as it takes, broken between words. */
  private static List<String> lines(String text, double room) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.split(" ", -1)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (line.isEmpty() || TextWidth.of(longer, Sketch.LABEL) <= room) {
        line = longer;
      } else {
        lines.add(line);
        line = word;
      }
    }
    lines.add(line);
    return lines;
  }

  private static void line(Sketch sketch, double wide, double x, double base, String says) {
    String fits = TextWidth.fit(says, Sketch.LABEL, wide - x - LEFT);
    sketch.text(x, base, fits, Shape.Anchor.START, Role.INK);
  }

  private String show(double mm) {
    return Show.length(mm, unit);
  }

  private Message says() {
    return Message.of(
        "drawing.cutting.says",
        title,
        String.valueOf(plan.placed().size()),
        show(plan.acrossMm()),
        show(plan.alongMm()),
        Show.percent(plan.wastePercent()));
  }
}
