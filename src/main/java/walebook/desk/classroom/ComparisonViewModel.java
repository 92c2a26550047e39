package walebook.desk.classroom;

import java.util.List;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import walebook.act.classroom.CompareClass;
import walebook.act.classroom.CompareFair;
import walebook.act.classroom.SettingWords;
import walebook.book.Book;
import walebook.compare.Comparison;
import walebook.compare.Factor;

/** The class's pieces by setting: what is asked, what was found, which row is open. */
public final class ComparisonViewModel extends AskingModel<ComparisonViewModel.Found> {
  private static final int LONGEST = 22;

  private final SettingWords settings;
  private final ObservableList<ComparedRow> rows = FXCollections.observableArrayList();
  private final ReadOnlyObjectWrapper<@Nullable ComparedRow> open = new ReadOnlyObjectWrapper<>();

  /**
   * What a comparison found, worded.
   *
   * @param setAside values that the tutor set aside
   * @param same what is alike in all pieces; may be empty
   * @param says the sentences, most important first
   */
  record Found(
      int pieces,
      int pulled,
      int students,
      int setAside,
      String same,
      List<String> says,
      List<ComparedRow> rows,
      ComparisonPlot plot) {}

  public ComparisonViewModel(FiltersViewModel filters) {
    super(filters);
    this.settings = new SettingWords(words());
    foundProperty().addListener((from, old, now) -> show(now));
  }

  @Override
  Asking.Work<Found> ask(CompareFair.Which which) {
    CompareClass.Question question =
        new CompareClass.Question(
            which.classIds().get(0),
            which.lessonId(),
            which.clothId(),
            filters().inOrder(),
            which.namesHidden());
    Book book = session().book();
    return progress -> worded(new CompareClass(book).compare(question));
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

  private void show(@Nullable Found found) {
    ComparedRow was = open.get();
    List<String> wasOpen = was == null ? List.of() : was.found().levels();
    rows.setAll(found == null ? List.of() : found.rows());
    open.set(
        rows.stream()
            .filter(row -> !wasOpen.isEmpty() && row.found().levels().equals(wasOpen))
            .findFirst()
            .orElse(null));
  }

  private Found worded(Comparison comparison) {
    List<Factor> factors = comparison.factors();
    String same = settings.same(comparison.same());
    return new Found(
        comparison.pieces(),
        comparison.rows().stream().mapToInt(row -> row.held() + row.gave()).sum(),
        comparison.students(),
        comparison.setAside(),
        same.isEmpty() ? "" : words().say("desk.class.same", same),
        WhatWasFound.of(comparison, row -> settings.setting(factors, row.levels())).stream()
            .map(words()::say)
            .toList(),
        comparison.rows().stream()
            .map(row -> new ComparedRow(settings.setting(factors, row.levels()), row))
            .toList(),
        ComparisonPlot.of(
            comparison, row -> settings.brief(factors, row.levels(), LONGEST), words()));
  }
}
