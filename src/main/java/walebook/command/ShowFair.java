package walebook.command;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ObjectNode;
import walebook.act.classroom.CompareFair;
import walebook.act.classroom.SettingWords;
import walebook.compare.Comparison;
import walebook.compare.Dot;
import walebook.compare.FactorTables;
import walebook.compare.FairComparison;
import walebook.compare.FairFindings;
import walebook.compare.FairPair;
import walebook.compare.FairRow;
import walebook.compare.Lasting;
import walebook.compare.Outcome;
import walebook.quantity.Show;
import walebook.record.PieceCode;
import walebook.statistics.Interval;
import walebook.words.Words;
import walebook.working.Message;

/** A fair comparison in plain text. */
final class ShowFair {
  private final Words words;
  private final SettingWords settings;
  private final boolean pValues;

  ShowFair(Words words, SettingWords settings, boolean pValues) {
    this.words = words;
    this.settings = settings;
    this.pValues = pValues;
  }

  /** The sentences of a comparison, worded. */
  List<String> says(FairComparison found) {
    List<String> says = new ArrayList<>();
    for (Message each :
        FairFindings.of(found, levels -> settings.setting(found.factors(), levels))) {
      says.add(words.say(each));
    }
    return says;
  }

  ObjectNode json(CompareFair.Found found, @Nullable FactorTables tables) {
    return new FairJson(pValues).of(found, tables, says(found.comparison()));
  }

  String text(CompareFair.Found found, @Nullable FactorTables tables) {
    FairComparison comparison = found.comparison();
    List<String> parts = new ArrayList<>();
    parts.add(title(words, comparison.question().outcome(), comparison.same()));
    parts.add(String.join(System.lineSeparator(), says(comparison)));
    if (!comparison.isEmpty()) {
      parts.add(rows(comparison));
    }
    if (!comparison.pairs().isEmpty()) {
      parts.add(pairs(comparison));
      if (pValues) {
        parts.add(words.say("command.say.p-holm"));
      }
    }
    if (tables != null) {
      tables.single().forEach(one -> parts.add(rows(one)));
      tables.pairs().forEach(grid -> parts.add(grid(grid)));
    }
    if (!found.standouts().best().isEmpty()) {
      parts.add(
          words.say(
              "command.say.standouts",
              codes(found.standouts().best()),
              codes(found.standouts().worst())));
    }
    if (!found.standouts().unseen().isEmpty()) {
      parts.add(words.say("command.say.standouts-odd", codes(found.standouts().unseen())));
    }
    return String.join(System.lineSeparator().repeat(2), parts);
  }

  /** What is compared in, and what all pieces have alike. */
  static String title(Words words, Outcome in, List<Comparison.FixedLevel> alike) {
    String same = new SettingWords(words).same(alike);
    String outcome = words.say("compare.outcome." + in.key());
    return same.isEmpty() ? outcome : words.say("command.say.same-in-all", outcome, same);
  }

  private String rows(FairComparison comparison) {
    Outcome outcome = comparison.question().outcome();
    List<String> header =
        new ArrayList<>(
            List.of(
                words.say("command.column.setting"),
                words.say("command.column.pieces"),
                words.say("command.column.students")));
    if (!outcome.isRate()) {
      header.add(words.say("command.column.raw-mean"));
      header.add(words.say("command.column.adjusted"));
      header.add(words.say("command.column.interval"));
    }
    if (outcome.isOfSeam()) {
      header.add(words.say("command.column.half-by"));
    }
    if (outcome.isOfSeam() || outcome.isRate()) {
      header.add(words.say("command.column.held"));
      header.add(words.say("command.column.held-interval"));
    }
    Table table = new Table(header);
    for (FairRow row : comparison.rows()) {
      table.row(cells(row, comparison));
    }
    return table.toString();
  }

