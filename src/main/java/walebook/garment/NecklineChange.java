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

/** A neckline gets smaller when less allowance is sewn and the rest not trimmed: N − θ d. */
public final class NecklineChange {
  private NecklineChange() {}

  /**
   * Works out the new seam line, and what it makes of a band.
   *
   * @param patternMm a, not negative
   * @param sewnMm b, not negative
   * @param necklineMm N, the seam line that the pattern was drawn for, over 0
   * @param turn θ, the whole turn of the neckline in radians, 0 to 2π
   * @param bandMm length of the joined band; null when not asked about
   */
  public static Answer<Working> of(
      double patternMm, double sewnMm, double necklineMm, double turn, @Nullable Double bandMm) {
    double after =
        CurvedEdge.neckline(necklineMm, AllowanceChange.eachEdge(patternMm, sewnMm), turn);
    GarmentNeeds needs =
        new GarmentNeeds()
            .notNegative("allowance", patternMm, "15 mm")
            .notNegative("sewn", sewnMm, "6 mm")
            .girth("opening", necklineMm)
            .between("turn", turn, 0, 2 * Math.PI)
            .also(
                after <= 0,
                Problem.refuse(
                    "girth.not-positive",
                    Place.field("opening"),
                    Show.length(after, Unit.MM),
                    "560 mm"));
    if (bandMm != null) {
      needs.positive("band-length", bandMm, "450 mm");
    }
    return needs.then(() -> work(patternMm, sewnMm, necklineMm, turn, bandMm));
  }

  private static Working work(
      double pattern, double sewn, double neckline, double turn, @Nullable Double band) {
    double d = AllowanceChange.eachEdge(pattern, sewn);
    double after = CurvedEdge.neckline(neckline, d, turn);
    WorkingBuilder board =
        Working.named("neckline-change", Message.of("garment.neck.title"))
            .step(
                Message.of("garment.allowance.step-edge"),
                "d = a − b",
                "%s − %s = %s".formatted(n(pattern), n(sewn), Show.mm(d)))
            .step(
                Message.of("garment.neck.step"),
                "N′ = N − θ × d",
                "%s − %s × %s = %s"
                    .formatted(n(neckline), n(turn), n(d), Show.length(after, Unit.MM)))
            .result(Measured.of(after, Unit.MM))
            .verdict(d == 0 ? Verdict.MET : Verdict.NOT_MET)
            .assume(Message.of("garment.assume.not-trimmed"))
            .assume(Message.of("garment.assume.smooth-curve"))
            .source(Source.Kind.PUBLISHED, "parallel curves: length changes by distance × turning");
    if (band != null) {
      board.step(
          Message.of("garment.neck.step-ratio"),
          "r = b ÷ N",
          "%s ÷ %s = %s → %s ÷ %s = %s"
              .formatted(
                  n(band),
                  n(neckline),
                  Show.fixed(band / neckline, 3),
                  n(band),
                  n(after),
                  Show.fixed(band / after, 3)));
    }
    if (d == 0) {
      return board.says(Message.of("garment.allowance.says-same"));
    }
    return board.says(
        d > 0
            ? Message.of(
                "garment.neck.says-smaller",
                Show.length(neckline - after, Unit.MM),
                Show.length(after, Unit.MM))
            : Message.of(
                "garment.neck.says-larger",
                Show.length(after - neckline, Unit.MM),
                Show.length(after, Unit.MM)));
  }

  private static String n(double value) {
    return Show.upTo(value, 3);
  }
}
