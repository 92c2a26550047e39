package walebook.desk.common;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;
import javafx.collections.ListChangeListener;
import javafx.css.CssMetaData;
import javafx.css.Styleable;
import javafx.css.StyleableProperty;
import javafx.css.StyleablePropertyFactory;
import javafx.scene.Scene;
import javafx.scene.control.Control;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableRow;
import javafx.scene.control.TableView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import walebook.drawing.Drawing;
import walebook.words.Words;

/**
 * A table whose columns are as wide as a number of letters, whatever the text size; numbers stand
 * at the right in figures of one width.
 *
 * @param <T> what a row holds
 */
public final class ColumnTable<T> extends TableView<T> {
  private static final double BODY = 15;
  private static final double ROW_EMS = 2.65;
  private static final double LINE_EMS = 1.4;

  /** The line of titles, with the frame and what no row may need. */
  private static final double HEAD_EMS = 3.2;

  /** The bar that scrolls sideways, where there is one. */
  private static final double BAR_EMS = 1;

  /** The frame at both sides, px. */
  private static final double FRAME = 2;

  /** No table is lower than its titles with three rows. */
  private static final double LEAST_EMS = 12;

  /** What stands above and below a table in the window. */
  private static final double AROUND_EMS = 12;

  private static final double LETTER_EMS = 0.46;

  /** What a cell leaves free at its sides. */
  private static final double SIDES_EMS = 1.6;

  /** Room for the frame and, where rows scroll, their bar, px. */
  private static final double EDGES = 16;

  private static final StyleablePropertyFactory<ColumnTable<?>> FACTORY =
      new StyleablePropertyFactory<>(Control.getClassCssMetaData());

  private final StyleableProperty<Number> em =
      FACTORY.createStyleableNumberProperty(this, "em", "-wb-em", ColumnTable::emProperty, BODY);

  /** Rows that stand in the window where nothing else is said. */
  private static final int SEEN = 12;

  /** So much of a line's usual letters surely stand on one. */
  private static final double SURELY = 0.7;

  /** Rows that a frame has the time to make cells for, while the program is young. */
  private static final int ROWS_A_FRAME = 1;

  /** Columns whose words go on below. */
  private final List<TableColumn<T, String>> wrapped = new ArrayList<>();

  private double rowEms = ROW_EMS;
  private double highEms;
  private int most = SEEN;
  private int made;

  public ColumnTable() {
    if (em instanceof ObservableValue<?> observed) {
      observed.addListener((from, old, now) -> height());
    }
  }

  /** A column of words; sorted without regard to capitals. */
  public TableColumn<T, String> words(String title, double ems, Function<T, String> says) {
    TableColumn<T, String> column = new TableColumn<>(title);
    column.setCellValueFactory(row -> new ReadOnlyObjectWrapper<>(says.apply(row.getValue())));
    column.setComparator(String.CASE_INSENSITIVE_ORDER);
    return add(column, ems);
  }

  /** A column of words that go on below where they are too many. */
  public TableColumn<T, String> wrapped(String title, double ems, Function<T, String> says) {
    TableColumn<T, String> column = words(title, ems, says);
    column.setCellFactory(WrappedCell::new);
    wrapped.add(column);
    return column;
  }

  /**
   * Lets a column of words take what the others leave, and go on below where that is too little.
   */
  public void takesRest(TableColumn<T, String> column, double leastEms) {
    column.setCellFactory(WrappedCell::new);
    if (!wrapped.contains(column)) {
      wrapped.add(column);
    }
    Runnable fit =
        () -> {
          double others =
              getColumns().stream()
                  .filter(each -> each != column && each.isVisible())
                  .mapToDouble(TableColumn::getWidth)
                  .sum();
          double least = leastEms * em.getValue().doubleValue();
          column.setPrefWidth(Math.max(least, getWidth() - others - EDGES));
        };
    widthProperty().addListener((from, old, now) -> fit.run());
    getColumns().stream()
        .filter(each -> each != column)
        .forEach(
            each -> {
              each.widthProperty().addListener((from, old, now) -> fit.run());
              each.visibleProperty().addListener((from, old, now) -> fit.run());
            });
    fit.run();
  }

  /**
   * A column of figures, at the right; sorted by value.
   *
   * @param order what a row is sorted by, NaN for rows without a value
   * @param shown how the row's figure reads
   */
  public TableColumn<T, T> figures(
      String title, double ems, Function<T, Double> order, Function<T, String> shown) {
    TableColumn<T, T> column = new TableColumn<>(title);
    column.getStyleClass().add("figures");
    column.setCellValueFactory(row -> new ReadOnlyObjectWrapper<>(row.getValue()));
    column.setCellFactory(of -> new ShownCell<>(shown));
    column.setComparator(Comparator.comparing(order));
    return add(column, ems);
  }

  /** A column of days; sorted by the day. */
  public TableColumn<T, T> days(String title, double ems, Function<T, LocalDate> day) {
    TableColumn<T, T> column = new TableColumn<>(title);
    column.setCellValueFactory(row -> new ReadOnlyObjectWrapper<>(row.getValue()));
    column.setCellFactory(of -> new ShownCell<>(row -> DayWords.of(day.apply(row))));
    column.setComparator(Comparator.comparing(day));
    return add(column, ems);
  }

