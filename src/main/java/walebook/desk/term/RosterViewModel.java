package walebook.desk.term;

import java.util.List;
import java.util.Map;
import javafx.beans.binding.BooleanExpression;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import walebook.act.classroom.EnrolStudents;
import walebook.act.classroom.KeepStudent;
import walebook.desk.common.FormFields;
import walebook.desk.common.NotesViewModel;
import walebook.desk.common.Notice;
import walebook.desk.common.Session;
import walebook.record.Keyed;
import walebook.record.Note;
import walebook.record.SchoolClass;
import walebook.record.Student;
import walebook.record.Tier;

/** The class's list of students: add, change, note that one left. */
public final class RosterViewModel {
  private final Session session;
  private final KeepStudent keep;
  private final EnrolStudents enrol;
  private final PrivacyViewModel privacy;
  private final NotesViewModel notes;
  private final ObservableList<Student> students = FXCollections.observableArrayList();
  private final ReadOnlyObjectWrapper<@Nullable Student> open =
      new ReadOnlyObjectWrapper<>(this, "open");
  private final ReadOnlyBooleanWrapper leaving = new ReadOnlyBooleanWrapper(this, "leaving");
  private final ReadOnlyObjectWrapper<Notice> notice =
      new ReadOnlyObjectWrapper<>(this, "notice", Notice.NONE);
  private final FormFields names = new FormFields(() -> {}, "students");
  private final FormFields card =
      new FormFields(() -> {}, "student-name", "student-alias", "student-tier");
  private boolean adding;

  public RosterViewModel(Session session) {
    this.session = session;
    this.keep = new KeepStudent(session.book(), session.clock());
    this.enrol = new EnrolStudents(session.book(), session.clock());
    this.notes = new NotesViewModel(session);
    this.privacy = new PrivacyViewModel(session, () -> open(null));
    privacy.noticeProperty().addListener((from, old, now) -> notice.set(now));
    session.changesProperty().addListener((from, old, now) -> read());
    session
        .schoolClassProperty()
        .addListener(
            (from, old, now) -> {
              open(null);
              read();
            });
    session.studentProperty().addListener((from, old, now) -> showNotes());
    read();
  }

  /** Notes about the open student; shown to the tutor alone. */
  public NotesViewModel notes() {
    return notes;
  }

  /** True while a student is at the screen, who has no business with what is noted of another. */
  public BooleanExpression lockedProperty() {
    return session.studentProperty().isNotNull();
  }

  /** Says that the tutor is at the screen now. */
  public void tutorIsHere() {
    session.tutorIsHere();
  }

  private void showNotes() {
    Student of = open.get();
    if (of == null || session.studentProperty().get() != null) {
      notes.close();
    } else {
      notes.open(Note.About.STUDENT, of.id());
    }
  }

  /** Taking the open student out of the book. */
  public PrivacyViewModel privacy() {
    return privacy;
  }

  public ObservableList<Student> students() {
    return students;
  }

  /** The student whose card is open, or null. */
  public ReadOnlyObjectProperty<@Nullable Student> openProperty() {
    return open.getReadOnlyProperty();
  }

  /** True once taking the open student off the list was asked for and not yet confirmed. */
  public ReadOnlyBooleanProperty leavingProperty() {
    return leaving.getReadOnlyProperty();
  }

  public ReadOnlyObjectProperty<Notice> noticeProperty() {
    return notice.getReadOnlyProperty();
  }

  /** The field of names to add, one a line. */
  public FormFields names() {
    return names;
  }

  public FormFields card() {
    return card;
  }

  public void open(@Nullable Student student) {
    leaving.set(false);
    privacy.of(student);
    open.set(student);
    showNotes();
    if (student != null) {
      card.put(
          Map.of(
              "student-name", student.name(),
              "student-alias", student.alias(),
              "student-tier", student.tier().key()));
    }
  }

  /** Adds the typed names; those that can't be stay in the field with the reason. */
  public void add() {
    SchoolClass of = session.schoolClassProperty().get();
    String typed = names.text("students");
    if (of == null || typed.isBlank() || adding) {
      return;
    }
    adding = true;
    session
        .background()
        .run(
            progress -> enrol.enrol(of.id(), typed),
            this::added,
            fault -> {
              adding = false;
              session.unexpected(fault);
            });
  }

  private void added(EnrolStudents.Enrolled enrolled) {
    adding = false;
    names.put(Map.of("students", enrolled.passedOver()));
    names.show(enrolled.problems());
    notice.set(Notice.NONE);
    if (!enrolled.added().isEmpty()) {
      session.changed();
      say("desk.term.roster.added", enrolled.added().size());
    }
  }

  public void save() {
    Student student = open.get();
    Tier tier = Keyed.find(Tier.class, card.text("student-tier"));
    if (student == null || tier == null) {
      return;
    }
    String name = card.text("student-name");
    String alias = card.text("student-alias");
    session.run(
        progress -> keep.change(student, name, alias, tier),
        answer -> {
          card.show(answer.problems());
          if (answer.isGood()) {
            open(null);
            follow(answer.value());
            session.changed();
            say("desk.term.roster.saved", answer.value().name());
          }
        });
  }

  /** Takes the open student off the list at the second call. */
  public void leave() {
    SchoolClass of = session.schoolClassProperty().get();
    Student student = open.get();
    if (of == null || student == null) {
      return;
    }
    if (!leaving.get()) {
      leaving.set(true);
      return;
    }
    session.run(
        progress -> {
          keep.leave(of.id(), student);
          return student;
        },
        gone -> {
          open(null);
          session.changed();
          say("desk.term.roster.left", gone.name());
        });
  }

  private void follow(Student changed) {
    Student now = session.studentProperty().get();
    if (now != null && now.id().equals(changed.id())) {
      session.studentProperty().set(changed);
    }
  }

  private void say(String key, Object with) {
    notice.set(new Notice(session.words().say(key, with), null));
  }

  private void show(List<Student> found) {
    students.setAll(found);
    Student opened = open.get();
    if (opened != null && found.stream().noneMatch(each -> each.id().equals(opened.id()))) {
      open(null);
    }
  }

  private void read() {
    notice.set(Notice.NONE);
    SchoolClass of = session.schoolClassProperty().get();
    if (of == null) {
      students.clear();
      return;
    }
    session.run(progress -> session.book().enrolments().studentsOf(of.id()), this::show);
  }
}
