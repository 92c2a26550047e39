package walebook.seam;

import walebook.problem.Answer;
import walebook.quantity.Measured;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.working.Message;
import walebook.working.Source;
import walebook.working.Working;
import walebook.working.WorkingBuilder;

/**
 * How far a seam may extend by the geometry of its stitch, with the reserves that are asked for.
 */
public final class ZigzagStretch {
  private static final int MOST_STEPS = 9;

  private ZigzagStretch() {}

  /**
   * Works out the extension.
   *
   * @param widthMm whole swing, 0 for straight
   * @param lengthMm sewn length; a needle drop's, or the full zigzag's when {@code fullZigzag}
   * @param steps needle drops per swing
   * @param fullZigzag whether the length is of the zigzag there and back
   * @param thicknessMm T of the sewn layers, 0 to leave the crimp out
   * @param threadStretchPercent 0 to leave the thread's own stretch out
   */
  public static Answer<Working> of(
      double widthMm,
      double lengthMm,
      int steps,
      boolean fullZigzag,
      double thicknessMm,
      double threadStretchPercent) {
    Needs needs =
        new Needs()
            .notNegative("width", widthMm, "2.5 mm")
            .positive("length", lengthMm, "2.5 mm")
            .between("steps", steps, 1, MOST_STEPS)
            .notNegative("thickness", thicknessMm, "0.8 mm")
            .notNegative("thread-stretch", threadStretchPercent, "15 %");
    if (needs.failed()) {
      return Answer.bad(needs.problems());
    }
    WorkingBuilder board = Working.named("zigzag", Message.of("seam.zigzag.title"));
    double drop = fullZigzag ? Zigzag.lengthOfDrop(lengthMm, steps) : lengthMm;
    if (fullZigzag) {
      board.step(
          Message.of("seam.zigzag.step-drop"),
          "l = full zigzag ÷ (2 × k)",
          "%s ÷ (2 × %s) = %s".formatted(n(lengthMm), steps, Show.mm(drop)));
    }
    Zigzag stitch = new Zigzag(widthMm, drop, steps);
    path(board, stitch);
    reserves(board, stitch, thicknessMm, threadStretchPercent);
    double percent = stitch.extensionPercent(thicknessMm, threadStretchPercent);
    return Answer.good(
        board
            .result(Measured.of(percent, Unit.PERCENT))
            .assume(Message.of("seam.assume.model"))
            .assume(Message.of("seam.assume.sewn-stitch"))
            .source(Source.Kind.DEFINITION, "Pythagoras on one needle drop; thread inextensible")
            .says(
                Message.of(
                    sentence(thicknessMm, threadStretchPercent),
                    Show.percent(percent),
                    Show.percent(stitch.extensionPercent()))));
  }

  private static void path(WorkingBuilder board, Zigzag stitch) {
    board
        .step(
            Message.of("seam.zigzag.step-path"),
            "p = √((w ÷ k)² + l²)",
            "√((%s ÷ %s)² + %s²) = %s mm"
                .formatted(
                    n(stitch.widthMm()),
                    stitch.steps(),
                    n(stitch.lengthMm()),
                    Show.upTo(stitch.pathMm(), 3)))
        .step(
            Message.of("seam.zigzag.step-extension"),
            "E = 100 × (p ÷ l − 1)",
            "100 × (%s ÷ %s − 1) = %s"
                .formatted(
                    Show.upTo(stitch.pathMm(), 3),
                    n(stitch.lengthMm()),
                    Show.percent(stitch.extensionPercent())));
  }

  private static void reserves(
      WorkingBuilder board, Zigzag stitch, double thickness, double threadStretch) {
    if (thickness > 0) {
      board
          .step(
              Message.of("seam.zigzag.step-crimp"),
              "E = 100 × ((p + T) ÷ l − 1)",
              "100 × ((%s + %s) ÷ %s − 1) = %s"
                  .formatted(
                      Show.upTo(stitch.pathMm(), 3),
                      n(thickness),
                      n(stitch.lengthMm()),
                      Show.percent(stitch.extensionPercent(thickness, 0))))
          .assume(Message.of("seam.assume.crimp"))
          .source(
              Source.Kind.PUBLISHED,
              "lockstitch thread path 2 + 2TS for both threads (textbook geometry of 301)");
    }
    if (threadStretch > 0) {
      double before = stitch.extensionPercent(thickness, 0) / 100;
      board
          .step(
              Message.of("seam.zigzag.step-thread"),
              "(1 + E) × (1 + E_thread) − 1",
              "(1 + %s) × (1 + %s) − 1 = %s"
                  .formatted(
                      Show.upTo(before, 3),
                      Show.upTo(threadStretch / 100, 3),
                      Show.percent(stitch.extensionPercent(thickness, threadStretch))))
          .assume(Message.of("seam.assume.thread-stretch"));
    }
  }

  private static String sentence(double thickness, double threadStretch) {
    if (thickness > 0 && threadStretch > 0) {
      return "seam.zigzag.says-both";
    }
    if (thickness > 0) {
      return "seam.zigzag.says-crimp";
    }
    return threadStretch > 0 ? "seam.zigzag.says-thread" : "seam.zigzag.says";
  }

  private static String n(double value) {
    return Show.upTo(value, 2);
  }
}
