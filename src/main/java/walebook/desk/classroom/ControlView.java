package walebook.desk.classroom;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import walebook.desk.common.ColumnTable;
import walebook.desk.common.EmptyState;
import walebook.desk.common.Fold;
import walebook.desk.common.Texts;
import walebook.desk.common.WrappedCell;
import walebook.drawing.DotPlot;
import walebook.drawing.ValueBar;
import walebook.words.Words;

/** Differences from each student's own control: a row of dots for each setting. */
final class ControlView extends AskedPart<ControlViewModel.Found> {
  private static final int ROWS = 8;
  private static final double LINES = 1.2;

  private final ControlViewModel model;
  private final Words words;
  private final VBox pieces = new VBox(8);

  ControlView(ControlViewModel model, Around around) {
    super(
        model,
        around,
        FiltersView.Ask.LESSON,
        FiltersView.Ask.CLOTH,
        FiltersView.Ask.OUTCOME,
        FiltersView.Ask.FACTORS,
        FiltersView.Ask.MACHINE);
    this.model = model;
    this.words = model.words();
    follow();
  }

  @Override
  String called() {
    return words.say("desk.class.control");
  }

  @Override
  List<Finding> large(ControlViewModel.Found found) {
    return large(found.says(), found.plot(), words.say("desk.class.control.plot-note"));
  }

  @Override
  String foot(ControlViewModel.Found found) {
    int pieces = found.rows().stream().mapToInt(ControlViewModel.Row::pieces).sum();
    return foot(pieces, found.setAside());
  }

  @Override
  void show(ControlViewModel.@Nullable Found found) {
    inTurn(List.of());
    pieces.getChildren().clear();
    if (found == null) {
      empty();
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
    if (found.logged() == 0) {
      nothing(words.say("desk.class.empty"));
      return;
    }
    List<Runnable> steps = new ArrayList<>();
    steps.add(() -> getChildren().setAll(Sentences.card(found.says(), found.same())));
    DotPlot plot = found.plot();
    if (plot == null) {
      steps.add(this::lookFurther);
    } else {
      ColumnTable<ControlViewModel.Row> table = table();
      Node note = Texts.caption(words.say("desk.class.control.note"));
      Label off = offScale();
      seen(off, ValueBar.isAnyOff(found.rows().stream().map(ControlViewModel.Row::bar).toList()));
      steps.add(() -> getChildren().add(new VBox(8, table, pieces, off, note)));
      steps.addAll(table.others(found.rows()));
      steps.add(
          () -> getChildren().add(new Fold(words.say("desk.class.control.plot"), card(plot))));
    }
    inTurn(steps);
  }

  private PlotCard card(DotPlot plot) {
    PlotCard card = card();
    card.show(
        words.say("desk.class.control.title"),
        words.say("desk.class.control.plot-note"),
        plot,
        () -> FairTables.dots(words, plot));
    return card;
  }

  private ColumnTable<ControlViewModel.Row> table() {
    ColumnTable<ControlViewModel.Row> table = new ColumnTable<>();
    table.setAccessibleText(words.say("desk.class.control.title"));
    var setting =
        table.words(words.say("desk.class.col.setting"), 18, ControlViewModel.Row::setting);
    table.figures(
        words.say("desk.class.col.pieces"),
        4.6,
        row -> (double) row.pieces(),
        row -> Integer.toString(row.pieces()));
    table.figures(
        words.say("desk.class.col.students"),
        6,
        row -> (double) row.students(),
        row -> Integer.toString(row.students()));
    table.drawings(
        words,
        words.say("desk.class.control.col.dots"),
        14,
        ControlViewModel.Row::middle,
        ControlViewModel.Row::bar);
    table.words(words.say("desk.class.col.range"), 9, ControlViewModel.Row::range);
    table
        .words(words.say("desk.class.col.can-say"), 12.5, ControlViewModel.Row::can)
        .setCellFactory(WrappedCell::new);
    table.takesRest(setting, 12);
    table.asHighAs(ROWS, LINES);
    table.opens(this::open);
    return table;
  }

  private void open(ControlViewModel.Row row) {
    List<Button> links =
        row.links().stream()
            .map(each -> link(each.says(), () -> model.openPiece(each.id())))
            .toList();
    open(pieces, row.setting(), row.says(), links);
  }
}
