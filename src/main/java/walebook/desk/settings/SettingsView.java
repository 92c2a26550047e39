package walebook.desk.settings;

import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import walebook.desk.common.BackupsPane;
import walebook.desk.common.BackupsViewModel;
import walebook.desk.common.FieldGroup;
import walebook.desk.common.PlaceFrame;
import walebook.desk.common.Segments;
import walebook.desk.common.Session;
import walebook.desk.common.Texts;
import walebook.desk.common.TypedField;
import walebook.quantity.Unit;
import walebook.words.Words;

/** The place of the settings that the window's own bar does not hold. */
public final class SettingsView extends BorderPane {
  private static final List<Unit> UNITS = List.of(Unit.MM, Unit.CM, Unit.INCH);

  public SettingsView(Session session, BackupsViewModel backups) {
    Words words = session.words();
    SettingsViewModel model = new SettingsViewModel(session);
    PlaceFrame frame = new PlaceFrame(words, words.say("desk.settings.title"));
    VBox units =
        new VBox(
            4,
            Texts.text(words.say("desk.settings.unit"), "field-label"),
            new Segments<>(UNITS, model.unitProperty(), Unit::sign),
            Texts.caption(words.say("desk.settings.unit-note")));
    FieldGroup book =
        new FieldGroup(words.say("desk.settings.book"))
            .add(
                new TypedField(
                    words,
                    words.say("desk.settings.book-name"),
                    "",
                    model.fields().field("book-name")),
                24)
            .below(units);
    CheckBox hidden = new CheckBox(words.say("desk.settings.hide-names"));
    hidden.setWrapText(true);
    hidden.selectedProperty().bindBidirectional(model.namesHiddenProperty());
    FieldGroup screen =
        new FieldGroup(words.say("desk.settings.screen"))
            .below(hidden)
            .below(Texts.caption(words.say("desk.settings.screen-note")));
    FieldGroup copies =
        new FieldGroup(words.say("desk.common.backups.title"))
            .below(new BackupsPane(words, backups, true));
    Button save = new Button(words.say("desk.settings.save"));
    save.setOnAction(pressed -> model.save());
    frame.notice().noticeProperty().bind(model.noticeProperty());
    frame.work(book, screen, copies).primary(save);
    setCenter(frame);
  }
}
