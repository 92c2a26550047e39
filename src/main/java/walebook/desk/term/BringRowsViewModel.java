package walebook.desk.term;

import java.nio.file.Path;
import java.util.UUID;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.collections.transformation.FilteredList;
import org.jspecify.annotations.Nullable;
import walebook.act.bring.BringInLog;
import walebook.act.bring.BringInPieces;
import walebook.act.bring.BringInRoster;
import walebook.act.bring.BringPlan;
import walebook.act.bring.RowFate;
import walebook.act.bring.Spreadsheet;
import walebook.act.bring.Trial;
import walebook.act.bring.TryRows;
import walebook.act.bring.UndoBringIn;
import walebook.act.bring.WriteRejected;
import walebook.act.bring.match.DayOrder;
import walebook.book.Book;
import walebook.desk.common.Notice;
import walebook.desk.common.PickFile;
import walebook.desk.common.Session;
import walebook.problem.Answer;
import walebook.record.SchoolClass;
import walebook.record.Student;
import walebook.tables.SharedTables;
import walebook.words.Words;

/** The rows of a spreadsheet in hand: tried, brought in, taken back, or given back. */
public final class BringRowsViewModel {
  private final Session session;
  private final BringViewModel from;
  private final BringWork work;
  private final ObservableList<Student> students = FXCollections.observableArrayList();
  private final ObjectProperty<@Nullable Student> student =
      new SimpleObjectProperty<>(this, "student");
  private final ObjectProperty<DayOrder> order =
      new SimpleObjectProperty<>(this, "order", DayOrder.UNKNOWN);
  private final BooleanProperty goodRows = new SimpleBooleanProperty(this, "goodRows");
  private final BooleanProperty sure = new SimpleBooleanProperty(this, "sure");
  private final BooleanProperty onlyProblems = new SimpleBooleanProperty(this, "onlyProblems");
  private final ReadOnlyBooleanWrapper needsOrder = new ReadOnlyBooleanWrapper(this, "needsOrder");
  private final ReadOnlyObjectWrapper<@Nullable Trial> trial =
      new ReadOnlyObjectWrapper<>(this, "trial");
  private final ReadOnlyObjectWrapper<Notice> notice =
      new ReadOnlyObjectWrapper<>(this, "notice", Notice.NONE);
  private final ObservableList<RowFate> fates = FXCollections.observableArrayList();
  private final FilteredList<RowFate> shown = new FilteredList<>(fates);

  BringRowsViewModel(Session session, BringViewModel from, BringWork work) {
    this.session = session;
    this.from = from;
    this.work = work;
    student.addListener((of, old, now) -> untried());
    order.addListener((of, old, now) -> tryAgain());
    sure.addListener((of, old, now) -> tryAgain());
    onlyProblems.addListener(
        (of, old, now) -> shown.setPredicate(now ? RowFate::isProblem : each -> true));
    session.schoolClassProperty().addListener((of, old, now) -> classChanged());
    session
        .changesProperty()
        .addListener(
            (of, old, now) -> {
              // What a dry run came to still stands below it.
              if (trial.get() == null) {
                notice.set(Notice.NONE);
              }
              readStudents();
            });
    readStudents();
  }

  public ObservableList<Student> students() {
    return students;
  }

  /** Whose pieces they are where no column says so. */
  public ObjectProperty<@Nullable Student> studentProperty() {
    return student;
  }

  public ObjectProperty<DayOrder> orderProperty() {
    return order;
  }

  /** True once some day could be read two ways. */
  public ReadOnlyBooleanProperty needsOrderProperty() {
    return needsOrder.getReadOnlyProperty();
  }

  /** True to bring in the good rows, false for all or nothing. */
  public BooleanProperty goodRowsProperty() {
    return goodRows;
  }

  /** True when what is only asked about was looked at and is right. */
  public BooleanProperty sureProperty() {
    return sure;
  }

  public BooleanProperty onlyProblemsProperty() {
    return onlyProblems;
  }

  /** What would become of the rows; null until they were tried as things stand now. */
  public ReadOnlyObjectProperty<@Nullable Trial> trialProperty() {
    return trial.getReadOnlyProperty();
  }

  /** The rows' fates, all or those with problems. */
  public ObservableList<RowFate> shown() {
    return shown;
  }

  public ReadOnlyObjectProperty<Notice> noticeProperty() {
    return notice.getReadOnlyProperty();
  }

