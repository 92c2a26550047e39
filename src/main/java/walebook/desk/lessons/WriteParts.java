package walebook.desk.lessons;

import java.util.ArrayList;
import java.util.List;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import walebook.desk.common.FieldGroup;
import walebook.desk.common.LinesField;
import walebook.desk.common.Texts;
import walebook.lesson.PackDraft;
import walebook.record.Grain;
import walebook.words.Words;

/** The parts of the form in which a pack is written; the plan has a class of its own. */
final class WriteParts {
  private final Words words;
  private final WritePackViewModel model;
  private final WriteFields fields;
  private final VBox preview = new VBox(12);

  WriteParts(Words words, WritePackViewModel model) {
    this.words = words;
    this.model = model;
    this.fields = new WriteFields(words, model);
    model.checkedProperty().addListener((from, old, now) -> preview(now));
    preview(model.checkedProperty().get());
  }

  FieldControls controls() {
    return fields.controls();
  }

  Node plan() {
    return new WritePlan(words, model, fields).shown();
  }

  Node text() {
    LinesField lesson =
        new LinesField(
            words, words.say("desk.lessons.write.lesson"), "", 26, model.field(PackDraft.LESSON));
    fields.keep(PackDraft.LESSON, lesson, "lesson.md");
    VBox.setVgrow(lesson, Priority.ALWAYS);
    ScrollPane shown = new ScrollPane(preview);
    shown.setFitToWidth(true);
    shown.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    preview.getStyleClass().add("card");
    SplitPane beside = new SplitPane(lesson, shown);
    beside.setStyle("-fx-min-height: 36em;");
    VBox.setVgrow(beside, Priority.ALWAYS);
    FieldGroup minutes = new FieldGroup(words.say("desk.lessons.write.minutes"));
    model.headings().addListener((ListChangeListener<String>) change -> minutes(minutes));
    minutes(minutes);
    return new VBox(16, beside, minutes);
  }

  private void minutes(FieldGroup group) {
    List<Node> steps = new ArrayList<>();
    for (int i = 0; i < model.headings().size(); i++) {
      String heading = model.headings().get(i);
      String name = words.say("desk.lessons.write.minutes-of", heading);
      steps.add(fields.typed(PackForm.minutes(i), heading, name));
    }
    group.getChildren().remove(1, group.getChildren().size());
    FieldGroup row = new FieldGroup("");
    row.getStyleClass().clear();
    row.getChildren().remove(0);
    steps.forEach(each -> row.add(each, 13));
    group.below(row);
  }

  private void preview(PackDraft.@Nullable Checked checked) {
    if (checked == null) {
      return;
    }
    List<Node> parts = new ArrayList<>();
    if (!checked.text().title().isEmpty()) {
      parts.add(Texts.text(checked.text().title(), "place-title"));
    }
    parts.add(new BlocksPane(checked.files(), checked.text().opening()));
    checked
        .text()
        .steps()
        .forEach(
            step -> {
              parts.add(Texts.section(step.heading()));
              parts.add(new BlocksPane(checked.files(), step.blocks()));
            });
    preview.getChildren().setAll(parts);
  }

  Node needs() {
    Node materials =
        fields.grid(
            "desk.lessons.write.materials",
            List.of(
                fields.column(".what", "desk.lessons.write.what", 22),
                fields.column(".count", "desk.lessons.write.count", 5),
                fields.column(".cloth", "desk.lessons.write.slot", 5),
                fields.column(".along_mm", "desk.lessons.write.along", 6),
                fields.column(".across_mm", "desk.lessons.write.across", 6),
                new RowsGrid.Column(
                    ".grain",
                    words.say("desk.lessons.write.long-side"),
                    13,
                    WriteFields.keys(Grain.class),
                    fields::choice),
                fields.column(".thread_m", "desk.lessons.write.thread", 6)),
            i -> "materials[" + i + "]",
            PackForm.MATERIALS);
    Node cautions =
        fields.grid(
            "desk.lessons.write.cautions",
            List.of(fields.column(".key", "desk.lessons.write.caution-key", 11), fields.says(44)),
            i -> "cautions[" + i + "]",
            PackForm.CAUTIONS);
    return new VBox(16, materials, cautions);
  }

  Node about() {
    FieldGroup about = new FieldGroup(words.say("desk.lessons.write.about"));
    about
        .add(fields.typed("title", "desk.lessons.write.title-of"), 24)
        .add(fields.typed("name", "desk.lessons.write.name"), 18)
        .add(fields.typed("version", "desk.lessons.write.version"), 7);
    LinesField summary =
        new LinesField(
            words, words.say("desk.lessons.write.summary"), "", 3, model.field("summary"));
    fields.keep("summary", summary, words.say("desk.lessons.write.summary"));
    summary.setMinHeight(Region.USE_PREF_SIZE);
    about.below(summary);
    LinesField rest =
        new LinesField(
            words, words.say("desk.lessons.write.rest"), "", 24, model.field(PackDraft.REST));
    rest.getStyleClass().add("typed-text");
    rest.setMinHeight(Region.USE_PREF_SIZE);
    fields.keep(PackDraft.REST, rest, words.say("desk.lessons.write.rest-title"));
    VBox card =
        new VBox(
            8,
            Texts.section(words.say("desk.lessons.write.rest-title")),
            Texts.caption(words.say("desk.lessons.write.rest-says")),
            rest);
    card.getStyleClass().add("card");
    return new VBox(16, about, card);
  }
}
