package walebook.desk.term;

import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import walebook.words.Words;

/** A folded list of things to tick; its title says how many are. */
final class ExportItems<K> extends TitledPane {
  private static final double ACROSS = 16;
  private static final double DOWN = 8;

  private final Words words;
  private final String title;
  private final ObservableList<ExportChoice.Item<K>> items;
  private final FlowPane boxes = new FlowPane(ACROSS, DOWN);

  ExportItems(
      Words words, String title, ExportChoice choice, ObservableList<ExportChoice.Item<K>> items) {
    this.words = words;
    this.title = title;
    this.items = items;
    Button all = new Button(words.say("desk.term.export.all"));
    all.setOnAction(pressed -> choice.take(items, true));
    Button none = new Button(words.say("desk.term.export.none"));
    none.setOnAction(pressed -> choice.take(items, false));
    setContent(new VBox(ACROSS, new FlowPane(DOWN, DOWN, all, none), boxes));
    setExpanded(false);
    // Left to itself a flow is never narrower than its longest box, and the place grows with it.
    boxes.setMinWidth(0);
    setMinWidth(0);
    items.addListener((ListChangeListener<ExportChoice.Item<K>>) change -> fill());
    fill();
  }

  private void fill() {
    boxes.getChildren().setAll(items.stream().map(this::box).toList());
    count();
  }

  private CheckBox box(ExportChoice.Item<K> item) {
    CheckBox box = new CheckBox(item.title());
    box.setMnemonicParsing(false);
    box.setWrapText(true);
    box.maxWidthProperty().bind(boxes.widthProperty());
    box.selectedProperty().bindBidirectional(item.takenProperty());
    item.takenProperty().addListener((from, old, now) -> count());
    return box;
  }

  private void count() {
    long taken = items.stream().filter(each -> each.takenProperty().get()).count();
    setText(words.say("desk.term.export.some", title, taken, items.size()));
  }
}
