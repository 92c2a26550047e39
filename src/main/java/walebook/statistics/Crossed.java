package walebook.statistics;

import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Where the scatter comes from when several operators measure several items: the items, the
 * operators, operators treating items differently, and measuring again.
 *
 * <p>{@code value = item + operator (+ operator·item) + error}, all at random. Block is the item,
 * level the operator. Variances by equating sums of squares to their expectations (C. R. Henderson,
 * Biometrics 9 (1953) 226–252, method 3; for balanced layouts the usual analysis-of-variance
 * estimates, as in S. R. Searle, G. Casella and C. E. McCulloch, Variance Components, 1992,
 * chapters 4 and 5).
 *
 * @param n number of values
 * @param operators how many
 * @param items how many
 * @param operator component between operators
 * @param item component between items
 * @param interaction component of operators treating items differently; null when it was not
 *     separated and is part of the repeatability
 * @param repeat component of measuring again
 */
public record Crossed(
    int n,
    int operators,
    int items,
    Component operator,
    Component item,
    @Nullable Component interaction,
    Component repeat) {

  /**
   * Components without interaction, from any layout that hangs together.
   *
   * @param responses block is the item, level the operator
   * @return null with fewer than two operators or items, when some operators share no item with the
   *     others, or without degrees of freedom for the error
   */
  public static @Nullable Crossed additive(List<Response> responses) {
    Layout layout = new Layout(responses);
    if (layout.levels.size() < 2 || layout.blocks.size() < 2 || layout.groups > 1) {
      return null;
    }
    WithinBlocks byOperator = new WithinBlocks(layout);
    if (byOperator.dfError < 1) {
      return null;
    }
    Layout turned = new Layout(turned(responses));
    WithinBlocks byItem = new WithinBlocks(turned);
    double error = byOperator.ssError / byOperator.dfError;
    return new Crossed(
        responses.size(),
        layout.levels.size(),
        layout.blocks.size(),
        component(layout, byOperator, error),
        component(turned, byItem, error),
        null,
        new Component(error, byOperator.dfError));
  }

  private static Component component(Layout layout, WithinBlocks fit, double error) {
    double weight = 0;
    Cells cells = layout.cells;
    for (int i = 0; i < cells.size(); i++) {
      double n = cells.n(i);
      weight += n - n * n / fit.blockSize[cells.block(i)];
    }
    return new Component((fit.ssLevels - fit.dfLevels * error) / weight, fit.dfLevels);
  }

  /**
   * Components with interaction, from a full layout: every operator measured every item equally
   * often, at least twice.
   *
   * @param responses block is the item, level the operator
   * @return null when the layout is not such
   */
  public static @Nullable Crossed withInteraction(List<Response> responses) {
    Layout layout = new Layout(responses);
    int o = layout.levels.size();
    int i = layout.blocks.size();
    Cells cells = layout.cells;
    int r = cells.n(0);
    boolean full =
        cells.size() == o * i
            && IntStream.range(0, cells.size()).allMatch(cell -> cells.n(cell) == r);
    if (!full || r < 2 || o < 2 || i < 2) {
      return null;
    }
    WithinBlocks byOperator = new WithinBlocks(layout);
    WithinBlocks byItem = new WithinBlocks(new Layout(turned(responses)));
    int dfBoth = (o - 1) * (i - 1);
    int dfRepeat = o * i * (r - 1);
    double repeat = byOperator.ssPure / dfRepeat;
    double both = Math.max(0, byOperator.ssError - byOperator.ssPure) / dfBoth;
    return new Crossed(
        responses.size(),
        o,
        i,
        new Component((byOperator.ssLevels / (o - 1) - both) / ((double) i * r), o - 1),
        new Component((byItem.ssLevels / (i - 1) - both) / ((double) o * r), i - 1),
        new Component((both - repeat) / r, dfBoth),
        new Component(repeat, dfRepeat));
  }

  private static List<Response> turned(List<Response> responses) {
    return responses.stream().map(Response::turned).toList();
  }

  /** Standard deviation of measuring the same item again, same operator. */
  public double repeatabilitySd() {
    return repeat.sd();
  }

  /** Standard deviation of another operator measuring the same item, repeatability included. */
  public double reproducibilitySd() {
    double between = interaction == null ? 0 : interaction.variance();
    return Math.sqrt(repeat.variance() + operator.variance() + between);
  }
}
