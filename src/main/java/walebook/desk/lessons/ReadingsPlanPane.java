package walebook.desk.lessons;

import java.util.UUID;
import javafx.scene.control.TableView;
import javafx.scene.layout.VBox;
import walebook.act.lesson.ReadLessons;
import walebook.desk.common.Texts;
import walebook.record.ReadingLine;
import walebook.words.Words;

/** Who is to measure what, and how many of the readings are made: a cloth along a grain a row. */
final class ReadingsPlanPane extends VBox {
  private final Words words;
  private final ReadLessons.ClassPlan plan;

  ReadingsPlanPane(Words words, ReadLessons.ClassPlan plan) {
    super(8);
    this.words = words;
    this.plan = plan;
    TableView<?> table =
        new DealtTable<>(words, plan, ReadLessons.Part::readings)
            .column(words.say("desk.lessons.col.cloth"), 10, this::cloth)
            .column(words.say("desk.lessons.col.grain"), 10, this::grain)
            .column(words.say("desk.lessons.col.readings"), 6, this::done)
            .table();
    int asked = plan.parts().stream().mapToInt(ReadingsPlanPane::asked).sum();
    int done = plan.parts().stream().mapToInt(ReadingsPlanPane::done).sum();
    getChildren()
        .setAll(
            Texts.text(words.say("desk.lessons.plan.readings", done, asked), "strong"),
            Texts.caption(words.say("desk.lessons.plan.readings-note")),
            table);
  }

  private static int asked(ReadLessons.Part part) {
    return part.readings().stream().mapToInt(each -> each.planned().repeats()).sum();
  }

  private static int done(ReadLessons.Part part) {
    return part.readings().stream().mapToInt(ReadingLine::done).sum();
  }

  private String cloth(ReadingLine line) {
    UUID cloth = line.planned().clothId();
    String name = cloth == null ? "" : plan.names().of(cloth);
    return line.planned().control() ? words.say("desk.lessons.plan.readings-control", name) : name;
  }

  private String grain(ReadingLine line) {
    return words.say("desk.today.grain." + line.planned().grain().key());
  }

  private String done(ReadingLine line) {
    int of = line.planned().repeats();
    return line.isDone()
        ? words.say("desk.lessons.plan.readings-all", of)
        : words.say("desk.lessons.plan.readings-some", line.done(), of);
  }
}
