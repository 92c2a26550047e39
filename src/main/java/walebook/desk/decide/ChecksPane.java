package walebook.desk.decide;

import javafx.collections.ListChangeListener;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import walebook.desk.common.FieldBox;
import walebook.desk.common.Texts;
import walebook.words.Words;

/** The checks under their headings, with a search that narrows them while one types. */
final class ChecksPane extends VBox {
  private final Words words;
  private final ChecksViewModel model;
  private final FlowPane cards = new FlowPane();
  private final VBox nothing = new VBox();

  ChecksPane(Words words, ChecksViewModel model) {
    this.words = words;
    this.model = model;
    getStyleClass().add("checks");
    cards.getStyleClass().add("check-cards");
    nothing.getStyleClass().add("checks");
    Button all = new Button(words.say("desk.decide.show-all"));
    all.setOnAction(pressed -> model.searchProperty().set(""));
    nothing.getChildren().setAll(Texts.text(words.say("desk.decide.found-nothing")), all);
    getChildren().setAll(search(), cards, nothing);
    model.groups().addListener((ListChangeListener<ChecksViewModel.Group>) change -> show());
    show();
  }

  private FieldBox search() {
    TextField field = new TextField();
    field.setPromptText(words.say("desk.decide.search.prompt"));
    field.textProperty().bindBidirectional(model.searchProperty());
    field.setOnKeyPressed(
        key -> {
          if (key.getCode() == KeyCode.ENTER) {
            model.openFirst();
          } else if (key.getCode() == KeyCode.ESCAPE) {
            model.searchProperty().set("");
          }
        });
    FieldBox box = new FieldBox(words, words.say("desk.decide.search"), field);
    box.getStyleClass().add("check-search");
    return box;
  }

  private void show() {
    cards.getChildren().setAll(model.groups().stream().map(this::card).toList());
    nothing.setVisible(model.groups().isEmpty());
    nothing.setManaged(model.groups().isEmpty());
  }

  private VBox card(ChecksViewModel.Group group) {
    VBox card = new VBox(Texts.section(group.title()));
    card.getStyleClass().addAll("card", "check-card");
    for (ChecksViewModel.Line line : group.lines()) {
      Button open = new Button(line.title());
      open.getStyleClass().addAll("quiet", "check-line");
      open.setWrapText(true);
      open.setMaxWidth(Double.MAX_VALUE);
      open.setOnAction(pressed -> model.open(line.name()));
      card.getChildren().add(open);
    }
    return card;
  }
}
