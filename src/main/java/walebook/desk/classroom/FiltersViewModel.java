package walebook.desk.classroom;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import walebook.act.classroom.CompareFair;
import walebook.book.Book;
import walebook.book.PieceFilter;
import walebook.compare.CompareBySetting;
import walebook.compare.Factor;
import walebook.compare.FairQuestion;
import walebook.compare.Outcome;
import walebook.desk.common.NumberEntry;
import walebook.desk.common.Session;
import walebook.desk.common.Task;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.Show;
import walebook.record.Cloth;
import walebook.record.Keyed;
import walebook.record.Lesson;
import walebook.record.SchoolClass;

/** What the class is asked about; one for all parts of the place, and kept between starts. */
public final class FiltersViewModel {
  private static final String LESSON = "class.lesson";
  private static final String CLOTH = "class.cloth";
  private static final String OUTCOME = "class.outcome";
  private static final String FACTORS = "class.factors";
  private static final String MATTERS = "class.matters.";
  private static final String ALL = "all";

  private final Session session;
  private final Choice anyLesson;
  private final Choice anyCloth;
  private final ObservableList<Choice> lessons = FXCollections.observableArrayList();
  private final ObservableList<Choice> cloths = FXCollections.observableArrayList();
  private final ObjectProperty<Choice> lesson;
  private final ObjectProperty<Choice> cloth;
  private final ObjectProperty<Outcome> outcome =
      new SimpleObjectProperty<>(this, "outcome", Outcome.SEAM_SHARE);
  private final Set<Factor> factors = new LinkedHashSet<>(CompareBySetting.USUAL);
  private final NumberEntry matters = NumberEntry.plain("matters").checked(FiltersViewModel::above);
  private final Map<Outcome, String> mattering = new EnumMap<>(Outcome.class);
  private final BooleanProperty withinMachine = new SimpleBooleanProperty(this, "withinMachine");
  private final BooleanProperty pValues = new SimpleBooleanProperty(this, "pValues");
  private final ReadOnlyIntegerWrapper asked = new ReadOnlyIntegerWrapper(this, "asked");
  private @Nullable Task reading;
  private boolean filling;
  // A class is met with its latest lesson: a whole term at once is more than an eye takes in.
  private boolean meeting = true;

  /** What was read; {@code latest} is the last lesson of which a piece is logged. */
  private record Read(List<Lesson> lessons, List<Cloth> cloths, @Nullable Lesson latest) {}

  public FiltersViewModel(Session session) {
    this.session = session;
    anyLesson = new Choice(null, session.words().say("desk.class.any-lesson"));
    anyCloth = new Choice(null, session.words().say("desk.class.any-cloth"));
    lesson = new SimpleObjectProperty<>(this, "lesson", anyLesson);
    cloth = new SimpleObjectProperty<>(this, "cloth", anyCloth);
    recall();
    narrow(List.of(), List.of());
    lesson.addListener((from, old, now) -> changed(LESSON, kept(now)));
    cloth.addListener((from, old, now) -> changed(CLOTH, kept(now)));
    outcome.addListener(
        (from, old, now) -> {
          recallMatters();
          changed(OUTCOME, now.key());
        });
    matters.readingProperty().addListener((from, old, now) -> mattersChanged());
    withinMachine.addListener((from, old, now) -> ask());
    pValues.addListener((from, old, now) -> ask());
    session.namesHiddenProperty().addListener((from, old, now) -> ask());
    session.changesProperty().addListener((from, old, now) -> read());
    session
        .schoolClassProperty()
        .addListener(
            (from, old, now) -> {
              meeting = true;
              read();
            });
    read();
  }

  Session session() {
    return session;
  }

  ObservableList<Choice> lessons() {
    return lessons;
  }

  ObservableList<Choice> cloths() {
    return cloths;
  }

  ObjectProperty<Choice> lessonProperty() {
    return lesson;
  }

  ObjectProperty<Choice> clothProperty() {
    return cloth;
  }

  /** True when one lesson or one cloth is asked about. */
  boolean isNarrowed() {
    return lesson.get().id() != null || cloth.get().id() != null;
  }

  /** Asks about all lessons and all cloths. */
  void widen() {
    lookAt(null);
  }

  /** Asks about one lesson, or all of them for null, and all cloths. */
  void lookAt(@Nullable UUID lessonId) {
    cloth.set(anyCloth);
    lessons.stream()
        .filter(each -> Objects.equals(each.id(), lessonId))
        .findFirst()
        .ifPresent(lesson::set);
  }

  ObjectProperty<Outcome> outcomeProperty() {
    return outcome;
  }

  /** The difference that matters, in the outcome's unit; empty for none. */
  NumberEntry matters() {
    return matters;
  }

  /** True to compare only pieces of one student on one machine. */
  BooleanProperty withinMachineProperty() {
    return withinMachine;
  }

  /** True when the tutor asked for p-values. */
  BooleanProperty pValuesProperty() {
    return pValues;
  }

  /** Moves whenever what is asked, or what was saved, is another. */
  ReadOnlyIntegerProperty askedProperty() {
    return asked.getReadOnlyProperty();
  }

