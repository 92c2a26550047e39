package walebook.desk.decide;

import java.util.ArrayList;
import java.util.List;
import javafx.application.Platform;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import walebook.desk.common.CheckField;
import walebook.desk.common.CheckInput;
import walebook.desk.common.ChoiceWords;
import walebook.desk.common.FieldBox;
import walebook.desk.common.FieldGroup;
import walebook.desk.common.PicturePane;
import walebook.words.Words;

/** One check: the fields that must be filled, those that are usual, and the drawing. */
final class CheckPane extends VBox {
  private static final double NUMBER_EMS = 14;
  private static final double WIDE_EMS = 22;

  private final Words words;
  private final ChoiceWords names;

  CheckPane(Words words, ChoiceWords names, CheckViewModel model) {
    this.words = words;
    this.names = names;
    getStyleClass().add("checks");
    List<CheckInput> needed = new ArrayList<>();
    List<CheckInput> rest = new ArrayList<>();
    for (CheckInput each : model.inputs()) {
      (each.input().required() ? needed : rest).add(each);
    }
    group("desk.decide.needed", needed);
    group("desk.decide.usual", rest);
    drawing(model);
    Node first = lookup(".text-field");
    if (first != null) {
      // A scrolled place joins the window a pulse later; before that nothing in it can have focus.
      first
          .sceneProperty()
          .addListener(
              (from, old, now) -> {
                if (now != null) {
                  Platform.runLater(first::requestFocus);
                }
              });
    }
  }

  private void group(String title, List<CheckInput> inputs) {
    if (inputs.isEmpty()) {
      return;
    }
    FieldGroup group = new FieldGroup(words.say(title));
    for (int i = 0; i < inputs.size(); i++) {
      CheckInput each = inputs.get(i);
      if (i + 1 < inputs.size() && isHowKnown(each, inputs.get(i + 1))) {
        group.add(new VBox(8, field(each), field(inputs.get(i + 1))), WIDE_EMS);
        i++;
      } else {
        group.add(field(each), each.number() == null ? WIDE_EMS : NUMBER_EMS);
      }
    }
    getChildren().add(group);
  }

  /** A number and the word on how it is known stand together. */
  private static boolean isHowKnown(CheckInput number, CheckInput next) {
    return next.input().name().equals(number.input().name() + "-by");
  }

  private void drawing(CheckViewModel model) {
    PicturePane picture = new PicturePane(words);
    // Drawn at its own width; where the place is narrower it scrolls rather than being cut off.
    ScrollPane scroll = new ScrollPane(new Group(picture));
    scroll.setVbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    VBox card = new VBox(scroll);
    card.getStyleClass().add("card");
    show(picture, card, model.outcomeProperty().get());
    model.outcomeProperty().addListener((from, old, now) -> show(picture, card, now));
    getChildren().add(card);
  }

  private static void show(PicturePane picture, VBox card, CheckViewModel.Outcome outcome) {
    picture.show(outcome.drawing());
    card.setVisible(outcome.drawing() != null);
    card.setManaged(outcome.drawing() != null);
  }

  private FieldBox field(CheckInput input) {
    return CheckField.of(words, names, input);
  }
}
