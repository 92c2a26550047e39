package walebook.desk.classroom;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import walebook.desk.common.EmptyState;
import walebook.desk.common.Notice;
import walebook.desk.common.PicturePane;
import walebook.desk.common.Texts;
import walebook.desk.common.Wish;
import walebook.words.Words;

/** Each cloth that several measured: the sentences, what to practise, bias, h and k. */
final class AlikeView extends VBox implements PartView {
  private final AlikeViewModel model;
  private final Words words;
  private final Consumer<Notice> told;

  AlikeView(AlikeViewModel model, Consumer<Notice> told) {
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
    return EnumSet.of(FiltersView.Ask.LESSON, FiltersView.Ask.CLOTH);
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
              for (AlikeViewModel.Study each : found.studies()) {
                lines.add(Texts.section(each.title()));
                each.says().stream().limit(3).forEach(s -> lines.add(Texts.text(s, "strong")));
                lines.add(new PicturePane(words, each.bias()));
              }
              board.show(lines);
            });
  }

  private void show(AlikeViewModel.@Nullable Found found) {
    Choice there = found == null ? null : found.elsewhere();
    if (there != null) {
      boolean one = there.id() != null;
      getChildren()
          .setAll(
              new EmptyState(
                  one
                      ? words.say("desk.class.alike.there", there.name())
                      : words.say("desk.class.alike.outside"),
                  words.say(one ? "desk.class.alike.look-there" : "desk.class.ask-all"),
                  model::lookElsewhere));
      return;
    }
    if (found == null || found.studies().isEmpty()) {
      getChildren()
          .setAll(
              new EmptyState(
                  words.say("desk.class.alike.empty"),
                  words.say("desk.class.alike.begin"),
                  () -> model.asking().session().wish(Wish.show("cloths"))));
      return;
    }
    getChildren().clear();
    for (AlikeViewModel.Study each : found.studies()) {
      getChildren().addAll(sentences(each), bias(each), hk(each));
    }
    if (found.alone() > 0) {
      getChildren().add(Texts.caption(words.say("desk.class.alike.alone", found.alone())));
    }
  }

  private Node sentences(AlikeViewModel.Study study) {
    VBox card = Sentences.card(study.says(), "");
    card.getChildren().add(0, Texts.section(study.title()));
    card.getChildren().add(Texts.text(words.say("desk.class.alike.practise"), "strong"));
    study.practise().forEach(each -> card.getChildren().add(Texts.text(each)));
    return card;
  }

  private Node bias(AlikeViewModel.Study study) {
    PlotCard card = new PlotCard(model.filters().session(), told);
    card.show(
        words.say("desk.class.alike.bias-title"),
        words.say("desk.class.alike.bias-note"),
        study.bias(),
        study.table());
    return card;
  }

  private Node hk(AlikeViewModel.Study study) {
    PlotCard card = new PlotCard(model.filters().session(), told);
    card.show(
        words.say("desk.class.alike.hk-title"),
        words.say("desk.class.alike.hk-note"),
        study.hk(),
        study.table());
    return card;
  }
}
