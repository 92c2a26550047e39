package walebook.desk.today;

import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import org.jspecify.annotations.Nullable;
import walebook.desk.common.ChoiceField;
import walebook.desk.common.EmptyState;
import walebook.desk.common.FieldBox;
import walebook.desk.common.PlaceFrame;
import walebook.desk.common.Texts;
import walebook.record.SchoolClass;
import walebook.record.Student;
import walebook.words.Words;

/** Asks who sits at the screen: type a few letters, or pick from the large list. */
final class WhoAmI {
  /** Room for the frame and the bar that scrolls the names, px. */
  private static final double EDGES = 20;

  private final Words words;
  private final TodayViewModel model;

  WhoAmI(Words words, TodayViewModel model) {
    this.words = words;
    this.model = model;
  }

  PlaceFrame frame() {
    PlaceFrame frame = new PlaceFrame(words, words.say("desk.today.who"));
    VBox ask = new VBox();
    ask.getStyleClass().add("who-am-i");
    VBox.setVgrow(ask, Priority.ALWAYS);
    if (model.classes().size() > 1) {
      ask.getChildren()
          .add(
              new ChoiceField<>(
                  words,
                  words.say("desk.today.class"),
                  model.classes(),
                  model.schoolClassProperty(),
                  SchoolClass::name));
    }
    if (model.schoolClassProperty().get() == null) {
      ask.getChildren().add(Texts.text(words.say("desk.today.choose-class"), "soft"));
    } else if (!model.anyoneProperty().get()) {
      ask.getChildren()
          .add(
              new EmptyState(
                  words.say("desk.today.no-student"),
                  words.say("desk.today.to-term"),
                  model::toTerm));
    } else {
      names(ask);
    }
    frame.work(ask);
    return frame;
  }

  private void names(VBox ask) {
    TextField search = new TextField();
    search.setPromptText(words.say("desk.today.type-name"));
    search.textProperty().bindBidirectional(model.searchProperty());
    search.setOnAction(entered -> model.chooseOnly());
    ListView<Student> list = new ListView<>(model.found());
    list.getStyleClass().add("names");
    list.setAccessibleText(words.say("desk.today.who"));
    list.setPlaceholder(Texts.text(words.say("desk.today.nobody"), "soft"));
    list.setCellFactory(of -> new NameCell());
    list.addEventHandler(
        KeyEvent.KEY_PRESSED,
        event -> {
          Student chosen = list.getSelectionModel().getSelectedItem();
          if (event.getCode() == KeyCode.ENTER && chosen != null) {
            model.choose(chosen);
          }
        });
    search.addEventFilter(
        KeyEvent.KEY_PRESSED,
        event -> {
          if (event.getCode() == KeyCode.DOWN) {
            list.requestFocus();
            list.getSelectionModel().selectFirst();
          }
        });
    VBox.setVgrow(list, Priority.ALWAYS);
    FieldBox find = new FieldBox(words, words.say("desk.today.find-me"), search);
    model.severalProperty().addListener((from, old, now) -> find.showChanged(now));
    ask.getChildren().addAll(find, list);
    search.sceneProperty().addListener((from, old, now) -> search.requestFocus());
  }

  /** A long name goes on below: it is what one looks for. */
  private final class NameCell extends ListCell<Student> {
    NameCell() {
      setWrapText(true);
      setPrefWidth(0);
    }

    /** A list gives all cells one height, whatever stands in them. */
    @Override
    protected double computePrefHeight(double width) {
      double usual = super.computePrefHeight(width);
      if (getListView() == null || getText() == null || getText().isEmpty()) {
        return usual;
      }
      Text name = new Text(getText());
      name.setFont(getFont());
      double sides = snappedLeftInset() + snappedRightInset() + EDGES;
      name.setWrappingWidth(Math.max(1, getListView().getWidth() - sides));
      // The list rounds down, and half a px too little cuts the second line.
      double ends = snappedTopInset() + snappedBottomInset() + 2;
      return Math.max(usual, Math.ceil(name.getLayoutBounds().getHeight() + ends));
    }

    @Override
    protected void updateItem(@Nullable Student item, boolean empty) {
      super.updateItem(item, empty);
      setText(item == null || empty ? "" : model.name(item));
      setOnMouseClicked(
          clicked -> {
            if (item != null && !empty) {
              model.choose(item);
            }
          });
    }
  }
}
