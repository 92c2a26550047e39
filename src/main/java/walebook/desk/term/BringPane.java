package walebook.desk.term;

import java.util.List;
import java.util.Map;
import javafx.beans.binding.Bindings;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import walebook.act.bring.SpreadsheetFile;
import walebook.act.bring.match.BringWhat;
import walebook.desk.common.ChoiceField;
import walebook.desk.common.PlaceFrame;
import walebook.desk.common.Segments;
import walebook.desk.common.Texts;
import walebook.words.Words;

/** In from a spreadsheet: the file, its columns, what becomes of each row. */
final class BringPane extends VBox {
  private final Words words;
  private final BringViewModel model;
  private final VBox remarks = new VBox(4);
  private final BringRowsPane rows;

  BringPane(Words words, BringViewModel model) {
    super(16);
    this.words = words;
    this.model = model;
    this.rows = new BringRowsPane(words, model);
    BringColumnsPane columns = new BringColumnsPane(words, model);
    shownWith(columns, Bindings.isNotEmpty(model.columns()));
    shownWith(rows, Bindings.isNotEmpty(model.columns()));
    model.remarks().addListener((ListChangeListener<String>) change -> remark());
    // What came of trying stands where it is seen at once, above a list that may be long.
    getChildren().setAll(source(), rows, columns);
  }

  /** The actions of the place's foot and the line beside them. */
  void foot(PlaceFrame frame) {
    frame.notice().noticeProperty().bind(model.rows().noticeProperty());
    rows.foot(frame);
  }

  private VBox source() {
    Segments<BringWhat> what =
        new Segments<>(
            List.of(
                BringWhat.PIECES,
                BringWhat.ROSTER,
                BringWhat.CLOTHS,
                BringWhat.READINGS,
                BringWhat.WASHES,
                BringWhat.NOTES),
            model.whatProperty(),
            each ->
                words.say(
                    switch (each) {
                      case PIECES -> "desk.term.bring.pieces";
                      case ROSTER -> "desk.term.bring.roster";
                      case CLOTHS -> "desk.term.bring.cloths";
                      case READINGS -> "desk.term.bring.readings";
                      case WASHES -> "desk.term.bring.washes";
                      case NOTES -> "desk.term.bring.notes";
                    }));
    Label file = Texts.text("", "strong");
    file.textProperty()
        .bind(
            model
                .fileProperty()
                .map(found -> words.say("desk.term.bring.file", name(found)))
                .orElse(""));
    shownWith(file, model.fileProperty().isNotNull());
    Label count = Texts.text("", "soft");
    count
        .textProperty()
        .bind(
            model
                .inHandProperty()
                .map(found -> words.say("desk.term.bring.rows", found.size()))
                .orElse(""));
    shownWith(count, model.inHandProperty().isNotNull());
    Label says = Texts.text("", "strong");
    says.textProperty().bind(model.saysProperty());
    shownWith(says, model.saysProperty().isNotEmpty());
    VBox card =
        new VBox(
            12,
            Texts.section(words.say("desk.term.bring.title")),
            Texts.text(words.say("desk.term.bring.says")),
            Texts.text(words.say("desk.term.bring.what"), "field-label"),
            what,
            new FlowPane(8, 8, choose()),
            file,
            sheet(),
            count,
            remarks,
            says);
    card.getStyleClass().add("card");
    shownWith(remarks, Bindings.isNotEmpty(model.remarks()));
    return card;
  }

  private Button choose() {
    Button choose = new Button();
    choose
        .textProperty()
        .bind(
            model
                .fileProperty()
                .map(file -> words.say("desk.term.bring.another"))
                .orElse(words.say("desk.term.bring.choose")));
    choose.setOnAction(pressed -> model.choose());
    choose.disableProperty().bind(model.workingProperty());
    return choose;
  }

  private Node sheet() {
    ChoiceField<String> sheet =
        new ChoiceField<>(
            words,
            words.say("desk.term.bring.sheet"),
            model.sheets(),
            model.sheetProperty(),
            each -> each);
    sheet.setStyle("-fx-pref-width: 20em;");
    shownWith(sheet, Bindings.size(model.sheets()).greaterThan(1));
    return sheet;
  }

  private void remark() {
    remarks.getChildren().setAll(model.remarks().stream().map(Texts::caption).toList());
  }

  private static String name(SpreadsheetFile file) {
    return String.valueOf(file.path().getFileName());
  }

  static void shownWith(Node node, javafx.beans.value.ObservableBooleanValue when) {
    node.visibleProperty().bind(when);
    node.managedProperty().bind(when);
  }

  /** Names of fields by key, as problems call them too. */
  static String fieldName(Words words, String key) {
    return key.isEmpty()
        ? words.say("desk.term.bring.leave-out")
        : words.say("problem.field." + key);
  }

  static Map<String, String> fateNames(Words words) {
    return Map.of(
        "new", words.say("desk.term.bring.fate-new"),
        "there", words.say("desk.term.bring.fate-there"),
        "asked", words.say("desk.term.bring.fate-asked"),
        "refused", words.say("desk.term.bring.fate-refused"));
  }
}
