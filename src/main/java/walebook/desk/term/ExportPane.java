package walebook.desk.term;

import java.util.List;
import java.util.stream.Collectors;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import walebook.act.classroom.ExportChosen;
import walebook.desk.common.Notice;
import walebook.desk.common.PlaceFrame;
import walebook.desk.common.Segments;
import walebook.desk.common.Texts;
import walebook.words.Words;

/** What is exported, with names or codes, what would go out, and where it was written. */
final class ExportPane extends VBox {
  private final Words words;
  private final ExportViewModel model;
  private final VBox preview = new VBox(8);

  ExportPane(Words words, ExportViewModel model) {
    super(16);
    this.words = words;
    this.model = model;
    getChildren().setAll(choice(), before(), parts());
    model.previewProperty().addListener((from, old, now) -> show(now));
    model.kindProperty().addListener((from, old, now) -> show(model.previewProperty().get()));
    show(model.previewProperty().get());
  }

  private Node choice() {
    CheckBox sheets = new CheckBox(words.say("desk.term.export.student-sheets"));
    sheets.selectedProperty().bindBidirectional(model.studentSheetsProperty());
    sheets.disableProperty().bind(model.kindProperty().isNotEqualTo(ExportViewModel.Kind.WORKBOOK));
    VBox card =
        new VBox(
            12,
            Texts.section(words.say("desk.term.export.title")),
            Texts.text(words.say("desk.term.export.says")),
            Texts.text(words.say("desk.term.export.who"), "field-label"),
            new Segments<>(
                List.of(ExportViewModel.Shown.values()), model.shownProperty(), this::shown),
            Texts.caption(words.say("desk.term.export.who-note")),
            Texts.text(words.say("desk.term.export.kind"), "field-label"),
            new Segments<>(
                List.of(ExportViewModel.Kind.values()), model.kindProperty(), this::kind),
            sheets);
    card.getStyleClass().add("card");
    return card;
  }

  /** Below what goes out: each list is long once it is unfolded. */
  private Node parts() {
    ExportChoice choice = model.choice();
    VBox card =
        new VBox(
            12,
            Texts.section(words.say("desk.term.export.choose")),
            new ExportItems<>(
                words, words.say("desk.term.export.lessons"), choice, choice.lessons()),
            new ExportItems<>(
                words, words.say("desk.term.export.students"), choice, choice.students()),
            new ExportItems<>(
                words, words.say("desk.term.export.columns"), choice, choice.columns()));
    card.getStyleClass().add("card");
    return card;
  }

  private Node before() {
    VBox card = new VBox(12, Texts.section(words.say("desk.term.export.preview")), preview);
    card.getStyleClass().add("card");
    return card;
  }

  /** The action, how far it is and how it went: in sight wherever the page was scrolled to. */
  void foot(PlaceFrame frame) {
    ProgressBar bar = new ProgressBar();
    bar.setAccessibleText(words.say("desk.term.export.writing"));
    bar.progressProperty().bind(model.shareProperty());
    Button stop = new Button(words.say("desk.term.export.stop"));
    stop.setOnAction(pressed -> model.cancel());
    HBox now = new HBox(12, bar, stop);
    now.setAlignment(Pos.CENTER_LEFT);
    now.visibleProperty().bind(model.writingProperty());
    Button replace = new Button(words.say("desk.term.export.replace"));
    replace.setOnAction(pressed -> model.replace());
    replace.visibleProperty().bind(model.inTheWayProperty().isNotNull());
    replace.managedProperty().bind(replace.visibleProperty());
    Button write = new Button(words.say("desk.term.export.go"));
    write.setOnAction(pressed -> model.export());
    write.disableProperty().bind(model.writingProperty());
    frame.notice().noticeProperty().bind(model.saysProperty().map(says -> new Notice(says, null)));
    frame.running(now).lesser(replace).primary(write);
  }

  private void show(ExportChosen.@Nullable Preview found) {
    preview.getChildren().clear();
    if (found == null) {
      preview.getChildren().add(Texts.text(words.say("desk.term.export.nothing"), "soft"));
      return;
    }
    preview
        .getChildren()
        .add(
            Texts.text(
                words.say(
                    "desk.term.export.rows",
                    found.rowsIn(model.kindProperty().get().ending()).stream()
                        .map(each -> words.say("desk.term.export.sheet", each.sheet(), each.rows()))
                        .collect(Collectors.joining(" · ")))));
    List<String> besides = found.besidesIn(model.kindProperty().get().ending());
    if (!besides.isEmpty()) {
      String all = String.join(" · ", besides);
      preview.getChildren().add(Texts.text(words.say("desk.term.export.besides", all)));
    }
    preview.getChildren().add(people(found));
    inText(found);
    if (found.setAside() > 0) {
      preview.getChildren().add(Texts.text(words.say("desk.term.export.aside", found.setAside())));
    }
  }

  private Label people(ExportChosen.Preview found) {
    if (found.people().isEmpty()) {
      return Texts.text(words.say("desk.term.export.nobody"), "soft");
    }
    String key = found.names() ? "desk.term.export.people-names" : "desk.term.export.people-codes";
    return Texts.text(
        words.say(key, found.people().size(), String.join(", ", found.people())),
        found.names() ? "strong" : "soft");
  }

  /** Names in notes: codes cover full ones, a first name alone stays and has to be looked at. */
  private void inText(ExportChosen.Preview found) {
    String tutor = found.tutor();
    if (tutor != null) {
      preview.getChildren().add(Texts.text(words.say("desk.term.export.tutor", tutor), "strong"));
    }
    String whole = named(found, true);
    String parts = named(found, false);
    if (!whole.isEmpty()) {
      preview
          .getChildren()
          .add(
              found.names()
                  ? Texts.text(words.say("desk.term.export.in-text", whole), "strong")
                  : Texts.text(words.say("desk.term.export.covered", whole), "soft"));
    }
    if (!parts.isEmpty()) {
      preview.getChildren().add(Texts.text(words.say("desk.term.export.parts", parts), "strong"));
    }
    if (whole.isEmpty() && parts.isEmpty()) {
      preview.getChildren().add(Texts.text(words.say("desk.term.export.no-names"), "soft"));
    }
  }

  private String named(ExportChosen.Preview found, boolean whole) {
    return found.namedIn(model.kindProperty().get().ending(), whole).stream()
        .map(
            each ->
                words.say(
                    "desk.term.export.named",
                    each.name(),
                    each.in().stream()
                        .map(in -> words.say("desk.term.export.named-in", in.sheet(), in.rows()))
                        .collect(Collectors.joining(", "))))
        .collect(Collectors.joining("; "));
  }

  private String shown(ExportViewModel.Shown each) {
    return words.say(
        each == ExportViewModel.Shown.CODES ? "desk.term.export.codes" : "desk.term.export.names");
  }

  private String kind(ExportViewModel.Kind each) {
    return words.say(
        switch (each) {
          case WORKBOOK -> "desk.term.export.workbook";
          case CSV -> "desk.term.export.csv";
          case TABLES -> "desk.term.export.tables";
          case JSON -> "desk.term.export.json";
        });
  }
}
