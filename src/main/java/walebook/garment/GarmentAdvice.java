package walebook.garment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.working.Message;
import walebook.working.Verdict;

/** What to do about a garment's checks, in the order in which it is tried. */
final class GarmentAdvice {
  private final GarmentQuestion question;
  private final GarmentRows rows;
  private final List<Check> checks;
  private final List<Advice> all = new ArrayList<>();

  private GarmentAdvice(GarmentQuestion question, GarmentRows rows, List<Check> checks) {
    this.question = question;
    this.rows = rows;
    this.checks = checks;
  }

  static List<Advice> of(GarmentQuestion question, GarmentRows rows, List<Check> checks) {
    GarmentAdvice advice = new GarmentAdvice(question, rows, checks);
    advice.cloth();
    checks.forEach(advice::check);
    question.bands().forEach(band -> BandAdvice.of(band, rows, checks, advice.all::add));
    advice.allowance();
    if (question.stretchRound() == null) {
      advice.add(
          Advice.Action.MEASURE_CLOTH, "garment.advice.measure-cloth", grain(question.round()));
    }
    // A piece sewn along a grain that is about to be turned would tell nothing.
    boolean turning =
        advice.all.stream().anyMatch(each -> each.action() == Advice.Action.TURN_PIECES);
    return advice.all.stream()
        .filter(each -> !turning || !isOfThisGrain(each.action()))
        .sorted(Comparator.comparing(Advice::action))
        .distinct()
        .toList();
  }

  private static boolean isOfThisGrain(Advice.Action action) {
    return action == Advice.Action.SEW_TEST_PIECE || action == Advice.Action.MEASURE_AGAIN;
  }

  private static String grain(GrainRound round) {
    return Message.name(round.sayKey());
  }

  private void cloth() {
    if (checks.stream().noneMatch(Check::clothFails)) {
      return;
    }
    GarmentQuestion turned = question.turned();
    boolean turning =
        turned.stretchRound() != null
            && GarmentChecks.of(turned, rows).stream().noneMatch(Check::clothFails);
    if (turning) {
      add(Advice.Action.TURN_PIECES, "garment.advice.turn", grain(turned.round()));
    } else {
      add(
          Advice.Action.OTHER_CLOTH,
          "garment.advice.other-cloth",
          Show.percent(stretchWanted(question, rows, checks)));
    }
  }

  /** The least stretch round the body that would pass gauge, comfort and openings alike. */
  static double stretchWanted(GarmentQuestion question, GarmentRows rows, List<Check> checks) {
    GaugeNeed need = question.need();
    double wanted = need == null ? 0 : need.percent();
    double limit = ComfortBand.limit(rows.comfort(), question.wear());
    for (GirthPlan plan : question.girths()) {
      Double body = plan.bodyMm();
      Double finished = plan.sewnMm(question.edgeGain());
      if (body != null && finished != null) {
        wanted = Math.max(wanted, 100 * Ease.wornStrain(body, finished) / limit);
      }
    }
    for (Check check : checks) {
      OpeningQuestion opening = check.question();
      if (opening != null) {
        wanted = Math.max(wanted, opening.need());
      }
    }
    return wanted;
  }

  private void check(Check check) {
    OpeningPlan plan = check.plan();
    OpeningQuestion opening = check.question();
    if (plan == null || opening == null || opening.need() == 0) {
      return;
    }
    String edge = Message.name(plan.edge().sayKey());
    Link weakest = check.weakest();
    if (check.verdict() == Verdict.NOT_MET && weakest != null) {
      double sure = weakest.percent() - 2 * weakest.uncertainty();
      if (!isMendedByTurning(check)) {
        add(
            Advice.Action.WIDEN_OPENING,
            "garment.advice.widen",
            edge,
            Show.length(opening.openingMm(), Unit.MM),
            Show.mm(Math.ceil(opening.leastOpening(sure))));
      }
      otherLink(weakest.kind(), edge, Show.percent(opening.need()));
    }
    if (check.verdict() == Verdict.TOO_CLOSE) {
      add(Advice.Action.MEASURE_AGAIN, "garment.advice.again", edge);
    }
    for (Link link : opening.links()) {
      if (link.verdict(opening.need()) == Verdict.NOT_KNOWN || link.basis() == Link.Basis.MODEL) {
        sew(link.kind(), plan.edge(), opening.need());
      }
    }
  }

  private boolean isMendedByTurning(Check check) {
    return all.stream().anyMatch(each -> each.action() == Advice.Action.TURN_PIECES)
        && GarmentChecks.of(question.turned(), rows).stream()
            .anyMatch(
                each -> each.about().equals(check.about()) && each.verdict() != Verdict.NOT_MET);
  }

  private void otherLink(LinkKind kind, String edge, String need) {
    String key =
        switch (kind) {
          case CLOTH -> null;
          case SEAM -> "garment.advice.other-seam";
          case HEM -> "garment.advice.other-hem";
          case INTERFACING -> "garment.advice.other-interfacing";
          case BAND -> "garment.advice.other-band";
          case ELASTIC -> "garment.advice.other-elastic";
        };
    if (key != null) {
      add(Advice.Action.OTHER_LINK, key, edge, need);
    }
  }

  private void sew(LinkKind kind, OpeningEdge edge, double need) {
    String key = pieceKey(kind);
    if (key != null) {
      GrainRound round = question.round();
      Advice sew =
          Advice.of(
              Advice.Action.SEW_TEST_PIECE,
              key,
              Message.name(edge.sayKey()),
              grain(round),
              Show.percent(need));
      all.add(
          new Advice(sew.action(), sew.says(), new Advice.PieceWanted(kind, edge, round, need)));
    }
  }

  /** The cloth is measured, not sewn. */
  private static @Nullable String pieceKey(LinkKind kind) {
    return switch (kind) {
      case CLOTH -> null;
      case SEAM -> "garment.advice.sew-seam";
      case HEM -> "garment.advice.sew-hem";
      case INTERFACING -> "garment.advice.sew-interfacing";
      case BAND -> "garment.advice.sew-band";
      case ELASTIC -> "garment.advice.sew-elastic";
    };
  }

  private void allowance() {
    double gain = question.edgeGain();
    if (gain > 0) {
      add(Advice.Action.CHANGE_ALLOWANCE, "garment.advice.trim", Show.mm(gain));
    } else if (gain < 0) {
      add(Advice.Action.CHANGE_ALLOWANCE, "garment.advice.add", Show.mm(-gain));
    }
  }

  private void add(Advice.Action action, String key, String... args) {
    all.add(Advice.of(action, key, args));
  }
}
