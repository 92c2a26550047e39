package walebook.lesson;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import walebook.quantity.Show;
import walebook.statistics.BlockDesign;
import walebook.statistics.BlockEfficiency;
import walebook.working.Message;

/**
 * How fair a plan is to its combinations, and how much it can tell.
 *
 * @param sewn how many combinations are sewn by anyone
 * @param unsewn how many are sewn by nobody
 * @param students how many sew at least one of them
 * @param pieces how many pieces they sew, controls left out
 * @param leastSewn how often the least sewn combination is sewn, of those sewn at all
 * @param leastTogether how often the two that meet least meet in one student's hands
 * @param efficiency how sharply combinations are told apart within students' hands
 */
public record PlanFairness(
    int sewn,
    int unsewn,
    int students,
    int pieces,
    int leastSewn,
    int mostSewn,
    int leastTogether,
    int mostTogether,
    BlockEfficiency efficiency) {
  /**
   * Of what each student sews.
   *
   * @param cells labels of the combinations shared out, at least one
   * @param hands the labels in each student's hands; others than those of {@code cells}, such as
   *     the control, don't count
   */
  public static PlanFairness of(List<String> cells, List<List<String>> hands) {
    List<String> sewn =
        cells.stream().filter(each -> hands.stream().anyMatch(h -> h.contains(each))).toList();
    List<List<Integer>> blocks =
        hands.stream()
            .map(hand -> hand.stream().map(sewn::indexOf).filter(i -> i >= 0).distinct().toList())
            .filter(block -> !block.isEmpty())
            .toList();
    BlockDesign design = new BlockDesign(Math.max(1, sewn.size()), blocks);
    int[] times = design.replications();
    int[][] together = design.together();
    int[] pairs =
        IntStream.range(0, sewn.size())
            .flatMap(i -> IntStream.range(0, i).map(j -> together[i][j]))
            .toArray();
    return new PlanFairness(
        sewn.size(),
        cells.size() - sewn.size(),
        blocks.size(),
        design.plots(),
        Arrays.stream(times).min().orElse(0),
        Arrays.stream(times).max().orElse(0),
        Arrays.stream(pairs).min().orElse(0),
        Arrays.stream(pairs).max().orElse(0),
        design.efficiency());
  }

  /** The same in sentences. */
  public List<Message> says() {
    if (pieces == 0) {
      return List.of(Message.of("lesson.fair.nothing"));
    }
    List<Message> says = new ArrayList<>();
    String count = String.valueOf(sewn);
    says.add(
        mostSewn == 1
            ? Message.of("lesson.fair.sewn-once", count)
            : Message.of("lesson.fair.sewn", count, range(leastSewn, mostSewn)));
    if (unsewn > 0) {
      says.add(Message.of("lesson.fair.unsewn", String.valueOf(unsewn)));
    }
    Double average = efficiency.average();
    if (average == null) {
      says.add(Message.of("lesson.fair.alone"));
      return says;
    }
    says.add(
        leastTogether == 1 && mostTogether == 1
            ? Message.of("lesson.fair.together-once")
            : Message.of("lesson.fair.together", range(leastTogether, mostTogether)));
    says.addAll(told(average));
    return says;
  }

  private List<Message> told(double average) {
    List<Message> says = new ArrayList<>();
    if (!efficiency.connected()) {
      says.add(Message.of("lesson.fair.parts", String.valueOf(efficiency.parts())));
    }
    says.add(Message.of("lesson.fair.factor", Show.fixed(100 * average, 0) + " %"));
    Double share = efficiency.share();
    if (share != null && efficiency.connected()) {
      says.add(
          share > 1 - 1e-9
              ? Message.of("lesson.fair.best")
              : Message.of("lesson.fair.share", Show.fixed(100 * share, 1) + " %"));
    }
    return says;
  }

  private static String range(int least, int most) {
    return least == most ? String.valueOf(least) : least + "–" + most;
  }
}
