package walebook.garment;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import walebook.problem.Answer;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.working.Message;
import walebook.working.Source;
import walebook.working.Step;
import walebook.working.Verdict;
import walebook.working.Working;

/** Runs every check that a garment's question allows; what is missing becomes not known yet. */
final class GarmentChecks {
  private final GarmentQuestion question;
  private final GarmentRows rows;
  private final List<Check> checks = new ArrayList<>();

  private GarmentChecks(GarmentQuestion question, GarmentRows rows) {
    this.question = question;
    this.rows = rows;
  }

  static List<Check> of(GarmentQuestion question, GarmentRows rows) {
    GarmentChecks run = new GarmentChecks(question, rows);
    run.gauge();
    run.way();
    question.kind().girths().forEach(girth -> run.used(run.plan(girth)));
    run.allowance();
    question.kind().openings().forEach(opening -> run.opening(run.plan(opening)));
    question.bands().forEach(run::band);
    return List.copyOf(run.checks);
  }

  private GirthPlan plan(Girth girth) {
    return question.girths().stream()
        .filter(plan -> plan.girth() == girth)
        .findFirst()
        .orElse(new GirthPlan(girth, null, null, 0));
  }

  private OpeningPlan plan(KindOpening wanted) {
    return question.openings().stream()
        .filter(plan -> plan.edge() == wanted.edge())
        .findFirst()
        .orElse(new OpeningPlan(wanted.edge(), wanted.over(), null, null, 0, 0, List.of()));
  }

  private void gauge() {
    GaugeNeed need = question.need();
    if (need != null) {
      checks.add(
          Check.of(
              Check.Kind.GAUGE,
              Message.of("garment.check.gauge"),
              need.check(question.stretchRound())));
    }
  }

  /** Worked on the first girth of the kind that is known: the one that the kind is named for. */
  private void way() {
    question.kind().girths().stream()
        .map(this::plan)
        .filter(plan -> plan.bodyMm() != null && plan.sewnMm(question.edgeGain()) != null)
        .findFirst()
        .ifPresent(
            plan ->
                add(
                    Check.Kind.WAY,
                    Message.of("garment.check.way"),
                    "which-way",
                    WhichWay.of(
                        Objects.requireNonNull(plan.bodyMm()),
                        Objects.requireNonNull(plan.sewnMm(question.edgeGain())),
                        question.need(),
                        question.cloth(),
                        question.round(),
                        question.wear(),
                        rows.comfort())));
  }

  private void used(GirthPlan plan) {
    Message about = Message.of("garment.check.used", name(plan.girth()));
    Double body = plan.bodyMm();
    Double finished = plan.sewnMm(question.edgeGain());
    GrainStretch stretch = question.stretchRound();
    if (plan.finishedMm() != null && finished == null) {
      missing(Check.Kind.USED, about, "stretch-used", "garment.check.nothing-left");
    } else if (body == null || finished == null) {
      missing(Check.Kind.USED, about, "stretch-used", "garment.check.missing-girth");
    } else if (stretch == null && finished < body) {
      missing(Check.Kind.USED, about, "stretch-used", "garment.check.missing-stretch");
    } else {
      // Nothing is used of a cloth that need not stretch, whatever its stretch is.
      GrainStretch any = stretch == null ? new GrainStretch(0, 0) : stretch;
      add(
          Check.Kind.USED,
          about,
          "stretch-used",
          StretchUsed.of(body, finished, any, question.wear(), rows.comfort()));
    }
  }

  private void allowance() {
    AllowancePlan plan = question.allowance();
    if (plan == null) {
      return;
    }
    // What is trimmed is sewn on the pattern's own line, so that nothing changes.
    double sewn = plan.patternMm() - plan.edgeGain();
    for (Girth girth : question.kind().girths()) {
      GirthPlan known = plan(girth);
      if (known.finishedMm() != null && known.seams() > 0) {
        add(
            Check.Kind.ALLOWANCE,
            Message.of("garment.check.allowance", name(girth)),
            "allowance",
            AllowanceChange.of(
                plan.patternMm(), sewn, known.seams(), known.finishedMm(), known.bodyMm()));
      }
    }
    if (plan.capTurn() + plan.armholeTurn() > 0) {
      add(
          Check.Kind.SLEEVE,
          Message.of("garment.check.sleeve"),
          "curved-edge",
          CurvedEdge.capAndArmhole(
              plan.patternMm(),
              sewn,
              Math.toDegrees(plan.capTurn()),
              Math.toDegrees(plan.armholeTurn())));
    }
  }

