package walebook.desk.term;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.jspecify.annotations.Nullable;
import walebook.act.classroom.ExportChosen;
import walebook.desk.common.PickFile;
import walebook.desk.common.Session;
import walebook.desk.common.Task;
import walebook.problem.Answer;
import walebook.record.Lesson;
import walebook.record.SchoolClass;
import walebook.record.Student;

/** Writing the term's record: what of it, how students appear, where, and how it went. */
public final class ExportViewModel {
  private static final String EXISTS = "sheet.exists";

  private final Session session;
  private final ExportChosen export;
  private final ExportChoice choice;
  private final ObjectProperty<Shown> shown;
  private final ObjectProperty<Kind> kind = new SimpleObjectProperty<>(this, "kind", Kind.WORKBOOK);
  private final BooleanProperty studentSheets = new SimpleBooleanProperty(this, "studentSheets");
  private final ReadOnlyBooleanWrapper writing = new ReadOnlyBooleanWrapper(this, "writing");
  private final ReadOnlyDoubleWrapper share = new ReadOnlyDoubleWrapper(this, "share");
  private final ReadOnlyStringWrapper says = new ReadOnlyStringWrapper(this, "says", "");
  private final ReadOnlyObjectWrapper<ExportChosen.@Nullable Preview> preview =
      new ReadOnlyObjectWrapper<>(this, "preview");
  private final ReadOnlyObjectWrapper<@Nullable Path> inTheWay =
      new ReadOnlyObjectWrapper<>(this, "inTheWay");
  private @Nullable Task task;
  private boolean offering;
  private int asked;

  /** How students appear. */
  public enum Shown {
    CODES,
    NAMES
  }

  /** What kind of file is written. */
  public enum Kind {
    WORKBOOK(".xlsx"),
    CSV(".csv"),
    TABLES(".zip"),
    JSON(".json");

    private final String ending;

    Kind(String ending) {
      this.ending = ending;
    }

    String ending() {
      return ending;
    }
  }

  private record Room(List<Lesson> lessons, List<Student> students) {}

  public ExportViewModel(Session session) {
    this.session = session;
    export = new ExportChosen(session.book(), session.words(), session.tables(), session.clock());
    choice = new ExportChoice(export.columns(), this::look);
    shown = new SimpleObjectProperty<>(this, "shown", Shown.CODES);
    shown.addListener((from, old, now) -> read());
    studentSheets.addListener((from, old, now) -> look());
    session.schoolClassProperty().addListener((from, old, now) -> read());
    session.changesProperty().addListener((from, old, now) -> read());
    read();
  }

  public ObjectProperty<Shown> shownProperty() {
    return shown;
  }

  public ObjectProperty<Kind> kindProperty() {
    return kind;
  }

  /** Whether each student gets a sheet of their own. */
  public BooleanProperty studentSheetsProperty() {
    return studentSheets;
  }

  public ExportChoice choice() {
    return choice;
  }

  /** What would go out; null while nothing would. */
  public ReadOnlyObjectProperty<ExportChosen.@Nullable Preview> previewProperty() {
    return preview.getReadOnlyProperty();
  }

  public ReadOnlyBooleanProperty writingProperty() {
    return writing.getReadOnlyProperty();
  }

  /** How far the writing is, 0 to 1. */
  public ReadOnlyDoubleProperty shareProperty() {
    return share.getReadOnlyProperty();
  }

  /** The file that is there already and may be replaced, or null. */
  public ReadOnlyObjectProperty<@Nullable Path> inTheWayProperty() {
    return inTheWay.getReadOnlyProperty();
  }

  /** Where it was written, or why not; empty before. */
  public ReadOnlyStringProperty saysProperty() {
    return says.getReadOnlyProperty();
  }

  /** Asks where, then writes. */
  public void export() {
    SchoolClass of = session.schoolClassProperty().get();
    if (of == null || writing.get() || preview.get() == null) {
      return;
    }
    Path file = session.files().save(PickFile.Kind.WORKBOOK, fileName(of.name()));
    if (file != null) {
      write(file, of, false);
    }
  }

  /** Writes over the file that was there already. */
  public void replace() {
    Path file = inTheWay.get();
    SchoolClass of = session.schoolClassProperty().get();
    if (file != null && of != null && !writing.get()) {
      write(file, of, true);
    }
  }

  /** Stops writing; no file is left. */
  public void cancel() {
    Task running = task;
    if (running != null && writing.get()) {
      running.cancel();
      writing.set(false);
      says.set(session.words().say("desk.term.export.stopped"));
    }
  }

  private void write(Path file, SchoolClass of, boolean replace) {
    ExportChosen.Wanted wanted = wanted(of.id());
    inTheWay.set(null);
    writing.set(true);
    says.set(session.words().say("desk.term.export.writing"));
    Task started =
        session
            .background()
            .run(
                progress -> export.export(file, wanted, replace, progress::at),
                answer -> ended(file, answer),
                fault -> {
                  writing.set(false);
                  says.set("");
                  session.unexpected(fault);
                });
    task = started;
    share.bind(started.shareProperty());
  }

  private void ended(Path file, Answer<Path> answer) {
    writing.set(false);
    if (answer.isGood()) {
      says.set(session.words().say("desk.term.export.written", answer.value()));
      return;
    }
    boolean exists = answer.problems().get(0).code().equals(EXISTS);
    inTheWay.set(exists ? file : null);
    says.set(
        exists
            ? session.words().say("desk.term.export.exists", file)
            : answer.problems().stream()
                .map(session.words()::say)
                .collect(Collectors.joining(" ")));
  }

  private ExportChosen.Wanted wanted(UUID classId) {
    return new ExportChosen.Wanted(
        classId,
        shown.get() == Shown.NAMES,
        ExportChoice.taken(choice.lessons()),
        ExportChoice.taken(choice.students()),
        columns(),
        studentSheets.get());
  }

  /** With none of them ticked the piece's code goes out alone: an empty choice would mean all. */
  private Set<String> columns() {
    return ExportChoice.isNone(choice.columns())
        ? Set.of(ExportChosen.ALWAYS)
        : ExportChoice.taken(choice.columns());
  }

  private void read() {
    SchoolClass of = session.schoolClassProperty().get();
    if (of == null) {
      preview.set(null);
      return;
    }
    session.run(
        progress ->
            new Room(
                session.book().lessons().of(of.id()),
                session.book().enrolments().everyoneOf(of.id())),
        room -> {
          offering = true;
          choice.offer(room.lessons(), room.students(), shown.get() == Shown.NAMES);
          offering = false;
          look();
        });
  }

  /** Looks at what would go out now; only the last question's answer is shown. */
  private void look() {
    SchoolClass of = session.schoolClassProperty().get();
    if (offering || of == null) {
      return;
    }
    int question = ++asked;
    if (ExportChoice.isNone(choice.lessons()) || ExportChoice.isNone(choice.students())) {
      preview.set(null);
      return;
    }
    ExportChosen.Wanted wanted = wanted(of.id());
    session.run(
        progress -> export.preview(wanted),
        answer -> {
          if (question == asked) {
            preview.set(answer.isGood() ? answer.value() : null);
          }
        });
  }

  private String fileName(String className) {
    String plain = className.replaceAll("[^\\p{L}\\p{N}]+", "-").toLowerCase(Locale.ROOT);
    String trimmed = plain.replaceAll("^-|-$", "");
    return (trimmed.isEmpty() ? "class" : trimmed) + kind.get().ending;
  }
}
