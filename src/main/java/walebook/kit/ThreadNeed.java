package walebook.kit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.Measured;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.seam.ThreadRatio;
import walebook.seam.ThreadUse;
import walebook.working.Message;
import walebook.working.Source;
import walebook.working.Working;
import walebook.working.WorkingBuilder;

/** Thread for one student's seams of a lesson, all threads together. */
public final class ThreadNeed {
  private ThreadNeed() {}

  /**
   * Works it out; the result is in m for one student.
   *
   * @param seams at least one
   * @param wastePercent for ends and threading, not negative
   * @param ratios the reference table, for stitches without a geometry
   */
  public static Answer<Working> of(
      List<SeamToSew> seams, double wastePercent, List<ThreadRatio> ratios) {
    if (seams.isEmpty()) {
      return Answer.bad(Problem.refuse("kit.no-seams", Place.field("seam"), "0", "1"));
    }
    List<Problem> found = new ArrayList<>();
    Map<String, Double> byStitch = new LinkedHashMap<>();
    Map<String, Double> times = new LinkedHashMap<>();
    for (SeamToSew each : seams) {
      Answer<Working> one =
          ThreadUse.of(
              each.stitchType(),
              each.thicknessMm(),
              each.stitchMm(),
              each.widthMm(),
              each.seamMm(),
              wastePercent,
              ratios);
      if (one.isGood()) {
        byStitch.merge(each.stitchType(), each.times() * one.value().value(), Double::sum);
        times.merge(each.stitchType(), each.times(), Double::sum);
      } else {
        found.addAll(one.problems());
      }
    }
    if (!found.isEmpty()) {
      return Answer.bad(found.stream().distinct().toList());
    }
    WorkingBuilder board = Working.named("kit-thread", Message.of("kit.thread.title"));
    double metres = 0;
    for (Map.Entry<String, Double> each : byStitch.entrySet()) {
      metres += each.getValue();
      board.step(
          Message.of(
              "kit.thread.step",
              each.getKey(),
              Show.upTo(times.getOrDefault(each.getKey(), 0.0), 2)),
          "Σ C × seam × (1 + waste ÷ 100)",
          Show.fixed(each.getValue(), 2) + " m");
    }
    return Answer.good(
        board
            .result(Measured.of(metres, Unit.METRE))
            .assume(Message.of("kit.assume.thread-waste", Show.percent(wastePercent)))
            .source(Source.Kind.PUBLISHED, "textbook thread geometry of the stitch types")
            .says(Message.of("kit.thread.says", Show.fixed(metres, 1))));
  }
}
