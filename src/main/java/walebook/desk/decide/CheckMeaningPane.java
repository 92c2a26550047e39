package walebook.desk.decide;

import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import walebook.desk.common.Texts;
import walebook.desk.common.WorkingPane;
import walebook.words.Words;

/** What a check comes to: its working laid open, or what it still wants. */
final class CheckMeaningPane extends VBox {
  private final Label hint = Texts.text("", "soft");
  private final WorkingPane working;

  CheckMeaningPane(Words words, CheckViewModel model) {
    getStyleClass().add("checks");
    working = new WorkingPane(words);
    working.openProperty().set(true);
    getChildren().setAll(hint, working);
    model.outcomeProperty().addListener((from, old, now) -> show(now));
    show(model.outcomeProperty().get());
  }

  private void show(CheckViewModel.Outcome outcome) {
    hint.setText(outcome.hint());
    hint.setVisible(!outcome.hint().isEmpty());
    hint.setManaged(!outcome.hint().isEmpty());
    working.show(outcome.working());
  }
}
