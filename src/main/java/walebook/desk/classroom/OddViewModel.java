package walebook.desk.classroom;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import walebook.act.classroom.AskOdd;
import walebook.act.classroom.CompareFair;
import walebook.act.classroom.CorrectReading;
import walebook.act.classroom.MarkReading;
import walebook.compare.odd.OddReading;
import walebook.desk.common.Background;
import walebook.desk.common.FormFields;
import walebook.desk.common.Notice;
import walebook.desk.common.Session;
import walebook.desk.common.Task;
import walebook.desk.common.Wish;
import walebook.problem.Answer;
import walebook.record.By;
import walebook.record.ClothReading;
import walebook.record.SchoolClass;
import walebook.record.Student;
import walebook.words.Words;

/** Values that deserve a second look, and what the tutor makes of each. */
public final class OddViewModel {
  private final Session session;
  private final Narrowing narrowing;
  private final Asking asking;
  private final ObservableList<OddReading> rows = FXCollections.observableArrayList();
  private final ReadOnlyBooleanWrapper loaded = new ReadOnlyBooleanWrapper(this, "loaded");
  private final ReadOnlyObjectWrapper<@Nullable OddReading> open = new ReadOnlyObjectWrapper<>();
  private final ReadOnlyObjectWrapper<Notice> notice = new ReadOnlyObjectWrapper<>(Notice.NONE);
  private final FormFields form =
      new FormFields(
          () -> {},
          "reason",
          "end-length",
          "gauge",
          "edge-pressed",
          "edge-sewn",
          "edge-before",
          "grade",
          "stretched",
          "released");
  private final ObjectProperty<@Nullable String> wrong = new SimpleObjectProperty<>(this, "wrong");
  private @Nullable Task reading;

  public OddViewModel(Session session, Narrowing narrowing) {
    this.session = session;
    this.narrowing = narrowing;
    asking = new Asking(session, narrowing, this::ask);
  }

  /** Told when the part comes into sight or leaves it. */
  void shown(boolean on) {
    asking.shown(on);
  }

  Narrowing narrowing() {
    return narrowing;
  }

  ObservableList<OddReading> rows() {
    return rows;
  }

  ReadOnlyBooleanProperty loadedProperty() {
    return loaded.getReadOnlyProperty();
  }

  /** The value being looked at, or null. */
  ReadOnlyObjectProperty<@Nullable OddReading> openProperty() {
    return open.getReadOnlyProperty();
  }

  ReadOnlyObjectProperty<Notice> noticeProperty() {
    return notice.getReadOnlyProperty();
  }

  /** Fields: the reason, and each number that may have been written down wrong. */
  FormFields form() {
    return form;
  }

  /** Which number of the open value was written down wrong. */
  ObjectProperty<@Nullable String> wrongProperty() {
    return wrong;
  }

  void open(@Nullable OddReading row) {
    form.put(Map.of());
    open.set(row);
    wrong.set(row == null ? null : CorrectReading.fields(row.value()).get(0));
  }

  /** Shows the piece, or the reading's cloth, in its own place. */
  void see() {
    OddReading of = open.get();
    if (of == null) {
      return;
    }
    if (!of.value().isOfCloth()) {
      session.wish(new Wish("pieces", Wish.What.OPEN, of.targetId()));
      return;
    }
    session.run(
        progress -> Optional.ofNullable(session.book().clothLog().find(of.targetId())),
        found ->
            found
                .map(ClothReading::clothId)
                .ifPresent(cloth -> session.wish(new Wish("cloths", Wish.What.OPEN, cloth))));
  }

  void keep() {
    mark((act, of, by) -> act.keep(of.value(), of.targetId(), by), "desk.class.odd.was-kept");
  }

  void setAside() {
    String reason = form.text("reason");
    mark(
        (act, of, by) -> act.setAside(of.value(), of.targetId(), reason, by),
        "desk.class.odd.was-set-aside");
  }

  /** Puts the number right that was written down wrong. */
  void mistyped() {
    String field = wrong.get();
    if (field != null) {
      String right = form.text(field);
      boolean sure = form.isConfirmed();
      mark(
          (act, of, by) -> act.mistyped(of.value(), of.targetId(), field, right, sure, by),
          "desk.class.odd.was-mistyped");
    }
  }

  /** One of the three marks. */
  private interface Marking {
    Answer<MarkReading.Marked> put(MarkReading act, OddReading of, By by);
  }

  private void mark(Marking marking, String sayKey) {
    OddReading of = open.get();
    if (of == null) {
      return;
    }
    By by = by();
    session.run(
        progress -> marking.put(new MarkReading(session.book(), session.clock()), of, by),
        answer -> marked(answer, sayKey));
  }

  private void marked(Answer<MarkReading.Marked> answer, String sayKey) {
    if (!answer.isGood()) {
      form.show(answer.problems());
      return;
    }
    UUID step = answer.value().stepId();
    open(null);
    notice.set(new Notice(words().say(sayKey), () -> undo(step)));
    session.changed();
  }

  private void undo(UUID step) {
    By by = by();
    Background.Work<Answer<UUID>> work =
        progress -> new MarkReading(session.book(), session.clock()).undo(step, by);
    session.run(
        work,
        answer -> {
          String says =
              answer.isGood()
                  ? words().say("desk.class.odd.undone")
                  : words().sayAtField(answer.problems().get(0));
          notice.set(new Notice(says, null));
          session.changed();
        });
  }

  private By by() {
    Student student = session.studentProperty().get();
    return student == null ? By.NOBODY : new By(student.name(), student.id(), null);
  }

  Words words() {
    return session.words();
  }

  private void ask() {
    if (reading != null) {
      reading.cancel();
    }
    SchoolClass of = session.schoolClassProperty().get();
    if (of == null) {
      show(List.of());
      return;
    }
    CompareFair.Which which = narrowing.which(of, session.namesHiddenProperty().get());
    reading = session.run(progress -> new AskOdd(session.book()).ask(which), this::show);
  }

  private void show(List<OddReading> found) {
    OddReading was = open.get();
    rows.setAll(found);
    loaded.set(true);
    if (was != null && !found.contains(was)) {
      open(null);
    }
  }
}
