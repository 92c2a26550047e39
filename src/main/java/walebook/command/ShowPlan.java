package walebook.command;

import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import walebook.act.lesson.AskedInWords;
import walebook.act.lesson.ReadLessons;
import walebook.lesson.PlanFairness;
import walebook.record.PieceCode;
import walebook.record.PlannedPiece;
import walebook.record.PlannedReading;
import walebook.record.ReadingLine;
import walebook.tables.SharedTables;
import walebook.words.Words;

/** A lesson's plan: who sews or measures what, and how fair that is. */
final class ShowPlan {
  private ShowPlan() {}

  static String text(ReadLessons.ClassPlan plan, Words words) {
    List<String> lines = new ArrayList<>();
    lines.add(words.say("command.say.plan", plan.lesson().title(), plan.lesson().taughtOn()));
    if (plan.isSewn()) {
      lines.add("");
      lines.add(pieces(plan, words).toString());
    }
    if (plan.isMeasured()) {
      lines.add("");
      lines.add(readings(plan, words).toString());
    }
    PlanFairness fairness = plan.fairness();
    if (fairness != null) {
      lines.add("");
      fairness.says().forEach(each -> lines.add(words.say(each)));
    }
    return String.join(System.lineSeparator(), lines);
  }

  private static Table readings(ReadLessons.ClassPlan plan, Words words) {
    Table table =
        new Table(
            List.of(
                words.say("command.column.student"),
                words.say("command.column.place"),
                words.say("command.column.cloth"),
                words.say("command.column.grain"),
                words.say("command.column.measured")));
    for (ReadLessons.Part part : plan.parts()) {
      for (ReadingLine each : part.readings()) {
        PlannedReading planned = each.planned();
        table.row(
            List.of(
                part.name(),
                String.valueOf(planned.place()),
                planned.clothId() == null ? "" : plan.names().of(planned.clothId()),
                words.say("common.choice." + planned.grain().key()),
                words.say("command.say.of", each.done(), planned.repeats())));
      }
    }
    return table;
  }

  private static Table pieces(ReadLessons.ClassPlan plan, Words words) {
    AskedInWords asked =
        new AskedInWords(
            words,
            SharedTables.read().stitchTypes(),
            plan.parts().stream()
                .flatMap(each -> each.pieces().stream())
                .map(PlannedPiece::asked)
                .toList());
    Table table =
        new Table(
            List.of(
                words.say("command.column.student"),
                words.say("command.column.place"),
                words.say("command.column.code"),
                words.say("command.column.cloth"),
                words.say("command.column.settings"),
                words.say("command.column.logged")));
    for (ReadLessons.Part part : plan.parts()) {
      for (PlannedPiece each : part.pieces()) {
        table.row(
            List.of(
                part.name(),
                String.valueOf(each.place()),
                PieceCode.spoken(each.code()),
                each.clothId() == null ? "" : plan.names().of(each.clothId()),
                asked.says(each.asked()),
                plan.done().contains(each.id()) ? "✓" : ""));
      }
    }
    return table;
  }

  static ObjectNode json(ReadLessons.ClassPlan plan, Words words, int added, int back) {
    ObjectNode json = Json.object();
    json.put("lesson", plan.lesson().title());
    Json.date(json, "date", plan.lesson().taughtOn());
    json.put("added", added);
    json.put("takenBack", back);
    ArrayNode students = json.putArray("students");
    for (ReadLessons.Part part : plan.parts()) {
      ObjectNode student = students.addObject();
      student.put("name", part.name());
      ArrayNode pieces = student.putArray("pieces");
      for (PlannedPiece each : part.pieces()) {
        ObjectNode piece = pieces.addObject();
        piece.put("place", each.place());
        piece.put("code", each.code());
        piece.put("control", each.control());
        piece.put("cell", each.cell());
        piece.put("cloth", each.clothId() == null ? null : plan.names().of(each.clothId()));
        piece.put("logged", plan.done().contains(each.id()));
      }
      ArrayNode readings = student.putArray("readings");
      for (ReadingLine each : part.readings()) {
        PlannedReading planned = each.planned();
        ObjectNode reading = readings.addObject();
        reading.put("place", planned.place());
        reading.put("control", planned.control());
        reading.put("slot", planned.slot());
        reading.put("cloth", planned.clothId() == null ? null : plan.names().of(planned.clothId()));
        Json.key(reading, "grain", planned.grain());
        reading.put("asked", planned.repeats());
        reading.put("measured", each.done());
      }
    }
    PlanFairness fairness = plan.fairness();
    json.set("fairness", fairness == null ? null : fairness(fairness, words));
    return json;
  }

  private static ObjectNode fairness(PlanFairness fairness, Words words) {
    ObjectNode json = Json.object();
    json.put("combinations", fairness.sewn());
    json.put("unsewn", fairness.unsewn());
    json.put("pieces", fairness.pieces());
    json.put("leastSewn", fairness.leastSewn());
    json.put("mostSewn", fairness.mostSewn());
    json.put("leastTogether", fairness.leastTogether());
    json.put("mostTogether", fairness.mostTogether());
    json.put("connected", fairness.efficiency().connected());
    json.put("efficiency", fairness.efficiency().average());
    json.put("bound", fairness.efficiency().bound());
    ArrayNode says = json.putArray("says");
    fairness.says().forEach(each -> says.add(words.say(each)));
    return json;
  }
}
