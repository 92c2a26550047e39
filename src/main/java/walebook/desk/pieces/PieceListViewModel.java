package walebook.desk.pieces;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.function.Function;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.book.PieceFilter;
import walebook.desk.common.Latest;
import walebook.desk.common.Session;
import walebook.record.SchoolClass;

/** The list of pieces with its filters; reads anew when a filter or the book changes. */
public final class PieceListViewModel {
  /** More rows than anyone reads; the count says how many there are. */
  public static final int MOST_ROWS = 1000;

  private final Session session;
  private final Choice any;
  private final Filter classes;
  private final Filter lessons;
  private final Filter students;
  private final Filter cloths;
  private final StringProperty search = new SimpleStringProperty(this, "search", "");
  private final ObservableList<PieceRow> rows = FXCollections.observableArrayList();
  private final ObservableList<PieceRow> rowsView = FXCollections.unmodifiableObservableList(rows);
  private final ReadOnlyStringWrapper count = new ReadOnlyStringWrapper(this, "count", "");
  private final Latest offering;
  private final Latest reading;
  private boolean filling;

  /** One filter: what can be chosen, and what is. */
  public record Filter(ObservableList<Choice> choices, ObjectProperty<@Nullable Choice> chosen) {
    Filter(Choice any) {
      this(FXCollections.observableArrayList(any), new SimpleObjectProperty<>(any));
    }

    private @Nullable UUID id() {
      Choice now = chosen.get();
      return now == null || now.key().isEmpty() ? null : UUID.fromString(now.key());
    }

    private void offer(List<Choice> next) {
      Choice before = chosen.get();
      choices.setAll(next);
      chosen.set(
          next.stream()
              .filter(each -> before != null && each.key().equals(before.key()))
              .findFirst()
              .orElse(next.get(0)));
    }
  }

  private record Offer(
      List<Choice> classes, List<Choice> lessons, List<Choice> students, List<Choice> cloths) {}

  private record Found(List<PieceRow> rows, int count) {}

  public PieceListViewModel(Session session) {
    this.session = session;
    this.offering = new Latest(session);
    this.reading = new Latest(session);
    this.any = new Choice("", session.words().say("desk.pieces.any"));
    this.classes = new Filter(any);
    this.lessons = new Filter(any);
    this.students = new Filter(any);
    this.cloths = new Filter(any);
    SchoolClass now = session.schoolClassProperty().get();
    if (now != null) {
      classes.offer(List.of(any, new Choice(now.id().toString(), now.name())));
      classes.chosen().set(classes.choices().get(1));
    }
    classes.chosen().addListener((from, old, next) -> refresh());
    for (Filter each : List.of(lessons, students, cloths)) {
      each.chosen().addListener((from, old, next) -> read());
    }
    search.addListener((from, old, next) -> read());
    session.changesProperty().addListener((from, old, next) -> refresh());
    session.namesHiddenProperty().addListener((from, old, next) -> refresh());
    refresh();
  }

  public Filter classes() {
    return classes;
  }

  public Filter lessons() {
    return lessons;
  }

  public Filter students() {
    return students;
  }

  public Filter cloths() {
    return cloths;
  }

  public StringProperty searchProperty() {
    return search;
  }

  /** The pieces that fit, newest first. */
  public ObservableList<PieceRow> rows() {
    return rowsView;
  }

  /** How many fit, in words. */
  public ReadOnlyStringProperty countProperty() {
    return count.getReadOnlyProperty();
  }

  /** True when nothing is filtered, so that an empty list means an empty book. */
  public boolean isUnfiltered() {
    return search.get().isBlank()
        && lessons.id() == null
        && students.id() == null
        && cloths.id() == null;
  }

  private void refresh() {
    if (filling) {
      return;
    }
    UUID classId = classes.id();
    boolean hidden = session.namesHiddenProperty().get();
    offering.read(progress -> offer(classId, hidden), this::offer);
  }

  private Offer offer(@Nullable UUID classId, boolean hidden) {
    Book book = session.book();
    var everyone = classId == null ? book.students().all() : book.enrolments().everyoneOf(classId);
    return new Offer(
        choices(book.classes().all(), each -> each.id(), each -> each.name()),
        choices(
            classId == null ? List.of() : book.lessons().of(classId),
            each -> each.id(),
            each -> each.title()),
        choices(everyone, each -> each.id(), each -> hidden ? each.alias() : each.name()),
        choices(book.cloths().all(), each -> each.id(), each -> each.name()));
  }

  private <T> List<Choice> choices(List<T> things, Function<T, UUID> id, Function<T, String> name) {
    List<Choice> choices = new ArrayList<>();
    choices.add(any);
    things.forEach(each -> choices.add(new Choice(id.apply(each).toString(), name.apply(each))));
    return choices;
  }

  private void offer(Offer next) {
    filling = true;
    classes.offer(next.classes());
    lessons.offer(next.lessons());
    students.offer(next.students());
    cloths.offer(next.cloths());
    filling = false;
    read();
  }

  private void read() {
    if (filling) {
      return;
    }
    PieceFilter filter =
        PieceFilter.ALL
            .ofClass(classes.id())
            .ofLesson(lessons.id())
            .ofStudent(students.id())
            .onCloth(cloths.id())
            .with(search.get())
            .page(MOST_ROWS, 0);
    boolean hidden = session.namesHiddenProperty().get();
    reading.read(progress -> find(filter, hidden), this::found);
  }

  private Found find(PieceFilter filter, boolean hidden) {
    PieceWords words = new PieceWords(session, hidden);
    List<PieceRow> found = session.book().pieces().list(filter).stream().map(words::row).toList();
    return new Found(found, session.book().pieces().count(filter));
  }

  private void found(Found found) {
    rows.setAll(found.rows());
    count.set(
        found.count() == 1
            ? session.words().say("desk.pieces.count-one")
            : session.words().say("desk.pieces.count", found.count()));
  }
}
