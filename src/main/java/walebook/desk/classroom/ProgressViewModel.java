package walebook.desk.classroom;

import java.util.List;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import walebook.compare.ClassProgress;
import walebook.desk.common.Session;
import walebook.desk.common.Wish;
import walebook.record.Lesson;
import walebook.record.SchoolClass;
import walebook.words.Words;

/** Who has logged what. */
public final class ProgressViewModel {
  private final Session session;
  private final ObservableList<Lesson> lessons = FXCollections.observableArrayList();
  private final ObservableList<ProgressRow> rows = FXCollections.observableArrayList();
  private final ReadOnlyBooleanWrapper loaded = new ReadOnlyBooleanWrapper(this, "loaded");

  public ProgressViewModel(Session session) {
    this.session = session;
    session.schoolClassProperty().addListener((from, old, now) -> read());
    session.namesHiddenProperty().addListener((from, old, now) -> read());
    session.changesProperty().addListener((from, old, now) -> read());
    read();
  }

  ObservableList<Lesson> lessons() {
    return lessons;
  }

  ObservableList<ProgressRow> rows() {
    return rows;
  }

  ReadOnlyBooleanProperty loadedProperty() {
    return loaded.getReadOnlyProperty();
  }

  /** A cell: done of planned, or a dash where nothing was planned. */
  String cell(ProgressRow row, int lesson) {
    ClassProgress.Done done = row.found().perLesson().get(lesson);
    return done.planned() == 0
        ? "–"
        : words().say("desk.class.progress.cell", done.logged(), done.planned());
  }

  /** Asks the term record for students. */
  void enrol() {
    session.wish(Wish.show("term"));
  }

  /** The rows with aliases for names, for a screen that everyone sees. */
  void forBoard(Consumer<List<ProgressRow>> show) {
    show.accept(
        rows.stream()
            .map(row -> new ProgressRow(row.found().student().alias(), row.found()))
            .toList());
  }

  Words words() {
    return session.words();
  }

  private void read() {
    SchoolClass of = session.schoolClassProperty().get();
    if (of == null) {
      show(new ClassProgress(List.of(), List.of()));
      return;
    }
    session.run(progress -> ClassProgress.of(session.book(), of.id()), this::show);
  }

  private void show(ClassProgress progress) {
    boolean hidden = session.namesHiddenProperty().get();
    if (!lessons.equals(progress.lessons())) {
      lessons.setAll(progress.lessons());
    }
    rows.setAll(
        progress.rows().stream()
            .map(row -> new ProgressRow(hidden ? row.student().alias() : row.student().name(), row))
            .toList());
    loaded.set(true);
  }
}
