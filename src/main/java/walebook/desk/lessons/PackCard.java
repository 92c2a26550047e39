package walebook.desk.lessons;

import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import walebook.desk.common.Texts;
import walebook.lesson.LessonPack;
import walebook.words.Words;

/** A pack in the list: what it is about, how long it takes, a way in, and what else can be done. */
final class PackCard extends VBox {
  PackCard(Words words, LessonPack pack, LessonsViewModel model, Node... more) {
    super(8);
    getStyleClass().add("card");
    LessonPack.About about = pack.about();
    Button read = new Button(words.say("desk.lessons.read"));
    read.setAccessibleText(words.say("desk.lessons.read-says", about.title()));
    read.setOnAction(pressed -> model.read(pack));
    FlowPane row = new FlowPane(8, 8, read);
    row.getChildren().addAll(more);
    getChildren()
        .setAll(
            Texts.text(about.title(), "strong"),
            Texts.text(about.summary()),
            Texts.caption(words.say("desk.lessons.about", about.minutes(), about.version())),
            row);
  }
}
