package walebook.desk.term;

import java.util.List;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import walebook.desk.common.Session;
import walebook.record.SchoolClass;
import walebook.record.Term;

/** The term's record: which class is in hand and which part of its record is shown. */
public final class TermViewModel {
  private final Session session;
  private final ObservableList<SchoolClass> classes = FXCollections.observableArrayList();
  private final ReadOnlyBooleanWrapper loaded = new ReadOnlyBooleanWrapper(this, "loaded");
  private final ReadOnlyStringWrapper term = new ReadOnlyStringWrapper(this, "term", "");
  private final ObjectProperty<Part> part = new SimpleObjectProperty<>(this, "part", Part.STUDENTS);

  /** The parts of the record. */
  public enum Part {
    STUDENTS,
    MACHINES,
    EXPORT,
    GATHER,
    ASSESS,
    PRINT,
    BRING,
    BIN,
    START
  }

  private record Read(List<SchoolClass> classes, @Nullable Term term) {}

  public TermViewModel(Session session) {
    this.session = session;
    session.changesProperty().addListener((from, old, now) -> read());
    session.schoolClassProperty().addListener((from, old, now) -> read());
    read();
  }

  public ObservableList<SchoolClass> classes() {
    return classes;
  }

  public ReadOnlyBooleanProperty loadedProperty() {
    return loaded.getReadOnlyProperty();
  }

  /** The term of the class in hand, with its days; empty while there is none. */
  public ReadOnlyStringProperty termProperty() {
    return term.getReadOnlyProperty();
  }

  public ObjectProperty<Part> partProperty() {
    return part;
  }

  /** Takes another class in hand. */
  public void take(SchoolClass other) {
    session.schoolClassProperty().set(other);
  }

  /** Takes a class in hand that was just begun, and shows its students. */
  public void begun(SchoolClass begun) {
    part.set(Part.STUDENTS);
    session.schoolClassProperty().set(begun);
    session.changed();
  }

  private void read() {
    SchoolClass of = session.schoolClassProperty().get();
    session.run(
        progress ->
            new Read(
                session.book().classes().all(),
                of == null ? null : session.book().terms().find(of.termId())),
        this::show);
  }

  /** A term that was given no name is called by its first day, which is said once. */
  private String says(Term of) {
    return of.name().equals(of.startsOn().toString())
        ? session.words().say("desk.term.days", of.startsOn(), of.endsOn())
        : session.words().say("desk.term.term", of.name(), of.startsOn(), of.endsOn());
  }

  private void show(Read read) {
    if (!classes.equals(read.classes())) {
      classes.setAll(read.classes());
    }
    Term found = read.term();
    term.set(found == null ? "" : says(found));
    loaded.set(true);
  }
}
