package walebook.desk.common;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import walebook.act.print.Naming;
import walebook.act.print.PrintPaper;
import walebook.act.print.PrintScope;
import walebook.act.print.Printed;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.quantity.ReadNumber;
import walebook.record.SchoolClass;
import walebook.record.Student;

/** Choosing what is printed for a class or one of its lessons, where, and how it went. */
public final class PrintViewModel {
  static final List<String> PAPERS = List.of("a4", "letter");

  private final Session session;
  private final @Nullable UUID lessonId;
  private final List<PrintPaper.Kind> kinds;
  private final ObjectProperty<PrintPaper.Kind> kind;
  private final ObjectProperty<String> paper = new SimpleObjectProperty<>(this, "paper", "a4");
  private final ObjectProperty<Naming> naming;
  private final ObjectProperty<@Nullable String> grid = new SimpleObjectProperty<>(this, "grid");
  private final ObservableList<String> grids = FXCollections.observableArrayList();
  private final ObjectProperty<@Nullable Student> student =
      new SimpleObjectProperty<>(this, "student");
  private final ObservableList<Student> students = FXCollections.observableArrayList();
  private final BooleanProperty logged = new SimpleBooleanProperty(this, "logged");
  private final FormFields fields = new FormFields(() -> {}, "start");
  private final ReadOnlyStringWrapper says = new ReadOnlyStringWrapper(this, "says", "");
  private final ReadOnlyBooleanWrapper printing = new ReadOnlyBooleanWrapper(this, "printing");

  /**
   * What can be printed here.
   *
   * @param lessonId null for the whole class
   * @param kinds the first is chosen at first
   */
  public PrintViewModel(Session session, @Nullable UUID lessonId, List<PrintPaper.Kind> kinds) {
    this.session = session;
    this.lessonId = lessonId;
    this.kinds = List.copyOf(kinds);
    this.kind = new SimpleObjectProperty<>(this, "kind", kinds.get(0));
    boolean hidden = session.namesHiddenProperty().get();
    this.naming = new SimpleObjectProperty<>(this, "naming", hidden ? Naming.CODE : Naming.NAME);
    fields.put(Map.of("start", "1"));
    paper.addListener((from, old, now) -> offerGrids(now));
    offerGrids(paper.get());
    session.schoolClassProperty().addListener((from, old, now) -> readStudents());
    session.changesProperty().addListener((from, old, now) -> readStudents());
    readStudents();
  }

  List<PrintPaper.Kind> kinds() {
    return kinds;
  }

  public ObjectProperty<PrintPaper.Kind> kindProperty() {
    return kind;
  }

  /** Key of the paper's size. */
  public ObjectProperty<String> paperProperty() {
    return paper;
  }

  public ObjectProperty<Naming> namingProperty() {
    return naming;
  }

  /** Key of the sheet of labels. */
  public ObjectProperty<@Nullable String> gridProperty() {
    return grid;
  }

  ObservableList<String> grids() {
    return grids;
  }

  /** Whose record is printed; of other paper null means everybody's. */
  public ObjectProperty<@Nullable Student> studentProperty() {
    return student;
  }

  public ObservableList<Student> students() {
    return students;
  }

  /** The first label to print on, as typed. */
  public FormFields fields() {
    return fields;
  }

  /** Whether pieces that are logged already get a label too. */
  public BooleanProperty loggedProperty() {
    return logged;
  }

  /** Where it was printed to, or why not; empty before. */
  public ReadOnlyStringProperty saysProperty() {
    return says.getReadOnlyProperty();
  }

  public ReadOnlyBooleanProperty printingProperty() {
    return printing.getReadOnlyProperty();
  }

  /** Asks where, then prints. */
  public void print() {
    SchoolClass of = session.schoolClassProperty().get();
    Answer<Integer> start = ReadNumber.whole(fields.text("start"), Place.field("start"));
    boolean labels = kind.get() == PrintPaper.Kind.LABELS;
    fields.show(labels ? start.problems() : List.of());
    if (of == null || printing.get() || (labels && !start.isGood())) {
      return;
    }
    Path file = session.files().save(PickFile.Kind.PAPER, fileName(of.name()));
    if (file == null) {
      return;
    }
    Student whose = kind.get() == PrintPaper.Kind.RECORD ? student.get() : null;
    String sheet = grid.get();
    PrintPaper.Wanted wanted =
        new PrintPaper.Wanted(
            kind.get(),
            new PrintScope(of.id(), lessonId, whose == null ? null : whose.id(), naming.get()),
            paper.get(),
            sheet == null ? Map.of() : Map.of("grid", sheet),
            labels ? start.value() : 1,
            logged.get());
    PrintPaper print = new PrintPaper(session.book(), session.words(), session.tables());
    printing.set(true);
    says.set(session.words().say("desk.common.print.printing"));
    session
        .background()
        .run(progress -> print.print(wanted, file, progress::at), this::end, this::failed);
  }

  private void end(Answer<Printed> answer) {
    printing.set(false);
    fields.show(answer.problems());
    says.set(PrintedWords.of(session.words(), answer));
  }

  private void failed(Throwable fault) {
    printing.set(false);
    says.set("");
    session.unexpected(fault);
  }

  private void offerGrids(String size) {
    grids.setAll(PrintPaper.grids(size));
    grid.set(grids.isEmpty() ? null : grids.get(0));
  }

  private void readStudents() {
    SchoolClass of = session.schoolClassProperty().get();
    session.run(
        progress ->
            of == null ? List.<Student>of() : session.book().enrolments().studentsOf(of.id()),
        found -> {
          students.setAll(found);
          Student now = student.get();
          if (now == null || found.stream().noneMatch(each -> each.id().equals(now.id()))) {
            student.set(found.isEmpty() ? null : found.get(0));
          }
        });
  }

  private String fileName(String className) {
    String plain = className.replaceAll("[^\\p{L}\\p{N}]+", "-").toLowerCase(Locale.ROOT);
    return plain.replaceAll("^-|-$", "") + "-" + kind.get().key() + ".pdf";
  }
}