  private void opening(OpeningPlan plan) {
    Message about =
        Message.of("garment.check.opening", Message.name(plan.edge().sayKey()), name(plan.over()));
    Double opening = plan.sewnMm(question.edgeGain());
    Double over = plan.overMm();
    if (opening == null || over == null) {
      checks.add(
          new Check(
              Check.Kind.OPENING,
              about,
              unknown(
                  "opening",
                  about,
                  plan.openingMm() != null && opening == null
                      ? "garment.check.nothing-left"
                      : "garment.check.missing-opening"),
              Verdict.NOT_KNOWN,
              plan,
              null,
              null));
      return;
    }
    OpeningQuestion asked =
        new OpeningQuestion(opening, over, question.marginPoints(), links(plan));
    Opening answer = Opening.of(asked);
    checks.add(
        new Check(
            Check.Kind.OPENING,
            about,
            sewn(answer.working(), "O", plan.openingMm(), opening),
            answer.verdict(),
            plan,
            asked,
            answer.weakest()));
  }

  /** The working, begun with what the allowance makes of the opening. */
  private static Working sewn(
      Working working, String sign, @Nullable Double drawnMm, double sewnMm) {
    if (drawnMm == null || drawnMm == sewnMm) {
      return working;
    }
    List<Step> steps = new ArrayList<>();
    steps.add(
        new Step(
            Message.of("garment.opening.step-sewn"),
            sign + ": as drawn → as sewn",
            Show.length(drawnMm, Unit.MM) + " → " + Show.length(sewnMm, Unit.MM)));
    steps.addAll(working.steps());
    return new Working(
        working.name(),
        working.title(),
        working.result(),
        working.verdict(),
        working.says(),
        steps,
        working.assumptions(),
        working.cautions(),
        working.sources());
  }

  private List<Link> links(OpeningPlan plan) {
    List<Link> links = new ArrayList<>(plan.links());
    GrainStretch stretch = question.stretchRound();
    links.add(
        stretch == null
            ? Link.unknown(LinkKind.CLOTH)
            : Link.gave(LinkKind.CLOTH, stretch.percent(), stretch.uncertainty(), 0, 0));
    return links;
  }

  private void band(BandChoice band) {
    String edge = Message.name(band.edge().sayKey());
    Working length =
        BandLength.of(band.plan(), band.place(), band.stretch(), rows.bandRatios(), rows.comfort());
    Working flat = BandFlat.of(band.plan(), band.turn(), rows.bandFits());
    checks.add(
        Check.of(Check.Kind.BAND, Message.of("garment.check.band", edge), sewn(length, band)));
    checks.add(
        Check.of(
            Check.Kind.BAND_FLAT, Message.of("garment.check.band-flat", edge), sewn(flat, band)));
    Double over = band.overMm();
    if (over != null) {
      checks.add(
          Check.of(
              Check.Kind.BAND_OVER,
              Message.of("garment.check.band-over", edge, name(band.over())),
              BandOverHead.of(band.plan().lengthMm(), over, band.stretch())));
    }
  }

  private Working sewn(Working working, BandChoice band) {
    Double drawnMm =
        question.openings().stream()
            .filter(plan -> plan.edge() == band.edge())
            .findFirst()
            .map(OpeningPlan::openingMm)
            .orElse(null);
    return sewn(working, "N", drawnMm, band.plan().openingMm());
  }

  private static String name(Girth girth) {
    return Message.name(girth.sayKey());
  }

  private void add(Check.Kind kind, Message about, String name, Answer<Working> answer) {
    checks.add(
        Check.of(
            kind,
            about,
            answer.isGood() ? answer.value() : unknown(name, about, "garment.check.refused")));
  }

  private void missing(Check.Kind kind, Message about, String name, String key) {
    checks.add(Check.of(kind, about, unknown(name, about, key)));
  }

  private static Working unknown(String name, Message title, String key) {
    return Working.named(name, title)
        .verdict(Verdict.NOT_KNOWN)
        .source(Source.Kind.DEFINITION, "nothing is guessed")
        .says(Message.of(key));
  }
}
