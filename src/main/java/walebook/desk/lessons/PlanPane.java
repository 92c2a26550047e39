package walebook.desk.lessons;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import javafx.scene.layout.VBox;
import walebook.act.lesson.ReadLessons;
import walebook.desk.common.ColumnTable;
import walebook.desk.common.Texts;
import walebook.lesson.PlanFairness;
import walebook.quantity.Show;
import walebook.record.PieceCode;
import walebook.record.PlannedPiece;
import walebook.seam.StitchType;
import walebook.tables.SharedTables;
import walebook.words.Words;

/** Who is to sew what: a student a row, a piece a column. */
final class PlanPane extends VBox {
  private static final int ROWS = 24;

  private final Words words;
  private final ReadLessons.ClassPlan plan;
  private final SharedTables tables;

  PlanPane(Words words, ReadLessons.ClassPlan plan, SharedTables tables) {
    super(8);
    this.words = words;
    this.plan = plan;
    this.tables = tables;
    if (plan.parts().isEmpty()) {
      getChildren().setAll(Texts.text(words.say("desk.lessons.plan.none")));
      return;
    }
    ColumnTable<ReadLessons.Part> table = new ColumnTable<>();
    table.setAccessibleText(words.say("desk.lessons.plan.title", plan.lesson().title()));
    table.words(words.say("desk.lessons.col.student"), 12, ReadLessons.Part::name);
    int most = plan.parts().stream().mapToInt(each -> each.pieces().size()).max().orElse(0);
    for (int i = 0; i < most; i++) {
      int nth = i;
      table.words(words.say("desk.lessons.col.piece", nth + 1), 29, part -> cell(part, nth));
    }
    table.getItems().setAll(plan.parts());
    table.asHighAs(ROWS);
    getChildren().setAll(Texts.caption(words.say("desk.lessons.plan.note")), table);
    PlanFairness fairness = plan.fairness();
    if (fairness != null) {
      getChildren().add(Texts.text(words.say("desk.lessons.plan.fairness"), "strong"));
      fairness.says().forEach(each -> getChildren().add(Texts.text(words.say(each))));
    }
  }

  private String cell(ReadLessons.Part part, int nth) {
    if (nth >= part.pieces().size()) {
      return "";
    }
    PlannedPiece piece = part.pieces().get(nth);
    List<String> says = new ArrayList<>();
    says.add(stitch(piece.asked().stitchType()));
    Double width = piece.asked().dialWidth();
    Double length = piece.asked().dialLength();
    if (width != null) {
      says.add(words.say("desk.lessons.plan.width", Show.upTo(width, 2)));
    }
    if (length != null) {
      says.add(words.say("desk.lessons.plan.length", Show.upTo(length, 2)));
    }
    UUID cloth = piece.clothId();
    if (cloth != null) {
      says.add(plan.names().of(cloth));
    }
    boolean done = plan.done().contains(piece.id());
    return words.say(
        done ? "desk.lessons.plan.done" : "desk.lessons.plan.open",
        PieceCode.spoken(piece.code()),
        String.join(" · ", says));
  }

  private String stitch(String key) {
    return tables.stitchTypes().stream()
        .filter(each -> each.key().equals(key))
        .map(StitchType::name)
        .findFirst()
        .orElse(key);
  }
}
