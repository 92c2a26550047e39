package walebook.desk.classroom;

import java.util.List;
import javafx.scene.layout.VBox;
import walebook.desk.common.Texts;

/** The card of sentences that stands above every table: what matters most in larger letters. */
final class Sentences {
  private Sentences() {}

  static VBox card(List<String> says, String below) {
    VBox card = new VBox(6);
    card.getStyleClass().add("card");
    for (int i = 0; i < says.size(); i++) {
      card.getChildren().add(Texts.text(says.get(i), i == 0 ? "says" : "body"));
    }
    if (!below.isEmpty()) {
      card.getChildren().add(Texts.caption(below));
    }
    return card;
  }
}
