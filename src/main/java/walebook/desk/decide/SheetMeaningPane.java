package walebook.desk.decide;

import java.util.List;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import walebook.desk.common.Segments;
import walebook.words.Words;

/** What a sheet comes to: its answers, or the same drawn to scale. */
final class SheetMeaningPane extends VBox {
  private enum Part {
    ANSWERS("desk.decide.part.answers"),
    PICTURES("desk.decide.part.pictures");

    private final String sayKey;

    Part(String sayKey) {
      this.sayKey = sayKey;
    }
  }

  SheetMeaningPane(Words words, Node answers, Node pictures) {
    super(16);
    ObjectProperty<Part> part = new SimpleObjectProperty<>(Part.ANSWERS);
    Segments<Part> parts =
        new Segments<>(List.of(Part.values()), part, each -> words.say(each.sayKey));
    getChildren().setAll(parts, answers);
    part.addListener(
        (from, old, now) -> getChildren().setAll(parts, now == Part.ANSWERS ? answers : pictures));
  }
}
