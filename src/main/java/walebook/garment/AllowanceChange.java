package walebook.garment;

import org.jspecify.annotations.Nullable;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.Measured;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.working.Message;
import walebook.working.Source;
import walebook.working.Verdict;
import walebook.working.Working;
import walebook.working.WorkingBuilder;

/**
 * What becomes of a girth when a pattern's allowance is sewn at another: each edge gains d = a − b,
 * a girth crossed by n seams 2 n d.
 */
public final class AllowanceChange {
  private AllowanceChange() {}

  /** What each edge gains when the rest is not trimmed, in mm; negative when it loses. */
  public static double eachEdge(double patternMm, double sewnMm) {
    return patternMm - sewnMm;
  }

  /** What a girth crossed by so many seams gains, in mm. */
  public static double girth(double patternMm, double sewnMm, int seams) {
    return 2 * seams * eachEdge(patternMm, sewnMm);
  }

  /**
   * Works it out.
   *
   * @param patternMm a, the allowance that the pattern has, not negative
   * @param sewnMm b, from the cut edge to the row of stitches deepest in the cloth, not negative
   * @param seams n, how many seams cross the girth, 1 to 24
   * @param finishedMm the girth that the pattern was drawn for; null when not asked about
   * @param bodyMm the girth of the body; null when not asked about
   */
  public static Answer<Working> of(
      double patternMm,
      double sewnMm,
      int seams,
      @Nullable Double finishedMm,
      @Nullable Double bodyMm) {
    GarmentNeeds needs =
        new GarmentNeeds()
            .notNegative("allowance", patternMm, "15 mm")
            .notNegative("sewn", sewnMm, "6 mm")
            .between("seams", seams, 1, 24);
    if (finishedMm != null) {
      needs
          .girth("finished", finishedMm)
          .also(
              finishedMm + girth(patternMm, sewnMm, seams) <= 0,
              Problem.refuse(
                  "girth.not-positive",
                  Place.field("finished"),
                  Show.mm(finishedMm + girth(patternMm, sewnMm, seams)),
                  "900 mm"));
    }
    if (bodyMm != null) {
      needs.girth("body", bodyMm);
    }
    return needs.then(() -> work(patternMm, sewnMm, seams, finishedMm, bodyMm));
  }

  private static Working work(
      double pattern, double sewn, int seams, @Nullable Double finished, @Nullable Double body) {
    double d = eachEdge(pattern, sewn);
    double change = girth(pattern, sewn, seams);
    WorkingBuilder board =
        Working.named("allowance", Message.of("garment.allowance.title"))
            .step(
                Message.of("garment.allowance.step-edge"),
                "d = a − b",
                "%s − %s = %s".formatted(n(pattern), n(sewn), Show.mm(d)))
            .step(
                Message.of("garment.allowance.step-girth"),
                "change = 2 × n × d",
                "2 × %s × %s = %s".formatted(seams, n(d), Show.mm(change)))
            .result(Measured.of(change, Unit.MM))
            .verdict(d == 0 ? Verdict.MET : Verdict.NOT_MET)
            .assume(Message.of("garment.assume.not-trimmed"))
            .assume(Message.of("garment.assume.deepest-row"))
            .source(Source.Kind.STANDARD, "ASTM D7722, 3.1: allowance to the deepest row")
            .source(Source.Kind.DEFINITION, "two cut edges meet in a seam");
    if (finished != null) {
      board.step(
          Message.of("garment.allowance.step-new"),
          "new girth = finished + change",
          "%s + (%s) = %s".formatted(n(finished), n(change), Show.mm(finished + change)));
      if (body != null) {
        eases(board, body, finished, finished + change);
      }
    }
    return board.says(sentence(d, change));
  }

  private static void eases(WorkingBuilder board, double body, double before, double after) {
    board.step(
        Message.of("garment.allowance.step-ease"),
        "E = girth − body",
        "%s → %s".formatted(Show.mm(Ease.mm(body, before)), Show.mm(Ease.mm(body, after))));
    board.step(
        Message.of("garment.allowance.step-strain"),
        "ε = 100 × (body − girth) ÷ girth, 0 when girth ≥ body",
        "%s → %s"
            .formatted(
                Show.percent(Ease.wornStrain(body, before)),
                Show.percent(Ease.wornStrain(body, after))));
  }

  private static Message sentence(double d, double change) {
    if (d == 0) {
      return Message.of("garment.allowance.says-same");
    }
    return d > 0
        ? Message.of("garment.allowance.says-larger", Show.mm(change), Show.mm(d))
        : Message.of("garment.allowance.says-smaller", Show.mm(-change), Show.mm(-d));
  }

  private static String n(double value) {
    return Show.upTo(value, 3);
  }
}
