package walebook.garment;

import java.util.List;
import java.util.Objects;
import walebook.working.Caution;
import walebook.working.Verdict;

/**
 * All that can be said about a garment from what is known so far.
 *
 * @param checks each with its working, in the order they are shown
 * @param advice what to do about them, in the order it is tried; empty when all is well
 * @param cautions those of the kind of garment
 */
public record GarmentAnswers(List<Check> checks, List<Advice> advice, List<Caution> cautions) {
  public GarmentAnswers {
    checks = List.copyOf(checks);
    advice = List.copyOf(advice);
    cautions = List.copyOf(cautions);
  }

  /** Works out a garment; the same question gives the same answers. */
  public static GarmentAnswers of(GarmentQuestion question, GarmentRows rows) {
    Objects.requireNonNull(rows, "rows");
    List<Check> checks = GarmentChecks.of(question, rows);
    return new GarmentAnswers(
        checks,
        GarmentAdvice.of(question, rows, checks),
        question.kind().cautions().stream().map(GarmentCaution::caution).toList());
  }

  /** The worst of them: not met, then not known yet, then too close to call, then met. */
  public Verdict verdict() {
    for (Verdict worst : List.of(Verdict.NOT_MET, Verdict.NOT_KNOWN, Verdict.TOO_CLOSE)) {
      if (checks.stream().anyMatch(check -> check.verdict() == worst)) {
        return worst;
      }
    }
    return Verdict.MET;
  }
}