  /** How many rows would come in as things stand. */
  public int comesIn() {
    Trial now = trial.get();
    if (now == null || (now.hasProblems() && !goodRows.get())) {
      return 0;
    }
    return now.count(RowFate.Fate.NEW);
  }

  /** Tries the rows; nothing of it stays in the book. */
  public void tryRows() {
    BringPlan plan = plan();
    if (plan == null) {
      return;
    }
    work.start(
        () ->
            new TryRows(
                    session.book(),
                    session.tables(),
                    session.words(),
                    session.clock(),
                    session.chance())
                .of(plan),
        this::show,
        () -> {});
  }

  private void show(Trial now) {
    needsOrder.set(needsOrder.get() || now.needsOrder());
    fates.setAll(now.fates());
    trial.set(now);
    notice.set(new Notice(counts(now), null));
  }

  /** How many rows come to what. */
  public String counts(Trial of) {
    return session
        .words()
        .say(
            "desk.term.bring.counts",
            of.count(RowFate.Fate.NEW),
            of.count(RowFate.Fate.THERE),
            of.count(RowFate.Fate.ASKED),
            of.count(RowFate.Fate.REFUSED));
  }

  private void tryAgain() {
    if (trial.get() != null) {
      untried();
      tryRows();
    }
  }

  /** Brings in what was tried. */
  public void bringIn() {
    BringPlan plan = plan();
    if (plan == null || comesIn() == 0) {
      return;
    }
    work.start(() -> bring(plan), this::brought, () -> {});
  }

  private Answer<Trial> bring(BringPlan plan) {
    Book book = session.book();
    SharedTables tables = session.tables();
    Words words = session.words();
    return switch (plan.what()) {
      case ROSTER ->
          new BringInRoster(book, tables, words, session.clock(), session.chance())
              .bring(plan, session.by());
      case PIECES ->
          new BringInPieces(book, tables, words, session.clock(), session.chance())
              .bring(plan, session.by());
      case CLOTHS, READINGS, WASHES, NOTES ->
          new BringInLog(book, tables, words, session.clock(), session.chance())
              .bring(plan, session.by());
    };
  }

  private void brought(Trial done) {
    UUID step = done.stepId();
    if (step == null) {
      show(done);
      work.says.set(session.words().say("desk.term.bring.stopped"));
      return;
    }
    untried();
    int rows = done.count(RowFate.Fate.NEW);
    session.changed();
    notice.set(new Notice(session.words().say("desk.term.bring.done", rows), () -> undo(step)));
  }

  private void undo(UUID step) {
    work.start(
        () -> new UndoBringIn(session.book()).undo(step, session.by()),
        undone -> {
          session.changed();
          notice.set(new Notice(session.words().say("desk.term.bring.undone"), null));
        },
        () -> {});
  }

  /** Asks where, then writes the rows that stay outside with the reasons. */
  public void saveRefused() {
    Trial now = trial.get();
    Spreadsheet sheet = from.inHandProperty().get();
    if (now == null || sheet == null || !now.hasProblems()) {
      return;
    }
    String name = session.words().say("desk.term.bring.refused-file");
    Path to = session.files().save(PickFile.Kind.WORKBOOK, name);
    if (to == null) {
      return;
    }
    // The system's chooser has asked whether a file that is there may give way.
    work.start(
        () -> new WriteRejected(session.words()).write(to, sheet, now, /* replace= */ true),
        file ->
            notice.set(
                new Notice(session.words().say("desk.term.bring.refused-saved", file), null)),
        () -> {});
  }

  private @Nullable BringPlan plan() {
    SchoolClass of = session.schoolClassProperty().get();
    Spreadsheet sheet = from.inHandProperty().get();
    if (of == null || sheet == null || work.working.get()) {
      return null;
    }
    Student all = student.get();
    return new BringPlan(
        from.whatProperty().get(),
        sheet,
        from.columns().stream().map(BringColumn::match).toList(),
        of.id(),
        all == null ? null : all.id(),
        order.get(),
        goodRows.get(),
        sure.get());
  }

  /** The rows have to be tried anew. */
  void untried() {
    trial.set(null);
    fates.clear();
    work.says.set("");
  }

  private void classChanged() {
    student.set(null);
    untried();
    readStudents();
  }

  private void readStudents() {
    SchoolClass of = session.schoolClassProperty().get();
    if (of == null) {
      students.clear();
      return;
    }
    session.run(
        progress -> session.book().enrolments().everyoneOf(of.id()),
        all -> {
          if (!students.equals(all)) {
            students.setAll(all);
          }
        });
  }
}
