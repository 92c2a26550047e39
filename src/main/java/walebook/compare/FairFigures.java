package walebook.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.record.Grain;
import walebook.record.ResultLine;
import walebook.statistics.Additive;
import walebook.statistics.AdjustedMean;
import walebook.statistics.Interval;
import walebook.statistics.Proportion;
import walebook.statistics.Shares;
import walebook.statistics.Summary;

/**
 * Any number of pieces compared with allowance for who sewed what, setting by setting: as {@link
 * CompareFairly} does, without the single pieces and without pairs.
 *
 * @param factors what rows are told apart by; each has more than one level
 * @param rows one for each setting with a value, in the order of its levels
 * @param setAside how many pieces were left out because the tutor set their value aside
 */
public record FairFigures(
    FairQuestion question, List<Factor> factors, List<Row> rows, int setAside) {

  /**
   * One setting.
   *
   * @param levels one for each factor
   * @param bounds how many pieces are only lower bounds
   * @param raw of the values as they are; null for a rate, and where a piece only held
   * @param adjusted freed from who sewed it; null as {@code raw}
   * @param lasting product-limit estimate; null unless the outcome is a seam's
   * @param held how many of those pulled held; null unless the outcome is a seam's or the rate
   */
  public record Row(
      List<String> levels,
      int pieces,
      int students,
      int bounds,
      @Nullable Summary raw,
      @Nullable AdjustedMean adjusted,
      @Nullable Lasting lasting,
      @Nullable Proportion held) {
    public Row {
      levels = List.copyOf(levels);
    }

    /** The middle of what is known: adjusted mean, median or share held in percent, or null. */
    public @Nullable Double middle() {
      return FairRow.middle(adjusted, lasting, held);
    }

    /** Wilson's interval of the share that held, or null. */
    public @Nullable Interval heldInterval(double confidence) {
      return held == null ? null : held.wilson(confidence);
    }
  }

  public FairFigures {
    factors = List.copyOf(factors);
    rows = List.copyOf(rows);
  }

  public boolean isEmpty() {
    return rows.isEmpty();
  }

  /**
   * Compares what was tallied.
   *
   * @param question by factors that a setting tells, not by student; not within machines
   * @param stretches what is known of each cloth's stretch
   */
  public static FairFigures of(
      LineTally tally,
      FairQuestion question,
      Map<UUID, Map<Grain, ClothStretch>> stretches,
      Names names) {
    if (question.withinMachine() || question.factors().contains(Factor.STUDENT)) {
      throw new IllegalArgumentException("single pieces are needed for " + question);
    }
    Map<ResultLine, OutcomeTally> counting = new LinkedHashMap<>();
    int aside = 0;
    for (SettingTally each : tally.settings()) {
      OutcomeTally values = OutcomeTally.of(each, question.outcome(), stretches);
      aside += values.setAside();
      if (values.pieces() > 0) {
        counting.put(each.first(), values);
      }
    }
    Settings settings = Settings.of(List.copyOf(counting.keySet()), question.factors(), names);
    Map<List<String>, OutcomeTally> cells = new LinkedHashMap<>();
    settings
        .cells()
        .forEach(
            (levels, lines) ->
                cells.put(
                    levels, OutcomeTally.together(lines.stream().map(counting::get).toList())));
    Additive model = model(cells, question);
    double all = 1 - (1 - question.confidence()) / Math.max(1, cells.size());
    List<Row> rows = new ArrayList<>();
    cells.forEach((levels, cell) -> rows.add(row(levels, cell, question.outcome(), model, all)));
    return new FairFigures(question, settings.telling(), rows, aside);
  }

  private static Row row(
      List<String> levels,
      OutcomeTally cell,
      Outcome outcome,
      @Nullable Additive model,
      double confidence) {
    boolean rate = outcome.isRate();
    boolean seam = outcome.isOfSeam();
    return new Row(
        levels,
        cell.pieces(),
        cell.hands().size(),
        cell.bounds().n(),
        cell.bounds().isEmpty() && !rate ? cell.exact().moments().summary() : null,
        model == null ? null : OnScale.of(outcome).cut(model.mean(CompareCells.name(levels))),
        seam ? Lasting.of(cell.exact(), cell.bounds(), confidence) : null,
        seam || rate ? new Proportion(cell.held(), cell.pieces()) : null);
  }

  /** The model over settings of which every value is known; null when there are none. */
  private static @Nullable Additive model(
      Map<List<String>, OutcomeTally> cells, FairQuestion question) {
    Shares shares = new Shares();
    Map<UUID, Integer> numbers = new LinkedHashMap<>();
    List<String> known = new ArrayList<>();
    if (!question.outcome().isRate()) {
      cells.forEach(
          (levels, cell) -> {
            if (cell.bounds().isEmpty()) {
              cell.hands()
                  .forEach(
                      (student, values) ->
                          shares.add(
                              numbers.computeIfAbsent(student, id -> numbers.size()),
                              known.size(),
                              values));
              known.add(CompareCells.name(levels));
            }
          });
    }
    List<String> students = numbers.keySet().stream().map(UUID::toString).toList();
    return known.isEmpty()
        ? null
        : Additive.ofShares(shares, students, known, question.confidence(), question.confidence());
  }
}
