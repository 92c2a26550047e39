package walebook.desk.lessons;

import java.util.HashMap;
import java.util.Map;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import walebook.desk.common.Board;
import walebook.desk.common.Texts;
import walebook.desk.look.Look;
import walebook.lesson.LessonPack;
import walebook.lesson.LessonText;
import walebook.words.Words;

/** A lesson to read: cautions first, then a card for each step. */
final class LessonPane extends VBox {
  LessonPane(Words words, Look look, LessonPack pack) {
    super(16);
    for (LessonPack.PackCaution each : pack.teaching().cautions()) {
      Label caution = Texts.text(words.say("desk.common.caution", each.says()), "caution");
      caution.setMaxWidth(Double.MAX_VALUE);
      getChildren().add(caution);
    }
    if (!pack.text().opening().isEmpty()) {
      VBox opening = new BlocksPane(pack.files(), pack.text().opening());
      opening.getStyleClass().add("card");
      getChildren().add(opening);
    }
    Map<String, Integer> minutes = new HashMap<>();
    pack.teaching().steps().forEach(each -> minutes.put(each.heading(), each.minutes()));
    for (LessonText.Step step : pack.text().steps()) {
      Integer takes = minutes.get(step.heading());
      VBox card = new VBox(10, Texts.section(step.heading()));
      card.getStyleClass().add("card");
      if (takes != null) {
        card.getChildren().add(Texts.caption(words.say("desk.lessons.minutes", takes)));
      }
      Button large = new Button(words.say("desk.lessons.show-large"));
      large.getStyleClass().add("quiet");
      large.setAccessibleText(words.say("desk.lessons.show-large-says", step.heading()));
      large.setOnAction(
          pressed ->
              new Board(words, look)
                  .show(
                      getScene().getWindow(),
                      Texts.text(step.heading(), "strong"),
                      new BlocksPane(pack.files(), step.blocks())));
      card.getChildren().addAll(new BlocksPane(pack.files(), step.blocks()), large);
      getChildren().add(card);
    }
  }
}
