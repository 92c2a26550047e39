package walebook.desk.pieces;

import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import walebook.act.piece.PieceField;
import walebook.desk.common.AfterPause;
import walebook.desk.common.PlaceFrame;
import walebook.desk.common.SavesByKey;
import walebook.desk.common.Texts;
import walebook.words.Words;

/** The log form: four groups in the order of the hands, and what they mean beside them. */
final class LogFormView {
  private final Words words;
  private final PiecesViewModel place;
  private final LogFormViewModel model;
  private final FieldViews views;
  private final CausesPane causes;
  private final PlaceFrame frame;

  LogFormView(Words words, PiecesViewModel place) {
    this.words = words;
    this.place = place;
    this.model = place.form();
    this.views = new FieldViews(words, model);
    this.causes = new CausesPane(words, "desk.pieces.save-sew-next", model::saveThen);
    this.frame = build();
    model.attentionProperty().addListener((from, old, now) -> views.focus(now));
    AfterPause.of(model.editsProperty(), model::keepDraft);
    SavesByKey.on(frame, model::save);
  }

  PlaceFrame frame() {
    return frame;
  }

  /** Puts the focus where the hands go on: on the pull, since the plan fills what is before it. */
  void begin() {
    // A scrolled field has no scene before the first layout, and could not take the focus; and what
    // goes beside the work or below it is only known after that.
    for (int pass = 0; pass < 2; pass++) {
      Parent whole = frame.getScene() == null ? frame : frame.getScene().getRoot();
      whole.applyCss();
      whole.layout();
    }
    frame.toTop();
    PieceField inHand = model.inHand();
    if (inHand != null && model.field(inHand).textProperty().get().isBlank()) {
      views.focus(inHand);
      return;
    }
    boolean planned = !model.field(PieceField.CLOTH).textProperty().get().isBlank();
    views.focus(planned ? PieceField.EDGE_SEWN : PieceField.CLOTH);
  }

  /** What it means may be folded away. */
  private void toCauses() {
    frame.sideOpenProperty().set(true);
    causes.focusFirst();
  }

  private PlaceFrame build() {
    FormGroups groups = new FormGroups(words, views, model, this::toCauses);
    VBox form =
        new VBox(
            line(model.noteProperty(), "soft"),
            line(model.changeProperty(), "change"),
            clothFirst(),
            groups.planned(),
            groups.settings(),
            groups.measure(),
            groups.seen());
    form.getStyleClass().add("log-form");
    model.causesProperty().addListener((from, old, now) -> causes.show(now));
    causes.show(model.causesProperty().get());
    MeaningPane meaning = new MeaningPane(words, causes, line(model.cautionProperty(), "caution"));
    model.meaningProperty().addListener((from, old, now) -> meaning.show(now));
    meaning.show(model.meaningProperty().get());
    PlaceFrame built = new PlaceFrame(words, words.say("desk.pieces.log-title"));
    Label title = new Label();
    title.getStyleClass().add("strong");
    title.textProperty().bind(model.titleProperty());
    built.context(title).work(form).means(meaning);
    Button save = new Button();
    save.textProperty()
        .bind(
            model
                .askingProperty()
                .map(is -> words.say(is ? "desk.pieces.save-anyway" : "desk.pieces.save")));
    save.disableProperty().bind(model.busyProperty());
    save.setOnAction(pressed -> model.save());
    built.primary(save);
    Button list = new Button(words.say("desk.pieces.to-list"));
    list.setOnAction(pressed -> place.toList());
    Button discard = new Button(words.say("desk.pieces.discard"));
    discard.getStyleClass().add("quiet");
    discard.setOnAction(
        pressed -> {
          String sure = words.say("desk.pieces.discard-sure");
          if (discard.getText().equals(sure)) {
            discard.setText(words.say("desk.pieces.discard"));
            place.discard();
          } else {
            discard.setText(sure);
          }
        });
    discard
        .focusedProperty()
        .addListener((from, old, now) -> discard.setText(words.say("desk.pieces.discard")));
    built.lesser(list).lesser(discard).lesser(inTheWay());
    return built;
  }

  /** An empty list of cloths says nothing; this says what is missing and leads there. */
  private Node clothFirst() {
    Button add = new Button(words.say("desk.pieces.cloth-first.go"));
    add.setOnAction(pressed -> place.toCloths());
    VBox says = new VBox(8, Texts.text(words.say("desk.pieces.cloth-first"), "caution"), add);
    says.visibleProperty().bind(place.clothMissingProperty());
    says.managedProperty().bind(says.visibleProperty());
    return says;
  }

  /** The problem of the whole piece stands beside Save; a button, so that a foot can hold it. */
  private Button inTheWay() {
    Button says = new Button();
    says.getStyleClass().setAll("button", "quiet", "whole-problem");
    says.setWrapText(true);
    says.textProperty().bind(model.wholeProperty());
    says.visibleProperty().bind(model.wholeProperty().isNotEmpty());
    says.managedProperty().bind(says.visibleProperty());
    says.setOnAction(pressed -> views.focus(PieceField.STITCH));
    return says;
  }

  private static Node line(ObservableValue<String> says, String style) {
    Label line = Texts.text("", style);
    line.textProperty().bind(says);
    line.visibleProperty().bind(says.map(each -> !each.isEmpty()));
    line.managedProperty().bind(line.visibleProperty());
    return line;
  }
}
