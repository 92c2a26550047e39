package walebook.desk.cloths;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import walebook.act.cloth.LogWash;
import walebook.desk.common.PicturePane;
import walebook.desk.common.Texts;
import walebook.desk.common.WorkingPane;
import walebook.quantity.Show;
import walebook.record.Grain;
import walebook.words.Words;
import walebook.working.Working;

/** What a wash means while it is typed: the change along each grain, and what to cut. */
final class WashMeaningPane extends VBox {
  private static final int WORKINGS = 2;

  private final Words words;
  private final Map<Grain, VBox> parts = new EnumMap<>(Grain.class);
  private final Map<Grain, List<WorkingPane>> panes = new EnumMap<>(Grain.class);
  private final PicturePane picture;
  private final Label nothing;
  private final Label area = Texts.text("");

  WashMeaningPane(Words words, WashFormViewModel model) {
    super(16);
    this.words = words;
    nothing = Texts.text(words.say("desk.cloths.wash.nothing"), "soft");
    picture = new PicturePane(words);
    getChildren().addAll(picture, nothing);
    for (Grain grain : LogWash.SQUARE) {
      WorkingPane change = new WorkingPane(words);
      WorkingPane cut = new WorkingPane(words);
      panes.put(grain, List.of(change, cut));
      VBox part =
          new VBox(8, Texts.section(words.say("common.choice." + grain.key())), change, cut);
      parts.put(grain, part);
      getChildren().add(part);
    }
    getChildren().add(area);
    model.meaningProperty().addListener((from, old, now) -> show(now));
    show(model.meaningProperty().get());
  }

  private void show(WashFormViewModel.Meaning meaning) {
    picture.show(meaning.square());
    shown(nothing, meaning.workings().isEmpty());
    panes.forEach(
        (grain, both) -> {
          List<Working> workings = meaning.workings().getOrDefault(grain, List.of());
          VBox part = parts.get(grain);
          if (part != null) {
            shown(part, !workings.isEmpty());
          }
          for (int i = 0; i < WORKINGS; i++) {
            both.get(i).show(i < workings.size() ? workings.get(i) : null);
          }
        });
    Double change = meaning.area();
    area.setText(change == null ? "" : words.say("desk.cloths.wash.area", Show.percent(change)));
    shown(area, change != null);
  }

  private static void shown(Node node, boolean is) {
    node.setVisible(is);
    node.setManaged(is);
  }
}
