package walebook.desk.classroom;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import walebook.compare.PieceResult;
import walebook.compare.SettingRow;
import walebook.desk.common.Texts;
import walebook.drawing.DotPlot;
import walebook.quantity.Show;
import walebook.record.PieceCode;
import walebook.words.Words;

/** Settings against outcome: the question, what was found in words, the table, the dots. */
final class ComparisonView extends AskedPart<ComparisonViewModel.Found> {
  private final ComparisonViewModel model;
  private final Words words;
  private final VBox says = new VBox(6);
  private final SettingTable rows;
  private final VBox table = new VBox(8);
  private final VBox pieces = new VBox(8);
  private final PlotCard dots = card();
  private final Label aside = Texts.text("");

  ComparisonView(ComparisonViewModel model, Around around) {
    super(model, around, FiltersView.Ask.LESSON, FiltersView.Ask.CLOTH, FiltersView.Ask.FACTORS);
    this.model = model;
    this.words = model.words();
    says.getStyleClass().add("card");
    pieces.getStyleClass().add("card");
    rows = new SettingTable(words, model.rows());
    rows.opens(model::open);
    aside.getStyleClass().add("caption");
    table.getChildren().setAll(rows, aside, Texts.caption(words.say("desk.class.table.note")));
    model.openProperty().addListener((from, old, now) -> showPieces(now));
    follow();
    showPieces(model.openProperty().get());
  }

  @Override
  String called() {
    return words.say("desk.class.overview");
  }

  @Override
  List<Finding> large(ComparisonViewModel.Found found) {
    if (found.pieces() == 0) {
      return List.of();
    }
    List<String> says = new ArrayList<>(found.says());
    for (ComparedRow row : found.rows()) {
      int pulled = row.found().held() + row.found().gave();
      says.add(words.say("desk.class.board.row", row.setting(), row.found().held(), pulled));
    }
    return large(says, found.plot().plot(), words.say("desk.class.board.legend"));
  }

  @Override
  String foot(ComparisonViewModel.Found found) {
    return foot(found.pieces(), found.setAside());
  }

  @Override
  void show(ComparisonViewModel.@Nullable Found found) {
    inTurn(List.of());
    if (found == null) {
      empty();
      return;
    }
    if (found.pieces() == 0) {
      nothing(words.say("desk.class.empty"));
      return;
    }
    List<Runnable> steps = new ArrayList<>();
    steps.add(() -> says(found));
    steps.add(
        () -> {
          aside.setText(words.say("desk.class.set-aside", found.setAside()));
          stand(1, table, true);
          stand(2, pieces, model.openProperty().get() != null);
        });
    steps.addAll(rows.others());
    steps.add(() -> dots(found.plot()));
    inTurn(steps);
  }

  private void says(ComparisonViewModel.Found found) {
    says.getChildren().clear();
    List<String> sentences = found.says();
    for (int i = 0; i < sentences.size(); i++) {
      says.getChildren().add(Texts.text(sentences.get(i), i == 0 ? "says" : "caption"));
    }
    says.getChildren()
        .add(
            Texts.caption(
                words.say(
                    "desk.class.counts",
                    found.pieces(),
                    found.students(),
                    found.pulled(),
                    found.pieces() - found.pulled())));
    if (!found.same().isEmpty()) {
      says.getChildren().add(Texts.caption(found.same()));
    }
    stand(0, says, true);
  }

  private void dots(ComparisonPlot now) {
    DotPlot drawing = now.plot();
    if (drawing != null) {
      String note = words.say("desk.class.plot.note");
      String left = words.say("desk.class.plot.left-out", now.leftOut());
      dots.show(
          words.say("desk.class.plot.title"),
          now.leftOut() > 0 ? note + " " + left : note,
          drawing,
          () -> FairTables.dots(words, drawing));
    }
    stand(3, dots, drawing != null);
  }

  private void showPieces(@Nullable ComparedRow row) {
    pieces.setVisible(row != null);
    pieces.setManaged(row != null);
    if (row == null) {
      return;
    }
    FlowPane all = new FlowPane(8, 8);
    for (PieceResult each : row.found().results()) {
      all.getChildren().add(link(piece(each), () -> model.openPiece(each.pieceId())));
    }
    Label title = Texts.section(row.setting());
    Button close = new Button(words.say("desk.class.pieces.close"));
    close.getStyleClass().add("quiet");
    close.setOnAction(pressed -> model.open(null));
    pieces
        .getChildren()
        .setAll(
            title,
            Texts.text(details(row.found())),
            Texts.caption(words.say("desk.class.pieces.note")),
            all,
            close);
  }

  private String details(SettingRow row) {
    return words.say(
        "desk.class.pieces.details",
        row.held(),
        row.gave(),
        ComparedRow.spread(words, row.shareOfGave(), 0),
        ComparedRow.spread(words, row.stretchOfGave(), 0),
        ComparedRow.spread(words, row.edgeChange(), 1),
        ComparedRow.spread(words, row.grade(), 0),
        row.withFault());
  }

  private String piece(PieceResult each) {
    String code = PieceCode.spoken(each.code());
    Double stretch = each.seamStretch();
    if (stretch == null) {
      return words.say("desk.class.piece.not-pulled", code);
    }
    return words.say(
        each.held() ? "desk.class.piece.held" : "desk.class.piece.gave",
        code,
        Show.fixed(stretch, 0));
  }
}
