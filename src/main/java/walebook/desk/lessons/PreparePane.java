package walebook.desk.lessons;

import java.util.List;
import javafx.scene.layout.VBox;
import walebook.desk.common.Texts;
import walebook.lesson.LessonPack;
import walebook.lesson.Material;
import walebook.quantity.Show;
import walebook.words.Words;

/** What the tutor minds and needs beside the text: aims, the question, materials, trouble. */
final class PreparePane extends VBox {
  private final Words words;

  PreparePane(Words words, LessonPack pack) {
    super(16);
    this.words = words;
    list("desk.lessons.aims", pack.teaching().aims());
    list("desk.lessons.question", List.of(pack.plan().question()));
    list("desk.lessons.each-needs", pack.needs().perStudent().stream().map(this::need).toList());
    list("desk.lessons.room-needs", pack.needs().forTheRoom());
    list("desk.lessons.access", pack.teaching().access());
    list(
        "desk.lessons.trouble",
        pack.teaching().trouble().stream().map(LessonPack.Trouble::says).toList());
    list(
        "desk.lessons.figures",
        pack.teaching().figures().stream()
            .map(each -> words.say("desk.lessons.figure", each.says(), each.source()))
            .toList());
  }

  private String need(Material each) {
    Double thread = each.threadM();
    if (thread != null) {
      return words.say("desk.lessons.need-thread", Show.upTo(thread, 1), each.what());
    }
    Double count = each.count();
    return count == null
        ? each.what()
        : words.say("desk.lessons.need", Show.upTo(count, 1), each.what());
  }

  private void list(String title, List<String> says) {
    if (says.isEmpty()) {
      return;
    }
    VBox list = new VBox(6, Texts.text(words.say(title), "strong"));
    says.forEach(each -> list.getChildren().add(Texts.text(each)));
    getChildren().add(list);
  }
}
