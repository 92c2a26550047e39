package walebook.desk.term;

import java.util.Arrays;
import java.util.List;
import javafx.application.Platform;
import javafx.beans.binding.Bindings;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import walebook.act.privacy.TakeOutStudent;
import walebook.desk.common.IntoView;
import walebook.desk.common.Segments;
import walebook.desk.common.Texts;
import walebook.words.Words;

/** Making a student anonymous, or erasing them: what would go stands there before it goes. */
final class PrivacyPane extends VBox {
  private final Words words;

  PrivacyPane(Words words, PrivacyViewModel model) {
    super(8);
    this.words = words;
    VBox lines = new VBox(4);
    model.lines().addListener((ListChangeListener<String>) change -> lines(lines, model.lines()));
    lines(lines, model.lines());
    Button take = new Button();
    take.setId("take-out");
    take.setMnemonicParsing(false);
    take.textProperty()
        .bind(
            model
                .askedProperty()
                .map(
                    asked ->
                        asked
                            ? words.say(
                                "desk.term.privacy.sure",
                                model.who(),
                                how(model.howProperty().get()))
                            : words.say("desk.term.privacy.look")));
    take.setWrapText(true);
    // What is there pushes the second press out of sight.
    model
        .askedProperty()
        .addListener(
            (from, old, now) -> {
              if (now) {
                Platform.runLater(() -> IntoView.showWhole(take));
              }
            });
    take.setOnAction(pressed -> model.take());
    getChildren()
        .setAll(
            Texts.text(words.say("desk.term.privacy.about"), "soft"),
            new Segments<>(
                Arrays.asList(TakeOutStudent.How.values()), model.howProperty(), this::how),
            lines,
            take);
  }

  private static void lines(VBox box, List<String> says) {
    box.getChildren().setAll(says.stream().map(each -> Texts.text(each)).toList());
  }

  private String how(TakeOutStudent.How how) {
    return words.say(
        switch (how) {
          case ANONYMOUS -> "desk.term.privacy.anonymous";
          case ERASE_KEEP_PIECES -> "desk.term.privacy.erase";
          case ERASE_ALL -> "desk.term.privacy.erase-all";
        });
  }

  /** The copies that still hold the name, and the way to delete them; there only when it is so. */
  static VBox copies(Words words, PrivacyViewModel model) {
    VBox names = new VBox(4);
    Button delete = new Button(words.say("desk.term.privacy.delete-copies"));
    delete.setId("delete-copies");
    delete.setOnAction(pressed -> model.deleteCopies());
    VBox all = new VBox(8, Texts.text(words.say("desk.term.privacy.copies")), names, delete);
    Runnable show =
        () ->
            names
                .getChildren()
                .setAll(
                    model.copies().stream()
                        .map(each -> Texts.text(String.valueOf(each.getFileName()), "soft"))
                        .toList());
    model.copies().addListener((ListChangeListener<Object>) change -> show.run());
    show.run();
    all.visibleProperty().bind(Bindings.isNotEmpty(model.copies()));
    all.managedProperty().bind(all.visibleProperty());
    // They stand above the card that was erased from, out of sight.
    all.visibleProperty()
        .addListener(
            (from, old, now) -> {
              if (now) {
                Platform.runLater(() -> IntoView.showWhole(all));
              }
            });
    return all;
  }
}
