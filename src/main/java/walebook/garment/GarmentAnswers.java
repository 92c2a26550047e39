package walebook.garment;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import walebook.working.Caution;
import walebook.working.Verdict;

/**
 * All that can be said about a garment from what is known so far.
 *
 * @param question what was asked, for pictures and for comparing
 * @param checks each with its working, in the order they are shown
 * @param advice what to do about them, in the order it is tried; empty when all is well
 * @param cautions those of the kind of garment and of what these numbers come to, each once
 */
public record GarmentAnswers(
    GarmentQuestion question, List<Check> checks, List<Advice> advice, List<Caution> cautions) {
  public GarmentAnswers {
    Objects.requireNonNull(question, "question");
    checks = List.copyOf(checks);
    advice = List.copyOf(advice);
    cautions = List.copyOf(cautions);
  }

  /** Works out a garment; the same question gives the same answers. */
  public static GarmentAnswers of(GarmentQuestion question, GarmentRows rows) {
    Objects.requireNonNull(rows, "rows");
    List<Check> checks = GarmentChecks.of(question, rows);
    return new GarmentAnswers(
        question, checks, GarmentAdvice.of(question, rows, checks), cautions(question, checks));
  }

  /** The same answers with one more thing to take care of. */
  public GarmentAnswers with(GarmentCaution caution) {
    List<Caution> more = new ArrayList<>(cautions);
    if (!more.contains(caution.caution())) {
      more.add(caution.caution());
    }
    return new GarmentAnswers(question, checks, advice, more);
  }

  private static List<Caution> cautions(GarmentQuestion question, List<Check> checks) {
    Set<GarmentCaution> all = new LinkedHashSet<>(question.kind().cautions());
    boolean tight =
        checks.stream()
            .anyMatch(
                check ->
                    check.kind() == Check.Kind.USED
                        && (check.verdict() == Verdict.NOT_MET
                            || check.verdict() == Verdict.TOO_CLOSE));
    if (tight) {
      all.add(GarmentCaution.TIGHT);
      all.add(GarmentCaution.MEDICAL);
    }
    boolean elastic =
        question.openings().stream()
            .flatMap(opening -> opening.links().stream())
            .anyMatch(link -> link.kind() == LinkKind.ELASTIC);
    if (elastic) {
      all.add(GarmentCaution.ELASTIC);
      all.add(GarmentCaution.TIGHT_ELASTIC);
    }
    return all.stream().map(GarmentCaution::caution).toList();
  }

  /** True when all is met, and some of it is reckoned only. */
  public boolean isReckonedOnly() {
    return verdict() == Verdict.MET && checks.stream().anyMatch(Check::isReckonedOnly);
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
