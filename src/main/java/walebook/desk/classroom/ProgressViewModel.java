package walebook.desk.classroom;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import walebook.compare.ClassProgress;
import walebook.desk.common.Latest;
import walebook.desk.common.Session;
import walebook.desk.common.Wish;
import walebook.drawing.DoneTable;
import walebook.record.Lesson;
import walebook.record.SchoolClass;
import walebook.words.Words;

/** Who has logged what. */
public final class ProgressViewModel {
  private static final int ROWS_ON_BOARD = 12;
  private static final int LESSONS_ON_BOARD = 8;

  private final Session session;
  private final Latest reading;
  private final ObservableList<Lesson> lessons = FXCollections.observableArrayList();
  private final ObservableList<ProgressRow> rows = FXCollections.observableArrayList();
  private final ReadOnlyBooleanWrapper loaded = new ReadOnlyBooleanWrapper(this, "loaded");

  public ProgressViewModel(Session session) {
    this.session = session;
    this.reading = new Latest(session);
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

  /** The table with aliases for names, for a screen that everyone sees. */
  void forBoard(Consumer<List<Finding>> show) {
    int done = 0;
    int planned = 0;
    for (ProgressRow row : rows) {
      for (ClassProgress.Done each : row.found().perLesson()) {
        done += each.logged();
        planned += each.planned();
      }
    }
    String says = words().say("desk.class.progress.done", done, planned);
    List<Finding> findings = new ArrayList<>();
    for (int row = 0; row < rows.size(); row += ROWS_ON_BOARD) {
      for (int lesson = 0; lesson < lessons.size(); lesson += LESSONS_ON_BOARD) {
        findings.add(
            new Finding(findings.isEmpty() ? List.of(says) : List.of(), part(row, lesson), ""));
      }
    }
    show.accept(findings);
  }

  private DoneTable part(int firstRow, int firstLesson) {
    return drawn(
        rows.subList(firstRow, Math.min(rows.size(), firstRow + ROWS_ON_BOARD)),
        row -> row.found().student().alias(),
        firstLesson,
        Math.min(lessons.size(), firstLesson + LESSONS_ON_BOARD));
  }

  private DoneTable drawn(
      List<ProgressRow> some, Function<ProgressRow, String> name, int first, int last) {
    return new DoneTable(
        some.stream().map(name).toList(),
        lessons.subList(first, last).stream().map(Choice::day).toList(),
        some.stream()
            .map(
                row ->
                    row.found().perLesson().subList(first, last).stream()
                        .map(each -> new DoneTable.Cell(each.logged(), each.planned()))
                        .toList())
            .toList());
  }

  /** The whole table as a picture, with names as they are shown. */
  DoneTable drawing() {
    return drawn(rows, ProgressRow::name, 0, lessons.size());
  }

  /** The numbers for a spreadsheet, the header first: two for each lesson, done and planned. */
  List<List<String>> table() {
    List<List<String>> lines = new ArrayList<>();
    List<String> header = new ArrayList<>(List.of(words().say("desk.class.col.student")));
    for (Lesson lesson : lessons) {
      String name = Choice.of(lesson, words()).name();
      header.add(words().say("desk.class.progress.col.done", name));
      header.add(words().say("desk.class.progress.col.planned", name));
    }
    header.add(words().say("desk.class.col.own"));
    header.add(words().say("desk.class.col.readings"));
    header.add(words().say("desk.class.col.last"));
    lines.add(header);
    for (ProgressRow row : rows) {
      List<String> line = new ArrayList<>(List.of(row.name()));
      for (ClassProgress.Done each : row.found().perLesson()) {
        line.add(Integer.toString(each.logged()));
        line.add(Integer.toString(each.planned()));
      }
      line.add(Integer.toString(row.found().own()));
      line.add(Integer.toString(row.found().readings()));
      line.add(row.lastDay());
      lines.add(line);
    }
    return lines;
  }

  Session session() {
    return session;
  }

  Words words() {
    return session.words();
  }

  private void read() {
    SchoolClass of = session.schoolClassProperty().get();
    if (of == null) {
      reading.drop();
      show(new ClassProgress(List.of(), List.of()));
      return;
    }
    reading.read(progress -> ClassProgress.of(session.book(), of.id()), this::show);
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
