package walebook.desk.classroom;

import java.nio.file.Path;
import java.util.List;
import javafx.beans.Observable;
import javafx.geometry.Pos;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import walebook.desk.common.ChoiceField;
import walebook.desk.common.ColumnTable;
import walebook.desk.common.EmptyState;
import walebook.desk.common.Texts;
import walebook.drawing.DotPlot;
import walebook.words.Words;

/** What all terms know so far. */
final class TermsView extends AskedPart<TermsViewModel.Known> {
  private static final int ROWS = 8;
  private static final double LINES = 1.5;

  private final TermsViewModel model;
  private final Words words;
  private final FlowPane books = new FlowPane(8, 8);
  private final VBox known = new VBox(16);

  TermsView(TermsViewModel model, Around around) {
    super(
        model,
        around,
        FiltersView.Ask.CLOTH,
        FiltersView.Ask.OUTCOME,
        FiltersView.Ask.MATTERS,
        FiltersView.Ask.FACTORS);
    this.model = model;
    this.words = model.words();
    follow();
    Button also = new Button(words.say("desk.class.terms.also"));
    also.setOnAction(pressed -> model.alsoAsk());
    model.others().addListener((Observable change) -> books(also));
    books(also);
    ChoiceField<String> stitch =
        new ChoiceField<>(
            words,
            words.say("desk.class.terms.stitch"),
            model.stitches(),
            model.stitchProperty(),
            each ->
                TermsViewModel.ANY.equals(each) ? words.say("desk.class.terms.any-stitch") : each);
    stitch.setStyle("-fx-pref-width: 19em;");
    FlowPane row = new FlowPane(stitch, books);
    row.getStyleClass().add("field-row");
    row.setRowValignment(VPos.BOTTOM);
    books.setAlignment(Pos.BOTTOM_LEFT);
    getChildren().setAll(row, known);
  }

  @Override
  String called() {
    return words.say("desk.class.terms");
  }

  @Override
  List<Finding> large(TermsViewModel.Known found) {
    return large(found.says(), found.plot(), "");
  }

  @Override
  String foot(TermsViewModel.Known found) {
    return foot(
        found.lines().stream().mapToInt(TermsViewModel.Line::pieces).sum(),
        found.lines().stream().mapToInt(TermsViewModel.Line::setAside).sum());
  }

  private void books(Button also) {
    books.getChildren().clear();
    for (Path each : model.others()) {
      Button leave =
          new Button(words.say("desk.class.terms.leave-out", String.valueOf(each.getFileName())));
      leave.getStyleClass().add("quiet");
      leave.setOnAction(pressed -> model.leaveOut(each));
      books.getChildren().add(leave);
    }
    books.getChildren().add(also);
  }

  @Override
  void show(TermsViewModel.@Nullable Known found) {
    known.getChildren().clear();
    if (found == null) {
      if (model.session().schoolClassProperty().get() == null) {
        known
            .getChildren()
            .setAll(
                new EmptyState(
                    words.say("desk.class.terms.empty"),
                    words.say("desk.class.empty.begin"),
                    model::logFirst));
      }
      return;
    }
    found.troubles().forEach(each -> known.getChildren().add(Texts.text(each, "strong")));
    known.getChildren().add(Sentences.card(found.says(), ""));
    if (!found.lines().isEmpty()) {
      known.getChildren().add(table(found.lines()));
    }
    DotPlot plot = found.plot();
    if (plot != null) {
      PlotCard card = card();
      card.show(words.say("desk.class.terms.plot"), "", plot, () -> FairTables.dots(words, plot));
      known.getChildren().add(card);
    }
  }

  private Node table(List<TermsViewModel.Line> lines) {
    ColumnTable<TermsViewModel.Line> table = new ColumnTable<>();
    table.setAccessibleText(words.say("desk.class.terms"));
    if (lines.stream().map(TermsViewModel.Line::book).distinct().count() > 1) {
      table.words(words.say("desk.class.terms.col.book"), 8, TermsViewModel.Line::book);
    }
    table.words(words.say("desk.class.terms.col.term"), 8, TermsViewModel.Line::term);
    var name =
        table.words(words.say("desk.class.terms.col.class"), 12, TermsViewModel.Line::className);
    count(table, words.say("desk.class.col.pieces"), TermsViewModel.Line::pieces);
    count(table, words.say("desk.class.col.students"), TermsViewModel.Line::students);
    count(table, words.say("desk.class.col.set-aside"), TermsViewModel.Line::setAside);
    table.words(words.say("desk.class.col.raw"), 8.5, TermsViewModel.Line::mean);
    table.words(words.say("desk.class.col.half-by"), 9, TermsViewModel.Line::half);
    table.words(words.say("desk.class.col.held-of"), 8, TermsViewModel.Line::held);
    table.takesRest(name, 8);
    table.getItems().setAll(lines);
    table.asHighAs(ROWS, LINES);
    return table;
  }

  private static void count(
      ColumnTable<TermsViewModel.Line> table,
      String title,
      java.util.function.ToIntFunction<TermsViewModel.Line> number) {
    table.figures(
        title,
        6.2,
        line -> (double) number.applyAsInt(line),
        line -> Integer.toString(number.applyAsInt(line)));
  }
}
