package walebook.desk.classroom;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import javafx.beans.Observable;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import walebook.desk.common.BeingRead;
import walebook.desk.common.ColumnTable;
import walebook.desk.common.EmptyState;
import walebook.desk.common.InTurn;
import walebook.desk.common.Notice;
import walebook.desk.common.PicturePane;
import walebook.desk.common.Texts;
import walebook.record.Lesson;
import walebook.words.Words;

/** Students down, lessons across. */
final class ProgressView extends VBox implements PartView {
  /** A day with its year, in heights of text. */
  static final double LAST_EMS = 7.6;

  private static final int ROWS = 30;

  private final ProgressViewModel model;
  private final Words words;

  private final InTurn inTurn;
  private final Consumer<Notice> told;
  private final PlotCard copies;

  ProgressView(ProgressViewModel model, Around around) {
    super(8);
    this.inTurn = around.inTurn();
    this.told = around.told();
    this.copies = new PlotCard(model.session(), around.told());
    this.model = model;
    this.words = model.words();
    model.rows().addListener((Observable change) -> show());
    model.loadedProperty().addListener((from, old, now) -> show());
    show();
  }

  @Override
  public Node node() {
    return this;
  }

  @Override
  public Set<FiltersView.Ask> asks() {
    return Set.of();
  }

  @Override
  public @Nullable Asking<?> asking() {
    return null;
  }

  @Override
  public void shown(boolean now) {
    // Few rows, read once: they are kept up to date all along.
  }

  @Override
  public void showLarge(Large board) {
    model.forBoard(
        findings ->
            board.show(
                new ClassBoard.Shown(
                    words.say("desk.class.board.title", words.say("desk.class.progress")),
                    findings,
                    findings.isEmpty() ? "" : words.say("desk.class.progress.board"))));
  }

  private void show() {
    inTurn.stop(this);
    if (!model.loadedProperty().get()) {
      getChildren().setAll(new BeingRead(words));
      return;
    }
    if (model.rows().isEmpty()) {
      getChildren()
          .setAll(
              new EmptyState(
                  words.say("desk.class.progress.empty"),
                  words.say("desk.class.progress.begin"),
                  model::enrol));
      return;
    }
    List<ProgressRow> rows = List.copyOf(model.rows());
    List<Runnable> steps = new ArrayList<>();
    ColumnTable<ProgressRow> table = table(List.of());
    steps.add(() -> stand(table));
    steps.addAll(table.others(rows));
    inTurn.run(this, steps);
  }

  private void stand(Node table) {
    getChildren().setAll(table, Texts.caption(words.say("desk.class.progress.note")));
    for (Lesson lesson : model.lessons()) {
      getChildren().add(Texts.caption(Choice.of(lesson, words).name()));
    }
    Button picture = new Button(words.say("desk.class.copy-picture"));
    picture.getStyleClass().add("quiet");
    picture.setOnAction(
        pressed -> {
          new PicturePane(words, model.drawing()).copy();
          told.accept(new Notice(words.say("desk.class.copied"), null));
        });
    getChildren().add(new FlowPane(8, 8, picture, copies.button(model::table)));
  }

  private ColumnTable<ProgressRow> table(List<ProgressRow> rows) {
    ColumnTable<ProgressRow> table = new ColumnTable<>();
    table.setAccessibleText(words.say("desk.class.progress.says"));
    table.wrapped(words.say("desk.class.col.student"), 11.5, ProgressRow::name);
    for (int i = 0; i < model.lessons().size(); i++) {
      lesson(table, i, model.lessons().get(i));
    }
    table.figures(
        words.say("desk.class.col.own"),
        6.4,
        row -> (double) row.found().own(),
        row -> Integer.toString(row.found().own()));
    table.figures(
        words.say("desk.class.col.readings"),
        6,
        row -> (double) row.found().readings(),
        row -> Integer.toString(row.found().readings()));
    table
        .figures(
            words.say("desk.class.col.last"),
            LAST_EMS,
            ProgressRow::lastOrder,
            ProgressRow::lastDay)
        .getStyleClass()
        .remove("figures");
    table.getItems().setAll(rows);
    table.asHighAs(ROWS);
    return table;
  }

  private void lesson(ColumnTable<ProgressRow> table, int nth, Lesson lesson) {
    TableColumn<ProgressRow, ProgressRow> column =
        table.figures("", 6.2, row -> row.share(nth), row -> model.cell(row, nth));
    column.setCellFactory(of -> new ShareCell(row -> row.share(nth), row -> model.cell(row, nth)));
    // The day is enough to know it by; the titles stand in full below.
    Label title = new Label(Choice.day(lesson));
    title.setTooltip(new Tooltip(lesson.title()));
    column.setGraphic(title);
  }
}