  /** True when pieces are told apart by this. */
  boolean tellsApart(Factor factor) {
    return factors.contains(factor);
  }

  /** Begins or ends telling pieces apart by something. */
  void tellApart(Factor factor, boolean on) {
    if (on ? factors.add(factor) : factors.remove(factor)) {
      changed(FACTORS, String.join(" ", inOrder().stream().map(Factor::key).toList()) + " ");
    }
  }

  List<Factor> inOrder() {
    return Arrays.stream(Factor.values()).filter(factors::contains).toList();
  }

  FairQuestion question() {
    return FairQuestion.of(outcome.get(), inOrder())
        .withinMachines(withinMachine.get())
        .mattering(matters.value());
  }

  CompareFair.Which which(UUID classId, boolean hidden) {
    return new CompareFair.Which(List.of(classId), lesson.get().id(), cloth.get().id(), hidden);
  }

  private static Answer<Double> above(Double value) {
    return value > 0
        ? Answer.good(value)
        : Answer.bad(
            Problem.refuse("number.too-small", Place.field("matters"), Show.upTo(value, 3), "0.1"));
  }

  private void changed(String name, String value) {
    if (!filling) {
      // The file is written away from the window.
      session.run(
          progress -> {
            session.remember().keep(name, value);
            return name;
          },
          done -> {});
      ask();
    }
  }

  private void mattersChanged() {
    if (!filling) {
      String typed = matters.textProperty().get();
      mattering.put(outcome.get(), typed);
      changed(MATTERS + outcome.get().key(), typed);
    }
  }

  /** Ten points are no ten grades: each outcome has a difference of its own. */
  private void recallMatters() {
    boolean was = filling;
    filling = true;
    matters.textProperty().set(mattering.getOrDefault(outcome.get(), ""));
    matters.settle();
    filling = was;
  }

  private void ask() {
    if (!filling && lesson.get() != null && cloth.get() != null) {
      asked.set(asked.get() + 1);
    }
  }

  private static String kept(@Nullable Choice choice) {
    return choice == null || choice.id() == null ? ALL : String.valueOf(choice.id());
  }

  private void recall() {
    Outcome last = Keyed.find(Outcome.class, session.remember().recall(OUTCOME));
    if (last != null) {
      outcome.set(last);
    }
    String apart = session.remember().recall(FACTORS);
    if (!apart.isEmpty()) {
      factors.clear();
      for (Factor each : Factor.values()) {
        if (Arrays.asList(apart.split(" ", -1)).contains(each.key())) {
          factors.add(each);
        }
      }
    }
    for (Outcome each : Outcome.values()) {
      mattering.put(each, session.remember().recall(MATTERS + each.key()));
    }
    recallMatters();
  }

  private void read() {
    SchoolClass of = session.schoolClassProperty().get();
    if (reading != null) {
      reading.cancel();
    }
    if (of == null) {
      narrow(List.of(), List.of());
      ask();
      return;
    }
    reading = session.run(progress -> read(session.book(), of.id()), this::meet);
  }

  private static Read read(Book book, UUID classId) {
    List<Lesson> all = book.lessons().of(classId);
    Lesson latest = null;
    for (int i = all.size() - 1; i >= 0 && latest == null; i--) {
      boolean any = book.pieces().count(PieceFilter.ALL.ofLesson(all.get(i).id())) > 0;
      latest = any ? all.get(i) : null;
    }
    return new Read(all, book.cloths().all(), latest);
  }

  private void meet(Read read) {
    narrow(read.lessons(), read.cloths());
    if (meeting) {
      meeting = false;
      filling = true;
      String latest = read.latest() == null ? ALL : String.valueOf(read.latest().id());
      String was = session.remember().recall(LESSON);
      boolean there = was.equals(ALL) || lessons.stream().anyMatch(each -> kept(each).equals(was));
      choose(lessons, lesson, there ? was : latest);
      choose(cloths, cloth, session.remember().recall(CLOTH));
      filling = false;
    }
    ask();
  }

  private static void choose(List<Choice> all, ObjectProperty<Choice> chosen, String id) {
    all.stream().filter(each -> kept(each).equals(id)).findFirst().ifPresent(chosen::set);
  }

  private void narrow(List<Lesson> ofClass, List<Cloth> ofRoom) {
    filling = true;
    List<Choice> some = new ArrayList<>(List.of(anyLesson));
    ofClass.forEach(each -> some.add(Choice.of(each, session.words())));
    fill(lessons, some, lesson, anyLesson);
    List<Choice> others = new ArrayList<>(List.of(anyCloth));
    ofRoom.forEach(each -> others.add(new Choice(each.id(), each.name())));
    fill(cloths, others, cloth, anyCloth);
    filling = false;
  }

  private static void fill(
      ObservableList<Choice> shown, List<Choice> now, ObjectProperty<Choice> chosen, Choice any) {
    Choice was = chosen.get();
    if (!shown.equals(now)) {
      shown.setAll(now);
    }
    chosen.set(now.contains(was) ? was : any);
  }
}
