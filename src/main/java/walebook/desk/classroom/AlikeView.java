package walebook.desk.classroom;

import javafx.beans.Observable;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import walebook.desk.common.ColumnTable;
import walebook.desk.common.EmptyState;
import walebook.desk.common.Texts;
import walebook.quantity.Show;
import walebook.words.Words;

/** Whether the class measures alike: what is said, what to practise, each reader's bias. */
final class AlikeView extends VBox {
  private static final int ROWS = 14;

  private final AlikeViewModel model;
  private final Words words;
  private final NarrowingRow question;
  private final VBox studies = new VBox(16);

  AlikeView(AlikeViewModel model) {
    super(16);
    this.model = model;
    this.words = model.words();
    question = new NarrowingRow(words, model.narrowing());
    model.studies().addListener((Observable change) -> show());
    model.loadedProperty().addListener((from, old, now) -> show());
    getChildren().setAll(question, studies);
    show();
  }

  private void show() {
    studies.getChildren().clear();
    if (!model.loadedProperty().get()) {
      return;
    }
    if (model.studies().isEmpty()) {
      studies
          .getChildren()
          .add(
              new EmptyState(
                  words.say("desk.class.alike.empty"),
                  words.say("desk.class.alike.begin"),
                  model::measureFirst));
    }
    model.studies().forEach(each -> studies.getChildren().add(card(each)));
  }

  private VBox card(AlikeViewModel.Study study) {
    VBox card = new VBox(8);
    card.getStyleClass().add("card");
    card.getChildren().add(Texts.section(study.title()));
    study.says().forEach(each -> card.getChildren().add(Texts.text(each)));
    if (study.readers().size() > 1) {
      card.getChildren().add(table(study));
      card.getChildren().add(Texts.caption(words.say("desk.class.alike.note")));
      if (!study.critical().isEmpty()) {
        card.getChildren().add(Texts.caption(study.critical()));
      }
    }
    card.getChildren().add(Texts.text(words.say("desk.class.alike.practise"), "strong"));
    study.practise().forEach(each -> card.getChildren().add(Texts.text(each)));
    card.getChildren()
        .add(CopyTable.button(words.say("desk.class.copy-table"), () -> model.table(study)));
    return card;
  }

  private ColumnTable<AlikeViewModel.Reader> table(AlikeViewModel.Study study) {
    ColumnTable<AlikeViewModel.Reader> table = new ColumnTable<>();
    table.setAccessibleText(study.title());
    table.words(words.say("desk.class.col.student"), 11, each -> each.person().who());
    table.figures(
        words.say("desk.class.col.readings"),
        6,
        each -> (double) each.person().readings().size(),
        each -> String.valueOf(each.person().readings().size()));
    table.figures(
        words.say("desk.class.alike.mean"),
        6,
        each -> each.person().member().summary().mean(),
        each -> Show.fixed(each.person().member().summary().mean(), 1));
    table.figures(
        words.say("desk.class.alike.bias"),
        6,
        each -> each.person().member().bias(),
        each -> Show.fixed(each.person().member().bias(), 1));
    table.drawings(
        words,
        words.say("desk.class.alike.bar"),
        12,
        each -> each.person().member().bias(),
        AlikeViewModel.Reader::bar);
    table.figures(
        words.say("desk.class.alike.h"),
        5,
        each -> order(each.person().member().h()),
        each -> AlikeViewModel.two(each.person().member().h()));
    table.figures(
        words.say("desk.class.alike.k"),
        5,
        each -> order(each.person().member().k()),
        each -> AlikeViewModel.two(each.person().member().k()));
    table.figures(
        words.say("desk.class.alike.critical-k"),
        7.5,
        each -> order(each.person().member().criticalK()),
        each -> AlikeViewModel.two(each.person().member().criticalK()));
    table.words(words.say("desk.class.alike.standing"), 12, AlikeViewModel.Reader::standing);
    table.getItems().setAll(study.readers());
    table.asHighAs(ROWS);
    return table;
  }

  private static Double order(@Nullable Double value) {
    return value == null ? Double.NaN : value;
  }
}
