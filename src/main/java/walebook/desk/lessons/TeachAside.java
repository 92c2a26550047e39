package walebook.desk.lessons;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import walebook.desk.common.Texts;
import walebook.lesson.LessonPack;
import walebook.words.Words;

/**
 * For the speaker: what to say when the step in hand goes wrong, then what else may, and what to
 * take care of.
 */
final class TeachAside extends ScrollPane {
  private final VBox lines = new VBox();

  TeachAside(Words words, TeachViewModel model) {
    lines.getStyleClass().add("teach-aside");
    List<String> here = model.troubleHere();
    if (here.isEmpty()) {
      lines.getChildren().add(Texts.text(words.say("desk.lessons.teach.trouble-none")));
    }
    part(words.say("desk.lessons.teach.trouble-here"), here);
    part(words.say("desk.lessons.teach.trouble-elsewhere"), model.troubleElsewhere());
    for (LessonPack.PackCaution each : model.pack().teaching().cautions()) {
      Label caution = Texts.text(words.say("desk.common.caution", each.says()), "caution");
      caution.setMaxWidth(Double.MAX_VALUE);
      lines.getChildren().add(caution);
    }
    setContent(lines);
    setFitToWidth(true);
    setHbarPolicy(ScrollBarPolicy.NEVER);
    getStyleClass().add("teach-aside-scroll");
  }

  private void part(String title, List<String> says) {
    if (!says.isEmpty()) {
      lines.getChildren().add(Texts.text(title, "strong"));
      says.forEach(each -> lines.getChildren().add(Texts.text("• " + each)));
    }
  }
}
