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
  /** Cell: block and level by number, and the values in it. */
  record Cell(int block, int level, Summary summary) {}

  final List<String> levels;
  final List<String> blocks;
  final List<Cell> cells;

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

  private Layout(List<String> levels, List<String> blocks, double greatestSize, Cells sortedInto) {
    this.levels = levels;
    this.blocks = blocks;
    this.greatestSize = greatestSize;
    cells = sortedInto.of(levels, blocks);
    groupOfLevel = IntStream.range(0, levels.size()).toArray();
    groupOfBlock = new int[blocks.size()];
    groups = join();
  }

  /** Sorts what there is into cells by the numbers of its level and block. */
  private interface Cells {
    List<Cell> of(List<String> levels, List<String> blocks);
  }

  /** The layout of responses of which only each cell's summary was kept. */
  static Layout ofShares(List<Share> shares) {
    return new Layout(
        some(shares).stream().map(Share::level).distinct().toList(),
        shares.stream().map(Share::block).distinct().toList(),
        shares.stream().mapToDouble(each -> size(each.values().summary())).max().orElse(0),
        (levels, blocks) -> sorted(shares, levels, blocks));
  }

  private static double size(Summary summary) {
    return Rounding.size(summary.least(), summary.greatest());
  }

  private static List<Cell> sorted(List<Share> shares, List<String> levels, List<String> blocks) {
    var levelNumber = numbers(levels);
    var blockNumber = numbers(blocks);
    var sorted = new TreeMap<Long, Moments>();
    for (Share share : shares) {
      long key =
          (long) number(blockNumber, share.block()) * levels.size()
              + number(levelNumber, share.level());
      sorted.computeIfAbsent(key, k -> new Moments()).addAll(share.values());
    }
    List<Cell> cells = new ArrayList<>();
    sorted.forEach((key, values) -> cells.add(cell(key, levels.size(), values.summary())));
    return cells;
  }

  private static Cell cell(long key, int levels, Summary summary) {
    return new Cell((int) (key / levels), (int) (key % levels), summary);
  }

  private static <T> List<T> some(List<T> responses) {
    if (responses.isEmpty()) {
      throw new IllegalArgumentException("responses must hold at least one response");
    }
    return responses;
  }

  private static List<Cell> cells(
      List<Response> responses, List<String> levels, List<String> blocks) {
    var levelNumber = numbers(levels);
    var blockNumber = numbers(blocks);
    var sorted = new TreeMap<Long, List<Double>>();
    for (Response response : responses) {
      long key =
          (long) number(blockNumber, response.block()) * levels.size()
              + number(levelNumber, response.level());
      sorted.computeIfAbsent(key, k -> new ArrayList<>()).add(response.value());
    }
    return sorted.entrySet().stream()
        .map(entry -> cell(entry.getKey(), levels.size(), Summary.of(entry.getValue())))
        .toList();
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
    for (Cell cell : cells) {
      if (firstOfBlock[cell.block] < 0) {
        firstOfBlock[cell.block] = cell.level;
      }
      int one = root(firstOfBlock[cell.block]);
      int other = root(cell.level);
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
  List<Summary> rawOfShares(List<Share> shares) {
    Map<String, Integer> levelNumber = numbers(levels);
    List<Moments> values = new ArrayList<>();
    levels.forEach(level -> values.add(new Moments()));
    for (Share share : shares) {
      values.get(number(levelNumber, share.level())).addAll(share.values());
    }
    return values.stream().map(Moments::summary).toList();
  }
}
