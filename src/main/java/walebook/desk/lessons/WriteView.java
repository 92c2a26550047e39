package walebook.desk.lessons;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import walebook.desk.common.AfterPause;
import walebook.desk.common.IntoView;
import walebook.desk.common.PlaceFrame;
import walebook.desk.common.SavesByKey;
import walebook.desk.common.Segments;
import walebook.words.Words;

/** The form in which a pack is written, part by part. */
final class WriteView extends BorderPane {
  private final Words words;
  private final WritePackViewModel model;
  private final WriteParts parts;
  private final Map<WritePart, Node> nodes = new EnumMap<>(WritePart.class);

  WriteView(Words words, WritePackViewModel model, Node back) {
    this.words = words;
    this.model = model;
    this.parts = new WriteParts(words, model);
    nodes.put(WritePart.TEXT, parts.text());
    nodes.put(WritePart.PLAN, parts.plan());
    nodes.put(WritePart.NEEDS, parts.needs());
    nodes.put(WritePart.ABOUT, parts.about());
    Segments<WritePart> choose =
        new Segments<>(List.of(WritePart.values()), model.partProperty(), this::name);
    VBox work = new VBox(16, choose, nodes.get(model.partProperty().get()));
    model.partProperty().addListener((from, old, now) -> work.getChildren().set(1, nodes.get(now)));
    PlaceFrame frame =
        new PlaceFrame(words, words.say("desk.lessons.write.title"))
            .context(back)
            .work(work)
            .means(new WriteMeansPane(words, model, parts.controls()))
            .primary(button("desk.lessons.write.save", model::save))
            .lesser(button("desk.lessons.write.save-folder", model::saveFolder))
            .lesser(discard());
    frame.notice().noticeProperty().bind(model.noticeProperty());
    // Else the frame never hears how little room there is, and doesn't set its side below.
    frame.setMinWidth(0);
    setMinWidth(0);
    setCenter(frame);
    AfterPause.of(
        model.editsProperty(),
        () -> {
          model.keepDraft();
          model.check();
        });
    model.attentionProperty().addListener((from, old, now) -> focus(now));
    SavesByKey.on(this, model::save);
  }

  private String name(WritePart part) {
    return switch (part) {
      case TEXT -> words.say("desk.lessons.write.part-text");
      case PLAN -> words.say("desk.lessons.write.part-plan");
      case NEEDS -> words.say("desk.lessons.write.part-needs");
      case ABOUT -> words.say("desk.lessons.write.part-about");
    };
  }

  private void focus(String field) {
    Node control = parts.controls().of(field);
    if (control != null) {
      // The part has to be in the window before one of its fields can take the focus.
      Platform.runLater(() -> IntoView.focus(control));
    }
  }

  private Button discard() {
    Button discard = new Button(words.say("desk.lessons.write.discard"));
    discard.getStyleClass().add("quiet");
    discard.setMinWidth(Region.USE_PREF_SIZE);
    discard.setOnAction(
        pressed -> {
          String sure = words.say("desk.lessons.write.discard-sure");
          if (discard.getText().equals(sure)) {
            model.discard();
          } else {
            discard.setText(sure);
          }
        });
    discard
        .focusedProperty()
        .addListener((from, old, now) -> discard.setText(words.say("desk.lessons.write.discard")));
    return discard;
  }

  private Button button(String says, Runnable does) {
    Button button = new Button(words.say(says));
    button.setMinWidth(Region.USE_PREF_SIZE);
    button.setOnAction(pressed -> does.run());
    return button;
  }
}
