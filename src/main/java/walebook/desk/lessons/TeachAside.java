package walebook.desk.lessons;

import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import walebook.desk.common.Texts;
import walebook.lesson.LessonPack;
import walebook.words.Words;

/** For the speaker: what to take care of, and what to say when it goes wrong. */
final class TeachAside extends ScrollPane {
  TeachAside(Words words, LessonPack pack) {
    VBox lines = new VBox();
    lines.getStyleClass().add("teach-aside");
    for (LessonPack.PackCaution each : pack.teaching().cautions()) {
      Label caution = Texts.text(words.say("desk.common.caution", each.says()), "caution");
      caution.setMaxWidth(Double.MAX_VALUE);
      lines.getChildren().add(caution);
    }
    if (!pack.teaching().trouble().isEmpty()) {
      lines.getChildren().add(Texts.text(words.say("desk.lessons.trouble"), "strong"));
    }
    pack.teaching().trouble().forEach(each -> lines.getChildren().add(Texts.text(each.says())));
    setContent(lines);
    setFitToWidth(true);
    setHbarPolicy(ScrollBarPolicy.NEVER);
    getStyleClass().add("teach-aside-scroll");
  }
}
