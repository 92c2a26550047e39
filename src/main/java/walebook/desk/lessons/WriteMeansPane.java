package walebook.desk.lessons;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import walebook.desk.common.Texts;
import walebook.lesson.PackDraft;
import walebook.lesson.PlanCounts;
import walebook.record.Tier;
import walebook.words.Words;

/** Beside a pack being written: what its plan comes to, and what keeps it from being saved. */
final class WriteMeansPane extends VBox {
  private static final int FEW = 3;

  private final Words words;
  private final WritePackViewModel model;
  private final FieldControls controls;
  private final VBox counts = new VBox(6);
  private final VBox problems = new VBox(6);

  WriteMeansPane(Words words, WritePackViewModel model, FieldControls controls) {
    super(16);
    this.words = words;
    this.model = model;
    this.controls = controls;
    getChildren().setAll(problems, counts);
    model.checkedProperty().addListener((from, old, now) -> problems(now));
    model.countsProperty().addListener((from, old, now) -> counts(now));
    problems(model.checkedProperty().get());
    counts(model.countsProperty().get());
  }

  private void problems(PackDraft.@Nullable Checked now) {
    List<Node> lines = new ArrayList<>();
    lines.add(Texts.text(words.say("desk.lessons.write.to-mend"), "strong"));
    if (now == null || now.told().isEmpty()) {
      lines.add(Texts.text(words.say("desk.lessons.write.nothing-to-mend"), "soft"));
    } else {
      now.told().forEach(each -> lines.add(problem(each)));
    }
    problems.getChildren().setAll(lines);
  }

  /** A problem is a button to its field. */
  private Node problem(PackDraft.Told told) {
    String where =
        switch (told.field()) {
          case PackDraft.LESSON -> words.say("desk.lessons.write.in-lesson", told.line());
          case PackDraft.REST -> words.say("desk.lessons.write.in-rest", told.line());
          default -> controls.name(told.field());
        };
    String says = words.sayAtField(told.problem());
    Button to = new Button(where.isEmpty() ? says : where + ": " + says);
    to.getStyleClass().addAll("quiet", "problem-line");
    to.setWrapText(true);
    to.setMaxWidth(Double.MAX_VALUE);
    to.setOnAction(pressed -> model.goTo(told.field()));
    return to;
  }

  private void counts(@Nullable PlanCounts now) {
    List<Node> lines = new ArrayList<>();
    lines.add(Texts.text(words.say("desk.lessons.write.comes-to"), "strong"));
    if (now == null) {
      lines.add(Texts.text(words.say("desk.lessons.write.no-counts"), "soft"));
    } else {
      says(now).forEach(each -> lines.add(Texts.text(each)));
    }
    counts.getChildren().setAll(lines);
  }

  private String whole(boolean readings) {
    if (readings && !model.text(PackDraft.FIRST_CLOTH).isBlank()) {
      return model.ofClass()
          ? "desk.lessons.write.readings-class-control"
          : "desk.lessons.write.readings-twelve-control";
    }
    if (readings) {
      return model.ofClass()
          ? "desk.lessons.write.readings-class"
          : "desk.lessons.write.readings-twelve";
    }
    return model.ofClass() ? "desk.lessons.write.for-class" : "desk.lessons.write.for-twelve";
  }

  private List<String> says(PlanCounts now) {
    List<String> says = new ArrayList<>();
    boolean readings = model.text("plan.kind").equals(walebook.lesson.ReadingsPlan.KIND);
    says.add(words.say("desk.lessons.write.combinations", now.combinations()));
    says.add(
        words.say(
            readings ? "desk.lessons.write.readings-each" : "desk.lessons.write.pieces-each",
            now.ofTier(Tier.CORE),
            now.ofTier(Tier.STANDARD),
            now.ofTier(Tier.OWN)));
    says.add(words.say(whole(readings), model.students(), now.shared()));
    says.add(
        now.least() == now.most()
            ? words.say("desk.lessons.write.times", now.least())
            : words.say("desk.lessons.write.times-about", now.least(), now.most()));
    for (PlanCounts.OfFactor each : now.factors()) {
      String key = "desk.lessons.setting." + each.key();
      says.add(
          words.say(
              "desk.lessons.write.compares",
              words.has(key) ? words.say(key) : each.key(),
              String.join(", ", each.levels()),
              each.least()));
    }
    if (now.factors().size() > 1) {
      says.add(
          words.say(
              now.least() < 2
                  ? "desk.lessons.write.together-thin"
                  : "desk.lessons.write.together"));
    }
    if (now.least() == 0) {
      says.add(words.say("desk.lessons.write.some-never"));
    } else if (now.least() < FEW) {
      says.add(words.say("desk.lessons.write.few"));
    }
    return says;
  }
}
