package walebook.act.demo;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.record.Method;
import walebook.record.Needle;
import walebook.record.NeedlePoint;
import walebook.record.Step;
import walebook.record.Tier;

/** Pieces of the students' own: hems and overlocked seams beside the plan. */
final class DemoHems {
  private DemoHems() {}

  static List<Attempt> of(DemoLessons.Taught taught, DemoStudent student, Chance chance) {
    List<Attempt> own = new ArrayList<>();
    if (taught.evening().measuresCloth()) {
      return own;
    }
    DemoCloth cloth = chance.pick(DemoCloth.ALL);
    if (chance.happens(student.tier() == Tier.OWN ? 0.95 : 0.85)) {
      own.add(overlocked(taught, student, cloth, chance));
    }
    if (chance.happens(student.tier() == Tier.OWN ? 0.95 : 0.8)) {
      own.add(hem(taught, student, cloth, chance));
    }
    return own;
  }

  private static Attempt overlocked(
      DemoLessons.Taught taught, DemoStudent student, DemoCloth cloth, Chance chance) {
    double feed = chance.pick(List.of(1.0, 1.0, 1.3, 1.5));
    return attempt(
        taught, student, cloth, Method.SEAM, 6, chance.happens(0.5) ? "504" : "514", feed, "", "");
  }

  private static Attempt hem(
      DemoLessons.Taught taught, DemoStudent student, DemoCloth cloth, Chance chance) {
    String tape = chance.happens(0.4) ? "knit tape" : "";
    if (chance.happens(0.4)) {
      return attempt(taught, student, cloth, Method.HEM, 7, "406", 1.2, "coverstitched", tape);
    }
    boolean twin = chance.happens(0.5);
    return attempt(
        taught,
        student,
        cloth,
        Method.HEM,
        student.machine(),
        twin ? "301-twin" : "304",
        null,
        twin ? "twin needle" : "zigzag",
        tape);
  }

  private static Attempt attempt(
      DemoLessons.Taught taught,
      DemoStudent student,
      DemoCloth cloth,
      Method method,
      int machine,
      String stitch,
      @Nullable Double feed,
      String hemMethod,
      String stabiliser) {
    boolean twin = stitch.equals("301-twin");
    return new Attempt(
        student,
        taught.evening(),
        taught.lesson().id(),
        null,
        cloth,
        method,
        DemoMachine.numbered(machine),
        stitch,
        stitch.equals("304") ? 2.5 : null,
        2.5,
        new Needle(twin ? NeedlePoint.TWIN_STRETCH : NeedlePoint.STRETCH, 75),
        Step.NORMAL,
        feed,
        hemMethod,
        stabiliser,
        1,
        null);
  }
}
