package walebook.desk.lessons;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import javafx.scene.control.TableView;
import javafx.scene.layout.VBox;
import walebook.act.lesson.ReadLessons;
import walebook.desk.common.ColumnTable;
import walebook.desk.common.Texts;
import walebook.desk.common.WrappedCell;
import walebook.record.ReadingLine;
import walebook.words.Words;

/** Who is to measure what, and how many of the readings are made: a cloth along a grain a row. */
final class ReadingsPlanPane extends VBox {
  private static final int ROWS = 24;

  private final Words words;
  private final ReadLessons.ClassPlan plan;

  /** A cloth for somebody to measure; {@code nth} counts from 1. */
  record Row(String student, int nth, ReadingLine line) {}

  ReadingsPlanPane(Words words, ReadLessons.ClassPlan plan) {
    super(8);
    this.words = words;
    this.plan = plan;
    ColumnTable<Row> table = new ColumnTable<>();
    table.setAccessibleText(words.say("desk.lessons.plan.title", plan.lesson().title()));
    table.setColumnResizePolicy(TableView.CONSTRAINED_RESIZE_POLICY_ALL_COLUMNS);
    table
        .words(words.say("desk.lessons.col.student"), 8, Row::student)
        .setCellFactory(WrappedCell::new);
    table.words(words.say("desk.lessons.col.nth"), 3, row -> String.valueOf(row.nth()));
    table
        .words(words.say("desk.lessons.col.cloth"), 10, this::cloth)
        .setCellFactory(WrappedCell::new);
    table
        .words(words.say("desk.lessons.col.grain"), 10, this::grain)
        .setCellFactory(WrappedCell::new);
    table
        .words(words.say("desk.lessons.col.readings"), 6, this::done)
        .setCellFactory(WrappedCell::new);
    table.getItems().setAll(rows(plan));
    table.asHighAs(ROWS);
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

  static List<Row> rows(ReadLessons.ClassPlan plan) {
    List<Row> rows = new ArrayList<>();
    for (ReadLessons.Part part : plan.parts()) {
      int nth = 0;
      for (ReadingLine line : part.readings()) {
        rows.add(new Row(part.name(), ++nth, line));
      }
    }
    return rows;
  }

  private String cloth(Row row) {
    UUID cloth = row.line().planned().clothId();
    String name = cloth == null ? "" : plan.names().of(cloth);
    return row.line().planned().control()
        ? words.say("desk.lessons.plan.readings-control", name)
        : name;
  }

  private String grain(Row row) {
    return words.say("desk.today.grain." + row.line().planned().grain().key());
  }

  private String done(Row row) {
    int of = row.line().planned().repeats();
    return row.line().isDone()
        ? words.say("desk.lessons.plan.readings-all", of)
        : words.say("desk.lessons.plan.readings-some", row.line().done(), of);
  }
}
