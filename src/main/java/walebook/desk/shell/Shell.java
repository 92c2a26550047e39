package walebook.desk.shell;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import walebook.desk.common.ClickedHere;
import walebook.desk.common.SavesByKey;
import walebook.desk.common.Texts;
import walebook.desk.look.Look;
import walebook.desk.look.TextSize;
import walebook.words.Words;

/** The window's content: the named places at the left, the chosen one beside them. */
public final class Shell extends BorderPane {
  private static final PseudoClass TIGHT = PseudoClass.getPseudoClass("tight");
  private static final int TIGHT_PERCENT = 140;

  private final List<PlaceEntry> places;
  private final Map<String, Node> built = new HashMap<>();
  private final Map<String, ToggleButton> buttons = new HashMap<>();
  private final ReadOnlyStringWrapper current = new ReadOnlyStringWrapper(this, "current", "");
  private final Label bookName = Texts.text("", "book-name");
  private final VBox nav = new VBox(bookName);
  private final SettingsBar settings;
  private final ClickedHere clicked = ClickedHere.watch(this);
  private @Nullable FindField find;
  private @Nullable StepsBar steps;

  /**
   * A window over places.
   *
   * @param places in the order they are listed; the first is shown at once
   */
  public Shell(Words words, Look look, List<PlaceEntry> places) {
    if (places.isEmpty()) {
      throw new IllegalArgumentException("places must hold at least one");
    }
    this.places = new ArrayList<>(places);
    this.settings = new SettingsBar(words, look);
    getStyleClass().add("shell");
    nav.getStyleClass().add("shell-nav");
    ToggleGroup group = new ToggleGroup();
    for (PlaceEntry place : this.places) {
      nav.getChildren().add(button(place, group));
    }
    ScrollPane scroll = new ScrollPane(nav);
    scroll.setFitToHeight(true);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.getStyleClass().add("shell-scroll");
    scroll.setFocusTraversable(false);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    VBox left = new VBox(scroll, settings);
    left.getStyleClass().add("shell-left");
    setLeft(left);
    look.textSizeProperty().addListener((from, old, now) -> tight(now));
    tight(look.textSize());
    addEventFilter(KeyEvent.KEY_PRESSED, this::shortcut);
    show(this.places.get(0).key());
  }

  /** The key of the place that is shown. */
  public ReadOnlyStringProperty currentProperty() {
    return current.getReadOnlyProperty();
  }

  /** The book's name above the places. */
  public void bookName(String name) {
    bookName.setText(name);
    bookName.setTooltip(new Tooltip(name));
  }

  /** Puts the field that finds a piece above the places; its keys lead there from anywhere. */
  public void find(FindField field) {
    find = field;
    nav.getChildren().add(1, field);
  }

  /** Puts undo and redo below the places; their keys work anywhere. */
  public void steps(StepsBar bar) {
    steps = bar;
    TypedHere.watch(this);
    Region space = new Region();
    VBox.setVgrow(space, Priority.ALWAYS);
    nav.getChildren().addAll(space, bar);
  }

  /** Adds a place that is not listed: another one leads there, and stands for it in the list. */
  public void beside(String listed, PlaceEntry place) {
    places.add(place);
    ToggleButton button = buttons.get(listed);
    if (button != null) {
      buttons.put(place.key(), button);
    }
  }

  /** Goes to a place. */
  public void show(String key) {
    PlaceEntry place =
        places.stream()
            .filter(one -> one.key().equals(key))
            .findFirst()
            .orElseThrow(() -> new IllegalArgumentException("key of no place: " + key));
    clicked.isOther();
    setCenter(built.computeIfAbsent(key, once -> place.view().get()));
    current.set(key);
    if (find != null) {
      find.forget();
    }
    ToggleButton button = buttons.get(key);
    if (button != null) {
      button.setSelected(true);
    }
  }

  /** Forgets what was built, so that each place begins anew; for another book. */
  public void reset() {
    built.clear();
    show(places.get(0).key());
  }

  /** With large letters the places move together, so that all of them stay in sight. */
  private void tight(TextSize now) {
    pseudoClassStateChanged(TIGHT, now.percent() >= TIGHT_PERCENT);
  }

  private ToggleButton button(PlaceEntry place, ToggleGroup group) {
    ToggleButton button = new ToggleButton(place.title());
    button.getStyleClass().setAll("toggle-button", "place-button");
    button.setToggleGroup(group);
    button.setTooltip(new Tooltip(place.title() + "  " + place.shortcut().getDisplayText()));
    button.setAccessibleText(place.title());
    button.setOnAction(pressed -> show(place.key()));
    buttons.put(place.key(), button);
    return button;
  }

  private void shortcut(KeyEvent event) {
    FindField here = find;
    if (here != null && here.isCalledBy(event)) {
      event.consume();
      here.call();
      return;
    }
    if (settings.takes(event)) {
      event.consume();
      return;
    }
    if (SavesByKey.takes(getCenter(), event)) {
      event.consume();
      return;
    }
    StepsBar bar = steps;
    if (bar != null && bar.takes(event)) {
      event.consume();
      return;
    }
    for (PlaceEntry place : places) {
      if (place.shortcut().match(event)) {
        event.consume();
        show(place.key());
        return;
      }
    }
  }
}
