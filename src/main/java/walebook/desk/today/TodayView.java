package walebook.desk.today;

import java.util.Objects;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import walebook.desk.common.EmptyState;
import walebook.desk.common.PlaceFrame;
import walebook.record.SchoolClass;
import walebook.record.Student;
import walebook.words.Words;

/** The place to begin. */
public final class TodayView extends StackPane {
  private final Words words;
  private final TodayViewModel model;

  public TodayView(Words words, TodayViewModel model) {
    this.words = words;
    this.model = model;
    getStylesheets()
        .add(Objects.requireNonNull(TodayView.class.getResource("today.css")).toExternalForm());
    model.dayProperty().addListener((from, old, now) -> show());
    model.studentProperty().addListener((from, old, now) -> show());
    model.loadedProperty().addListener((from, old, now) -> show());
    model.anyoneProperty().addListener((from, old, now) -> show());
    model.schoolClassProperty().addListener((from, old, now) -> show());
    model.classes().addListener((javafx.collections.ListChangeListener<Object>) change -> show());
    show();
  }

  private void show() {
    Student student = model.studentProperty().get();
    MyDay day = model.dayProperty().get();
    if (!model.loadedProperty().get()) {
      getChildren().setAll(new PlaceFrame(words, words.say("desk.today.title")).beingRead());
    } else if (model.classes().isEmpty()) {
      getChildren().setAll(empty());
    } else if (student == null) {
      getChildren().setAll(new WhoAmI(words, model).frame());
    } else if (day != null) {
      getChildren().setAll(day(student, day));
    }
  }

  private Node empty() {
    return new PlaceFrame(words, words.say("desk.today.title"))
        .work(
            new EmptyState(
                words.say("desk.today.no-class"), words.say("desk.today.to-term"), model::toTerm));
  }

  private PlaceFrame day(Student student, MyDay day) {
    PlaceFrame frame = new PlaceFrame(words, words.say("desk.today.title"));
    SchoolClass inClass = model.schoolClassProperty().get();
    Label who = new Label(model.name(student));
    Label of = new Label(inClass == null ? "" : inClass.name());
    of.getStyleClass().add("soft");
    who.getStyleClass().add("strong");
    Button other = new Button(words.say("desk.today.not-me"));
    other.getStyleClass().add("quiet");
    other.setOnAction(pressed -> model.leave());
    frame.context(who, of, other);
    VBox work = new VBox(new NextCard(words, model, day), new PlanCard(words, model, day));
    work.getStyleClass().add("today");
    work.getChildren()
        .add(day.isReadingNext() ? 0 : 2, new ReadingsCard(words, model, day.readings()));
    frame.work(work);
    frame.means(new RecentCard(words, model, day));
    Button log = new Button(words.say(primary(day.next())));
    log.setOnAction(pressed -> model.logNext());
    Button measure = new Button(words.say("desk.today.reading.measure"));
    measure.setOnAction(pressed -> model.measureNext());
    Button first = day.isReadingNext() ? measure : log;
    first.setDefaultButton(true);
    frame.primary(first);
    if (day.next() != null) {
      Button own = new Button(words.say("desk.today.own"));
      own.setOnAction(pressed -> model.logOwn());
      frame.lesser(own);
    }
    if (day.readings().next() != null) {
      frame.lesser(day.isReadingNext() ? log : measure);
    }
    return frame;
  }

  private static String primary(@Nullable NextPiece next) {
    return next == null ? "desk.today.own" : "desk.today.log";
  }
}
