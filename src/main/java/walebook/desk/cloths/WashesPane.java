package walebook.desk.cloths;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import walebook.act.cloth.ClothCard;
import walebook.act.cloth.WashSummary;
import walebook.desk.common.DayWords;
import walebook.desk.common.Texts;
import walebook.quantity.Show;
import walebook.record.ClothWash;
import walebook.words.Words;

/** What washing did to a cloth: the mean along each grain, and each wash with a way to the bin. */
final class WashesPane extends VBox {
  private final Words words;
  private final ClothCard card;
  private final ClothsViewModel model;

  WashesPane(Words words, ClothCard card, ClothsViewModel model) {
    super(6, Texts.section(words.say("desk.cloths.washes")));
    this.words = words;
    this.card = card;
    this.model = model;
    getStyleClass().add("card");
    if (card.washes().isEmpty()) {
      getChildren().add(Texts.text(words.say("desk.cloths.washes.none"), "soft"));
      return;
    }
    card.washed().forEach(each -> getChildren().add(Texts.text(mean(each))));
    getChildren().add(Texts.caption(words.say("desk.cloths.washes.note")));
    List<ClothWash> newestFirst = new ArrayList<>(card.washes());
    Collections.reverse(newestFirst);
    newestFirst.forEach(each -> getChildren().add(row(each)));
  }

  private String mean(WashSummary each) {
    String wanted = Show.length(WashFormViewModel.WANTED_MM, card.unit());
    return words.say(
        "desk.cloths.washes.mean",
        words.say("common.choice." + each.grain().key()),
        Show.percent(each.percent()),
        Show.fixed(each.giveOrTake(), 1),
        Show.length(
            Math.rint(
                Objects.requireNonNull(each.cut(WashFormViewModel.WANTED_MM).result()).value()),
            card.unit()),
        wanted);
  }

  private Node row(ClothWash each) {
    String how =
        each.wash().isBlank() ? words.say("desk.cloths.washes.not-said") : each.wash().strip();
    String says =
        words.say(
            "desk.cloths.washes.row",
            DayWords.of(each.washedOn()),
            how,
            words.say("common.choice." + each.grain().key()),
            Show.length(each.beforeMm(), card.unit()),
            Show.length(each.afterMm(), card.unit()),
            Show.percent(each.changePercent()));
    Label label = Texts.text(says);
    Button bin = new Button(words.say("desk.common.bin.go"));
    bin.getStyleClass().add("quiet");
    bin.setMinWidth(USE_PREF_SIZE);
    bin.setAccessibleText(words.say("desk.cloths.washes.bin-says", says));
    bin.setOnAction(pressed -> model.binWash(each.id()));
    HBox row = new HBox(8, label, bin);
    row.setAlignment(Pos.CENTER_LEFT);
    HBox.setHgrow(label, Priority.ALWAYS);
    label.setMaxWidth(Double.MAX_VALUE);
    return row;
  }
}
