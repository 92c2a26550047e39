package walebook.desk.typing;

import java.util.function.Function;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.css.PseudoClass;
import javafx.scene.control.IndexedCell;
import javafx.scene.control.Label;
import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.control.skin.VirtualFlow;
import javafx.scene.layout.BorderPane;
import org.jspecify.annotations.Nullable;
import walebook.act.card.CardClashes;
import walebook.act.card.CardSheet;
import walebook.act.piece.PieceField;
import walebook.desk.common.ColumnTable;
import walebook.desk.common.Texts;
import walebook.record.PieceCode;
import walebook.words.Words;

/** The grid: a row a card, a column a field; its head stays while the rows scroll. */
final class CardTable extends BorderPane {
  private static final double HEAD_PADDING = 14;

  /** Student, code and how the card stands. */
  private static final int NAMES = 3;

  static final double STUDENT_EMS = 8.8;
  static final double CODE_EMS = 5.6;
  static final double STATE_EMS = 5;

  private final Words words;
  private final TypeInViewModel model;
  private ColumnTable<CardRow> table = new ColumnTable<>();
  private StaysInSight names = new StaysInSight(table, NAMES);

  CardTable(Words words, TypeInViewModel model) {
    this.words = words;
    this.model = model;
    getStyleClass().add("card-table");
    model.sheetProperty().addListener((from, old, now) -> build());
    model.settingsProperty().addListener((from, old, now) -> build());
    model.cursor().atProperty().addListener((from, old, now) -> reveal(now));
    build();
  }

  private void build() {
    CardSheet sheet = model.sheetProperty().get();
    table = new ColumnTable<>();
    names = new StaysInSight(table, NAMES);
    table.setAccessibleText(words.say("desk.typing.grid"));
    table.setFocusTraversable(false);
    table.setSortPolicy(of -> false);
    labels("desk.typing.col.student", STUDENT_EMS, CardRow.STUDENT, row -> row.name(hidden()));
    labels(
        "desk.typing.col.code",
        CODE_EMS,
        CardClashes.CODE,
        row -> row.code().isBlank() ? "" : PieceCode.spoken(row.code()));
    state();
    if (sheet != null) {
      String unit = sheet.room().lengthUnit().sign();
      for (PieceField each : model.columns()) {
        String name = words.say("desk.pieces.field." + each.key());
        boolean length = each.kind() == PieceField.Kind.LENGTH;
        fields(length ? name + ", " + unit : name, ems(each), each.key());
      }
    }
    table.setItems(model.rows());
    setCenter(table);
    reveal(model.cursor().atProperty().get());
  }

  private boolean hidden() {
    return model.session().namesHiddenProperty().get();
  }

  /** A column's width in heights of text; the words of a short list are whole in it. */
  static double ems(PieceField field) {
    return switch (field) {
      case CLOTH, STITCH, FAULTS, REMARK -> 11;
      case BROKE -> 9.4;
      case GRAIN, NEEDLE_POINT, MACHINE, OUTCOME, HEM_METHOD, STABILISER, THREAD, PULL -> 7.5;
      case FOLD, METHOD -> 6.6;
      default -> 5.4;
    };
  }

  /** A column that is only read, but for cards beside the plan. */
  private void labels(String title, double ems, String key, Function<CardRow, String> says) {
    String label = words.say(title);
    TableColumn<CardRow, CardRow> column = column(label, ems);
    column.setUserData(key);
    staying(column, () -> new CardLabel(says, new CardField(model, key, label)));
  }

  private void staying(
      TableColumn<CardRow, CardRow> column, Supplier<TableCell<CardRow, CardRow>> make) {
    StaysInSight stay = names;
    column.setCellFactory(
        of -> {
          TableCell<CardRow, CardRow> cell = make.get();
          stay.cell(cell);
          return cell;
        });
    if (column.getGraphic() instanceof Label head) {
      stay.head(head);
    }
  }

  private void fields(String label, double ems, String key) {
    TableColumn<CardRow, CardRow> column = column(label, ems);
    column.setUserData(key);
    column.setCellFactory(of -> new CardField(model, key, label));
  }

  private void state() {
    staying(
        column(words.say("desk.typing.col.state"), STATE_EMS), () -> new CardState(words, model));
  }

  private TableColumn<CardRow, CardRow> column(String title, double ems) {
    TableColumn<CardRow, CardRow> column = table.figures("", ems, row -> Double.NaN, row -> "");
    column.getStyleClass().remove("figures");
    column.setCellValueFactory(row -> new ReadOnlyObjectWrapper<>(row.getValue()));
    column.setSortable(false);
    column.setReorderable(false);
    Label head = Texts.text(title, "card-head");
    head.prefWidthProperty().bind(column.widthProperty().subtract(HEAD_PADDING));
    column.setGraphic(head);
    return column;
  }

  /** Brings the cursor's row and column into view; the cell itself takes the focus. */
  private void reveal(GridCursor.@Nullable Spot at) {
    if (at == null) {
      return;
    }
    if (!isInView(at.row())) {
      bring(at.row());
      // Bars that come with the first layout can hide the last row again.
      Platform.runLater(() -> bring(at.row()));
    }
    for (int column = 0; column < table.getColumns().size(); column++) {
      if (at.column().equals(table.getColumns().get(column).getUserData())) {
        names.reveal(column);
      }
    }
  }

  /** The row is made at once, so that it takes the next key. */
  private void bring(int row) {
    table.scrollTo(Math.max(0, row - 3));
    table.layout();
    // Near the foot the heights that the table guesses can leave the last rows out of reach.
    if (table.lookup(".virtual-flow") instanceof VirtualFlow<?> flow) {
      for (int tried = 0; tried < 4 && flow.getVisibleCell(row) == null; tried++) {
        flow.scrollPixels(flow.getHeight() / 2);
        table.layout();
      }
    }
  }

  /** Wholly in view: a row at the foot may be cut off. */
  private boolean isInView(int row) {
    if (!(table.lookup(".virtual-flow") instanceof VirtualFlow<?> flow)) {
      return false;
    }
    IndexedCell<?> first = flow.getFirstVisibleCell();
    IndexedCell<?> last = flow.getLastVisibleCell();
    return first != null && last != null && row >= first.getIndex() && row < last.getIndex();
  }

  /** A name or code, or the field for it on a card beside the plan. */
  private static final class CardLabel extends TableCell<CardRow, CardRow> {
    private static final PseudoClass FILLED_IN = PseudoClass.getPseudoClass("filled-in");

    private final Function<CardRow, String> says;
    private final CardField field;

    CardLabel(Function<CardRow, String> says, CardField field) {
      this.says = says;
      this.field = field;
      getStyleClass().addAll("card-cell", "card-label");
    }

    @Override
    protected void updateItem(@Nullable CardRow row, boolean empty) {
      super.updateItem(row, empty);
      field.updateItem(row, empty);
      setGraphic(field.getGraphic());
      pseudoClassStateChanged(FILLED_IN, field.getGraphic() != null);
      setText(row == null || empty || field.getGraphic() != null ? "" : says.apply(row));
    }
  }
}
