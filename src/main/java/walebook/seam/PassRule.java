package walebook.seam;

import walebook.cloth.Decision;
import walebook.cloth.ReadingUncertainty;
import walebook.quantity.Measured;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.working.Message;
import walebook.working.Source;
import walebook.working.Verdict;
import walebook.working.Working;
import walebook.working.WorkingBuilder;

/**
 * Whether a seam stretches far enough: at least as far as the cloth it joins (ASTM D6193, 4.2.2),
 * or as far as a stated need. A seam that held is a lower bound: it can meet a need, never miss
 * one.
 */
public final class PassRule {
  private PassRule() {}

  /** A verdict and the sentence that gives its reason. */
  record Outcome(Verdict verdict, Message says) {}

  /** Works out the verdict. */
  public static Working of(PassQuestion question) {
    WorkingBuilder board = Working.named("seam-check", Message.of("seam.pass.title"));
    Outcome outcome = judge(board, question);
    if (outcome.verdict() != Verdict.NOT_KNOWN && question.end() == SeamEnd.GAVE) {
      board.result(Measured.of(question.seamPercent(), Unit.PERCENT, question.seamUncertainty()));
    }
    if (question.end() == SeamEnd.HELD) {
      board.assume(Message.of("seam.assume.held-is-bound"));
    }
    return board
        .verdict(outcome.verdict())
        .assume(Message.of("seam.assume.same-pull"))
        .source(Source.Kind.STANDARD, "ASTM D6193, 4.2.2: seam against the cloth it joins")
        .source(Source.Kind.STANDARD, "JCGM 106, 8.3: guarded acceptance and rejection")
        .says(outcome.says());
  }

  /** Adds the check's lines to a board and gives its outcome. */
  static Outcome judge(WorkingBuilder board, PassQuestion question) {
    Double need = question.needPercent();
    if (need != null) {
      return againstNeed(board, question, need);
    }
    Double cloth = question.clothPercent();
    if (cloth != null) {
      return againstCloth(board, question, cloth);
    }
    return question.end() == SeamEnd.HELD
        ? new Outcome(Verdict.MET, Message.of("seam.pass.says-outlasted", seam(question)))
        : new Outcome(Verdict.NOT_KNOWN, Message.of("seam.pass.says-nothing", seam(question)));
  }

  private static Outcome againstNeed(WorkingBuilder board, PassQuestion question, double need) {
    double expanded = 2 * question.seamUncertainty();
    double stretch = question.seamPercent();
    String wanted = Show.percent(need);
    if (question.end() == SeamEnd.HELD) {
      board.step(
          Message.of("seam.pass.step-held-need"),
          "met: S − U ≥ need; else the cloth was the limit",
          Decision.inNumbers(stretch, expanded, need));
      return stretch - expanded >= need
          ? new Outcome(Verdict.MET, Message.of("seam.pass.says-need-held", seam(question), wanted))
          : new Outcome(
              Verdict.NOT_KNOWN, Message.of("seam.pass.says-cloth-limit", seam(question), wanted));
    }
    board.step(
        Message.of("seam.pass.step-need"),
        Decision.rule(),
        Decision.inNumbers(stretch, expanded, need));
    Verdict verdict = Decision.verdict(stretch, expanded, need);
    String key =
        switch (verdict) {
          case MET -> "seam.pass.says-need-met";
          case NOT_MET -> "seam.pass.says-need-not-met";
          case TOO_CLOSE, NOT_KNOWN -> "seam.pass.says-need-close";
        };
    return new Outcome(verdict, Message.of(key, seam(question), wanted, Show.fixed(expanded, 1)));
  }

  private static Outcome againstCloth(WorkingBuilder board, PassQuestion question, double cloth) {
    double expanded =
        2 * ReadingUncertainty.combined(question.seamUncertainty(), question.clothUncertainty());
    double stretch = question.seamPercent();
    String wanted = Show.percent(cloth);
    if (question.end() == SeamEnd.HELD) {
      board.step(
          Message.of("seam.pass.step-held-cloth"),
          "the cloth stopped where it was measured to: S + U ≥ S_cloth",
          Decision.inNumbers(stretch, expanded, cloth));
      if (stretch - expanded > cloth) {
        return new Outcome(
            Verdict.MET,
            Message.of(
                "seam.pass.says-cloth-held-above",
                seam(question),
                wanted,
                Show.fixed(expanded, 1)));
      }
      return stretch + expanded >= cloth
          ? new Outcome(
              Verdict.MET, Message.of("seam.pass.says-cloth-held", seam(question), wanted))
          : new Outcome(
              Verdict.NOT_KNOWN, Message.of("seam.pass.says-held-short", seam(question), wanted));
    }
    board.step(
        Message.of("seam.pass.step-cloth"),
        "met: S − U ≥ S_cloth; not met: S + U < S_cloth; else too close",
        Decision.inNumbers(stretch, expanded, cloth));
    Verdict verdict = Decision.verdict(stretch, expanded, cloth);
    String key =
        switch (verdict) {
          case MET -> "seam.pass.says-cloth-met";
          case NOT_MET -> "seam.pass.says-cloth-not-met";
          case TOO_CLOSE, NOT_KNOWN -> "seam.pass.says-cloth-close";
        };
    return new Outcome(verdict, Message.of(key, seam(question), wanted, Show.fixed(expanded, 1)));
  }

  private static String seam(PassQuestion question) {
    return Show.percent(question.seamPercent());
  }
}
