package walebook.desk.pieces;

import java.util.List;
import javafx.application.Platform;
import javafx.collections.FXCollections;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import walebook.act.assess.GiveFeedback;
import walebook.act.assess.LookOver;
import walebook.compare.assessed.Standing;
import walebook.desk.common.AfterPause;
import walebook.desk.common.DayWords;
import walebook.desk.common.FieldBox;
import walebook.desk.common.IntoView;
import walebook.desk.common.LinesField;
import walebook.desk.common.StandingBadge;
import walebook.desk.common.Texts;
import walebook.desk.common.TutorOnly;
import walebook.desk.common.TypedField;
import walebook.record.CheckedBy;
import walebook.record.Criterion;
import walebook.record.Feedback;
import walebook.words.Words;

/** What a piece speaks for, both checks side by side, and what was said of it. */
final class LookOverPane extends VBox {
  private static final int LINES = 3;

  private final Words words;
  private final LookOverViewModel model;
  private final VBox speaks = new VBox(6);
  private final VBox standing = new VBox();
  private final VBox feedback = new VBox(4);
  private final ComboBox<String> bank = new ComboBox<>();
  private List<Criterion> tags = List.of();

  LookOverPane(Words words, LookOverViewModel model) {
    super(12);
    this.words = words;
    this.model = model;
    getStyleClass().addAll("card", "piece-card");
    setMinHeight(USE_PREF_SIZE);
    CheckColumn tutor = new CheckColumn(words, model, CheckedBy.TUTOR);
    FlowPane checks = new FlowPane(24, 12, new CheckColumn(words, model, CheckedBy.SELF), tutor);
    // The piece has to be in the window before one of its fields can take the focus.
    TutorOnly locked = new TutorOnly(words, model.lockedProperty(), model::tutorIsHere);
    model
        .attentionProperty()
        .addListener(
            (from, old, now) ->
                Platform.runLater(
                    () -> {
                      if (model.lockedProperty().get()) {
                        IntoView.focus(locked.button());
                      } else {
                        tutor.focusFirst();
                      }
                    }));
    Node comment = comment();
    comment.visibleProperty().bind(model.lockedProperty().not());
    comment.managedProperty().bind(comment.visibleProperty());
    getChildren()
        .setAll(
            Texts.section(words.say("desk.pieces.look.title")),
            locked,
            Texts.text(words.say("desk.pieces.look.speaks"), "field-label"),
            speaks,
            standing,
            checks,
            Texts.caption(words.say("desk.pieces.look.note")),
            Texts.text(words.say("desk.pieces.look.feedback"), "field-label"),
            feedback,
            comment);
    model.shownProperty().addListener((from, old, now) -> show(now));
    model
        .lockedProperty()
        .addListener(
            (from, old, now) -> {
              speaks.getChildren().clear();
              show(model.shownProperty().get());
            });
    AfterPause.of(model.editsProperty(), model::keepDraft);
    visibleProperty().bind(model.shownProperty().isNotNull());
    show(model.shownProperty().get());
  }

  private Node comment() {
    LinesField says =
        new LinesField(
            words,
            words.say("desk.pieces.look.comment"),
            "",
            LINES,
            model.said().field(GiveFeedback.SAYS));
    TypedField day =
        new TypedField(
            words,
            words.say("desk.pieces.look.day"),
            words.say("desk.pieces.look.today"),
            model.said().field(GiveFeedback.DAY));
    day.setMaxWidth(180);
    CheckBox keep = new CheckBox(words.say("desk.pieces.look.keep"));
    keep.setWrapText(true);
    keep.setOnAction(pressed -> model.keepingProperty().set(keep.isSelected()));
    model.keepingProperty().addListener((from, old, now) -> keep.setSelected(now));
    Button give = new Button(words.say("desk.pieces.look.give"));
    give.setOnAction(pressed -> model.give());
    return new VBox(8, bankField(), says, new FlowPane(16, 8, day, keep, give));
  }

