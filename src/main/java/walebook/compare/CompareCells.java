package walebook.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import walebook.statistics.Additive;
import walebook.statistics.Counted;
import walebook.statistics.Proportion;
import walebook.statistics.Summary;

/**
 * Compares settings whose values are together, wherever these come from: {@link CompareFairly} has
 * the single pieces, {@link FairTally} has let them go.
 *
 * @param cells by levels, in their order
 */
record CompareCells(FairQuestion question, Settings settings, Map<List<String>, Cell> cells) {
  private static final char BETWEEN = '\u001f';

  /**
   * What one setting has.
   *
   * @param values that are known; 1 and 0 for a rate
   * @param lowerBounds values of pieces that only held
   * @param raw of the values; null for a rate, and where a piece only held
   * @param dots the single pieces, the least value first; none where they are not kept
   */
  record Cell(
      Counted values, Counted lowerBounds, int students, @Nullable Summary raw, List<Dot> dots) {}

  /** How many cloths, pieces and students count, and how many pieces do not, and why. */
  record Count(int cloths, int pieces, int students, int setAside, int without, int noStretch) {}

  /** Fits the model over settings of which every value is known. */
  interface Fit {
    /**
     * Fits it.
     *
     * @param settings at least one
     * @param each confidence of every difference
     */
    Additive of(List<List<String>> settings, double each);
  }

  /**
   * The comparison.
   *
   * @param sewers of some settings, in the order of their names
   * @param measuring what measuring alone makes; null when not known
   */
  FairComparison compare(
      Fit fit,
      Function<List<List<String>>, List<String>> sewers,
      Count count,
      @Nullable MeasuringError measuring) {
    Ground ground = new Ground(settings.telling());
    Additive model = model(fit, ground);
    List<FairRow> rows = rows(model);
    return new FairComparison(
        question,
        settings.telling(),
        settings.same(),
        rows,
        ground.shared(),
        model == null ? List.of() : groups(model, ground, sewers),
        ComparePairs.of(rows, ground, question, model, measuring),
        count.cloths,
        count.pieces,
        count.students,
        count.setAside,
        count.without,
        count.noStretch,
        model == null ? null : model.residualSd(),
        model == null ? null : model.additivity(),
        measuring);
  }

  static String name(List<String> levels) {
    return String.join(String.valueOf(BETWEEN), levels);
  }

  /** The model over settings of which every value is known; null when there are none. */
  private @Nullable Additive model(Fit fit, Ground ground) {
    List<List<String>> known =
        question.outcome().isRate()
            ? List.of()
            : cells.entrySet().stream()
                .filter(cell -> cell.getValue().lowerBounds.isEmpty())
                .map(Map.Entry::getKey)
                .toList();
    int pairs = Math.max(1, ground.pairs(cells.keySet()));
    return known.isEmpty() ? null : fit.of(known, 1 - (1 - question.confidence()) / pairs);
  }

  private List<FairRow> rows(@Nullable Additive model) {
    double all = 1 - (1 - question.confidence()) / Math.max(1, cells.size());
    Outcome outcome = question.outcome();
    OnScale scale = OnScale.of(outcome);
    List<FairRow> rows = new ArrayList<>();
    cells.forEach(
        (levels, cell) ->
            rows.add(
                new FairRow(
                    levels,
                    cell.values,
                    cell.lowerBounds,
                    cell.students,
                    cell.dots,
                    cell.raw,
                    model == null ? null : scale.cut(model.mean(name(levels))),
                    outcome.isOfSeam() ? Lasting.of(cell.values, cell.lowerBounds, all) : null,
                    outcome.isOfSeam() || outcome.isRate() ? held(cell) : null)));
    return rows;
  }

  private Proportion held(Cell cell) {
    int held = question.outcome().isRate() ? cell.values.timesOf(1) : cell.lowerBounds.n();
    return new Proportion(held, cell.values.n() + cell.lowerBounds.n());
  }

  private List<FairComparison.Group> groups(
      Additive model, Ground ground, Function<List<List<String>>, List<String>> sewers) {
    List<FairComparison.Group> groups = new ArrayList<>();
    for (List<String> linked : model.groups()) {
      Map<String, List<List<String>>> byCloth = new LinkedHashMap<>();
      for (List<String> levels : cells.keySet()) {
        if (linked.contains(name(levels))) {
          byCloth.computeIfAbsent(ground.cloth(levels), key -> new ArrayList<>()).add(levels);
        }
      }
      byCloth.forEach(
          (cloth, some) -> groups.add(new FairComparison.Group(cloth, some, sewers.apply(some))));
    }
    return groups;
  }
}
