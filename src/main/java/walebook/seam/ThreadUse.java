package walebook.seam;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.Measured;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.working.Message;
import walebook.working.Source;
import walebook.working.Working;
import walebook.working.WorkingBuilder;

/**
 * How much thread a seam takes: geometry first, the printed ratios beside it as second opinions.
 */
public final class ThreadUse {
  private ThreadUse() {}

  /**
   * Thread per length of seam by geometry, all threads together.
   *
   * @param stitchType ISO 4915 number
   * @param thicknessMm of the sewn layers
   * @param lengthMm sewn stitch length, over 0
   * @param widthMm swing or overedge width
   * @return null for a stitch type without a geometry here
   */
  public static @Nullable Double perSeam(
      String stitchType, double thicknessMm, double lengthMm, double widthMm) {
    ThreadPath path = ThreadPath.of(stitchType);
    return path == null ? null : path.perSeam(thicknessMm, lengthMm, widthMm);
  }

  /**
   * Works out thread for a seam.
   *
   * @param stitchType ISO 4915 number
   * @param thicknessMm T, the sewn layers together, not negative
   * @param stitchMm sewn stitch length, over 0
   * @param widthMm swing or overedge width, not negative
   * @param seamMm length of seam, over 0
   * @param wastePercent for ends and threading, not negative
   * @param ratios the reference table
   */
  public static Answer<Working> of(
      String stitchType,
      double thicknessMm,
      double stitchMm,
      double widthMm,
      double seamMm,
      double wastePercent,
      List<ThreadRatio> ratios) {
    Needs needs =
        new Needs()
            .notNegative("thickness", thicknessMm, "0.8 mm")
            .positive("length", stitchMm, "2.5 mm")
            .notNegative("width", widthMm, "2.5 mm")
            .positive("seam", seamMm, "1000 mm")
            .notNegative("waste", wastePercent, "15 %");
    if (needs.failed()) {
      return Answer.bad(needs.problems());
    }
    ThreadPath path = ThreadPath.of(stitchType);
    List<ThreadRatio> printed =
        ratios.stream().filter(row -> row.stitchType().equals(stitchType)).toList();
    if (path == null && printed.isEmpty()) {
      return Answer.bad(
          Problem.refuse("thread.unknown-stitch", Place.field("stitch"), stitchType, "301"));
    }
    WorkingBuilder board = Working.named("thread-use", Message.of("seam.thread.title"));
    List<Double> opinions = new ArrayList<>();
    if (path != null) {
      opinions.add(path.perSeam(thicknessMm, stitchMm, widthMm));
      board.step(
          Message.of("seam.thread.step-geometry"),
          path.letters(),
          path.inNumbers(thicknessMm, stitchMm, widthMm));
      board.source(Source.Kind.PUBLISHED, "textbook thread geometry of the stitch types");
    }
    for (ThreadRatio row : printed) {
      opinions.add(row.ratio());
      board
          .step(
              Message.of("seam.thread.step-ratio", row.source()),
              "C = ratio",
              Show.fixed(row.ratio(), 2))
          .source(row.kind(), row.source());
    }
    return Answer.good(total(board, opinions, seamMm, wastePercent, path == null));
  }

  private static Working total(
      WorkingBuilder board,
      List<Double> opinions,
      double seamMm,
      double waste,
      boolean ratiosOnly) {
    double ratio = opinions.get(0);
    double metres = lengthMm(ratio, seamMm, waste) / Unit.METRE.inBase();
    total(board, ratio, seamMm, waste)
        .assume(Message.of("seam.assume.thread-model"))
        .assume(Message.of("seam.assume.waste"));
    if (ratiosOnly) {
      board.assume(Message.of("seam.assume.ratio-only"));
    }
    double least = Collections.min(opinions);
    double most = Collections.max(opinions);
    if (least == most) {
      return board.says(Message.of("seam.thread.says", Show.fixed(metres, 1)));
    }
    return board.says(
        Message.of(
            "seam.thread.says-conflict",
            Show.fixed(metres, 1),
            Show.fixed(lengthMm(least, seamMm, waste) / Unit.METRE.inBase(), 1),
            Show.fixed(lengthMm(most, seamMm, waste) / Unit.METRE.inBase(), 1)));
  }

  /** Puts down the last step, from the ratio to the thread in metres. */
  static WorkingBuilder total(
      WorkingBuilder board, double ratio, double seamMm, double wastePercent) {
    double metres = lengthMm(ratio, seamMm, wastePercent) / Unit.METRE.inBase();
    return board
        .step(
            Message.of("seam.thread.step-total"),
            "thread = C × seam × (1 + waste ÷ 100)",
            "%s × %s m × (1 + %s ÷ 100) = %s m"
                .formatted(
                    Show.fixed(ratio, 2),
                    Show.upTo(seamMm / Unit.METRE.inBase(), 3),
                    Show.upTo(wastePercent, 1),
                    Show.fixed(metres, 2)))
        .result(Measured.of(metres, Unit.METRE));
  }

  /** Thread in mm: ratio × seam × (1 + waste ÷ 100). */
  public static double lengthMm(double ratio, double seamMm, double wastePercent) {
    return ratio * seamMm * (1 + wastePercent / 100);
  }
}
