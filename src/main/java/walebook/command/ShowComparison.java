package walebook.command;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import walebook.act.classroom.SettingWords;
import walebook.compare.Comparison;
import walebook.compare.Factor;
import walebook.compare.SettingRow;
import walebook.quantity.Show;
import walebook.statistics.FiveNumbers;
import walebook.statistics.Interval;
import walebook.statistics.Proportion;
import walebook.words.Words;

/** A class's comparison as a table in plain text, or for programs. */
final class ShowComparison {
  private ShowComparison() {}

  /** One line a combination: how many gave and held, with Wilson's 95 % interval. */
  static String text(Comparison comparison, Words words) {
    if (comparison.isEmpty()) {
      return words.say("command.say.no-pieces");
    }
    SettingWords settings = new SettingWords(words);
    List<Factor> factors = comparison.factors();
    List<String> header = new ArrayList<>();
    factors.forEach(each -> header.add(settings.factor(each)));
    header.add(words.say("command.column.pieces"));
    header.add(words.say("command.column.students"));
    header.add(words.say("command.column.gave"));
    header.add(words.say("command.column.held"));
    header.add(words.say("command.column.held-share"));
    header.add(words.say("command.column.interval"));
    header.add(words.say("command.column.stretch-of-gave"));
    header.add(words.say("command.column.share-of-gave"));
    header.add(words.say("command.column.edge-change"));
    header.add(words.say("command.column.grade"));
    header.add(words.say("command.column.with-fault"));
    Table table = new Table(header);
    for (SettingRow row : comparison.rows()) {
      List<String> cells = new ArrayList<>();
      for (int i = 0; i < factors.size(); i++) {
        cells.add(settings.value(factors.get(i), row.levels().get(i)));
      }
      cells.add(String.valueOf(row.pieces()));
      cells.add(String.valueOf(row.students()));
      cells.add(String.valueOf(row.gave()));
      cells.add(String.valueOf(row.held()));
      cells.add(share(row.heldShare()));
      cells.add(interval(row.heldInterval()));
      cells.add(median(row.stretchOfGave()));
      cells.add(median(row.shareOfGave()));
      cells.add(median(row.edgeChange()));
      cells.add(median(row.grade()));
      cells.add(String.valueOf(row.withFault()));
      table.row(cells);
    }
    StringBuilder text = new StringBuilder();
    text.append(words.say("command.say.compared", comparison.pieces(), comparison.students()));
    if (comparison.setAside() > 0) {
      text.append(System.lineSeparator())
          .append(words.say("compare.found.aside", comparison.setAside()));
    }
    if (comparison.mixesCloths()) {
      text.append(System.lineSeparator())
          .append(words.say("compare.found.cloths-mixed", comparison.cloths()));
    }
    for (Comparison.FixedLevel each : comparison.same()) {
      text.append(System.lineSeparator())
          .append(settings.factor(each.factor()))
          .append(": ")
          .append(settings.value(each.factor(), each.level()));
    }
    return text.append(System.lineSeparator().repeat(2)).append(table).toString();
  }

  private static String share(@Nullable Proportion share) {
    return share == null ? "–" : Show.fixed(100 * share.share(), 0);
  }

  private static String interval(@Nullable Interval interval) {
    return interval == null
        ? "–"
        : Show.fixed(100 * interval.low(), 0) + " – " + Show.fixed(100 * interval.high(), 0);
  }

  private static String median(@Nullable FiveNumbers numbers) {
    return numbers == null ? "–" : Show.fixed(numbers.median(), 1);
  }

  static ObjectNode json(Comparison comparison) {
    ObjectNode json = Json.object();
    json.put("pieces", comparison.pieces());
    json.put("students", comparison.students());
    json.put("cloths", comparison.cloths());
    json.put("setAside", comparison.setAside());
    ArrayNode factors = json.putArray("factors");
    comparison.factors().forEach(each -> factors.add(each.key()));
    ObjectNode same = json.putObject("same");
    comparison.same().forEach(each -> same.put(each.factor().key(), each.level()));
    ArrayNode rows = json.putArray("rows");
    for (SettingRow row : comparison.rows()) {
      ObjectNode node = rows.addObject();
      ObjectNode levels = node.putObject("levels");
      for (int i = 0; i < row.levels().size(); i++) {
        levels.put(comparison.factors().get(i).key(), row.levels().get(i));
      }
      node.put("pieces", row.pieces());
      node.put("students", row.students());
      node.put("gave", row.gave());
      node.put("held", row.held());
      Proportion share = row.heldShare();
      Interval interval = row.heldInterval();
      node.put("heldPercent", share == null ? null : 100 * share.share());
      node.put("heldLowPercent", interval == null ? null : 100 * interval.low());
      node.put("heldHighPercent", interval == null ? null : 100 * interval.high());
      median(node, "medianStretchOfGavePercent", row.stretchOfGave());
      median(node, "medianShareOfGavePercent", row.shareOfGave());
      median(node, "medianEdgeChangePercent", row.edgeChange());
      median(node, "medianGrade", row.grade());
      node.put("withFault", row.withFault());
    }
    return json;
  }

  private static void median(ObjectNode node, String name, @Nullable FiveNumbers numbers) {
    node.put(name, numbers == null ? null : numbers.median());
  }
}
