package walebook.desk.classroom;

import java.util.List;
import java.util.UUID;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import walebook.act.classroom.CompareClass;
import walebook.act.classroom.CompareFair;
import walebook.compare.Comparison;
import walebook.compare.PieceResult;
import walebook.desk.common.Session;
import walebook.desk.common.Task;
import walebook.desk.common.Wish;
import walebook.record.SchoolClass;
import walebook.words.Words;

/** The class's pieces by setting: what is asked, what was found, which row is open. */
public final class ComparisonViewModel {
  private final Session session;
  private final LevelWords levels;
  private final FiltersViewModel filters;
  private final ReadOnlyObjectWrapper<Found> found = new ReadOnlyObjectWrapper<>(Found.NOTHING);
  private final ObservableList<ComparedRow> rows = FXCollections.observableArrayList();
  private final ReadOnlyObjectWrapper<@Nullable ComparedRow> open = new ReadOnlyObjectWrapper<>();
  private @Nullable Task reading;
  private boolean shown = true;

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
      int setAside,
      String same,
      List<String> says,
      ComparisonPlot plot) {
    static final Found NOTHING =
        new Found(false, 0, 0, 0, "", List.of(), new ComparisonPlot(null, 0));
  }

  public ComparisonViewModel(FiltersViewModel filters) {
    this.filters = filters;
    this.session = filters.session();
    this.levels = new LevelWords(session.words());
    filters.askedProperty().addListener((from, old, now) -> askAgain());
    askAgain();
  }

  /** Says whether anybody looks; nothing is asked meanwhile. */
  void shown(boolean now) {
    boolean before = shown;
    shown = now;
    if (shown && !before) {
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
    CompareFair.Which which = filters.which(classId, hidden);
    return new CompareClass.Question(
        classId, which.lessonId(), which.clothId(), filters.inOrder(), hidden);
  }

  private void askAgain() {
    if (reading != null) {
      reading.cancel();
    }
    SchoolClass of = session.schoolClassProperty().get();
    if (!shown) {
      return;
    }
    if (of == null) {
      show(empty());
      return;
    }
    CompareClass.Question question = question(of.id(), session.namesHiddenProperty().get());
    reading =
        session.run(progress -> new CompareClass(session.book()).compare(question), this::show);
  }

  private static Comparison empty() {
    return new Comparison(List.of(), List.of(), List.of(), 0, 0);
  }

  private void show(Comparison comparison) {
    ComparedRow was = open.get();
    List<String> wasOpen = was == null ? List.of() : was.found().levels();
    rows.setAll(rows(comparison));
    found.set(worded(comparison));
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
        comparison.setAside(),
        levels.same(comparison),
        says,
        ComparisonPlot.of(comparison, row -> levels.brief(comparison, row), session.words()));
  }
}