  /** A column of small pictures; sorted by value. */
  public TableColumn<T, T> drawings(
      Words words,
      String title,
      double ems,
      Function<T, Double> order,
      Function<T, Drawing> drawn) {
    TableColumn<T, T> column = new TableColumn<>(title);
    column.setCellValueFactory(row -> new ReadOnlyObjectWrapper<>(row.getValue()));
    column.setCellFactory(of -> new DrawnCell<>(words, drawn));
    column.setComparator(Comparator.comparing(order));
    return add(column, ems);
  }

  /** A column with cells of its own making. */
  public <S> TableColumn<T, S> made(TableColumn<T, S> column, double ems) {
    return add(column, ems);
  }

  /** Opens a row on Enter and on a click. */
  public void opens(Consumer<T> open) {
    setRowFactory(
        table -> {
          TableRow<T> row = new TableRow<>();
          row.setOnMouseClicked(
              click -> {
                if (click.getButton() == MouseButton.PRIMARY && !row.isEmpty()) {
                  open.accept(row.getItem());
                }
              });
          return row;
        });
    setOnKeyPressed(
        key -> {
          T chosen = getSelectionModel().getSelectedItem();
          if (key.getCode() == KeyCode.ENTER && chosen != null) {
            key.consume();
            open.accept(chosen);
          }
        });
  }

  /** Makes the table as high as its rows, up to a number of them; the rest scrolls. */
  public void asHighAs(int rows) {
    getItems().addListener((ListChangeListener<T>) change -> height(rows));
    widthProperty().addListener((from, old, now) -> height(rows));
    getColumns()
        .forEach(each -> each.widthProperty().addListener((from, old, now) -> height(rows)));
    sceneProperty().flatMap(Scene::heightProperty).addListener((from, old, now) -> height(rows));
    height(rows);
  }

  /**
   * The same for rows that wrap.
   *
   * @param lines how many lines of words a row has on the average, 1 or more
   */
  public void asHighAs(int rows, double lines) {
    rowEms = ROW_EMS + LINE_EMS * (lines - 1);
    asHighAs(rows);
  }

  /**
   * Shows other rows, in steps that a frame has the time for each: cells are dear when they are
   * made, and cheap from then on. An order that was chosen stays.
   */
  public List<Runnable> others(List<T> rows) {
    List<Runnable> steps = new ArrayList<>();
    int seen = Math.min(most, rows.size());
    for (int until = made + ROWS_A_FRAME; until < seen; until += ROWS_A_FRAME) {
      List<T> some = rows.subList(0, until);
      steps.add(() -> show(some));
    }
    steps.add(() -> show(rows));
    return steps;
  }

  private void show(List<T> rows) {
    made = Math.max(made, Math.min(most, rows.size()));
    getSelectionModel().clearSelection();
    int there = getItems().size();
    if (there > 0 && there < rows.size() && getItems().equals(rows.subList(0, there))) {
      // Rows that are there already keep their cells.
      getItems().addAll(rows.subList(there, rows.size()));
    } else {
      getItems().setAll(rows);
    }
    if (!getSortOrder().isEmpty()) {
      sort();
    }
  }

  private void height(int rows) {
    most = rows;
    highEms = HEAD_EMS + LINE_EMS * (headLines() - 1) + (isWiderThanSeen() ? BAR_EMS : 0);
    for (int row = 0; row < Math.max(1, Math.min(rows, getItems().size())); row++) {
      highEms += rowEms > ROW_EMS ? rowEms : ROW_EMS + LINE_EMS * (lines(row) - 1);
    }
    height();
  }

  private boolean isWiderThanSeen() {
    double all =
        getColumns().stream()
            .filter(TableColumn::isVisible)
            .mapToDouble(TableColumn::getWidth)
            .sum();
    double bar = getItems().size() > most ? EDGES - FRAME : 0;
    return getWidth() > 0 && all > getWidth() - FRAME - bar;
  }

  /** Not by a style of its own, which would be read and looked up anew with every other row. */
  private void height() {
    if (highEms > 0) {
      double high = Math.min(highEms, mostEms()) * em.getValue().doubleValue();
      setMinHeight(high);
      setPrefHeight(high);
    }
  }

  /** With large letters the bar that scrolls it sideways has to stay in the window. */
  private double mostEms() {
    return getScene() == null
        ? Double.MAX_VALUE
        : Math.max(LEAST_EMS, getScene().getHeight() / em.getValue().doubleValue() - AROUND_EMS);
  }

  private long headLines() {
    return getColumns().stream()
        .mapToLong(each -> each.getText().lines().count())
        .reduce(1, Math::max);
  }

  /** How many lines a row's words take: by the usual width of letters, or measured if near it. */
  private double lines(int row) {
    if (row >= getItems().size()) {
      return 1;
    }
    double size = em.getValue().doubleValue();
    double most = 1;
    for (TableColumn<T, String> each : wrapped) {
      String says = each.getCellData(row);
      double letters = (each.getWidth() / size - SIDES_EMS) / LETTER_EMS;
      if (says.length() > SURELY * letters) {
        most = Math.max(most, WrappedCell.lines(says, size, each.getWidth()));
      }
    }
    return most;
  }

  @Override
  public List<CssMetaData<? extends Styleable, ?>> getControlCssMetaData() {
    return FACTORY.getCssMetaData();
  }

  private <S> TableColumn<T, S> add(TableColumn<T, S> column, double ems) {
    column.setPrefWidth(ems * em.getValue().doubleValue());
    if (em instanceof ObservableValue<?> observed) {
      observed.addListener(
          (from, old, now) -> column.setPrefWidth(ems * em.getValue().doubleValue()));
    }
    getColumns().add(column);
    return column;
  }

  private StyleableProperty<Number> emProperty() {
    return em;
  }
}
