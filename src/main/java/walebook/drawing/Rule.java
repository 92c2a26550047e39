package walebook.drawing;

import java.util.List;
import walebook.quantity.Show;
import walebook.quantity.Unit;

/** A ruler along a picture to scale, in the user's unit. */
final class Rule {
  private Rule() {}

  /**
   * Draws it from the axis's start to its end.
   *
   * @param axis in mm
   * @param y its upper edge
   */
  static void draw(Sketch sketch, Axis axis, double y, Unit unit) {
    Axis own =
        new Axis(axis.from() / unit.inBase(), axis.to() / unit.inBase(), axis.start(), axis.end());
    sketch.line(own.start(), y, own.end(), y, Pen.solid(Role.SOFT, 1));
    int about = (int) Math.max(2, (own.end() - own.start()) / 62);
    List<Double> ticks = own.ticks(about);
    if (ticks.size() > 1) {
      double small = (ticks.get(1) - ticks.get(0)) / 5;
      for (int n = 0; own.from() + n * small <= own.to() + 1e-9; n++) {
        double x = own.place(own.from() + n * small);
        sketch.line(x, y, x, y + 4, Pen.solid(Role.SOFT, 0.8));
      }
    }
    for (double tick : ticks) {
      double x = own.place(tick);
      sketch.line(x, y, x, y + 8, Pen.solid(Role.SOFT, 1.2));
      String says = Show.upTo(tick, 2) + (tick == 0 ? " " + unit.sign() : "");
      boolean first = tick == 0;
      Shape.Anchor anchor = first ? Shape.Anchor.START : Shape.Anchor.MIDDLE;
      sketch.text(first ? own.start() - 4 : x, y + 22, says, anchor, Role.SOFT);
    }
  }
}
