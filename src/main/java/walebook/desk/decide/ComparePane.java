package walebook.desk.decide;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import walebook.desk.common.FieldGroup;
import walebook.desk.common.Session;
import walebook.desk.common.Texts;
import walebook.desk.common.VerdictBadge;
import walebook.garment.Advice;
import walebook.garment.Check;
import walebook.garment.GarmentAnswers;
import walebook.garment.Link;
import walebook.garment.TwoChoices;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.record.Cloth;
import walebook.words.Words;

/** Two choices side by side: what differs, then check against check, then what to do. */
final class ComparePane extends VBox {
  private static final double ABOUT_EMS = 13;

  private final Words words;
  private final CompareViewModel model;
  private final VBox answers = new VBox(16);

  /**
   * One comparison.
   *
   * @param lengths what a length without a unit means
   */
  ComparePane(Session session, CompareViewModel model, List<Cloth> cloths, Unit lengths) {
    super(16);
    this.words = session.words();
    this.model = model;
    FieldGroup one = choice(session, "desk.decide.compare.one", model.sheet(), cloths, lengths);
    FieldGroup two = choice(session, "desk.decide.compare.other", model.other(), cloths, lengths);
    HBox choices = new HBox(16, one, two);
    for (FieldGroup each : List.of(one, two)) {
      HBox.setHgrow(each, Priority.ALWAYS);
      each.setMaxWidth(Double.MAX_VALUE);
      each.setPrefWidth(1);
    }
    getChildren().setAll(choices, answers);
    model.bothProperty().addListener((from, old, now) -> show(now));
    show(model.bothProperty().get());
  }

  private FieldGroup choice(
      Session session, String titleKey, SheetViewModel of, List<Cloth> cloths, Unit lengths) {
    SheetFields fields = new SheetFields(words, session.tables(), of.fields(), lengths);
    return new FieldGroup(words.say(titleKey))
        .add(fields.cloth("cloth", cloths), 13)
        .add(fields.grain("grain-round"), 17)
        .add(fields.machine("machine-kind"), 11)
        .add(fields.stitch("stitch"), 16)
        .add(fields.plain("dial-width"), 8)
        .add(fields.plain("dial-length"), 8)
        .add(fields.mm("sewn"), 10)
        .add(fields.yesNo("trimmed"), 9);
  }

  private void show(@Nullable TwoChoices both) {
    if (both == null) {
      answers.getChildren().setAll(Texts.text(words.say("desk.decide.mend"), "soft"));
      return;
    }
    GridPane grid = new GridPane();
    grid.getStyleClass().add("compare-grid");
    ColumnConstraints about = new ColumnConstraints();
    about.setMinWidth(ABOUT_EMS * 10);
    about.setPercentWidth(22);
    ColumnConstraints column = new ColumnConstraints();
    column.setPercentWidth(39);
    ColumnConstraints column2 = new ColumnConstraints();
    column2.setPercentWidth(39);
    grid.getColumnConstraints().setAll(about, column, column2);
    grid.addRow(
        0,
        Texts.text(words.say("desk.decide.compare.whole"), "strong"),
        whole("desk.decide.compare.one", both.one()),
        whole("desk.decide.compare.other", both.other()));
    int row = 1;
    for (TwoChoices.Pair pair : both.pairs()) {
      Node mark = Texts.text(words.say(pair.differs().sayKey()), "compare-mark");
      VBox name = new VBox(2, Texts.text(words.say(pair.about()), "strong"), mark);
      grid.addRow(row++, name, cell(pair.one()), cell(pair.other()));
    }
    grid.addRow(
        row,
        Texts.text(words.say("desk.decide.sheet.to-do"), "strong"),
        advice(both.one()),
        advice(both.other()));
    answers.getChildren().setAll(Texts.text(differences(), "strong"), grid);
  }

  /** The fields in which the two choices differ, by their labels. */
  private String differences() {
    List<String> labels =
        CompareViewModel.CHOICES.stream()
            .filter(model::differs)
            .map(field -> words.say("desk.decide.field." + field))
            .toList();
    return labels.isEmpty()
        ? words.say("desk.decide.compare.alike")
        : words.say("desk.decide.compare.differ", String.join(", ", labels));
  }

  private VBox whole(String titleKey, GarmentAnswers of) {
    return new VBox(
        4,
        Texts.text(words.say(titleKey), "strong"),
        new VerdictBadge(words, of.verdict(), of.isReckonedOnly()));
  }

  private Node cell(@Nullable Check check) {
    if (check == null) {
      return Texts.caption(words.say("desk.decide.compare.not-asked"));
    }
    VBox cell =
        new VBox(
            4,
            new VerdictBadge(words, check.verdict(), check.isReckonedOnly()),
            Texts.text(words.say(check.working().says())));
    Link weakest = check.weakest();
    if (weakest != null) {
      cell.getChildren()
          .add(
              Texts.caption(
                  words.say(
                      "desk.decide.compare.weakest",
                      words.say(weakest.kind().sayKey()),
                      Show.percent(weakest.percent()))));
    }
    return cell;
  }

  private Node advice(GarmentAnswers of) {
    VBox all = new VBox(4);
    if (of.advice().isEmpty()) {
      all.getChildren().add(Texts.text(words.say("desk.decide.compare.nothing")));
    }
    int nth = 1;
    for (Advice each : of.advice()) {
      String number = Integer.toString(nth++);
      all.getChildren()
          .add(Texts.text(words.say("desk.decide.sheet.nth", number, words.say(each.says()))));
    }
    return all;
  }
}
