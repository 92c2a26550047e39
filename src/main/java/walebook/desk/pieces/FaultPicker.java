package walebook.desk.pieces;

import java.util.List;
import java.util.stream.Stream;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import walebook.desk.common.FieldBox;
import walebook.desk.common.Fold;
import walebook.desk.common.IntoView;
import walebook.desk.common.PicturePane;
import walebook.desk.common.Texts;
import walebook.drawing.FaultKind;
import walebook.drawing.FaultPicture;
import walebook.record.FaultPlace;
import walebook.record.FaultSeen;
import walebook.record.FaultWhen;
import walebook.record.Keyed;
import walebook.seam.Fault;
import walebook.words.Words;

/** Faults chosen from pictures, those chosen as chips above, one in hand to say more about. */
final class FaultPicker extends VBox {
  private final Words words;
  private final FaultsViewModel model;
  private final FlowPane chips = new FlowPane();
  private final VBox inHand = new VBox();
  private final FlowPane tiles = new FlowPane();
  private final Fold pick;

  FaultPicker(Words words, FaultsViewModel model) {
    this.words = words;
    this.model = model;
    setId("faults");
    getStyleClass().add("fault-picker");
    chips.getStyleClass().add("chips");
    inHand.getStyleClass().add("fault-in-hand");
    tiles.getStyleClass().add("fault-tiles");
    Stream.concat(model.pictured().stream(), model.others().stream())
        .forEach(each -> tiles.getChildren().add(tile(each)));
    pick = new Fold(words.say("desk.pieces.choose-fault"), tiles);
    pick.setId("choose-fault");
    getChildren()
        .setAll(Texts.text(words.say("desk.pieces.faults"), "field-label"), chips, inHand, pick);
    model.seen().addListener((ListChangeListener<FaultSeen>) change -> showSeen());
    model.inHandProperty().addListener((from, old, now) -> showInHand(now));
    showSeen();
    showInHand(model.inHandProperty().get());
  }

  private ToggleButton tile(Fault fault) {
    String name = model.name(fault.key());
    ToggleButton tile = new ToggleButton(name);
    tile.setUserData(fault.key());
    tile.setWrapText(true);
    tile.getStyleClass().add("fault-tile");
    FaultKind kind = FaultKind.of(fault.key());
    if (kind != null) {
      tile.setGraphic(new PicturePane(words, new FaultPicture(kind)));
      tile.setContentDisplay(ContentDisplay.TOP);
    } else {
      tile.getStyleClass().add("without-picture");
    }
    tile.setTooltip(new javafx.scene.control.Tooltip(fault.looksLike()));
    tile.setAccessibleText(name + ". " + fault.looksLike());
    tile.setOnAction(
        pressed ->
            // What comes up above must not push the pictures away under the pointer.
            IntoView.keep(
                tile,
                () -> {
                  model.choose(fault.key());
                  showSeen();
                }));
    return tile;
  }

  private void showSeen() {
    chips.getChildren().setAll(model.seen().stream().map(this::chip).toList());
    chips.setManaged(!model.seen().isEmpty());
    chips.setVisible(chips.isManaged());
    for (Node tile : tiles.getChildren()) {
      if (tile instanceof ToggleButton toggle) {
        toggle.setSelected(model.isSeen(String.valueOf(tile.getUserData())));
      }
    }
  }

  private Node chip(FaultSeen fault) {
    String name = model.name(fault.fault());
    Button says =
        new Button(
            words.say(
                "desk.pieces.chip", name, words.say("desk.pieces.severity." + fault.severity())));
    says.setOnAction(pressed -> model.choose(fault.fault()));
    Button remove = new Button("×");
    remove.setAccessibleText(words.say("desk.pieces.remove", name));
    remove.setOnAction(pressed -> model.remove(fault));
    HBox chip = new HBox(says, remove);
    chip.getStyleClass().add("chip");
    return chip;
  }

  private void showInHand(@Nullable FaultSeen fault) {
    inHand.getChildren().clear();
    inHand.setManaged(fault != null);
    inHand.setVisible(fault != null);
    if (fault == null) {
      return;
    }
    List<Choice> severities =
        Stream.of("0", "1", "2", "3")
            .map(each -> new Choice(each, words.say("desk.pieces.severity." + each)))
            .toList();
    inHand
        .getChildren()
        .setAll(
            Texts.text(model.name(fault.fault()), "strong"),
            row(
                "severity",
                severities,
                String.valueOf(fault.severity()),
                key -> model.severity(Integer.parseInt(key))),
            row(
                "where",
                keyed(FaultPlace.values()),
                fault.place().key(),
                key -> model.place(Keyed.of(FaultPlace.class, key))),
            row(
                "when",
                keyed(FaultWhen.values()),
                fault.when().key(),
                key -> model.when(Keyed.of(FaultWhen.class, key))));
  }

  private FieldBox row(
      String key, List<Choice> choices, String now, java.util.function.Consumer<String> choose) {
    String label = words.say("desk.pieces.fault." + key);
    StringProperty text = new SimpleStringProperty(now);
    text.addListener(
        (from, old, next) -> {
          if (!next.isEmpty()) {
            choose.accept(next);
          }
        });
    return new FieldBox(words, label, new ToggleRow(label, choices, text, "plain"));
  }

  private List<Choice> keyed(Keyed[] values) {
    return FieldChoices.keyed(words, values);
  }
}
