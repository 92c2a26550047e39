package walebook.desk.typing;

import java.util.List;
import java.util.Objects;
import javafx.scene.AccessibleAttribute;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import walebook.act.card.CardSheet;
import walebook.desk.common.AfterPause;
import walebook.desk.common.EmptyState;
import walebook.desk.common.PlaceFrame;
import walebook.desk.common.SavesByKey;
import walebook.desk.common.Segments;
import walebook.desk.common.Session;
import walebook.desk.common.Texts;
import walebook.desk.common.TypedField;
import walebook.words.Words;

/** The place where a whole class's record cards are typed in. */
public final class TypeInView extends BorderPane {
  private final Words words;
  private final TypeInViewModel model;
  private final CardTable table;
  private final Label here = Texts.text("", "card-here");

  public TypeInView(Session session, TypeInViewModel model) {
    this.words = session.words();
    this.model = model;
    this.table = new CardTable(words, model);
    getStylesheets()
        .add(Objects.requireNonNull(TypeInView.class.getResource("typing.css")).toExternalForm());
    AfterPause.of(model.editsProperty(), model::keepDraft);
    model.editsProperty().addListener((from, old, now) -> tellHere());
    model.cursor().atProperty().addListener((from, old, now) -> tellHere());
    model.sheetProperty().addListener((from, old, now) -> show());
    model
        .busyProperty()
        .addListener(
            (from, old, now) -> {
              if (model.sheetProperty().get() == null) {
                show();
              }
            });
    SavesByKey.on(this, model::save);
    show();
    model.openLatest();
  }

  private void show() {
    CardSheet sheet = model.sheetProperty().get();
    if (sheet == null && model.busyProperty().get()) {
      setCenter(
          new PlaceFrame(words, words.say("desk.typing.title"))
              .work(Texts.text(words.say("desk.typing.loading"), "soft")));
    } else if (sheet == null) {
      setCenter(empty("desk.typing.none", "desk.typing.to-lessons", model::back));
    } else if (sheet.cards().isEmpty()) {
      setCenter(empty("desk.typing.no-pieces", "desk.typing.to-cloths", model::toCloths));
    } else {
      setCenter(grid(sheet));
    }
  }

  private PlaceFrame empty(String says, String button, Runnable begin) {
    return new PlaceFrame(words, words.say("desk.typing.title"))
        .work(new EmptyState(words.say(says), words.say(button), begin));
  }

  private PlaceFrame grid(CardSheet sheet) {
    PlaceFrame frame =
        new PlaceFrame(words, words.say("desk.typing.title-of", sheet.lesson().title()));
    Button back = new Button(words.say("desk.typing.back"));
    back.getStyleClass().add("quiet");
    back.setOnAction(pressed -> model.back());
    Button save = new Button(words.say("desk.typing.save"));
    save.disableProperty().bind(model.busyProperty());
    save.setOnAction(pressed -> model.save());
    VBox.setVgrow(table, Priority.ALWAYS);
    VBox all = new VBox(tools(), table, here);
    all.getStyleClass().add("card-grid");
    VBox.setVgrow(all, Priority.ALWAYS);
    frame.context(back).work(all).primary(save);
    frame.notice().noticeProperty().bindBidirectional(model.noticeProperty());
    return frame;
  }

  private Node tools() {
    TypedField on = new TypedField(words, words.say("desk.typing.on"), "", model.on());
    on.getStyleClass().add("card-day");
    Segments<Boolean> way =
        new Segments<>(
            List.of(false, true),
            model.downProperty().asObject(),
            down -> words.say(down ? "desk.typing.enter-down" : "desk.typing.enter-along"));
    ToggleButton settings = new ToggleButton(words.say("desk.typing.settings"));
    settings.selectedProperty().bindBidirectional(model.settingsProperty());
    Button column = button("desk.typing.set-column", model::setColumn);
    Button above = button("desk.typing.repeat", model::repeatAbove);
    Button add = button("desk.typing.add", model::addFree);
    HBox first = new HBox(on);
    FlowPane tools = new FlowPane(8, 8, first, way, settings, column, above, add);
    tools.getStyleClass().add("card-tools");
    return tools;
  }

  /** A button that leaves the cursor where it is, since it is about the cell one stands in. */
  private Button button(String key, Runnable does) {
    Button button = new Button(words.say(key));
    button.setFocusTraversable(false);
    button.setOnAction(pressed -> does.run());
    return button;
  }

  /** Below the grid: the card one stands in, its field, its letters, what is in the way. */
  private void tellHere() {
    GridCursor.Spot at = model.cursor().atProperty().get();
    CardSheet sheet = model.sheetProperty().get();
    if (at == null || sheet == null || at.row() >= model.rows().size()) {
      tell("");
      return;
    }
    tell(HereSays.spot(model.session(), model.rows().get(at.row()), at.column()));
  }

  /** Always three lines high, so that the grid above keeps its place; the rest by the tooltip. */
  private void tell(String says) {
    here.setText(says);
    here.setAccessibleText(says);
    here.setTooltip(says.isEmpty() ? null : new Tooltip(says));
    here.notifyAccessibleAttributeChanged(AccessibleAttribute.TEXT);
  }
}
