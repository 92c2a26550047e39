package walebook.lesson;

import java.util.List;

/** Plans the pieces of a lesson again; a combination goes by its label. */
public final class ReplanPieces {
  private ReplanPieces() {}

  /**
   * The change.
   *
   * @param ask who is there now, and what they can sew
   * @param soFar one for each student with any piece of the plan, those gone too
   */
  public static Replan.Change<PieceToSew, String> of(
      PlanPieces.Ask ask, List<Replan.Has<String>> soFar) {
    List<PlanStudent> students = ask.room().students();
    PlanTable table = new PlanTable(ask.plan(), students, ask.room().leftOut());
    List<String> labels = table.labels();
    List<Replan.Here> here =
        students.stream()
            .map(
                each ->
                    new Replan.Here(each.id(), each.share(ask.plan().tiers()), table.barred(each)))
            .toList();
    return Replan.of(
        new Replan.Task<>(labels, PlanPieces.CONTROL, here, table.likeness(), ask.room().seed()),
        soFar,
        (student, place, label) ->
            PlanPieces.piece(
                ask,
                student,
                place,
                label.equals(PlanPieces.CONTROL)
                    ? ask.plan().controlCell()
                    : table.cell(labels.indexOf(label))));
  }
}
