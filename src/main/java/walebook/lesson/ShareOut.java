package walebook.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.IntBinaryOperator;
import walebook.statistics.AllotBlocks;
import walebook.statistics.BlockDesign;
import walebook.statistics.BlockTask;

/** Shares a plan's combinations out among those who are there. */
final class ShareOut {
  private ShareOut() {}

  /**
   * One who is there.
   *
   * @param done combinations that stay whatever comes, by their number
   * @param open handed out and not begun
   * @param share how many they are to have
   * @param barred what they can't do
   */
  record Here(List<Integer> done, List<Integer> open, int share, List<Integer> barred) {
    Here {
      done = List.copyOf(done);
      open = List.copyOf(open);
      barred = List.copyOf(barred);
    }
  }

  /**
   * Shares out for the first time.
   *
   * @param size how many combinations there are
   * @return the combinations of each, in order
   */
  static List<List<Integer>> first(
      int size, List<BlockTask.Share> shares, IntBinaryOperator likeness, long seed) {
    return size == 0
        ? shares.stream().map(each -> List.<Integer>of()).toList()
        : AllotBlocks.of(new BlockTask(size, shares, likeness), new Random(seed)).blocks();
  }

  /**
   * Shares out again: what is done stays, what is open stays where it can, and as few change hands
   * as it takes to do every combination equally often.
   *
   * @param size how many combinations there are
   * @param gone what each of those who left has done
   * @return the combinations of those who are there, then of those gone
   */
  static List<List<Integer>> again(
      int size, List<Here> here, List<List<Integer>> gone, IntBinaryOperator likeness, long seed) {
    if (size == 0) {
      return here.stream().map(each -> List.<Integer>of()).toList();
    }
    List<BlockTask.Share> keeping = new ArrayList<>();
    List<BlockTask.Share> changing = new ArrayList<>();
    for (Here each : here) {
      int share = Math.max(each.done().size(), each.share());
      List<Integer> kept = new ArrayList<>(each.done());
      for (int open : each.open()) {
        if (kept.size() < share && !each.barred().contains(open)) {
          kept.add(open);
        }
      }
      keeping.add(new BlockTask.Share(kept, share - kept.size(), each.barred()));
      changing.add(new BlockTask.Share(each.done(), share - each.done().size(), each.barred()));
    }
    for (List<Integer> each : gone) {
      BlockTask.Share fixed = new BlockTask.Share(each, 0, List.of());
      keeping.add(fixed);
      changing.add(fixed);
    }
    BlockDesign found = AllotBlocks.of(new BlockTask(size, keeping, likeness), new Random(seed));
    return AllotBlocks.evened(new BlockTask(size, changing, likeness), found).blocks();
  }
}
