package walebook.desk.classroom;

import java.util.List;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Node;
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

/** The place of the class: comparison, measuring alike, odd readings and progress. */
public final class ClassroomView extends BorderPane {

  /** The parts of the place. */
  private enum Part {
    COMPARISON,
    FAIR,
    ALIKE,
    ODD,
    PROGRESS
  }

  private final ObjectProperty<Part> part =
      new SimpleObjectProperty<>(this, "part", Part.COMPARISON);
  private final PlaceFrame frame;
  private final ComparisonView comparison;
  private final ProgressView progress;
  private final FairViewModel fair;
  private final FairView fairView;
  private final AlikeViewModel alike;
  private final OddViewModel odd;
  private final AlikeView alikeView;
  private final OddView oddView;

  /** A view over a session; the look dresses the board that is shown large. */
  public ClassroomView(Session session, Look look) {
    Words words = session.words();
    frame = new PlaceFrame(words, words.say("desk.class.title"));
    comparison = new ComparisonView(new ComparisonViewModel(session), look);
    progress = new ProgressView(new ProgressViewModel(session));
    Narrowing narrowing = new Narrowing(session);
    fair = new FairViewModel(session, narrowing);
    fairView = new FairView(fair);
    alike = new AlikeViewModel(session, narrowing);
    odd = new OddViewModel(session, narrowing);
    alikeView = new AlikeView(alike);
    oddView = new OddView(odd);
    odd.noticeProperty().addListener((from, old, now) -> frame.notice().noticeProperty().set(now));
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
    large.managedProperty().bind(large.visibleProperty());
    copy.managedProperty().bind(large.visibleProperty());
    part.addListener((from, old, now) -> arrange(words));
    arrange(words);
    setCenter(frame);
  }

  private void arrange(Words words) {
    Part now = part.get();
    fair.shown(now == Part.FAIR);
    alike.shown(now == Part.ALIKE);
    odd.shown(now == Part.ODD);
    Segments<Part> parts =
        new Segments<>(List.of(Part.values()), part, each -> words.say(name(each)));
    frame.work(parts, view(now));
  }

  private Node view(Part of) {
    return switch (of) {
      case COMPARISON -> comparison;
      case FAIR -> fairView;
      case ALIKE -> alikeView;
      case ODD -> oddView;
      case PROGRESS -> progress;
    };
  }

  private static String name(Part of) {
    return switch (of) {
      case COMPARISON -> "desk.class.comparison";
      case FAIR -> "desk.class.fair";
      case ALIKE -> "desk.class.alike";
      case ODD -> "desk.class.odd";
      case PROGRESS -> "desk.class.progress";
    };
  }
}
