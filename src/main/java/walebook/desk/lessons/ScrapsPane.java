package walebook.desk.lessons;

import java.util.List;
import java.util.stream.IntStream;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import walebook.act.lesson.ReadScraps;
import walebook.desk.common.PickedField;
import walebook.desk.common.PicturePane;
import walebook.desk.common.Texts;
import walebook.drawing.CuttingPlanPicture;
import walebook.kit.CutPiece;
import walebook.kit.Kit;
import walebook.words.Words;

/** Do these pieces come out of my scraps? A table of scraps, the answer, and how to lay them. */
final class ScrapsPane extends VBox {
  private static final int BEGUN = 3;
  private static final int COLUMNS = 3;

  private final Words words;
  private final ScrapsViewModel model;
  private final GridPane table = new GridPane();
  private final VBox drawings = new VBox(12);
  private int shown;

  ScrapsPane(Words words, ScrapsViewModel model) {
    super(12);
    this.words = words;
    this.model = model;
    getStyleClass().addAll("card", "scraps");
    table.setHgap(8);
    table.setVgap(8);
    for (int i = 0; i < COLUMNS; i++) {
      table.add(Texts.caption(title(i)), i, 0);
    }
    for (int i = 0; i < ScrapsViewModel.ROWS; i++) {
      boolean isFilled = !model.field(ReadScraps.Row.fields(i).across()).text().get().isEmpty();
      while (shown <= i && (i < BEGUN || isFilled)) {
        add();
      }
    }
    Button ask = new Button(words.say("desk.lessons.kit.scraps.go"));
    ask.setOnAction(pressed -> model.ask());
    Label says = Texts.text("", "strong");
    says.textProperty().bind(model.saysProperty());
    says.visibleProperty().bind(model.saysProperty().isNotEmpty());
    says.managedProperty().bind(says.visibleProperty());
    getChildren()
        .setAll(
            Texts.section(words.say("desk.lessons.kit.scraps.title")),
            Texts.caption(words.say("desk.lessons.kit.scraps.says")));
    List<Kit.Cut> cuts = model.cuts();
    if (cuts.size() > 1) {
      getChildren()
          .add(
              new PickedField(
                  words,
                  words.say("desk.lessons.kit.scraps.of"),
                  IntStream.range(0, cuts.size()).mapToObj(String::valueOf).toList(),
                  key -> name(cuts.get(Integer.parseInt(key))),
                  model.cut()));
    } else {
      cuts.forEach(each -> getChildren().add(Texts.text(name(each))));
    }
    getChildren().addAll(table, ask, says, drawings);
    model.answerProperty().addListener((from, old, now) -> show());
    show();
  }

  private String name(Kit.Cut cut) {
    int count = cut.pieces().stream().mapToInt(CutPiece::count).sum();
    return words.say("desk.lessons.kit.scraps.pieces", count, cut.name());
  }

  /** What stands over a column, with the unit where lengths are typed. */
  private String title(int column) {
    return switch (column) {
      case 0 -> words.say("desk.lessons.kit.scraps.across", model.unit().sign());
      case 1 -> words.say("desk.lessons.kit.scraps.along", model.unit().sign());
      default -> words.say("desk.lessons.kit.scraps.count");
    };
  }

  private void add() {
    int number = shown++;
    ReadScraps.Row names = ReadScraps.Row.fields(number);
    cell(number, 0, names.across());
    cell(number, 1, names.along());
    cell(number, 2, names.count());
    model
        .field(names.across())
        .text()
        .addListener(
            (from, old, now) -> {
              if (number == shown - 1 && shown < ScrapsViewModel.ROWS && !now.isEmpty()) {
                add();
              }
            });
  }

  private void cell(int number, int column, String field) {
    String name = words.say("desk.lessons.write.cell", title(column), number + 1);
    CellField cell = CellField.typed(words, name, model.field(field));
    cell.setStyle("-fx-pref-width: 11em; -fx-min-width: 5em;");
    table.add(cell, column, number + 1);
  }

  private void show() {
    drawings.getChildren().clear();
    drawings.setManaged(model.answerProperty().get() != null);
    model.missing().forEach(each -> drawings.getChildren().add(Texts.text(each)));
    for (ScrapsViewModel.Alike each : model.drawn()) {
      PicturePane picture =
          new PicturePane(
              words, new CuttingPlanPicture(model.title(each), each.plan(), model.shownIn()));
      picture.setMaxWidth(Region.USE_PREF_SIZE);
      drawings.getChildren().add(picture);
    }
  }
}
