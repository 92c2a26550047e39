package walebook.desk.classroom;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import walebook.desk.common.EmptyState;
import walebook.desk.common.Texts;
import walebook.desk.common.Wish;
import walebook.words.Words;

/** Each cloth that several measured: the sentences, what to practise, bias, h and k. */
final class AlikeView extends AskedPart<AlikeViewModel.Found> {
  private final AlikeViewModel model;
  private final Words words;

  AlikeView(AlikeViewModel model, Around around) {
    super(model, around, FiltersView.Ask.LESSON, FiltersView.Ask.CLOTH);
    this.model = model;
    this.words = model.words();
    follow();
  }

  @Override
  String called() {
    return words.say("desk.class.alike");
  }

  @Override
  List<Finding> large(AlikeViewModel.Found found) {
    List<Finding> all = new ArrayList<>();
    for (AlikeViewModel.Study each : found.studies()) {
      List<String> says = new ArrayList<>(each.says());
      // Which cloth it is stands above what is said of it.
      String first = says.isEmpty() ? each.title() : each.title() + "\n" + says.remove(0);
      says.add(0, first);
      all.add(new Finding(says, each.bias(), each.biasNote()));
    }
    return all;
  }

  @Override
  void show(AlikeViewModel.@Nullable Found found) {
    inTurn(List.of());
    String says = words.say("desk.class.alike.empty");
    String begin = words.say("desk.class.alike.begin");
    if (found == null) {
      empty(says, begin, this::measure);
      return;
    }
    Choice there = found.elsewhere();
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
    if (found.studies().isEmpty()) {
      getChildren().setAll(new EmptyState(says, begin, this::measure));
      return;
    }
    getChildren().clear();
    List<Runnable> steps = new ArrayList<>();
    for (AlikeViewModel.Study each : found.studies()) {
      steps.add(() -> getChildren().add(sentences(each)));
      steps.add(() -> getChildren().add(bias(each)));
      steps.add(() -> getChildren().add(hk(each)));
    }
    steps.add(() -> leftOut(found));
    inTurn(steps);
  }

  private void leftOut(AlikeViewModel.Found found) {
    if (found.alone() > 0) {
      getChildren().add(Texts.caption(words.say("desk.class.alike.alone", found.alone())));
    }
    if (found.nameless() > 0) {
      getChildren().add(Texts.caption(words.say("desk.class.alike.nameless", found.nameless())));
    }
  }

  private void measure() {
    model.session().wish(Wish.show("cloths"));
  }

  private Node sentences(AlikeViewModel.Study study) {
    VBox card = Sentences.card(study.says(), "");
    card.getChildren().add(0, Texts.section(study.title()));
    card.getChildren().add(Texts.text(words.say("desk.class.alike.practise"), "strong"));
    study.practise().forEach(each -> card.getChildren().add(Texts.text(each)));
    return card;
  }

  private Node bias(AlikeViewModel.Study study) {
    PlotCard card = card();
    card.show(
        words.say("desk.class.alike.bias-title"), study.biasNote(), study.bias(), study::table);
    return card;
  }

  private Node hk(AlikeViewModel.Study study) {
    PlotCard card = card();
    card.show(words.say("desk.class.alike.hk-title"), study.hkNote(), study.hk(), study::table);
    return card;
  }
}