  private List<String> cells(FairRow row, FairComparison comparison) {
    Outcome outcome = comparison.question().outcome();
    List<String> cells = new ArrayList<>();
    cells.add(settings.setting(comparison.factors(), row.levels()));
    cells.add(String.valueOf(row.pieces()));
    cells.add(String.valueOf(row.students()));
    if (!outcome.isRate()) {
      cells.add(number(row.raw() == null ? null : Double.valueOf(row.raw().mean())));
      cells.add(number(row.adjusted() == null ? null : Double.valueOf(row.adjusted().mean())));
      cells.add(interval(row.adjusted() == null ? null : row.adjusted().interval(), 1));
    }
    if (outcome.isOfSeam()) {
      Lasting lasting = row.lasting();
      cells.add(number(lasting == null ? null : lasting.median()));
    }
    if (outcome.isOfSeam() || outcome.isRate()) {
      cells.add(row.held() == null ? "–" : String.valueOf(row.held().count()));
      cells.add(interval(row.heldInterval(comparison.question().confidence()), 100));
    }
    return cells;
  }

  private String pairs(FairComparison comparison) {
    List<String> header =
        new ArrayList<>(
            List.of(
                words.say("command.column.first"),
                words.say("command.column.second"),
                words.say("command.column.difference"),
                words.say("command.column.limits"),
                words.say("command.column.can-be-said")));
    if (pValues) {
      header.add(words.say("command.column.p-holm"));
    }
    Table table = new Table(header);
    for (FairPair pair : comparison.pairs()) {
      List<String> cells = new ArrayList<>();
      cells.add(settings.setting(comparison.factors(), pair.first()));
      cells.add(settings.setting(comparison.factors(), pair.second()));
      cells.add(number(pair.estimate()));
      cells.add(
          pair.low() == null && pair.high() == null
              ? "–"
              : number(pair.low()) + " … " + number(pair.high()));
      cells.add(verdict(pair.size()));
      if (pValues) {
        cells.add(pair.p() == null ? "–" : Show.fixed(pair.p(), 3));
      }
      table.row(cells);
    }
    return table.toString();
  }

  private String verdict(FairPair.Size size) {
    return words.say(
        switch (size) {
          case MORE -> "compare.size.more";
          case LESS -> "compare.size.less";
          case DIFFERS -> "compare.size.differs";
          case DIFFERS_MAYBE_LITTLE -> "compare.size.maybe";
          case CANT_TELL -> "compare.size.cant-tell";
          case NOT_COMPARABLE -> "compare.size.not-comparable";
        });
  }

  private String grid(FactorTables.Grid grid) {
    List<String> header = new ArrayList<>();
    header.add(settings.factor(grid.row()) + " / " + settings.factor(grid.column()));
    grid.columns().forEach(level -> header.add(settings.level(grid.column(), level)));
    Table table = new Table(header);
    for (String row : grid.rows()) {
      List<String> cells = new ArrayList<>(List.of(settings.level(grid.row(), row)));
      for (String column : grid.columns()) {
        FactorTables.Cell cell = grid.cell(row, column);
        cells.add(cell == null ? "–" : shown(cell) + " (" + cell.pieces() + ")");
      }
      table.row(cells);
    }
    return table.toString();
  }

  /** As in the window: ½ before a median, ≥ before what half of the pieces reach at least. */
  private String shown(FactorTables.Cell cell) {
    Double atLeast = cell.atLeast();
    if (atLeast != null) {
      return words.say("drawing.heat.at-least", number(atLeast));
    }
    boolean half = cell.mean() == null && cell.median() != null;
    String number = number(cell.shown());
    return half ? words.say("drawing.heat.half", number) : number;
  }

  private static String codes(List<Dot> dots) {
    return dots.isEmpty()
        ? "–"
        : String.join(
            ", ",
            dots.stream()
                .map(
                    dot ->
                        PieceCode.spoken(dot.code())
                            + " ("
                            + (dot.atLeast() ? "≥ " : "")
                            + Show.fixed(dot.value(), 1)
                            + ")")
                .toList());
  }

  static String number(@Nullable Double value) {
    return value == null ? "–" : Show.fixed(value, 1);
  }

  static String interval(@Nullable Interval interval, double times) {
    return interval == null
        ? "–"
        : Show.fixed(times * interval.low(), times > 1 ? 0 : 1)
            + " … "
            + Show.fixed(times * interval.high(), times > 1 ? 0 : 1);
  }
}
