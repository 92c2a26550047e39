package walebook.lesson;

import java.util.List;

/** Plans the readings of a lesson again. */
public final class ReplanReadings {
  private ReplanReadings() {}

  /**
   * The change.
   *
   * @param ask who is there now, and which cloths they have
   * @param soFar one for each student with any part of the plan, those gone too
   */
  public static Replan.Change<PlanReadings.ToMeasure, ReadingsPlan.Cell> of(
      PlanReadings.Ask ask, List<Replan.Has<ReadingsPlan.Cell>> soFar) {
    List<ReadingsPlan.Cell> cells = PlanReadings.possibleCells(ask);
    List<Replan.Here> here =
        ask.room().students().stream()
            .map(
                each ->
                    new Replan.Here(
                        each.id(),
                        each.share(ask.plan().tiers()),
                        PlanReadings.barred(each, cells)))
            .toList();
    return Replan.of(
        new Replan.Task<>(
            cells, ask.plan().control(), here, PlanReadings.UNLIKE, ask.room().seed()),
        soFar,
        (student, place, cell) -> PlanReadings.toMeasure(ask, student, place, cell));
  }
}
