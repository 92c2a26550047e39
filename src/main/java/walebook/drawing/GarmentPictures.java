package walebook.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import walebook.garment.AllowancePlan;
import walebook.garment.BandChoice;
import walebook.garment.BandPlan;
import walebook.garment.GarmentQuestion;
import walebook.garment.GirthPlan;
import walebook.garment.OpeningPlan;
import walebook.garment.QuarterMarks;
import walebook.quantity.Unit;
import walebook.working.Message;

/** Every picture to scale that a garment's question can fill, in the order they are looked at. */
public final class GarmentPictures {
  private static final double WIDEST_ALLOWANCE_MM = 60;
  private static final int QUARTERS = 4;

  private GarmentPictures() {}

  /** What a picture shows. */
  public enum Kind {
    RINGS("drawing.kind.rings"),
    PIECE("drawing.kind.piece"),
    ALLOWANCE("drawing.kind.allowance"),
    BAND("drawing.kind.band");

    private final String sayKey;

    Kind(String sayKey) {
      this.sayKey = sayKey;
    }

    /** The key of its name in the bundle. */
    public String sayKey() {
      return sayKey;
    }
  }

  /**
   * One picture.
   *
   * @param about which girth, opening or piece
   */
  public record One(Kind kind, Message about, Drawing drawing) {
    public One {
      Objects.requireNonNull(kind, "kind");
      Objects.requireNonNull(about, "about");
      Objects.requireNonNull(drawing, "drawing");
    }
  }

  /**
   * The pictures of a garment; what is not known yet has none.
   *
   * @param lengths the unit that girths are shown in
   */
  public static List<One> of(GarmentQuestion question, Unit lengths) {
    List<One> all = new ArrayList<>();
    rings(question, lengths, all);
    all.add(
        new One(
            Kind.PIECE,
            Message.of(question.round().sayKey()),
            new PatternPiecePicture(question.cloth(), question.round())));
    allowance(question, all);
    for (BandChoice band : question.bands()) {
      BandPlan plan = band.plan();
      all.add(
          new One(
              Kind.BAND,
              Message.of(band.edge().sayKey()),
              new BandPicture(plan, QuarterMarks.of(plan.openingMm(), plan.lengthMm(), QUARTERS))));
    }
    return List.copyOf(all);
  }

  private static void rings(GarmentQuestion question, Unit lengths, List<One> all) {
    for (GirthPlan girth : question.girths()) {
      Double body = girth.bodyMm();
      Double sewn = girth.sewnMm(question.edgeGain());
      if (body != null && sewn != null) {
        all.add(
            new One(
                Kind.RINGS,
                Message.of(girth.girth().sayKey()),
                new RingsPicture(body, sewn, lengths)));
      }
    }
    for (OpeningPlan opening : question.openings()) {
      Double over = opening.overMm();
      Double sewn = opening.sewnMm(question.edgeGain());
      if (over != null && sewn != null) {
        all.add(
            new One(
                Kind.RINGS,
                Message.of(
                    "garment.check.opening",
                    Message.name(opening.edge().sayKey()),
                    Message.name(opening.over().sayKey())),
                new RingsPicture(over, sewn, lengths)));
      }
    }
  }

  /** What is trimmed is sewn on the pattern's own line. */
  private static void allowance(GarmentQuestion question, List<One> all) {
    AllowancePlan plan = question.allowance();
    if (plan == null
        || Math.max(plan.patternMm(), plan.sewnMm()) > WIDEST_ALLOWANCE_MM
        || Math.max(plan.capTurn(), plan.armholeTurn()) > Math.PI) {
      return;
    }
    all.add(
        new One(
            Kind.ALLOWANCE,
            Message.of("drawing.kind.allowance"),
            new AllowancePicture(
                plan.patternMm(),
                plan.patternMm() - plan.edgeGain(),
                plan.capTurn(),
                plan.armholeTurn())));
  }
}
