package walebook.desk.pieces;

import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import walebook.desk.common.ChoiceField;
import walebook.desk.common.ColumnTable;
import walebook.desk.common.EmptyState;
import walebook.desk.common.FieldBox;
import walebook.desk.common.PlaceFrame;
import walebook.desk.common.Texts;
import walebook.words.Words;

/** All pieces, with filters above; a row opens on Enter or a click. */
final class PieceListView {
  private final Words words;
  private final PiecesViewModel place;
  private final PieceListViewModel model;
  private final PlaceFrame frame;
  private final ColumnTable<PieceRow> table = new ColumnTable<>();
  private final Button next = new Button();

  PieceListView(Words words, PiecesViewModel place) {
    this.words = words;
    this.place = place;
    this.model = place.list();
    this.frame = new PlaceFrame(words, words.say("desk.pieces.title"));
    Label count = new Label();
    count.getStyleClass().add("soft");
    count.textProperty().bind(model.countProperty());
    StackPane body = new StackPane();
    VBox.setVgrow(body, Priority.ALWAYS);
    VBox list = new VBox(filters(), body);
    list.getStyleClass().add("piece-list");
    VBox.setVgrow(list, Priority.ALWAYS);
    frame.context(count).work(list);
    next.textProperty()
        .bind(
            place
                .nextProperty()
                .map(planned -> words.say("desk.pieces.log-next"))
                .orElse(words.say("desk.pieces.log-one")));
    next.setOnAction(pressed -> place.logNext());
    frame.primary(next);
    frame.notice().noticeProperty().bind(place.noticeProperty());
    fill(table);
    model.rows().addListener((ListChangeListener<PieceRow>) change -> body(body));
    body(body);
  }

  PlaceFrame frame() {
    return frame;
  }

  private void body(StackPane body) {
    boolean none = model.rows().isEmpty() && model.isUnfiltered();
    next.setVisible(!none);
    next.setManaged(!none);
    if (none) {
      body.getChildren()
          .setAll(
              new EmptyState(
                  words.say("desk.pieces.empty"),
                  words.say("desk.pieces.log-one"),
                  place::logNext));
    } else if (!body.getChildren().contains(table)) {
      body.getChildren().setAll(table);
    }
  }

  private FlowPane filters() {
    TextField search = new TextField();
    search.setPromptText(words.say("desk.pieces.search-example"));
    search.textProperty().bindBidirectional(model.searchProperty());
    FlowPane row =
        new FlowPane(
            sized(new FieldBox(words, words.say("desk.pieces.search"), search), 14),
            filter("desk.pieces.of-class", model.classes()),
            filter("desk.pieces.of-lesson", model.lessons()),
            filter("desk.pieces.of-student", model.students()),
            filter("desk.pieces.on-cloth", model.cloths()));
    row.getStyleClass().add("field-row");
    row.setPrefWrapLength(200);
    return row;
  }

  private Node filter(String key, PieceListViewModel.Filter filter) {
    return sized(
        new ChoiceField<>(words, words.say(key), filter.choices(), filter.chosen(), Choice::name),
        12);
  }

  private static Node sized(FieldBox box, double ems) {
    box.setStyle("-fx-pref-width: " + ems + "em; -fx-min-width: 8em;");
    return box;
  }

  private void fill(ColumnTable<PieceRow> table) {
    table.words(words.say("desk.pieces.column.code"), 6, PieceRow::code);
    table.wrapped(words.say("desk.pieces.column.student"), 7.5, PieceRow::student);
    var cloth = table.words(words.say("desk.pieces.column.cloth"), 11, PieceRow::cloth);
    table.wrapped(words.say("desk.pieces.column.stitch"), 8, PieceRow::stitch);
    table.words(words.say("desk.pieces.column.end"), 8.8, PieceRow::end);
    table.figures(
        words.say("desk.pieces.column.stretch"), 6, PieceRow::stretchPercent, PieceRow::stretch);
    table.words(words.say("desk.pieces.column.verdict"), 7.6, PieceRow::verdict);
    table.days(words.say("desk.pieces.column.sewn-on"), 7.6, PieceRow::sewnOn);
    table.wrapped(words.say("desk.pieces.column.faults"), 7.5, PieceRow::faults);
    table.takesRest(cloth, 9);
    table.setItems(model.rows());
    table.setPlaceholder(Texts.text(words.say("desk.pieces.none-fits"), "soft"));
    table.setAccessibleText(words.say("desk.pieces.title"));
    VBox.setVgrow(table, Priority.ALWAYS);
    table.opens(row -> place.open(row.id()));
  }
}
