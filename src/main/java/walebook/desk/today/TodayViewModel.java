package walebook.desk.today;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.desk.common.DayWords;
import walebook.desk.common.Latest;
import walebook.desk.common.PlainLetters;
import walebook.desk.common.Session;
import walebook.desk.common.Wish;
import walebook.record.Lesson;
import walebook.record.SchoolClass;
import walebook.record.Student;

/** Who I am, the lesson in hand, my plan and my next piece. */
public final class TodayViewModel {
  private static final String PIECES = "pieces";
  private static final String CLOTHS = "cloths";

  private final Session session;
  private final Latest roomReading;
  private final Latest dayReading;
  private final ObservableList<SchoolClass> classes = FXCollections.observableArrayList();
  private final ObservableList<Student> students = FXCollections.observableArrayList();
  private final ObservableList<Student> found = FXCollections.observableArrayList();
  private final ObservableList<SchoolClass> classesView =
      FXCollections.unmodifiableObservableList(classes);
  private final ObservableList<Student> foundView = FXCollections.unmodifiableObservableList(found);
  private final BooleanProperty anyone = new SimpleBooleanProperty(this, "anyone");
  private final StringProperty search = new SimpleStringProperty(this, "search", "");
  private final BooleanProperty loaded = new SimpleBooleanProperty(this, "loaded");
  private final ReadOnlyStringWrapper lesson = new ReadOnlyStringWrapper(this, "lesson", "");
  private final ReadOnlyStringWrapper several = new ReadOnlyStringWrapper(this, "several", "");
  private final ReadOnlyObjectWrapper<@Nullable MyDay> day =
      new ReadOnlyObjectWrapper<>(this, "day");

  private record Room(List<SchoolClass> classes, List<Student> students, @Nullable Lesson lesson) {}

  public TodayViewModel(Session session) {
    this.session = session;
    this.roomReading = new Latest(session);
    this.dayReading = new Latest(session);
    search.addListener((from, old, now) -> filter());
    session.schoolClassProperty().addListener((from, old, now) -> classChosen(old, now));
    session.studentProperty().addListener((from, old, now) -> readDay());
    session.changesProperty().addListener((from, old, now) -> readRoom());
    session.namesHiddenProperty().addListener((from, old, now) -> filter());
    readRoom();
  }

  /** True once the book was asked which classes it has. */
  public BooleanProperty loadedProperty() {
    return loaded;
  }

  public ObservableList<SchoolClass> classes() {
    return classesView;
  }

  public ObjectProperty<@Nullable SchoolClass> schoolClassProperty() {
    return session.schoolClassProperty();
  }

  public ObjectProperty<@Nullable Student> studentProperty() {
    return session.studentProperty();
  }

  /** What is typed to find a name. */
  public StringProperty searchProperty() {
    return search;
  }

  /** The students of the class whose name has what was typed. */
  public ObservableList<Student> found() {
    return foundView;
  }

  /** Whether the class has students. */
  public BooleanProperty anyoneProperty() {
    return anyone;
  }

  /** The lesson in hand with its day; empty when the class has none. */
  public ReadOnlyStringProperty lessonProperty() {
    return lesson.getReadOnlyProperty();
  }

  /** The student's day, or null while nobody said who they are. */
  public ReadOnlyObjectProperty<@Nullable MyDay> dayProperty() {
    return day.getReadOnlyProperty();
  }

  /** A student's name as it is shown just now. */
  public String name(Student student) {
    return session.namesHiddenProperty().get() ? student.alias() : student.name();
  }

  public void choose(Student student) {
    search.set("");
    session.studentProperty().set(student);
  }

  /**
   * Takes the only name that was found; for the Enter key. Of several it takes none, and says so:
   * pieces would go to somebody else's name.
   */
  public void chooseOnly() {
    if (found.size() == 1) {
      choose(found.get(0));
    } else if (!found.isEmpty()) {
      several.set(session.words().say("desk.today.several", found.size()));
    }
  }

  /** Why Enter took nobody; empty otherwise. */
  public ReadOnlyStringProperty severalProperty() {
    return several.getReadOnlyProperty();
  }

  /** Gives the screen to somebody else. */
  public void leave() {
    session.studentProperty().set(null);
  }

  /** Logs my next piece, or one of my own when the plan has none. */
  public void logNext() {
    MyDay now = day.get();
    if (now == null || now.next() == null) {
      logOwn();
    } else {
      logPlanned(now.next().plannedId());
    }
  }

  /** Opens the form of my next reading. */
  public void measureNext() {
    MyDay now = day.get();
    MyReadings.Next next = now == null ? null : now.readings().next();
    if (next != null) {
      measure(next.plannedId());
    }
  }

  /** Opens the form of a planned reading, filled in as its lesson measures. */
  public void measure(UUID plannedId) {
    session.wish(new Wish(CLOTHS, Wish.What.LOG_PLANNED, plannedId));
  }

  public void logPlanned(UUID plannedId) {
    session.wish(new Wish(PIECES, Wish.What.LOG_PLANNED, plannedId));
  }

  public void logOwn() {
    session.wish(new Wish(PIECES, Wish.What.LOG_OWN, null));
  }

  public void open(UUID pieceId) {
    session.wish(new Wish(PIECES, Wish.What.OPEN, pieceId));
  }

  /** Leads to the place where classes and students are entered. */
  public void toTerm() {
    session.wish(Wish.show("term"));
  }

  private void classChosen(@Nullable SchoolClass before, @Nullable SchoolClass now) {
    boolean same = before != null && now != null && before.id().equals(now.id());
    if (!same) {
      session.studentProperty().set(null);
      readRoom();
    }
  }

  private void readRoom() {
    SchoolClass now = session.schoolClassProperty().get();
    roomReading.read(progress -> room(now), this::show);
  }

  private Room room(@Nullable SchoolClass chosen) {
    Book book = session.book();
    List<SchoolClass> all = book.classes().all();
    SchoolClass inHand = chosen == null && all.size() == 1 ? all.get(0) : chosen;
    return inHand == null
        ? new Room(all, List.of(), null)
        : new Room(
            all,
            book.enrolments().studentsOf(inHand.id()),
            Lesson.inHand(book.lessons().of(inHand.id()), LocalDate.now(session.clock())));
  }

  private void show(Room room) {
    classes.setAll(room.classes());
    students.setAll(room.students());
    filter();
    anyone.set(!students.isEmpty());
    Lesson now = room.lesson();
    lesson.set(
        now == null
            ? ""
            : session.words().say("desk.today.lesson", now.title(), DayWords.of(now.taughtOn())));
    loaded.set(true);
    if (session.schoolClassProperty().get() == null && room.classes().size() == 1) {
      session.schoolClassProperty().set(room.classes().get(0));
    }
    readDay();
  }

  private void filter() {
    several.set("");
    String typed = PlainLetters.of(search.get());
    found.setAll(
        students.stream()
            .filter(
                each ->
                    PlainLetters.of(name(each)).contains(typed)
                        || PlainLetters.of(each.alias()).startsWith(typed))
            .toList());
  }

  private void readDay() {
    SchoolClass inClass = session.schoolClassProperty().get();
    Student student = session.studentProperty().get();
    if (inClass == null || student == null) {
      dayReading.drop();
      day.set(null);
      return;
    }
    dayReading.read(progress -> new LoadDay(session).of(inClass.id(), student.id()), day::set);
  }
}
