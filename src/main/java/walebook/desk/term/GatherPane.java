package walebook.desk.term;

import javafx.beans.Observable;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import walebook.book.gather.Choice;
import walebook.book.gather.Conflict;
import walebook.desk.common.PickFile;
import walebook.desk.common.Texts;
import walebook.words.Words;

/** Books picked, what comes of each, conflicts side by side, and giving books out. */
final class GatherPane extends VBox {
  private final Words words;
  private final GatherViewModel model;
  private final VBox books = new VBox(4);
  private final VBox conflicts = new VBox(12);

  GatherPane(Words words, GatherViewModel model) {
    super(16);
    this.words = words;
    this.model = model;
    model.books().addListener((Observable change) -> showBooks());
    model.picked().addListener((Observable change) -> showBooks());
    model.conflicts().addListener((Observable change) -> showConflicts());
    getChildren().setAll(gather(), conflicts, giveOut());
    showBooks();
    showConflicts();
    model.read();
  }

  private VBox gather() {
    Button folder = button("desk.term.gather.folder", () -> model.pick(PickFile.Kind.FOLDER));
    Button file = button("desk.term.gather.file", () -> model.pick(PickFile.Kind.BOOK));
    Button look = button("desk.term.gather.look", model::look);
    Button clear = button("desk.term.gather.clear", model::clear);
    Button cancel = button("desk.term.gather.cancel", model::cancel);
    folder.disableProperty().bind(model.workingProperty());
    file.disableProperty().bind(model.workingProperty());
    look.disableProperty().bind(model.readyProperty().not());
    clear.disableProperty().bind(model.readyProperty().not());
    ProgressBar bar = new ProgressBar();
    bar.setAccessibleText(words.say("desk.term.gather.working"));
    bar.progressProperty().bind(model.shareProperty());
    FlowPane under = new FlowPane(12, 8, bar, cancel);
    under.visibleProperty().bind(model.workingProperty());
    under.managedProperty().bind(under.visibleProperty());
    Label says = Texts.text("", "strong");
    says.textProperty().bind(model.saysProperty());
    says.visibleProperty().bind(says.textProperty().isNotEmpty());
    says.managedProperty().bind(says.visibleProperty());
    VBox card =
        new VBox(
            12,
            Texts.section(words.say("desk.term.gather.title")),
            Texts.text(words.say("desk.term.gather.says")),
            new FlowPane(12, 8, folder, file, look, clear),
            books,
            under,
            says);
    card.getStyleClass().add("card");
    return card;
  }

  private VBox giveOut() {
    CheckBox names = new CheckBox(words.say("desk.term.gather.by-name"));
    names.selectedProperty().bindBidirectional(model.byNameProperty());
    VBox card =
        new VBox(
            12,
            Texts.section(words.say("desk.term.gather.give-title")),
            Texts.text(words.say("desk.term.gather.give-says")),
            names,
            button("desk.term.gather.give", model::giveOut));
    card.getStyleClass().add("card");
    return card;
  }

  private Button decide(Conflict conflict, Choice choice) {
    Button decide = new Button(model.chosen(conflict, choice));
    decide.setOnAction(pressed -> model.decide(conflict, choice));
    return decide;
  }

  private Button button(String key, Runnable does) {
    Button button = new Button(words.say(key));
    button.setOnAction(pressed -> does.run());
    return button;
  }

  private void showBooks() {
    books.getChildren().clear();
    if (model.picked().isEmpty()) {
      books.getChildren().add(Texts.text(words.say("desk.term.gather.pick-first"), "soft"));
    }
    if (model.books().isEmpty()) {
      model.picked().forEach(each -> books.getChildren().add(Texts.text(each.toString())));
    }
    model.books().forEach(each -> books.getChildren().add(Texts.text(model.sentence(each))));
  }

  private void showConflicts() {
    conflicts.getChildren().clear();
    model.conflicts().forEach(each -> conflicts.getChildren().add(card(each)));
  }

  private VBox card(Conflict conflict) {
    GridPane sides = new GridPane(16, 4);
    sides.addRow(
        0,
        Texts.text(words.say("desk.term.gather.field"), "field-label"),
        Texts.text(words.say("desk.term.gather.here"), "field-label"),
        Texts.text(words.say("desk.term.gather.there"), "field-label"));
    int row = 1;
    for (Conflict.Field each : conflict.fields()) {
      sides.addRow(
          row++,
          Texts.text(model.field(conflict, each)),
          Texts.text(model.mine(conflict, each)),
          Texts.text(model.theirs(conflict, each)));
    }
    Button mine = decide(conflict, Choice.MINE);
    Button theirs = decide(conflict, Choice.THEIRS);
    mine.setAccessibleText(mine.getText() + ": " + model.why(conflict));
    theirs.setAccessibleText(theirs.getText() + ": " + model.why(conflict));
    VBox card =
        new VBox(
            8, Texts.text(model.why(conflict), "strong"), sides, new FlowPane(12, 8, mine, theirs));
    card.getStyleClass().add("card");
    return card;
  }
}
