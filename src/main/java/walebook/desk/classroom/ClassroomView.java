package walebook.desk.classroom;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import javafx.stage.Window;
import org.jspecify.annotations.Nullable;
import walebook.book.open.SqliteFiles;
import walebook.desk.common.InTurn;
import walebook.desk.common.Notice;
import walebook.desk.common.PlaceFrame;
import walebook.desk.common.Segments;
import walebook.desk.common.Session;
import walebook.desk.common.Texts;
import walebook.desk.look.Look;
import walebook.record.SchoolClass;
import walebook.words.Words;

/** The place of the class: who has what, what was found, and how alike it was measured. */
public final class ClassroomView extends BorderPane {
  private static final String PART = "class.part";

  /** The parts of the place. */
  private enum Part {
    PROGRESS("desk.class.progress"),
    OVERVIEW("desk.class.overview"),
    COMPARE("desk.class.comparison"),
    CONTROL("desk.class.control"),
    ALIKE("desk.class.alike"),
    ODD("desk.class.odd"),
    TERMS("desk.class.terms"),
    GROWTH("desk.class.growth");

    private final String title;

    Part(String title) {
      this.title = title;
    }
  }

  private final Session session;
  private final Words words;
  private final ObjectProperty<Part> part;
  private final PlaceFrame frame;
  private final FiltersViewModel asked;
  private final FiltersView filters;
  private final InTurn inTurn = new InTurn();
  private final Around around;
  private final WaitingLine waiting;
  private final VBox below = new VBox();
  private final Map<Part, PartView> parts = new EnumMap<>(Part.class);

  /** A view over a session; the look dresses the board that is shown large. */
  public ClassroomView(Session session, Look look) {
    this.session = session;
    words = session.words();
    part = new SimpleObjectProperty<>(this, "part", kept());
    frame = new PlaceFrame(words, words.say("desk.class.title"));
    asked = new FiltersViewModel(session);
    filters = new FiltersView(asked, words, inTurn);
    waiting = new WaitingLine(words);
    around = new Around(notice -> frame.notice().noticeProperty().set(notice), inTurn);
    Label whose = Texts.text("", "soft");
    whose.textProperty().bind(session.schoolClassProperty().map(SchoolClass::name).orElse(""));
    frame.context(whose);
    Button large = new Button(words.say("desk.class.show-large"));
    large.setOnAction(pressed -> now().showLarge(new OnBoard(look)));
    frame.primary(large);
    Segments<Part> segments =
        new Segments<>(List.of(Part.values()), part, each -> words.say(each.title));
    part.addListener(
        (from, old, next) -> {
          // What was done in one part is no news of another; the history still takes it back.
          frame.notice().noticeProperty().set(Notice.NONE);
          arrange();
        });
    setCenter(frame);
    frame.parts(segments);
    inTurn.run(this, List.of(() -> frame.work(filters, waiting, below), this::now, this::arrange));
  }

  /** How many parts were built: each is when it is first shown. */
  int built() {
    return parts.size();
  }

  /** True when all that was found stands in the window. */
  boolean isAtRest() {
    return inTurn.isAtRest();
  }

  private PartView now() {
    return parts.computeIfAbsent(part.get(), this::build);
  }

  private PartView build(Part which) {
    return switch (which) {
      case PROGRESS -> new ProgressView(new ProgressViewModel(session), around);
      case OVERVIEW -> new ComparisonView(new ComparisonViewModel(asked), around);
      case COMPARE -> new FairView(new FairViewModel(asked), around);
      case CONTROL -> new ControlView(new ControlViewModel(asked), around);
      case ALIKE -> new AlikeView(new AlikeViewModel(asked), around);
      case ODD -> new OddView(new OddViewModel(asked), around);
      case TERMS -> new TermsView(new TermsViewModel(asked, new SqliteFiles()), around);
      case GROWTH -> new GrowthView(new GrowthViewModel(asked), around);
    };
  }

  /** The whole screen of the window. */
  private final class OnBoard implements PartView.Large {
    private final Look look;

    OnBoard(Look look) {
      this.look = look;
    }

    @Override
    public void show(ClassBoard.Shown shown) {
      if (shown.findings().isEmpty()) {
        frame.say(words.say("desk.class.nothing-large"));
      } else {
        ClassBoard.show(words, look, over(), shown);
      }
    }

    private @Nullable Window over() {
      return getScene() == null ? null : getScene().getWindow();
    }
  }

  private void arrange() {
    Part next = part.get();
    session.run(
        progress -> {
          session.remember().keep(PART, next.name());
          return next;
        },
        done -> {});
    PartView shown = now();
    // The fields take their turns before what is found.
    filters.show(shown.asks());
    parts.forEach((each, view) -> view.shown(each == next));
    waiting.of(shown.asking());
    // Only what is below the filters is another, so that the keyboard stays where it is.
    below.getChildren().setAll(shown.node());
  }

  private Part kept() {
    for (Part each : Part.values()) {
      if (each.name().equals(session.remember().recall(PART))) {
        return each;
      }
    }
    return Part.OVERVIEW;
  }
}
