package walebook.command;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import walebook.act.decide.AllCalculations;
import walebook.problem.Answer;
import walebook.quantity.Unit;
import walebook.tables.SharedTables;
import walebook.working.Calculation;
import walebook.working.Input;
import walebook.working.Working;

/** Calculations by name, each with its working. */
final class WorkJobs {
  private WorkJobs() {}

  static List<Job> all() {
    List<Calculation> calculations = AllCalculations.list(SharedTables.read());
    List<Job> jobs = new ArrayList<>();
    jobs.add(
        Job.shows(
            "work list",
            "command.work.list",
            (typed, terminal) -> list(typed, terminal, calculations)));
    for (Calculation each : calculations) {
      jobs.add(job(each));
    }
    return jobs;
  }

  private static Job job(Calculation calculation) {
    List<Option> options = new ArrayList<>();
    for (Input each : calculation.inputs()) {
      String label = each.kind().name();
      options.add(new Option(each.name(), label, each.says().key(), each.required(), false));
    }
    return new Job(
        "work " + calculation.name(),
        calculation.says().key(),
        options,
        List.of(),
        true,
        (typed, terminal) -> work(typed, terminal, calculation));
  }

  private static Exit work(Typed typed, Terminal terminal, Calculation calculation) {
    Map<String, String> inputs = new HashMap<>();
    for (Input each : calculation.inputs()) {
      String text = typed.text(each.name());
      if (text != null) {
        inputs.put(each.name(), text);
      }
    }
    Answer<Working> answer = calculation.runTyped(inputs, Unit.MM);
    Working working = Refused.unless(answer);
    terminal
        .out()
        .println(
            typed.has("json")
                ? Json.write(WorkingJson.of(working, terminal.words()))
                : WorkingText.of(working, terminal.words()));
    // What is only unlikely is answered and asked about: a girth of 90 mm may have been 90 cm.
    RunCommand.complain(terminal, typed.has("json"), answer.problems(), false);
    return Exit.DONE;
  }

  private static Exit list(Typed typed, Terminal terminal, List<Calculation> calculations) {
    Table table =
        new Table(
            List.of(
                terminal.say("command.column.calculation"),
                terminal.say("command.column.says"),
                terminal.say("command.column.inputs")));
    ArrayNode json = Json.array();
    for (Calculation each : calculations) {
      List<String> names = each.inputs().stream().map(Input::name).toList();
      table.row(List.of(each.name(), terminal.words().say(each.says()), String.join(" ", names)));
      ObjectNode node = json.addObject();
      node.put("name", each.name());
      node.put("says", terminal.words().say(each.says()));
      ArrayNode inputs = node.putArray("inputs");
      for (Input input : each.inputs()) {
        ObjectNode one = inputs.addObject();
        one.put("name", input.name());
        one.put("kind", input.kind().name().toLowerCase(java.util.Locale.ROOT));
        one.put("required", input.required());
        one.put("usual", input.usual());
        one.put("says", terminal.words().say(input.says()));
      }
    }
    terminal.out().println(typed.has("json") ? Json.write(json) : table.toString());
    return Exit.DONE;
  }
}
