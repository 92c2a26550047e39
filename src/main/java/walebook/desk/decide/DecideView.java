package walebook.desk.decide;

import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import walebook.desk.common.PlaceFrame;
import walebook.desk.common.Session;
import walebook.desk.common.Texts;
import walebook.desk.look.Look;
import walebook.quantity.Unit;
import walebook.words.Words;
import walebook.working.Working;

/** The place of decisions: the list of checks, and one check with its working. */
public final class DecideView extends BorderPane {
  private final Words words;
  private final Look look;
  private final ChecksViewModel model;
  private final ChoiceWords names;

  /**
   * The place over one session.
   *
   * @param lengths what a length without a unit means in this book
   */
  public DecideView(Session session, Look look, Unit lengths) {
    this.words = session.words();
    this.look = look;
    this.model = new ChecksViewModel(session.tables(), words, lengths);
    this.names = new ChoiceWords(words, session.tables());
    getStylesheets()
        .add(
            java.util.Objects.requireNonNull(getClass().getResource("decide.css"))
                .toExternalForm());
    model.openProperty().addListener((from, old, now) -> show());
    addEventHandler(KeyEvent.KEY_PRESSED, this::pressed);
    show();
  }

  private void show() {
    CheckViewModel open = model.openProperty().get();
    setCenter(open == null ? list() : check(open));
  }

  private Node list() {
    return new PlaceFrame(words, words.say("desk.decide.title"))
        .work(Texts.text(words.say("desk.decide.about"), "soft"), new ChecksPane(words, model));
  }

  private Node check(CheckViewModel check) {
    Button back = new Button(words.say("desk.decide.back"));
    back.getStyleClass().add("quiet");
    back.setOnAction(pressed -> model.close());
    Button again = new Button(words.say("desk.decide.start-again"));
    again.setOnAction(pressed -> check.startAgain());
    Button large = new Button(words.say("desk.decide.show-large"));
    large.disableProperty().bind(check.outcomeProperty().map(now -> now.working() == null));
    large.setOnAction(pressed -> large(check));
    return new PlaceFrame(words, words.say(check.title()))
        .context(back)
        .work(new CheckPane(words, names, check))
        .means(new CheckMeaningPane(words, check))
        .lesser(again)
        .primary(large);
  }

  private void large(CheckViewModel check) {
    CheckViewModel.Outcome outcome = check.outcomeProperty().get();
    Working working = outcome.working();
    if (working != null) {
      WorkingBoard.show(
          words,
          look,
          getScene() == null ? null : getScene().getWindow(),
          working,
          outcome.drawing());
    }
  }

  private void pressed(KeyEvent key) {
    CheckViewModel open = model.openProperty().get();
    if (open == null) {
      return;
    }
    if (key.getCode() == KeyCode.ESCAPE) {
      key.consume();
      model.close();
    } else if (key.getCode() == KeyCode.F5) {
      key.consume();
      large(open);
    }
  }
}
