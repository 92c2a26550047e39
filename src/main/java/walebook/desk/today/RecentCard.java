package walebook.desk.today;

import javafx.scene.control.Hyperlink;
import javafx.scene.layout.VBox;
import walebook.desk.common.Texts;
import walebook.desk.common.VerdictBadge;
import walebook.words.Words;

/** My pieces of late with their verdicts. */
final class RecentCard extends VBox {
  RecentCard(Words words, TodayViewModel model, MyDay day) {
    getStyleClass().add("recent-pieces");
    getChildren().add(Texts.section(words.say("desk.today.recent-title")));
    if (day.recent().isEmpty()) {
      getChildren().add(Texts.text(words.say("desk.today.recent-none"), "soft"));
    }
    for (RecentPiece each : day.recent()) {
      Hyperlink code = new Hyperlink(each.code());
      code.setAccessibleText(words.say("desk.today.look") + " " + each.code());
      code.setOnAction(pressed -> model.open(each.id()));
      VBox piece = new VBox(code, Texts.text(each.says()), new VerdictBadge(words, each.verdict()));
      piece.getStyleClass().add("recent-piece");
      getChildren().add(piece);
    }
  }
}