  private Node bankField() {
    bank.setPromptText(words.say("desk.pieces.look.bank-choose"));
    bank.setMaxWidth(Double.MAX_VALUE);
    Button take = new Button(words.say("desk.pieces.look.take"));
    take.disableProperty().bind(bank.valueProperty().isNull());
    take.setOnAction(
        pressed -> {
          if (bank.getValue() != null) {
            model.take(bank.getValue());
          }
        });
    Button drop = new Button(words.say("desk.pieces.look.drop"));
    drop.getStyleClass().add("quiet");
    drop.disableProperty().bind(bank.valueProperty().isNull());
    drop.setOnAction(
        pressed -> {
          if (bank.getValue() != null) {
            model.unbank(bank.getValue());
          }
        });
    VBox all =
        new VBox(
            8,
            new FieldBox(words, words.say("desk.pieces.look.bank"), bank),
            new FlowPane(8, 8, take, drop));
    all.visibleProperty().bind(bank.itemsProperty().map(items -> !items.isEmpty()));
    all.managedProperty().bind(all.visibleProperty());
    return all;
  }

  private void show(@Nullable LookOver now) {
    if (now == null) {
      return;
    }
    speaks(now);
    Standing how = Standing.of(now.tutor());
    standing.getChildren().setAll(new StandingBadge(words, how, words.say(how.says())));
    feedback.getChildren().clear();
    for (Feedback each : now.feedback()) {
      feedback
          .getChildren()
          .add(
              Texts.text(
                  words.say("desk.pieces.look.line", DayWords.of(each.givenOn()), each.says())));
    }
    if (now.feedback().isEmpty()) {
      feedback.getChildren().add(Texts.text(words.say("desk.pieces.look.nothing-said"), "soft"));
    }
    if (!bank.getItems().equals(now.bank())) {
      bank.setItems(FXCollections.observableArrayList(now.bank()));
    }
  }

  /** Boxes that are there stay, so that the focus does. */
  private void speaks(LookOver now) {
    if (model.lockedProperty().get()) {
      read(now);
      return;
    }
    if (speaks.getChildren().isEmpty() || !tags.equals(now.criteria())) {
      tags = now.criteria();
      speaks.getChildren().clear();
      for (Criterion each : tags) {
        CheckBox box = new CheckBox();
        box.setWrapText(true);
        box.setOnAction(pressed -> model.tag(each, box.isSelected()));
        speaks.getChildren().add(box);
      }
      if (tags.isEmpty()) {
        speaks.getChildren().add(Texts.text(words.say("desk.pieces.look.no-criteria"), "soft"));
      }
    }
    for (int i = 0; i < tags.size(); i++) {
      if (speaks.getChildren().get(i) instanceof CheckBox box) {
        Criterion each = tags.get(i);
        boolean lesson = now.ofLesson().contains(each.id());
        boolean own = now.own().contains(each.id());
        box.setText(says(each, lesson && !own));
        box.setSelected(own || lesson);
        box.setDisable(lesson && !own);
      }
    }
  }

  /** While it is locked only what the piece speaks for stands there, in words. */
  private void read(LookOver now) {
    speaks.getChildren().clear();
    for (Criterion each : now.criteria()) {
      boolean own = now.own().contains(each.id());
      if (own || now.ofLesson().contains(each.id())) {
        speaks.getChildren().add(Texts.text(says(each, !own)));
      }
    }
    if (speaks.getChildren().isEmpty()) {
      speaks
          .getChildren()
          .add(Texts.text(words.say("desk.pieces.look.speaks-for-nothing"), "soft"));
    }
  }

  private String says(Criterion criterion, boolean byLesson) {
    return words.say(
        byLesson ? "desk.pieces.look.by-lesson" : "desk.pieces.look.criterion",
        criterion.code(),
        criterion.says());
  }
}
