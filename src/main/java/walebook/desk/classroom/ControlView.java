package walebook.desk.classroom;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import walebook.desk.common.ColumnTable;
import walebook.desk.common.EmptyState;
import walebook.desk.common.Notice;
import walebook.desk.common.PicturePane;
import walebook.desk.common.Texts;
import walebook.drawing.DotPlot;
import walebook.words.Words;

/** Differences from each student's own control. */
final class ControlView extends VBox implements PartView {
  private static final int ROWS = 9;

  private final ControlViewModel model;
  private final Words words;
  private final Consumer<Notice> told;
  private final VBox pieces = new VBox(8);

  ControlView(ControlViewModel model, Consumer<Notice> told) {
    super(16);
    this.model = model;
    this.words = model.asking().words();
    this.told = told;
    model.foundProperty().addListener((from, old, now) -> show(now));
    show(model.foundProperty().get());
  }

  @Override
  public Node node() {
    return this;
  }

  @Override
  public Set<FiltersView.Ask> asks() {
    return EnumSet.of(
        FiltersView.Ask.LESSON,
        FiltersView.Ask.CLOTH,
        FiltersView.Ask.OUTCOME,
        FiltersView.Ask.FACTORS,
        FiltersView.Ask.MACHINE);
  }

  @Override
  public void shown(boolean now) {
    model.asking().shown(now);
  }

  @Override
  public void showLarge(Large board) {
    model
        .asking()
        .forBoard(
            found -> {
              List<Node> lines = new ArrayList<>();
              found.says().stream().limit(3).forEach(each -> lines.add(Texts.text(each, "strong")));
              DotPlot plot = found.plot();
              if (plot != null) {
                lines.add(new PicturePane(words, plot));
              }
              board.show(lines);
            });
  }

  private void show(ControlViewModel.@Nullable Found found) {
    pieces.getChildren().clear();
    if (found == null) {
      getChildren().setAll(Texts.text(words.say("desk.class.empty")));
      return;
    }
    if (found.rate()) {
      getChildren()
          .setAll(
              new EmptyState(
                  words.say("desk.class.control.rate"),
                  words.say("desk.class.control.share"),
                  model::askShare));
      return;
    }
    getChildren().setAll(Sentences.card(found.says(), ""));
    DotPlot plot = found.plot();
    if (plot != null) {
      PlotCard card = new PlotCard(model.filters().session(), told);
      List<List<String>> table = new ArrayList<>();
      table.add(FairTables.header(words));
      plot.rows().forEach(row -> table.add(FairTables.line("", row)));
      card.show(
          words.say("desk.class.control.title"), words.say("desk.class.control.note"), plot, table);
      Node aside = Texts.caption(words.say("desk.class.set-aside", found.setAside()));
      getChildren().addAll(card, table(found), aside, pieces);
    }
  }

  private Node table(ControlViewModel.Found found) {
    ColumnTable<ControlViewModel.Row> table = new ColumnTable<>();
    table.setAccessibleText(words.say("desk.class.control.title"));
    table.words(words.say("desk.class.col.setting"), 22, ControlViewModel.Row::setting);
    table.figures(
        words.say("desk.class.col.pieces"),
        5,
        row -> (double) row.pieces(),
        row -> Integer.toString(row.pieces()));
    table.figures(
        words.say("desk.class.col.students"),
        6.5,
        row -> (double) row.students(),
        row -> Integer.toString(row.students()));
    table.words(words.say("desk.class.col.range"), 11, ControlViewModel.Row::range);
    table.words(words.say("desk.class.col.mean-students"), 11, ControlViewModel.Row::mean);
    table.words(words.say("desk.class.col.limits"), 10, ControlViewModel.Row::limits);
    table.getItems().setAll(found.rows());
    table.asHighAs(ROWS);
    table.opens(this::open);
    return table;
  }

  private void open(ControlViewModel.Row row) {
    FlowPane all = new FlowPane(8, 8);
    for (ControlViewModel.Piece each : row.links()) {
      Button open = new Button(each.says());
      open.getStyleClass().add("piece-link");
      open.setOnAction(pressed -> model.openPiece(each.id()));
      all.getChildren().add(open);
    }
    pieces.getChildren().setAll(Texts.section(row.setting()), all);
  }
}
