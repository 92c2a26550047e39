package walebook.desk.term;

import java.time.format.DateTimeFormatter;
import java.util.Locale;
import javafx.beans.binding.Bindings;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import walebook.act.history.UseBin;
import walebook.desk.common.ColumnTable;
import walebook.desk.common.Session;
import walebook.desk.common.Texts;
import walebook.words.Words;

/** What lies in the bin, as a table. */
final class BinPane extends VBox {
  private static final int ROWS = 16;

  BinPane(Session session, BinViewModel model) {
    super(16);
    Words words = session.words();
    DateTimeFormatter when =
        DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT)
            .withZone(session.clock().getZone());
    ColumnTable<UseBin.Item> table = new ColumnTable<>();
    table.setAccessibleText(words.say("desk.term.bin"));
    table.setPlaceholder(Texts.text(words.say("desk.term.bin.none"), "soft"));
    table.wrapped(words.say("desk.term.bin.what"), 26, UseBin.Item::what);
    table
        .words(words.say("desk.term.bin.who"), 16, UseBin.Item::who)
        .visibleProperty()
        .bind(session.namesHiddenProperty().not());
    table.words(words.say("desk.term.bin.when"), 13, each -> when.format(each.putAt()));
    table.setItems(model.items());
    table.asHighAs(ROWS);
    table.opens(model::restore);
    Button restore = new Button(words.say("desk.term.bin.restore"));
    restore
        .disableProperty()
        .bind(Bindings.isNull(table.getSelectionModel().selectedItemProperty()));
    restore.setOnAction(
        pressed -> {
          UseBin.Item chosen = table.getSelectionModel().getSelectedItem();
          if (chosen != null) {
            model.restore(chosen);
          }
        });
    Button empty = new Button();
    empty.getStyleClass().add("quiet");
    empty
        .textProperty()
        .bind(
            model
                .emptyingProperty()
                .map(
                    asked ->
                        words.say(asked ? "desk.term.bin.empty-sure" : "desk.term.bin.empty")));
    empty.disableProperty().bind(Bindings.isEmpty(model.items()));
    empty.setOnAction(pressed -> model.empty());
    getChildren()
        .setAll(
            Texts.text(words.say("desk.term.bin.about"), "soft"),
            table,
            new FlowPane(8, 8, restore, empty));
  }
}
