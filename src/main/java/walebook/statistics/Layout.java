package walebook.statistics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Responses sorted into cells of block and level, with the groups of levels that hang together.
 *
 * <p>Two levels hang together when a chain of shared blocks joins them; only then can their
 * difference be told from differences between blocks (R. C. Bose's connectedness; S. R. Searle,
 * Linear Models for Unbalanced Data, 1987, section 5.3).
 */
final class Layout {
  final List<String> levels;
  final List<String> blocks;

  /** Rising by block, then by level. */
  final Cells cells;

  /** Number of the group that each level belongs to, counted from 0 in order of first level. */
  final int[] groupOfLevel;

  final int[] groupOfBlock;
  final int groups;
  final double greatestSize;

  Layout(List<Response> responses) {
    this(
        some(responses).stream().map(Response::level).distinct().toList(),
        responses.stream().map(Response::block).distinct().toList(),
        responses.stream().mapToDouble(r -> Math.abs(r.value())).max().orElse(0),
        (levels, blocks) -> cells(responses, levels, blocks));
  }

  private Layout(List<String> levels, List<String> blocks, double greatestSize, Sorted sortedInto) {
    this.levels = levels;
    this.blocks = blocks;
    this.greatestSize = greatestSize;
    cells = sortedInto.of(levels, blocks);
    groupOfLevel = IntStream.range(0, levels.size()).toArray();
    groupOfBlock = new int[blocks.size()];
    groups = join();
  }

  /** Sorts what there is into cells by the numbers of its level and block. */
  private interface Sorted {
    Cells of(List<String> levels, List<String> blocks);
  }

  /**
   * The layout of responses of which only each cell's summary was kept.
   *
   * @param blocks names by number; those without a value are left out
   * @param levels names by number; each has a value
   */
  static Layout ofShares(Shares shares, List<String> blocks, List<String> levels) {
    int[] numbers = new int[blocks.size()];
    List<String> used = new ArrayList<>();
    double size = 0;
    for (int i = 0; i < shares.size(); i++) {
      Moments values = shares.values(i);
      if (values.n() > 0) {
        size = Math.max(size, Rounding.size(values.least(), values.greatest()));
        numbers[shares.block(i)] = 1;
      }
    }
    for (int i = 0; i < numbers.length; i++) {
      if (numbers[i] > 0) {
        numbers[i] = used.size();
        used.add(blocks.get(i));
      }
    }
    if (used.isEmpty()) {
      throw new IllegalArgumentException("shares must hold at least one value");
    }
    return new Layout(
        levels, used, size, (all, own) -> Cells.ofShares(shares, numbers, levels.size()));
  }

  private static <T> List<T> some(List<T> responses) {
    if (responses.isEmpty()) {
      throw new IllegalArgumentException("responses must hold at least one response");
    }
    return responses;
  }

  private static Cells cells(List<Response> responses, List<String> levels, List<String> blocks) {
    var levelNumber = numbers(levels);
    var blockNumber = numbers(blocks);
    var sorted = new TreeMap<Long, List<Double>>();
    for (Response response : responses) {
      long key =
          (long) number(blockNumber, response.block()) * levels.size()
              + number(levelNumber, response.level());
      sorted.computeIfAbsent(key, k -> new ArrayList<>()).add(response.value());
    }
    Cells cells = new Cells(sorted.size());
    sorted.forEach(
        (key, values) ->
            cells.add(
                (int) (key / levels.size()), (int) (key % levels.size()), Summary.of(values)));
    return cells;
  }

  private static Map<String, Integer> numbers(List<String> names) {
    var numbers = new HashMap<String, Integer>();
    names.forEach(name -> numbers.put(name, numbers.size()));
    return numbers;
  }

  private static int number(Map<String, Integer> numbers, String name) {
    return Objects.requireNonNull(numbers.get(name), name);
  }

  private int root(int level) {
    int at = level;
    while (groupOfLevel[at] != at) {
      at = groupOfLevel[at];
    }
    return at;
  }

  private int join() {
    int[] firstOfBlock = new int[blocks.size()];
    Arrays.fill(firstOfBlock, -1);
    for (int i = 0; i < cells.size(); i++) {
      int block = cells.block(i);
      if (firstOfBlock[block] < 0) {
        firstOfBlock[block] = cells.level(i);
      }
      int one = root(firstOfBlock[block]);
      int other = root(cells.level(i));
      groupOfLevel[Math.max(one, other)] = Math.min(one, other);
    }
    int[] roots = IntStream.range(0, levels.size()).map(this::root).toArray();
    List<Integer> distinct = IntStream.of(roots).distinct().boxed().toList();
    for (int i = 0; i < roots.length; i++) {
      groupOfLevel[i] = distinct.indexOf(roots[i]);
    }
    for (int j = 0; j < firstOfBlock.length; j++) {
      groupOfBlock[j] = groupOfLevel[firstOfBlock[j]];
    }
    return distinct.size();
  }

  int[] levelsOf(int group) {
    return IntStream.range(0, levels.size()).filter(i -> groupOfLevel[i] == group).toArray();
  }

  /** Summary of the values of each level, nothing adjusted. */
  List<Summary> raw(List<Response> responses) {
    Map<String, Integer> levelNumber = numbers(levels);
    List<List<Double>> values = new ArrayList<>();
    levels.forEach(level -> values.add(new ArrayList<>()));
    for (Response response : responses) {
      values.get(number(levelNumber, response.level())).add(response.value());
    }
    return values.stream().map(Summary::of).toList();
  }

  /** The same of shares. */
  List<Summary> rawOfShares(Shares shares) {
    List<Moments> values = new ArrayList<>();
    levels.forEach(level -> values.add(new Moments()));
    for (int i = 0; i < shares.size(); i++) {
      values.get(shares.level(i)).addAll(shares.values(i));
    }
    return values.stream().map(Moments::summary).toList();
  }
}
