package walebook.desk.term;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import walebook.desk.common.Segments;
import walebook.desk.common.Texts;
import walebook.words.Words;

/** What is exported, with names or codes, and where it was written. */
final class ExportPane extends VBox {
  ExportPane(Words words, ExportViewModel model) {
    super(16);
    Segments<ExportViewModel.Shown> shown =
        new Segments<>(
            List.of(ExportViewModel.Shown.values()),
            model.shownProperty(),
            each ->
                words.say(
                    each == ExportViewModel.Shown.CODES
                        ? "desk.term.export.codes"
                        : "desk.term.export.names"));
    Label says = Texts.text("", "strong");
    says.textProperty().bind(model.saysProperty());
    VBox card =
        new VBox(
            12,
            Texts.section(words.say("desk.term.export.title")),
            Texts.text(words.say("desk.term.export.says")),
            Texts.text(words.say("desk.term.export.who"), "field-label"),
            shown,
            Texts.caption(words.say("desk.term.export.who-note")),
            says);
    card.getStyleClass().add("card");
    getChildren().setAll(card);
  }
}
