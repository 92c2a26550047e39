package walebook.garment;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import walebook.cloth.LengthChange;
import walebook.quantity.Measured;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.working.Message;
import walebook.working.Source;
import walebook.working.Verdict;
import walebook.working.Working;
import walebook.working.WorkingBuilder;

/**
 * Whether an opening passes over what it must: demand and margin against each link that goes round,
 * and which of them is the weakest.
 *
 * @param working the verdict with each link's line
 * @param verdict not met when one link is not; else not known yet while one link is; else the worst
 * @param weakest the known link that stretches least; null when none is known or none is needed
 */
public record Opening(Working working, Verdict verdict, @Nullable Link weakest) {
  public Opening {
    Objects.requireNonNull(working, "working");
    Objects.requireNonNull(verdict, "verdict");
  }

  /** Works it out. */
  public static Opening of(OpeningQuestion question) {
    double demand = question.demand();
    WorkingBuilder board =
        Working.named("opening", Message.of("garment.opening.title"))
            .result(Measured.of(demand, Unit.PERCENT))
            .assume(Message.of("garment.assume.relaxed-girth"))
            .source(Source.Kind.DEFINITION, "the girth to pass against the opening as it lies")
            .source(
                Source.Kind.COMMON_PRACTICE, "everything that goes round an edge must follow it");
    if (demand == 0) {
      board.step(
          Message.of("garment.opening.step-demand"),
          "demand = 100 × (P − O) ÷ O, 0 when O ≥ P",
          "%s ≥ %s: %s".formatted(n(question.openingMm()), n(question.overMm()), Show.percent(0)));
      return new Opening(
          board.verdict(Verdict.MET).says(Message.of("garment.opening.says-larger")),
          Verdict.MET,
          null);
    }
    board
        .step(
            Message.of("garment.opening.step-demand"),
            "demand = 100 × (P − O) ÷ O, 0 when O ≥ P",
            LengthChange.inNumbers(question.openingMm(), question.overMm()))
        .step(
            Message.of("garment.opening.step-need"),
            "need = demand + margin",
            "%s + %s = %s"
                .formatted(n(demand), n(question.marginPoints()), Show.percent(question.need())));
    question.links().forEach(link -> line(board, link, question.need()));
    Verdict verdict = verdict(question);
    Link weakest = weakest(question, verdict);
    remarks(board, question.links());
    return new Opening(
        board.verdict(verdict).says(OpeningSentence.of(question, verdict, weakest)),
        verdict,
        weakest);
  }

  /** Not met beats not known, not known beats too close, too close beats met. */
  static Verdict verdict(OpeningQuestion question) {
    List<Verdict> all =
        question.links().stream().map(link -> link.verdict(question.need())).toList();
    for (Verdict verdict : List.of(Verdict.NOT_MET, Verdict.NOT_KNOWN, Verdict.TOO_CLOSE)) {
      if (all.contains(verdict)) {
        return verdict;
      }
    }
    return Verdict.MET;
  }

  /**
   * The link that stretches least among those that the verdict rests on. A link that held counts
   * only when all are met: it may stretch further than its figure.
   */
  static @Nullable Link weakest(OpeningQuestion question, Verdict verdict) {
    return question.links().stream()
        .filter(Link::isKnown)
        .filter(link -> verdict == Verdict.MET || link.basis() != Link.Basis.HELD)
        .min(Comparator.comparingDouble(Link::percent).thenComparing(Link::basis))
        .orElse(null);
  }

  private static void line(WorkingBuilder board, Link link, double need) {
    double expanded = 2 * link.uncertainty();
    String reach =
        switch (link.basis()) {
          case GAVE -> "%s − %s".formatted(n(link.percent()), Show.fixed(expanded, 1));
          case HELD -> "≥ %s − %s".formatted(n(link.percent()), Show.fixed(expanded, 1));
          case MODEL -> "≈ " + n(link.percent());
          case UNKNOWN -> "?";
        };
    String sign =
        switch (link.verdict(need)) {
          case MET -> " ≥ ";
          case NOT_MET -> " < ";
          case TOO_CLOSE -> " ≈ ";
          case NOT_KNOWN -> " : ";
        };
    board.step(
        Message.of(
            stepKey(link), Integer.toString(link.pieces()), Integer.toString(link.students())),
        link.kind().key() + " ≥ need",
        reach + " %" + sign + Show.percent(need));
  }

  private static String stepKey(Link link) {
    if (link.basis() == Link.Basis.UNKNOWN) {
      return "garment.opening.step-unknown";
    }
    if (link.basis() == Link.Basis.MODEL) {
      return "garment.opening.step-model";
    }
    return link.pieces() > 0 ? "garment.opening.step-pieces" : "garment.opening.step-measured";
  }

  private static void remarks(WorkingBuilder board, List<Link> links) {
    if (links.stream().anyMatch(link -> link.basis() == Link.Basis.MODEL)) {
      board.assume(Message.of("garment.assume.model-guide"));
    }
    if (links.stream().anyMatch(link -> link.basis() == Link.Basis.HELD)) {
      board.assume(Message.of("garment.assume.held-is-bound"));
    }
    if (links.stream().anyMatch(link -> link.kind() == LinkKind.ELASTIC)) {
      board
          .caution(GarmentCaution.ELASTIC.caution())
          .caution(GarmentCaution.TIGHT_ELASTIC.caution());
    }
  }

  private static String n(double value) {
    return Show.upTo(value, 2);
  }
}
