package walebook.command;

import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import walebook.act.bring.BringPlan;
import walebook.act.bring.RowFate;
import walebook.act.bring.Spreadsheet;
import walebook.act.bring.SpreadsheetFile;
import walebook.act.bring.Trial;
import walebook.act.bring.match.ColumnMatch;
import walebook.problem.Problem;

/**
 * Shows what the columns were taken for and what became of each row.
 *
 * @param nothingNew whether a column that is left out holds only what the others say
 */
record ShowBring(Terminal terminal, boolean json, IntPredicate nothingNew) {

  void show(SpreadsheetFile file, BringPlan plan, Trial trial, boolean dry) {
    if (json) {
      terminal.out().println(Json.write(node(file, plan, trial)));
      return;
    }
    remarks(file, plan.sheet()).forEach(each -> terminal.err().println(terminal.words().say(each)));
    Table columns =
        new Table(
            List.of(
                terminal.say("command.column.column"),
                terminal.say("command.column.header"),
                terminal.say("command.column.holds")));
    for (int i = 0; i < plan.columns().size(); i++) {
      columns.row(
          List.of(
              Spreadsheet.letters(i),
              plan.sheet().headers().get(i),
              holds(plan.columns().get(i), i)));
    }
    terminal.out().println(columns);
    terminal.out().println();
    for (RowFate each : trial.fates()) {
      if (each.isProblem()) {
        terminal
            .out()
            .println(
                terminal.say("command.say.bring-row", each.row(), each.about(), reasons(each)));
      }
    }
    terminal
        .out()
        .println(
            terminal.say(
                "command.say.bring-counts",
                trial.count(RowFate.Fate.NEW),
                trial.count(RowFate.Fate.THERE),
                trial.count(RowFate.Fate.ASKED),
                trial.count(RowFate.Fate.REFUSED)));
    if (dry) {
      terminal.out().println(terminal.say("command.say.bring-tried"));
    } else if (trial.stepId() == null) {
      terminal.out().println(terminal.say("command.say.bring-nothing"));
    } else {
      terminal.out().println(terminal.say("command.say.brought", trial.stepId()));
    }
  }

  private String holds(ColumnMatch match, int column) {
    if (match.isLeftOut()) {
      return whyLeftOut(column);
    }
    return match.field() + (match.unit().isEmpty() ? "" : ":" + match.unit());
  }

  private String whyLeftOut(int column) {
    return terminal.say(
        nothingNew.test(column) ? "command.say.bring-left-own" : "command.say.bring-left");
  }

  private String reasons(RowFate fate) {
    return fate.problems().stream().map(terminal.words()::say).collect(Collectors.joining("; "));
  }

  private static List<Problem> remarks(SpreadsheetFile file, Spreadsheet sheet) {
    return java.util.stream.Stream.concat(file.remarks().stream(), sheet.remarks().stream())
        .distinct()
        .toList();
  }

  private ObjectNode node(SpreadsheetFile file, BringPlan plan, Trial trial) {
    ObjectNode node = Json.object();
    node.put("sheet", plan.sheet().name());
    node.put("step", trial.stepId() == null ? null : trial.stepId().toString());
    node.put("asksDayOrder", trial.needsOrder());
    ArrayNode columns = node.putArray("columns");
    for (int i = 0; i < plan.columns().size(); i++) {
      ObjectNode column = columns.addObject();
      column.put("column", Spreadsheet.letters(i));
      column.put("header", plan.sheet().headers().get(i));
      column.put("field", plan.columns().get(i).field());
      column.put("unit", plan.columns().get(i).unit());
      if (plan.columns().get(i).isLeftOut()) {
        column.put("leftOut", whyLeftOut(i));
      }
    }
    ArrayNode rows = node.putArray("rows");
    for (RowFate each : trial.fates()) {
      ObjectNode row = rows.addObject();
      row.put("row", each.row());
      Json.key(row, "fate", each.fate());
      row.put("about", each.about());
      says(row.putArray("problems"), each.problems());
    }
    says(node.putArray("remarks"), remarks(file, plan.sheet()));
    return node;
  }

  private void says(ArrayNode into, List<Problem> problems) {
    for (Problem each : problems) {
      ObjectNode problem = into.addObject();
      problem.put("code", each.code());
      problem.put("says", terminal.words().say(each));
    }
  }
}
