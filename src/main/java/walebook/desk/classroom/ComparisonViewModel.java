package walebook.desk.classroom;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.function.Consumer;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import walebook.act.classroom.CompareClass;
import walebook.book.Book;
import walebook.book.PieceFilter;
import walebook.compare.CompareBySetting;
import walebook.compare.Comparison;
import walebook.compare.Factor;
import walebook.compare.PieceResult;
import walebook.desk.common.Session;
import walebook.desk.common.Task;
import walebook.desk.common.Wish;
import walebook.record.Cloth;
import walebook.record.Lesson;
import walebook.record.SchoolClass;
import walebook.words.Words;

/** The class's pieces by setting: what is asked, what was found, which row is open. */
public final class ComparisonViewModel {
  private final Session session;
  private final LevelWords levels;
  private final Choice anyLesson;
  private final Choice anyCloth;
  private final ObservableList<Choice> lessons = FXCollections.observableArrayList();
  private final ObservableList<Choice> cloths = FXCollections.observableArrayList();
  private final ObjectProperty<Choice> lesson;
  private final ObjectProperty<Choice> cloth;
  private final Set<Factor> factors = new LinkedHashSet<>(CompareBySetting.USUAL);
  private final ReadOnlyObjectWrapper<Found> found = new ReadOnlyObjectWrapper<>(Found.NOTHING);
  private final ObservableList<ComparedRow> rows = FXCollections.observableArrayList();
  private final ReadOnlyObjectWrapper<@Nullable ComparedRow> open = new ReadOnlyObjectWrapper<>();
  private @Nullable Task reading;
  private boolean filling;
  // A class is met with its latest lesson: a whole term at once is more than an eye takes in.
  private boolean meeting = true;

  /**
   * What a comparison found, worded.
   *
   * @param loaded false until the book was read
   * @param same what is alike in all pieces; may be empty
   * @param says the sentences, most important first
   */
  record Found(
      boolean loaded,
      int pieces,
      int students,
      String same,
      List<String> says,
      ComparisonPlot plot) {
    static final Found NOTHING = new Found(false, 0, 0, "", List.of(), new ComparisonPlot(null, 0));
  }

  /** What was read; {@code latest} is the last lesson of which a piece is logged. */
  private record Read(
      List<Lesson> lessons, List<Cloth> cloths, @Nullable Lesson latest, Comparison comparison) {}

  public ComparisonViewModel(Session session) {
    this.session = session;
    this.levels = new LevelWords(session.words());
    anyLesson = new Choice(null, session.words().say("desk.class.any-lesson"));
    anyCloth = new Choice(null, session.words().say("desk.class.any-cloth"));
    lesson = new SimpleObjectProperty<>(this, "lesson", anyLesson);
    cloth = new SimpleObjectProperty<>(this, "cloth", anyCloth);
    lesson.addListener((from, old, now) -> askAgain());
    cloth.addListener((from, old, now) -> askAgain());
    session.namesHiddenProperty().addListener((from, old, now) -> askAgain());
    session.changesProperty().addListener((from, old, now) -> askAgain());
    session
        .schoolClassProperty()
        .addListener(
            (from, old, now) -> {
              meeting = true;
              narrow(null, null);
              askAgain();
            });
    narrow(null, null);
    askAgain();
  }

  ObservableList<Choice> lessons() {
    return lessons;
  }

  ObservableList<Choice> cloths() {
    return cloths;
  }

  ObjectProperty<Choice> lessonProperty() {
    return lesson;
  }

  ObjectProperty<Choice> clothProperty() {
    return cloth;
  }

  /** True when pieces are told apart by this. */
  boolean tellsApart(Factor factor) {
    return factors.contains(factor);
  }

  /** Begins or ends telling pieces apart by something. */
  void tellApart(Factor factor, boolean on) {
    if (on ? factors.add(factor) : factors.remove(factor)) {
      askAgain();
    }
  }

  ReadOnlyObjectProperty<Found> foundProperty() {
    return found.getReadOnlyProperty();
  }

  ObservableList<ComparedRow> rows() {
    return rows;
  }

  /** The row whose pieces are shown, or null. */
  ReadOnlyObjectProperty<@Nullable ComparedRow> openProperty() {
    return open.getReadOnlyProperty();
  }

  void open(@Nullable ComparedRow row) {
    open.set(row);
  }

  /** Shows a piece in its own place. */
  void openPiece(PieceResult piece) {
    session.wish(new Wish("pieces", Wish.What.OPEN, piece.pieceId()));
  }

