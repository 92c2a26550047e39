package walebook.desk.lessons;

import java.util.UUID;
import javafx.scene.control.TableView;
import javafx.scene.layout.VBox;
import walebook.act.lesson.AskedInWords;
import walebook.act.lesson.ReadLessons;
import walebook.desk.common.Texts;
import walebook.lesson.PlanFairness;
import walebook.record.PieceCode;
import walebook.record.PlannedPiece;
import walebook.tables.SharedTables;
import walebook.words.Words;

/** Who is to sew what: a piece a row. */
final class PlanPane extends VBox {
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
            plan.parts().stream()
                .flatMap(part -> part.pieces().stream())
                .map(PlannedPiece::asked)
                .toList());
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
    TableView<?> table =
        new DealtTable<>(words, plan, ReadLessons.Part::pieces)
            .column(words.say("desk.lessons.col.code"), 6, piece -> PieceCode.spoken(piece.code()))
            .column(words.say("desk.lessons.col.cloth"), 9, this::cloth)
            .column(words.say("desk.lessons.col.settings"), 12, piece -> asked.says(piece.asked()))
            .column(words.say("desk.lessons.col.done"), 4, this::done)
            .table();
    getChildren().addAll(Texts.caption(words.say("desk.lessons.plan.note")), table);
    PlanFairness fairness = plan.fairness();
    if (fairness != null) {
      getChildren().add(Texts.text(words.say("desk.lessons.plan.fairness"), "strong"));
      fairness.says().forEach(each -> getChildren().add(Texts.text(words.say(each))));
    }
  }

  private String cloth(PlannedPiece piece) {
    UUID cloth = piece.clothId();
    return cloth == null ? "" : plan.names().of(cloth);
  }

  private String done(PlannedPiece piece) {
    return plan.done().contains(piece.id()) ? words.say("desk.lessons.plan.done") : "";
  }
}
