package walebook.desk.lessons;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import javafx.scene.control.TableView;
import javafx.scene.layout.VBox;
import walebook.act.lesson.AskedInWords;
import walebook.act.lesson.ReadLessons;
import walebook.desk.common.ColumnTable;
import walebook.desk.common.Texts;
import walebook.desk.common.WrappedCell;
import walebook.lesson.PlanFairness;
import walebook.record.PieceCode;
import walebook.record.PlannedPiece;
import walebook.tables.SharedTables;
import walebook.words.Words;

/** Who is to sew what: a piece a row. */
final class PlanPane extends VBox {
  private static final int ROWS = 24;

  private final Words words;
  private final ReadLessons.ClassPlan plan;
  private final AskedInWords asked;

  PlanPane(Words words, ReadLessons.ClassPlan plan, SharedTables tables) {
    super(8);
    this.words = words;
    this.plan = plan;
    this.asked =
        new AskedInWords(
            words,
            tables.stitchTypes(),
            rows(plan).stream().map(each -> each.piece().asked()).toList());
    if (plan.parts().isEmpty()) {
      getChildren().setAll(Texts.text(words.say("desk.lessons.plan.none")));
      return;
    }
    if (plan.isMeasured()) {
      getChildren().add(new ReadingsPlanPane(words, plan));
    }
    if (plan.isSewn()) {
      sewn();
    }
  }

  private void sewn() {
    ColumnTable<Row> table = new ColumnTable<>();
    table.setAccessibleText(words.say("desk.lessons.plan.title", plan.lesson().title()));
    // The columns share the room there is: nothing is ever off to the side.
    table.setColumnResizePolicy(TableView.CONSTRAINED_RESIZE_POLICY_ALL_COLUMNS);
    table
        .words(words.say("desk.lessons.col.student"), 8, Row::student)
        .setCellFactory(WrappedCell::new);
    table.words(words.say("desk.lessons.col.nth"), 3, row -> String.valueOf(row.nth()));
    table
        .words(words.say("desk.lessons.col.code"), 6, row -> PieceCode.spoken(row.piece().code()))
        .setCellFactory(WrappedCell::new);
    table
        .words(words.say("desk.lessons.col.cloth"), 9, this::cloth)
        .setCellFactory(WrappedCell::new);
    table
        .words(words.say("desk.lessons.col.settings"), 12, this::settings)
        .setCellFactory(WrappedCell::new);
    table.words(words.say("desk.lessons.col.done"), 4, this::done).setCellFactory(WrappedCell::new);
    table.getItems().setAll(rows(plan));
    table.asHighAs(ROWS);
    getChildren().addAll(Texts.caption(words.say("desk.lessons.plan.note")), table);
    PlanFairness fairness = plan.fairness();
    if (fairness != null) {
      getChildren().add(Texts.text(words.say("desk.lessons.plan.fairness"), "strong"));
      fairness.says().forEach(each -> getChildren().add(Texts.text(words.say(each))));
    }
  }

  /** A piece in somebody's hands; {@code nth} counts from 1. */
  record Row(String student, int nth, PlannedPiece piece) {}

  static List<Row> rows(ReadLessons.ClassPlan plan) {
    List<Row> rows = new ArrayList<>();
    for (ReadLessons.Part part : plan.parts()) {
      int nth = 0;
      for (PlannedPiece piece : part.pieces()) {
        rows.add(new Row(part.name(), ++nth, piece));
      }
    }
    return rows;
  }

  private String cloth(Row row) {
    UUID cloth = row.piece().clothId();
    return cloth == null ? "" : plan.names().of(cloth);
  }

  private String done(Row row) {
    return plan.done().contains(row.piece().id()) ? words.say("desk.lessons.plan.done") : "";
  }

  private String settings(Row row) {
    return asked.says(row.piece().asked());
  }
}
