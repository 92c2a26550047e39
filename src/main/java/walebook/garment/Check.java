package walebook.garment;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import walebook.working.Message;
import walebook.working.Verdict;
import walebook.working.Working;

/**
 * One answer about a garment.
 *
 * @param kind which check
 * @param about its name, such as the girth or the opening
 * @param working how it was worked
 * @param verdict what it came to
 * @param plan the opening that it is about; null for other checks
 * @param question the opening as asked, with the cloth among its links; null for other checks or
 *     while a measure is missing
 * @param weakest the weakest link of an opening; null when none is known or none is needed
 */
public record Check(
    Kind kind,
    Message about,
    Working working,
    Verdict verdict,
    @Nullable OpeningPlan plan,
    @Nullable OpeningQuestion question,
    @Nullable Link weakest) {

  /** Which check, in the order in which they are shown. */
  public enum Kind {
    GAUGE,
    WAY,
    USED,
    ALLOWANCE,
    SLEEVE,
    OPENING,
    BAND,
    BAND_FLAT,
    BAND_OVER;

    /** True when its numbers, beside a finished girth, would tell a body's. */
    public boolean tellsBody() {
      return this == WAY
          || this == USED
          || this == ALLOWANCE
          || this == OPENING
          || this == BAND_OVER;
    }
  }

  public Check {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(about, "about");
    Objects.requireNonNull(working, "working");
    Objects.requireNonNull(verdict, "verdict");
  }

  /**
   * What it comes to in words that tell no girth of a body: whole where no number of it would,
   * otherwise only how it comes out.
   */
  public Message saysWithoutGirths() {
    Message says = working.says();
    boolean whole =
        !kind.tellsBody()
            || kind == Kind.ALLOWANCE
            || kind == Kind.WAY
            || (verdict == Verdict.NOT_KNOWN && says.args().isEmpty());
    return whole ? says : Message.of(kind == Kind.USED ? used() : passes());
  }

  private String used() {
    return switch (verdict) {
      case MET -> "garment.kept.used-met";
      case TOO_CLOSE -> "garment.kept.used-close";
      case NOT_MET -> "garment.kept.used-not-met";
      case NOT_KNOWN -> "garment.kept.used-unknown";
    };
  }

  private String passes() {
    return switch (verdict) {
      case MET -> "garment.kept.passes-met";
      case TOO_CLOSE -> "garment.kept.passes-close";
      case NOT_MET -> "garment.kept.passes-not-met";
      case NOT_KNOWN -> "garment.kept.passes-unknown";
    };
  }

  /** A check without an opening; a working without a verdict counts as not known. */
  static Check of(Kind kind, Message about, Working working) {
    Verdict verdict = working.verdict();
    return new Check(
        kind, about, working, verdict == null ? Verdict.NOT_KNOWN : verdict, null, null, null);
  }

  /** True when it is met, and what it rests on is in part reckoned or stated, not sewn. */
  public boolean isReckonedOnly() {
    return verdict == Verdict.MET
        && question != null
        && question.need() > 0
        && question.links().stream().anyMatch(link -> link.basis() == Link.Basis.MODEL);
  }

  /** True when the cloth in its direction is what fails. */
  boolean clothFails() {
    if (question != null) {
      double need = question.need();
      return question.links().stream()
          .anyMatch(
              link ->
                  link.kind() == LinkKind.CLOTH
                      && need > 0
                      && link.verdict(need) == Verdict.NOT_MET);
    }
    return (kind == Kind.GAUGE || kind == Kind.USED) && verdict == Verdict.NOT_MET;
  }
}
