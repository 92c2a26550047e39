package walebook.act.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import walebook.book.Ids;
import walebook.record.Broke;
import walebook.record.ClothUse;
import walebook.record.Dial;
import walebook.record.FaultSeen;
import walebook.record.Fold;
import walebook.record.How;
import walebook.record.Machine;
import walebook.record.Measure;
import walebook.record.PieceOutcome;
import walebook.record.Pull;
import walebook.record.PullReading;
import walebook.record.SeamEnd;
import walebook.record.Seen;
import walebook.record.Setting;
import walebook.record.Step;
import walebook.record.TestPiece;
import walebook.record.Whose;
import walebook.seam.StitchType;

/** Sews, measures and looks at one piece of the demo. */
final class DemoSewing {
  private static final double GAUGE_MM = 100;
  private static final double EDGE_MM = 200;

  private final DemoRoom room;
  private final Map<String, StitchType> stitches;
  private final Chance chance;
  private final DemoFaults faults;

  DemoSewing(DemoRoom room, Map<String, StitchType> stitches, Chance chance) {
    this.room = room;
    this.stitches = stitches;
    this.chance = chance;
    this.faults = new DemoFaults(chance);
  }

  TestPiece sew(Attempt attempt, String code, int minute) {
    double skill = attempt.student().skillIn(attempt.evening().week());
    double sewnEdge = edgeChange(attempt, skill);
    double pressedEdge = sewnEdge * 0.45 + chance.normal(0.3);
    List<PullReading> pulls = pulls(attempt, skill);
    List<FaultSeen> seen = faults.on(attempt, skill, pressedEdge, pulls);
    Measure measure =
        measure(attempt, pulls, sewnEdge, pressedEdge, DemoMinutes.of(attempt, skill, code));
    int grade = grade(skill, pressedEdge, seen);
    return new TestPiece(
        Ids.next(),
        code,
        new Whose(
            room.schoolClass().id(),
            room.row(attempt.student()).id(),
            attempt.lessonId(),
            attempt.planned() == null ? null : attempt.planned().id(),
            attempt.evening().date()),
        new ClothUse(room.row(attempt.cloth()).id(), attempt.grain(), 2),
        setting(attempt),
        measure,
        new Seen(grade, outcome(attempt, measure, grade), seen, ""),
        attempt.parent(),
        attempt.evening().stamp(minute));
  }

  private Setting setting(Attempt attempt) {
    Machine machine = room.machine(attempt.machine().number());
    StitchType stitch = stitch(attempt);
    Double width = stitch.hasWidth() ? attempt.width() : null;
    return new Setting(
        attempt.method(),
        machine.id(),
        machine.kind(),
        stitch.key(),
        stitch.name(),
        width,
        attempt.length(),
        sewn(machine, Dial.WIDTH, width),
        sewn(machine, Dial.LENGTH, attempt.length()),
        attempt.needle(),
        "polyester, all-purpose",
        attempt.pressure(),
        machine.pressure().at(attempt.pressure()),
        Step.NORMAL,
        machine.tension().at(Step.NORMAL),
        attempt.feed(),
        attempt.stabiliser(),
        attempt.hemMethod());
  }

  private StitchType stitch(Attempt attempt) {
    StitchType stitch = stitches.get(attempt.stitch());
    if (stitch == null) {
      throw new IllegalStateException("the table of stitch types lacks " + attempt.stitch());
    }
    return stitch;
  }

  private static @Nullable Double sewn(Machine machine, Dial what, @Nullable Double dial) {
    if (dial == null) {
      return null;
    }
    Double sewn = machine.sewn(what, dial);
    return sewn == null ? dial : sewn;
  }

  private double edgeChange(Attempt attempt, double skill) {
    double length = attempt.length() == null ? 2.5 : attempt.length();
    double stretch = attempt.cloth().stretch(attempt.grain());
    double grows = DemoSeam.edgeChange(attempt.cloth(), stretch, attempt.pressure(), length);
    double eased = attempt.feed() == null ? 0 : DemoSeam.eased(attempt.feed());
    double taped = attempt.stabiliser().isEmpty() ? 1 : 0.35;
    return (grows - eased + 2 * (0.5 - skill)) * taped + chance.normal(1);
  }

  /** Each pull on a stretch of seam of its own; the cloth stops some hands sooner than others. */
  private List<PullReading> pulls(Attempt attempt, double skill) {
    DemoMachine machine = attempt.machine();
    double width = attempt.width() == null ? 0 : attempt.width() * share(machine.widthShare());
    double length = attempt.length() == null ? 2.5 : attempt.length() * machine.lengthShare();
    double gives =
        DemoSeam.givesAt(attempt.stitch(), width, length, attempt.cloth())
            * machine.hold()
            * (0.86 + 0.2 * skill)
            * Math.exp(chance.normal(0.11));
    double stops =
        attempt.cloth().stretch(attempt.grain()) * (1 + attempt.student().pullsHarder() / 2);
    List<PullReading> pulls = new ArrayList<>();
    for (int nth = 1; nth <= attempt.readings(); nth++) {
      double seam = gives * Math.exp(chance.normal(0.05));
      double cloth = stops * Math.exp(chance.normal(0.03));
      SeamEnd end = seam < cloth ? SeamEnd.GAVE : SeamEnd.HELD;
      pulls.add(new PullReading(nth, end, Math.rint(GAUGE_MM * (1 + Math.min(seam, cloth) / 100))));
    }
    return pulls;
  }

  private static double share(@Nullable Double share) {
    return share == null ? 1 : share;
  }

  private Measure measure(
      Attempt attempt,
      List<PullReading> pulls,
      double sewnEdge,
      double pressedEdge,
      @Nullable Double minutes) {
    boolean gave = pulls.stream().anyMatch(each -> each.end() == SeamEnd.GAVE);
    double end = pulls.get(0).endMm();
    double stays = (end - GAUGE_MM) * attempt.cloth().growth() * (1 + chance.normal(0.2));
    return new Measure(
        GAUGE_MM,
        EDGE_MM,
        Math.rint(EDGE_MM * (1 + sewnEdge / 100)),
        Math.rint(EDGE_MM * (1 + pressedEdge / 100)),
        pulls,
        gave ? broke() : null,
        Math.rint(GAUGE_MM + Math.max(0, stays)),
        null,
        new How(Fold.SINGLE, Pull.FIRM, null, 0.0, 60.0),
        room.row(attempt.student()).id(),
        attempt.evening().date(),
        minutes);
  }

  private Broke broke() {
    if (chance.happens(0.6)) {
      return Broke.NEEDLE_THREAD;
    }
    return chance.happens(0.85) ? Broke.UNDER_THREAD : Broke.GRIN;
  }

  private int grade(double skill, double pressedEdge, List<FaultSeen> seen) {
    int worst = seen.stream().mapToInt(FaultSeen::severity).max().orElse(0);
    double grade =
        4.3 - Math.abs(pressedEdge) / 2.5 - 0.6 * worst + 0.8 * skill + chance.normal(0.4);
    return (int) Math.max(1, Math.min(5, Math.rint(grade)));
  }

  private static PieceOutcome outcome(Attempt attempt, Measure measure, int grade) {
    Double stretch = measure.seamStretchPercent();
    double wanted = 0.8 * attempt.cloth().stretch(attempt.grain());
    boolean holds = stretch != null && stretch >= wanted;
    return holds && grade >= 3 ? PieceOutcome.KEEP : PieceOutcome.CHANGE;
  }
}