  /** Asks the place for test pieces to log one. */
  void logFirst() {
    session.wish(new Wish("pieces", Wish.What.LOG_OWN, null));
  }

  /** Reads the comparison with aliases for names, for a screen that everyone sees. */
  void forBoard(Consumer<Board> show) {
    SchoolClass of = session.schoolClassProperty().get();
    if (of != null) {
      CompareClass.Question question = question(of.id(), true);
      session.run(
          progress -> new CompareClass(session.book()).compare(question),
          comparison -> show.accept(board(comparison)));
    }
  }

  /** What stands on the board: the first sentence and a row for each setting. */
  record Board(String says, List<ComparedRow> rows, ComparisonPlot plot) {}

  Words words() {
    return session.words();
  }

  private Board board(Comparison comparison) {
    Found worded = worded(comparison);
    return new Board(
        worded.says().isEmpty() ? "" : worded.says().get(0), rows(comparison), worded.plot());
  }

  private CompareClass.Question question(UUID classId, boolean hidden) {
    List<Factor> inOrder = Arrays.stream(Factor.values()).filter(factors::contains).toList();
    return new CompareClass.Question(classId, lesson.get().id(), cloth.get().id(), inOrder, hidden);
  }

  private void askAgain() {
    SchoolClass of = session.schoolClassProperty().get();
    if (filling || lesson.get() == null || cloth.get() == null) {
      return;
    }
    if (reading != null) {
      reading.cancel();
    }
    if (of == null) {
      show(new Read(List.of(), List.of(), null, empty()));
      return;
    }
    CompareClass.Question question = question(of.id(), session.namesHiddenProperty().get());
    reading =
        session.run(
            progress ->
                new Read(
                    session.book().lessons().of(of.id()),
                    session.book().cloths().all(),
                    latest(session.book(), of.id()),
                    new CompareClass(session.book()).compare(question)),
            this::meet);
  }

  private static @Nullable Lesson latest(Book book, UUID classId) {
    return book.lessons().of(classId).stream()
        .filter(each -> book.pieces().count(PieceFilter.ALL.ofLesson(each.id())) > 0)
        .reduce((earlier, later) -> later)
        .orElse(null);
  }

  private void meet(Read read) {
    boolean first = meeting;
    meeting = false;
    show(read);
    if (first && read.latest() != null) {
      UUID latest = read.latest().id();
      lessons.stream().filter(each -> latest.equals(each.id())).findFirst().ifPresent(lesson::set);
    }
  }

  private static Comparison empty() {
    return new Comparison(List.of(), List.of(), List.of(), 0, 0);
  }

  private void show(Read read) {
    narrow(read.lessons(), read.cloths());
    ComparedRow was = open.get();
    List<String> wasOpen = was == null ? List.of() : was.found().levels();
    rows.setAll(rows(read.comparison()));
    found.set(worded(read.comparison()));
    open.set(
        rows.stream()
            .filter(row -> !wasOpen.isEmpty() && row.found().levels().equals(wasOpen))
            .findFirst()
            .orElse(null));
  }

  private List<ComparedRow> rows(Comparison comparison) {
    return comparison.rows().stream()
        .map(row -> new ComparedRow(levels.setting(comparison, row), row))
        .toList();
  }

  private Found worded(Comparison comparison) {
    List<String> says =
        WhatWasFound.of(comparison, row -> levels.setting(comparison, row)).stream()
            .map(session.words()::say)
            .toList();
    return new Found(
        true,
        comparison.pieces(),
        comparison.students(),
        levels.same(comparison),
        says,
        ComparisonPlot.of(comparison, row -> levels.brief(comparison, row), session.words()));
  }

  private void narrow(@Nullable List<Lesson> ofClass, @Nullable List<Cloth> ofRoom) {
    filling = true;
    List<Choice> some = new ArrayList<>(List.of(anyLesson));
    if (ofClass != null) {
      ofClass.forEach(each -> some.add(new Choice(each.id(), each.title())));
    }
    fill(lessons, some, lesson, anyLesson);
    List<Choice> others = new ArrayList<>(List.of(anyCloth));
    if (ofRoom != null) {
      ofRoom.forEach(each -> others.add(new Choice(each.id(), each.name())));
    }
    fill(cloths, others, cloth, anyCloth);
    filling = false;
  }

  private static void fill(
      ObservableList<Choice> shown, List<Choice> now, ObjectProperty<Choice> chosen, Choice any) {
    Choice was = chosen.get();
    if (!shown.equals(now)) {
      shown.setAll(now);
    }
    chosen.set(now.contains(was) ? was : any);
  }
}
