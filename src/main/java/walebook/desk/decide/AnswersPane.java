package walebook.desk.decide;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import walebook.desk.common.Texts;
import walebook.desk.common.VerdictBadge;
import walebook.desk.common.WorkingPane;
import walebook.garment.Advice;
import walebook.garment.Check;
import walebook.garment.GarmentAnswers;
import walebook.garment.Link;
import walebook.garment.LinkKind;
import walebook.garment.OpeningQuestion;
import walebook.quantity.Show;
import walebook.words.Words;
import walebook.working.Caution;
import walebook.working.Verdict;

/** The answers of a sheet: what to do in order, each check with its working, the cautions. */
final class AnswersPane extends VBox {
  private final Words words;
  private final SheetViewModel model;
  private final Set<String> unfolded = new HashSet<>();
  private final Set<Advice.PieceWanted> planned = new HashSet<>();

  AnswersPane(Words words, SheetViewModel model) {
    this.words = words;
    this.model = model;
    getStyleClass().add("checks");
    model.answersProperty().addListener((from, old, now) -> show(now));
    show(model.answersProperty().get());
  }

  private void show(@Nullable GarmentAnswers answers) {
    getChildren().clear();
    if (answers == null) {
      Label mend = Texts.text("", "soft");
      mend.textProperty().bind(model.mendProperty());
      getChildren().add(mend);
      return;
    }
    getChildren().add(new VerdictBadge(words, answers.verdict(), answers.isReckonedOnly()));
    advice(answers.advice());
    for (Caution caution : answers.cautions()) {
      String says = words.say("desk.common.caution", words.say(caution.says()));
      getChildren().add(Texts.text(says, "caution"));
    }
    getChildren().add(Texts.section(words.say("desk.decide.sheet.checks")));
    answers.checks().forEach(each -> getChildren().add(check(each)));
  }

  private void advice(List<Advice> all) {
    if (all.isEmpty()) {
      return;
    }
    getChildren().add(Texts.section(words.say("desk.decide.sheet.to-do")));
    int nth = 1;
    for (Advice each : all) {
      String number = Integer.toString(nth++);
      VBox line = new VBox(4);
      line.getChildren()
          .add(Texts.text(words.say("desk.decide.sheet.nth", number, words.say(each.says()))));
      Advice.PieceWanted piece = each.piece();
      if (piece != null) {
        Button plan = new Button(words.say("desk.decide.plan"));
        if (planned.contains(piece)) {
          there(plan);
        }
        plan.setOnAction(
            pressed ->
                model.plan(
                    piece,
                    () -> {
                      planned.add(piece);
                      there(plan);
                    }));
        line.getChildren().add(plan);
      }
      getChildren().add(line);
    }
  }

  /**
   * It can still be pressed, and says again where the piece is: were it disabled, the focus would
   * leave it, and the answers scroll after the focus.
   */
  private void there(Button plan) {
    plan.setText(words.say("desk.decide.plan.there"));
  }

  /** What waits for a measure has nothing to unfold yet. */
  private Node waiting(Check check) {
    VBox card =
        new VBox(
            4,
            Texts.text(words.say(check.about()), "strong"),
            Texts.caption(words.say(check.working().says())));
    card.getStyleClass().add("answer");
    return card;
  }

  private Node check(Check check) {
    if (check.verdict() == Verdict.NOT_KNOWN && check.working().steps().isEmpty()) {
      return waiting(check);
    }
    String about = words.say(check.about());
    WorkingPane working = new WorkingPane(words);
    working.openProperty().set(unfolded.contains(about));
    working
        .openProperty()
        .addListener(
            (from, was, now) -> {
              if (now) {
                unfolded.add(about);
              } else {
                unfolded.remove(about);
              }
            });
    working.show(check.working(), check.isReckonedOnly());
    VBox card = new VBox(4, Texts.text(about, "strong"), working);
    if (check.working().verdict() == null) {
      card.getChildren().add(1, new VerdictBadge(words, check.verdict()));
    }
    OpeningQuestion question = check.question();
    if (question != null) {
      question.links().stream()
          .filter(link -> link.kind() != LinkKind.CLOTH)
          .forEach(link -> card.getChildren().add(Texts.caption(evidence(link))));
    }
    card.getStyleClass().add("answer");
    return card;
  }

  /** What a link's figure rests on. */
  private String evidence(Link link) {
    String name = words.say(link.kind().sayKey());
    String percent = Show.percent(link.percent());
    String pieces = Integer.toString(link.pieces());
    String students = Integer.toString(link.students());
    return switch (link.basis()) {
      case GAVE -> words.say("desk.decide.evidence.gave", name, percent, pieces, students);
      case HELD -> words.say("desk.decide.evidence.held", name, percent, pieces, students);
      case MODEL -> words.say("desk.decide.evidence.model", name, percent);
      case UNKNOWN -> words.say("desk.decide.evidence.unknown", name);
    };
  }
}
