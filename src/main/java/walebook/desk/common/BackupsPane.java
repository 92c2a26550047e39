package walebook.desk.common;

import javafx.application.Platform;
import javafx.beans.Observable;
import javafx.beans.binding.Bindings;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import walebook.act.book.ListBackups;
import walebook.words.Words;

/** The list of backups; a press shows what going back would change, a second one goes back. */
public final class BackupsPane extends VBox {
  private static final int SHOWN = 12;

  private final Words words;
  private final BackupsViewModel model;
  private final VBox list = new VBox(4);
  private final String none;
  private final VBox preview = new VBox(8);

  /**
   * Makes it.
   *
   * @param withMaking whether one more can be made; not for a damaged book
   */
  public BackupsPane(Words words, BackupsViewModel model, boolean withMaking) {
    super(10);
    this.words = words;
    this.model = model;
    this.none = words.say(withMaking ? "desk.common.backups.none-yet" : "desk.common.backups.none");
    getStyleClass().add("backups");
    Label says = Texts.text("", "caution");
    says.textProperty().bind(model.saysProperty());
    says.visibleProperty().bind(model.saysProperty().isNotEmpty());
    says.managedProperty().bind(says.visibleProperty());
    Label choose = Texts.caption(words.say("desk.common.backups.choose"));
    choose.visibleProperty().bind(Bindings.isNotEmpty(model.backups()));
    choose.managedProperty().bind(choose.visibleProperty());
    getChildren()
        .addAll(Texts.caption(words.say("desk.common.backups.says")), says, choose, list, preview);
    if (withMaking) {
      Button make = new Button(words.say("desk.common.backups.make"));
      make.setOnAction(pressed -> model.make());
      getChildren().add(1, make);
    }
    // Backups are made while another place is looked at.
    sceneProperty()
        .addListener(
            (from, old, now) -> {
              if (now != null) {
                model.read();
              }
            });
    model.backups().addListener((ListChangeListener<ListBackups.Backup>) change -> showList());
    model.chosenProperty().addListener((Observable changed) -> showPreview());
    showList();
    showPreview();
  }

  private void showList() {
    list.getChildren().clear();
    if (model.backups().isEmpty()) {
      list.getChildren().add(Texts.text(none, "soft"));
    }
    model.backups().stream().limit(SHOWN).forEach(each -> list.getChildren().add(line(each)));
    if (model.backups().size() > SHOWN) {
      Button more =
          new Button(words.say("desk.common.backups.more", model.backups().size() - SHOWN));
      more.getStyleClass().add("quiet");
      more.setOnAction(
          pressed -> {
            list.getChildren().remove(more);
            model.backups().stream()
                .skip(SHOWN)
                .forEach(each -> list.getChildren().add(line(each)));
          });
      list.getChildren().add(more);
    }
  }

  private Button line(ListBackups.Backup backup) {
    Button line = new Button(model.line(backup));
    line.getStyleClass().add("quiet");
    line.setWrapText(true);
    line.setAccessibleText(words.say("desk.common.backups.look", model.line(backup)));
    line.setOnAction(pressed -> model.choose(backup));
    return line;
  }

  private void showPreview() {
    ListBackups.Backup backup = model.chosenProperty().get();
    preview.getChildren().clear();
    if (backup == null) {
      return;
    }
    preview.getChildren().add(Texts.section(model.line(backup)));
    model.changes().forEach(each -> preview.getChildren().add(Texts.text(each)));
    Button back = new Button(words.say("desk.common.backups.go-back"));
    back.setOnAction(pressed -> model.goBack());
    preview
        .getChildren()
        .addAll(Texts.caption(words.say("desk.common.backups.go-back-says")), back);
    // Below a long list nobody would see that anything came.
    Platform.runLater(() -> IntoView.show(preview));
  }
}
