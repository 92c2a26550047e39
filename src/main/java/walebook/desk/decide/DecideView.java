package walebook.desk.decide;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javafx.beans.property.ObjectProperty;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import org.jspecify.annotations.Nullable;
import walebook.desk.common.ChoiceWords;
import walebook.desk.common.PlaceFrame;
import walebook.desk.common.Segments;
import walebook.desk.common.Session;
import walebook.desk.common.Texts;
import walebook.desk.look.Look;
import walebook.quantity.Unit;
import walebook.words.Words;
import walebook.working.Working;

/** The place of decisions: garment sheets with their answers, and every check by itself. */
public final class DecideView extends BorderPane {
  private final Words words;
  private final Look look;
  private final ChecksViewModel model;
  private final ChoiceWords names;
  private final SheetsViewModel sheets;
  private final SheetsPlace place;
  private final Session session;
  private final Unit lengths;
  private final Map<String, FromWashViewModel> washes = new HashMap<>();
  private final ObjectProperty<SheetsPlace.Part> part = SheetsPlace.part();

  /**
   * The place over one session.
   *
   * @param lengths what a length without a unit means in this book
   */
  public DecideView(Session session, Look look, Unit lengths) {
    this.words = session.words();
    this.look = look;
    this.session = session;
    this.lengths = lengths;
    this.model = new ChecksViewModel(session.tables(), words, lengths);
    this.names = new ChoiceWords(words, session.tables());
    this.sheets = new SheetsViewModel(session, lengths);
    this.place = new SheetsPlace(session, sheets, lengths);
    getStylesheets()
        .add(
            java.util.Objects.requireNonNull(getClass().getResource("decide.css"))
                .toExternalForm());
    model.openProperty().addListener((from, old, now) -> show());
    part.addListener((from, old, now) -> show());
    sheets.openProperty().addListener((from, old, now) -> show());
    sheets.comparingProperty().addListener((from, old, now) -> show());
    sheets.loadedProperty().addListener((from, old, now) -> show());
    addEventHandler(KeyEvent.KEY_PRESSED, this::pressed);
    show();
  }

  /** Keeps what is typed, before the book is closed. */
  public void rest() {
    sheets.rest();
  }

  private void show() {
    setCenter(part.get() == SheetsPlace.Part.SHEETS ? sheets() : checks());
  }

  private Node sheets() {
    CompareViewModel comparing = sheets.comparingProperty().get();
    if (comparing != null) {
      return place.compare(comparing);
    }
    SheetViewModel open = sheets.openProperty().get();
    return open == null ? place.list(parts()) : place.sheet(open);
  }

  private Node checks() {
    CheckViewModel open = model.openProperty().get();
    return open == null ? list() : check(open);
  }

  private Node parts() {
    return new Segments<>(
        List.of(SheetsPlace.Part.values()), part, each -> words.say(each.sayKey()));
  }

  private Node list() {
    return new PlaceFrame(words, words.say("desk.decide.title"))
        .context(parts())
        .work(Texts.text(words.say("desk.decide.about"), "soft"), new ChecksPane(words, model));
  }

  private Node check(CheckViewModel check) {
    Button back = new Button(words.say("desk.decide.back"));
    back.getStyleClass().add("quiet");
    back.setOnAction(pressed -> model.close());
    Button again = new Button(words.say("desk.decide.start-again"));
    FromWashViewModel wash = FromWashViewModel.isAskedBy(check) ? wash(check) : null;
    again.setOnAction(
        pressed -> {
          check.startAgain();
          if (wash != null) {
            wash.forget();
          }
        });
    Button large = new Button(words.say("desk.decide.show-large"));
    large.disableProperty().bind(check.outcomeProperty().map(now -> now.working() == null));
    large.setOnAction(pressed -> large(check));
    return new PlaceFrame(words, words.say(check.title()))
        .context(back)
        .work(work(check, wash))
        .means(new CheckMeaningPane(words, check))
        .lesser(again)
        .primary(large);
  }

  private Node[] work(CheckViewModel check, @Nullable FromWashViewModel wash) {
    Node fields = new CheckPane(words, names, check);
    return wash == null ? new Node[] {fields} : new Node[] {new FromWashPane(words, wash), fields};
  }

  /** One for each check as long as the book is open, so that what was chosen stays. */
  private FromWashViewModel wash(CheckViewModel check) {
    return washes.computeIfAbsent(
        check.name(), once -> new FromWashViewModel(session, check, lengths));
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

  private void pressedOnSheet(KeyEvent key) {
    if (key.getCode() == KeyCode.ESCAPE && sheets.comparingProperty().get() != null) {
      key.consume();
      sheets.stopComparing();
    }
  }

  private void pressed(KeyEvent key) {
    if (part.get() == SheetsPlace.Part.SHEETS) {
      pressedOnSheet(key);
      return;
    }
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
