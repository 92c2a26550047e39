package walebook.desk.decide;

import org.jspecify.annotations.Nullable;
import walebook.drawing.AllowancePicture;
import walebook.drawing.BandPicture;
import walebook.drawing.Drawing;
import walebook.drawing.GaugePicture;
import walebook.drawing.GaugeReading;
import walebook.drawing.LockedPicture;
import walebook.drawing.PatternPiecePicture;
import walebook.drawing.RingsPicture;
import walebook.drawing.StitchForm;
import walebook.drawing.StitchPicture;
import walebook.garment.BandPlan;
import walebook.garment.ClothStretch;
import walebook.garment.GrainRound;
import walebook.garment.GrainStretch;
import walebook.garment.QuarterMarks;
import walebook.quantity.Unit;
import walebook.seam.Zigzag;
import walebook.working.Given;
import walebook.working.Working;

/** Which picture to scale goes with a check that came out. */
final class CheckDrawing {
  private static final double WIDEST_ALLOWANCE = 60;
  private static final double WIDEST_STITCH = 50;
  private static final int QUARTERS = 4;

  private CheckDrawing() {}

  /**
   * The drawing of a check.
   *
   * @param given what the check took without refusing it
   * @return null where a picture would tell nothing
   */
  static @Nullable Drawing of(String name, Given given, Working working, Unit lengths) {
    return switch (name) {
      case "stretch", "growth", "recovery" ->
          gauge(given, "gauge", "stretched", GaugeReading.How.STRETCHED, lengths);
      case "pattern-gauge" ->
          gauge(given, "gauge-from", "gauge-to", GaugeReading.How.STRETCHED, lengths);
      case "seam-stretch" ->
          gauge(
              given,
              "gauge",
              "reached",
              given.word("end").equals("held") ? GaugeReading.How.HELD : GaugeReading.How.GAVE,
              lengths);
      case "edge-change" -> edge(given, lengths);
      case "zigzag" -> stitch(given.number("width"), given);
      case "zigzag-width" -> stitch(working.value(), given);
      case "ease", "stretch-used" ->
          new RingsPicture(given.number("body"), given.number("finished"), lengths);
      case "negative-ease" -> new RingsPicture(given.number("body"), working.value(), lengths);
      case "which-way" -> pieces(given);
      case "allowance" -> allowance(given, "sewn", 0, 0);
      case "curved-edge" -> allowance(given, "sewn", turn(given, "cap"), turn(given, "armhole"));
      case "overlocker" -> allowance(given, "knife", turn(given, "cap"), turn(given, "armhole"));
      case "band" -> band(given);
      case "locked-span" -> locked(given);
      default -> null;
    };
  }

  private static Drawing gauge(
      Given given, String from, String to, GaugeReading.How how, Unit lengths) {
    return new GaugePicture(
        new GaugeReading(
            given.number(from),
            given.numberOrNull(to),
            how,
            given.numberOrNull("released"),
            null,
            null),
        lengths);
  }

  private static Drawing edge(Given given, Unit lengths) {
    Double pressed = given.numberOrNull("pressed");
    return new GaugePicture(
        new GaugeReading(
            null,
            null,
            GaugeReading.How.STRETCHED,
            null,
            given.number("before"),
            pressed == null ? given.number("sewn") : pressed),
        lengths);
  }

  /** Only what can be told apart by eye: a plain zigzag or one of three steps, of a real size. */
  private static @Nullable Drawing stitch(double width, Given given) {
    int steps = given.whole("steps");
    boolean full = "full".equals(given.words().get("dial"));
    double typed = given.number("length");
    double length = full ? Zigzag.lengthOfDrop(typed, steps) : typed;
    boolean fits = width <= WIDEST_STITCH && length >= 0.1 && length <= WIDEST_STITCH;
    if (!fits || (steps != 1 && steps != 3)) {
      return null;
    }
    StitchForm swing = steps == 1 ? StitchForm.ZIGZAG : StitchForm.THREE_STEP_ZIGZAG;
    return new StitchPicture(width > 0 ? swing : StitchForm.STRAIGHT, width, length);
  }

  private static Drawing pieces(Given given) {
    return new PatternPiecePicture(
        new ClothStretch(grain(given, "wale", "wale-u"), grain(given, "course", "course-u")),
        GrainRound.COURSE);
  }

  private static @Nullable GrainStretch grain(Given given, String name, String uncertainty) {
    Double percent = given.numberOrNull(name);
    return percent == null ? null : new GrainStretch(percent, given.number(uncertainty));
  }

  private static double turn(Given given, String edge) {
    return Math.toRadians(given.number(edge + "-turn"));
  }

  /** Nothing is drawn of turns and widths that the picture has no room for. */
  private static @Nullable Drawing allowance(Given given, String sewn, double cap, double hole) {
    double pattern = given.number("allowance");
    double as = given.number(sewn);
    boolean fits = Math.max(pattern, as) <= WIDEST_ALLOWANCE && Math.max(cap, hole) <= Math.PI;
    return fits ? new AllowancePicture(pattern, as, cap, hole) : null;
  }

  private static Drawing band(Given given) {
    BandPlan plan =
        new BandPlan(
            given.number("opening"),
            given.number("ratio"),
            given.number("band-width"),
            given.number("join"),
            given.number("edge"));
    return new BandPicture(plan, QuarterMarks.of(plan.openingMm(), plan.lengthMm(), QUARTERS));
  }

  private static Drawing locked(Given given) {
    return new LockedPicture(given.number("line"), given.list("motifs"), given.list("gaps"));
  }
}
