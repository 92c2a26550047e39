package walebook.desk.classroom;

import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import walebook.desk.common.PlaceFrame;
import walebook.desk.common.Segments;
import walebook.desk.common.Session;
import walebook.desk.common.Texts;
import walebook.desk.look.Look;
import walebook.record.SchoolClass;
import walebook.words.Words;

/** The place of the class: comparison and progress. */
public final class ClassroomView extends BorderPane {

  /** The two parts of the place. */
  private enum Part {
    COMPARISON,
    PROGRESS
  }

  private final ObjectProperty<Part> part =
      new SimpleObjectProperty<>(this, "part", Part.COMPARISON);
  private final PlaceFrame frame;
  private final ComparisonView comparison;
  private final ProgressView progress;

  /** A view over a session; the look dresses the board that is shown large. */
  public ClassroomView(Session session, Look look) {
    Words words = session.words();
    frame = new PlaceFrame(words, words.say("desk.class.title"));
    comparison = new ComparisonView(new ComparisonViewModel(session), look);
    progress = new ProgressView(new ProgressViewModel(session));
    Label whose = Texts.text("", "soft");
    whose.textProperty().bind(session.schoolClassProperty().map(SchoolClass::name).orElse(""));
    frame.context(whose);
    Button large = new Button(words.say("desk.class.show-large"));
    large.setOnAction(pressed -> comparison.showLarge());
    large.disableProperty().bind(comparison.emptyProperty());
    Button copy = new Button(words.say("desk.class.copy-plot"));
    copy.setOnAction(pressed -> comparison.copyPlot());
    copy.disableProperty().bind(comparison.emptyProperty());
    frame.primary(large).lesser(copy);
    large.visibleProperty().bind(part.isEqualTo(Part.COMPARISON));
    copy.visibleProperty().bind(large.visibleProperty());
    part.addListener((from, old, now) -> arrange(words));
    arrange(words);
    setCenter(frame);
  }

  private void arrange(Words words) {
    Segments<Part> parts =
        new Segments<>(
            java.util.List.of(Part.values()),
            part,
            each ->
                words.say(
                    each == Part.COMPARISON ? "desk.class.comparison" : "desk.class.progress"));
    frame.work(parts, part.get() == Part.COMPARISON ? comparison : progress);
  }
}
