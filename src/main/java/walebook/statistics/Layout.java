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
    if (responses.isEmpty()) {
      throw new IllegalArgumentException("responses must hold at least one response");
    }
    levels = responses.stream().map(Response::level).distinct().toList();
    blocks = responses.stream().map(Response::block).distinct().toList();
    greatestSize = responses.stream().mapToDouble(r -> Math.abs(r.value())).max().orElse(0);
    cells = cells(responses);
    groupOfLevel = IntStream.range(0, levels.size()).toArray();
    groupOfBlock = new int[blocks.size()];
    groups = join();
  }

  private List<Cell> cells(List<Response> responses) {
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
        .map(
            entry ->
                new Cell(
                    (int) (entry.getKey() / levels.size()),
                    (int) (entry.getKey() % levels.size()),
                    Summary.of(entry.getValue())))
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
}
