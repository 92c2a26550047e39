package walebook.garment;

import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.quantity.Show;
import walebook.working.Message;
import walebook.working.Verdict;

/** The answer about an opening as a sentence that names the weakest link. */
final class OpeningSentence {
  private OpeningSentence() {}

  static Message of(OpeningQuestion question, Verdict verdict, @Nullable Link weakest) {
    String need = Show.percent(question.need());
    if (verdict == Verdict.NOT_KNOWN || weakest == null) {
      return notKnown(question, need);
    }
    String reach = Show.percent(weakest.percent());
    String demand = Show.percent(question.demand());
    String margin = Show.upTo(question.marginPoints(), 1);
    if (verdict == Verdict.NOT_MET && question.passesBare()) {
      return Message.of(
          question.isReckoned() ? "garment.opening.bare-reckoned" : "garment.opening.bare",
          need,
          reach,
          demand,
          margin,
          Message.name(weakest.kind().sayKey()));
    }
    return switch (weakest.kind()) {
      case CLOTH -> Message.of(pick(verdict, CLOTH), need, reach, demand, margin);
      case SEAM -> Message.of(pick(verdict, SEAM), need, reach, demand, margin);
      case HEM -> Message.of(pick(verdict, HEM), need, reach, demand, margin);
      case INTERFACING -> Message.of(pick(verdict, INTERFACING), need, reach, demand, margin);
      case BAND -> Message.of(pick(verdict, BAND), need, reach, demand, margin);
      case ELASTIC -> Message.of(pick(verdict, ELASTIC), need, reach, demand, margin);
    };
  }

  private static final List<String> CLOTH =
      List.of(
          "garment.opening.cloth-met",
          "garment.opening.cloth-close",
          "garment.opening.cloth-not-met");
  private static final List<String> SEAM =
      List.of(
          "garment.opening.seam-met", "garment.opening.seam-close", "garment.opening.seam-not-met");
  private static final List<String> HEM =
      List.of(
          "garment.opening.hem-met", "garment.opening.hem-close", "garment.opening.hem-not-met");
  private static final List<String> INTERFACING =
      List.of(
          "garment.opening.interfacing-met",
          "garment.opening.interfacing-close",
          "garment.opening.interfacing-not-met");
  private static final List<String> BAND =
      List.of(
          "garment.opening.band-met", "garment.opening.band-close", "garment.opening.band-not-met");
  private static final List<String> ELASTIC =
      List.of(
          "garment.opening.elastic-met",
          "garment.opening.elastic-close",
          "garment.opening.elastic-not-met");

  private static String pick(Verdict verdict, List<String> keys) {
    return switch (verdict) {
      case MET -> keys.get(0);
      case NOT_MET -> keys.get(2);
      case TOO_CLOSE, NOT_KNOWN -> keys.get(1);
    };
  }

  private static Message notKnown(OpeningQuestion question, String need) {
    Link missing =
        question.links().stream()
            .filter(link -> link.verdict(question.need()) == Verdict.NOT_KNOWN)
            .findFirst()
            .orElse(question.links().get(0));
    String key =
        switch (missing.kind()) {
          case CLOTH -> "garment.opening.unknown-cloth";
          case SEAM -> "garment.opening.unknown-seam";
          case HEM -> "garment.opening.unknown-hem";
          case INTERFACING -> "garment.opening.unknown-interfacing";
          case BAND -> "garment.opening.unknown-band";
          case ELASTIC -> "garment.opening.unknown-elastic";
        };
    return Message.of(
        key, need, Show.percent(question.demand()), Show.upTo(question.marginPoints(), 1));
  }
}
