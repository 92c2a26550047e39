package walebook.desk.decide;

import javafx.collections.FXCollections;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import walebook.act.cloth.NewestWash;
import walebook.desk.common.ChoiceField;
import walebook.desk.common.FieldGroup;
import walebook.desk.common.Texts;
import walebook.record.Grain;
import walebook.words.Words;

/** Which cloth's newest wash a check is filled from, and where its figures come from. */
final class FromWashPane extends VBox {
  private static final double CLOTH_EMS = 20;
  private static final double GRAIN_EMS = 18.5;

  private final Words words;
  private final FromWashViewModel model;

  FromWashPane(Words words, FromWashViewModel model) {
    this.words = words;
    this.model = model;
    // The model outlives the pane; its list does not change while a check is looked at.
    ListChangeListener<NewestWash> follow = change -> show();
    model.cloths().addListener(new javafx.collections.WeakListChangeListener<>(follow));
    setUserData(follow);
    show();
  }

  private void show() {
    FieldGroup group = new FieldGroup(words.say("desk.decide.wash.title"));
    if (model.cloths().isEmpty()) {
      group.below(Texts.text(words.say("desk.decide.wash.none"), "soft"));
    } else {
      group
          .add(
              new ChoiceField<>(
                  words,
                  words.say("desk.decide.wash.cloth"),
                  model.cloths(),
                  model.chosenProperty(),
                  NewestWash::cloth),
              CLOTH_EMS)
          .add(
              new ChoiceField<>(
                  words,
                  words.say("desk.decide.wash.grain-asked"),
                  FXCollections.observableArrayList(Grain.COURSE, Grain.WALE),
                  model.grainProperty(),
                  each -> words.say("common.choice." + each.key())),
              GRAIN_EMS);
      Label says = Texts.caption("");
      says.textProperty().bind(model.saysProperty());
      says.visibleProperty().bind(says.textProperty().isNotEmpty());
      says.managedProperty().bind(says.visibleProperty());
      group.below(says);
    }
    getChildren().setAll(group);
  }
}
