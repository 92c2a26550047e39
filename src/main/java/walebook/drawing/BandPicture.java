package walebook.drawing;

import java.util.List;
import walebook.garment.BandMark;
import walebook.garment.BandPlan;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.words.Words;
import walebook.working.Message;

/**
 * A band to scale under the opening that it is sewn to: both laid out straight, their marks joined,
 * allowances shaded, every measure written.
 *
 * @param plan its measures
 * @param marks where band and opening meet, in order from the join
 */
public record BandPicture(BandPlan plan, List<BandMark> marks) implements Drawing {
  private static final double SIDE = 14;
  private static final double TOP = 46;
  private static final double BAND_TOP = 108;

  public BandPicture {
    marks = List.copyOf(marks);
    if (marks.isEmpty()) {
      throw new IllegalArgumentException("a band has at least its mark at the join");
    }
  }

  @Override
  public double leastWidth() {
    return 264;
  }

  @Override
  public double ownWidth() {
    return 560;
  }

  @Override
  public Picture at(double width, Words words) {
    double wide = takenWidth(width);
    double longest = Math.max(plan.openingMm(), plan.cutLengthMm());
    double perMm = (wide - 2 * SIDE) / longest;
    double opening = SIDE;
    double cut = plan.cutLengthMm() * perMm;
    double tall = Math.max(24, Math.min(90, plan.cutWidthMm() * perMm));
    double band = SIDE + plan.joinMm() * perMm;
    Sketch sketch = new Sketch();
    String says = words.say("drawing.band.opening", Show.length(plan.openingMm(), Unit.MM));
    text(sketch, says, 18, wide);
    double end = opening + plan.openingMm() * perMm;
    sketch.line(opening, TOP, end, TOP, Pen.solid(Role.INK, 2.6));
    sketch.line(end, TOP - 6, end, TOP + 6, Pen.solid(Role.INK, 2));
    cloth(sketch, perMm, cut, tall);
    for (BandMark mark : marks) {
      double above = opening + mark.openingMm() * perMm;
      double below = band + mark.bandMm() * perMm;
      sketch.line(above, TOP - 6, above, TOP + 6, Pen.solid(Role.INK, 2));
      sketch.line(above, TOP + 8, below, BAND_TOP - 4, Pen.dotted(Role.SOFT, 1.4));
      sketch.line(below, BAND_TOP - 4, below, BAND_TOP + 8, Pen.solid(Role.ACCENT, 2.4));
    }
    labels(sketch, band, perMm, tall);
    double base = BAND_TOP + tall;
    Arrow.both(sketch, SIDE, base + 34, SIDE + cut, base + 34, Pen.solid(Role.SOFT, 1.2));
    String measures =
        words.say(
            "drawing.band.cut",
            Show.fixed(plan.cutLengthMm(), 1),
            Show.fixed(plan.cutWidthMm(), 1));
    text(sketch, measures, base + 52, wide);
    String joined =
        words.say(
            "drawing.band.joined", Show.fixed(plan.lengthMm(), 1), Show.fixed(plan.widthMm(), 1));
    text(sketch, joined, base + 70, wide);
    return sketch.picture(wide, base + 80, says());
  }

  private static void text(Sketch sketch, String says, double y, double wide) {
    String fits = TextWidth.fit(says, Sketch.LABEL, wide - 2 * SIDE);
    sketch.text(SIDE, y, fits, Shape.Anchor.START, Role.INK);
  }

  /** The cut band: allowances shaded, the fold broken along its middle. */
  private void cloth(Sketch sketch, double perMm, double cut, double tall) {
    double join = plan.joinMm() * perMm;
    double edge = plan.edgeMm() / plan.cutWidthMm() * tall;
    sketch.rect(SIDE, BAND_TOP, cut, tall, Role.WASH, Pen.solid(Role.INK, 1.4));
    sketch.rect(SIDE + join, BAND_TOP + edge, cut - 2 * join, tall - 2 * edge, Role.CLOTH, null);
    double fold = BAND_TOP + tall / 2;
    sketch.line(SIDE, fold, SIDE + cut, fold, Pen.dashed(Role.SOFT, 1.2));
  }

  /** Where the marks lie on the band, the first with the unit; one without room is left out. */
  private void labels(Sketch sketch, double band, double perMm, double tall) {
    double free = 0;
    for (BandMark mark : marks) {
      String text = Show.upTo(mark.bandMm(), 1) + (free == 0 ? " " + Unit.MM.sign() : "");
      double x = band + mark.bandMm() * perMm;
      double half = TextWidth.of(text, Sketch.LABEL) / 2;
      double at = Math.max(half + 2, x);
      if (at - half >= free) {
        sketch.text(at, BAND_TOP + tall + 18, text, Shape.Anchor.MIDDLE, Role.ACCENT);
        free = at + half + 6;
      }
    }
  }

  private Message says() {
    return Message.of(
        "drawing.band.says",
        Show.length(plan.openingMm(), Unit.MM),
        Show.fixed(plan.lengthMm(), 1),
        Show.fixed(plan.cutLengthMm(), 1),
        Show.fixed(plan.cutWidthMm(), 1),
        Integer.toString(marks.size()));
  }
}
