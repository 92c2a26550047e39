package walebook.seam;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.cloth.LengthChange;
import walebook.cloth.ReadingCheck;
import walebook.cloth.ReadingUncertainty;
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
 * A test piece's verdict with its working, for each keystroke of the log form.
 *
 * @param working the verdict and its steps; {@link Verdict#NOT_KNOWN} while numbers are missing
 * @param seamStretch per cent; a lower bound when {@code lowerBound}; null while not known
 * @param lowerBound whether the seam held, so that stretch and share are "at least"
 * @param seamShare of the cloth's stretch, per cent; null while not known
 * @param edgeChange after sewing, per cent; null while not known
 * @param edgeChangePressed after pressing, per cent; null while not known
 * @param problems what is wrong with or unlikely about the lengths, at their fields
 */
public record PieceVerdict(
    Working working,
    @Nullable Double seamStretch,
    boolean lowerBound,
    @Nullable Double seamShare,
    @Nullable Double edgeChange,
    @Nullable Double edgeChangePressed,
    List<Problem> problems) {
  public PieceVerdict {
    problems = List.copyOf(problems);
  }

  /** The verdict alone. */
  public Verdict verdict() {
    Verdict verdict = working.verdict();
    return verdict == null ? Verdict.NOT_KNOWN : verdict;
  }

  /** Works out all that the numbers typed so far allow. */
  public static PieceVerdict of(PieceNumbers numbers) {
    WorkingBuilder board = Working.named("piece", Message.of("seam.piece.title"));
    List<Problem> problems = new ArrayList<>();
    Double stretch = stretch(board, problems, numbers);
    Double share = share(board, numbers, stretch);
    PassRule.Outcome outcome = outcome(board, numbers, stretch);
    Double sewn = edge(board, "seam.edge.step-sewn", numbers.edgeBeforeMm(), numbers.edgeSewnMm());
    Double pressed =
        edge(board, "seam.edge.step-pressed", numbers.edgeBeforeMm(), numbers.edgePressedMm());
    boolean held = numbers.end() == SeamEnd.HELD;
    if (stretch != null && held) {
      board.assume(Message.of("seam.assume.held-is-bound"));
    }
    board
        .verdict(outcome.verdict())
        .assume(Message.of("seam.assume.same-pull"))
        .source(Source.Kind.STANDARD, "ASTM D6193, 4.2.2: seam against the cloth it joins")
        .source(Source.Kind.STANDARD, "JCGM 100 (GUM), 4.3.7 and 5.1.2");
    return new PieceVerdict(
        board.says(outcome.says()), stretch, held, share, sewn, pressed, problems);
  }

  private static @Nullable Double stretch(
      WorkingBuilder board, List<Problem> problems, PieceNumbers numbers) {
    Double gauge = numbers.gaugeMm();
    Double length = numbers.endMm();
    if (gauge == null) {
      return null;
    }
    problems.addAll(ReadingCheck.of(gauge, length, null));
    if (length == null
        || numbers.end() == null
        || length < gauge
        || problems.stream().anyMatch(Problem::refuses)) {
      return null;
    }
    boolean gave = numbers.end() == SeamEnd.GAVE;
    double percent = LengthChange.percent(gauge, length);
    board.step(
        Message.of(gave ? "seam.stretch.step-gave" : "seam.stretch.step-held"),
        gave ? "S = 100 × (L − L0) ÷ L0" : "S ≥ 100 × (L − L0) ÷ L0",
        LengthChange.inNumbers(gauge, length));
    if (gave) {
      board.result(Measured.of(percent, Unit.PERCENT, uncertainty(numbers, gauge, length)));
    }
    return percent;
  }

  private static @Nullable Double share(
      WorkingBuilder board, PieceNumbers numbers, @Nullable Double stretch) {
    Double cloth = known(numbers.clothPercent());
    if (stretch == null || cloth == null) {
      return null;
    }
    Double share = SeamShare.percent(stretch, cloth);
    if (share != null) {
      board.step(
          Message.of("seam.share.step"),
          numbers.end() == SeamEnd.HELD ? "≥ 100 × S ÷ S_cloth" : "100 × S ÷ S_cloth",
          "100 × %s ÷ %s = %s"
              .formatted(Show.upTo(stretch, 2), Show.upTo(cloth, 2), Show.percent(share)));
    }
    return share;
  }

  private static PassRule.Outcome outcome(
      WorkingBuilder board, PieceNumbers numbers, @Nullable Double stretch) {
    SeamEnd end = numbers.end();
    Double gauge = numbers.gaugeMm();
    Double length = numbers.endMm();
    if (stretch == null || end == null || gauge == null || length == null) {
      return new PassRule.Outcome(Verdict.NOT_KNOWN, Message.of("seam.piece.says-not-yet"));
    }
    Double clothUncertainty = known(numbers.clothUncertainty());
    return PassRule.judge(
        board,
        new PassQuestion(
            stretch,
            uncertainty(numbers, gauge, length),
            end,
            known(numbers.clothPercent()),
            clothUncertainty == null ? 0 : Math.abs(clothUncertainty),
            known(numbers.needPercent())));
  }

  private static @Nullable Double edge(
      WorkingBuilder board, String key, @Nullable Double before, @Nullable Double after) {
    if (before == null
        || after == null
        || ReadingCheck.of(before, after, null).stream().anyMatch(Problem::refuses)) {
      return null;
    }
    double percent = LengthChange.percent(before, after);
    board.step(
        Message.of(key),
        "W = 100 × (after − before) ÷ before",
        LengthChange.inNumbers(before, after));
    return percent;
  }

  private static double uncertainty(PieceNumbers numbers, double gauge, double length) {
    double u = ReadingUncertainty.ofResolution(numbers.readToMm());
    return ReadingUncertainty.ofChange(gauge, length, u, u);
  }

  private static @Nullable Double known(@Nullable Double value) {
    return value != null && Double.isFinite(value) ? value : null;
  }
}
