package walebook.desk.typing;

import javafx.application.Platform;
import javafx.beans.value.ChangeListener;
import javafx.beans.value.WeakChangeListener;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.control.TableCell;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.StackPane;
import org.jspecify.annotations.Nullable;
import walebook.desk.common.Texts;
import walebook.problem.Problem;

/**
 * A cell that is always a field. A problem is a mark in it, so that no row changes its height under
 * the hands; its words stand below the grid, in the tooltip, and in what is read aloud.
 */
final class CardField extends TableCell<CardRow, CardRow> {
  private static final PseudoClass REFUSED = PseudoClass.getPseudoClass("refused");
  private static final PseudoClass ASKS = PseudoClass.getPseudoClass("asks");

  private final TypeInViewModel model;
  private final String column;
  private final String label;
  private final TextField field = new TextField();
  private final Label mark = Texts.text("", "field-mark");
  private final StackPane box = new StackPane(field, mark);
  private final Tooltip tooltip = new Tooltip();
  private final ChangeListener<@Nullable Problem> told = (from, old, now) -> show(now);
  private final ChangeListener<GridCursor.@Nullable Spot> moved = (from, old, now) -> focusIfHere();
  private @Nullable CardCell cell;
  private @Nullable CardRow row;

  CardField(TypeInViewModel model, String column, String label) {
    this.model = model;
    this.column = column;
    this.label = label;
    getStyleClass().add("card-cell");
    setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
    mark.setMouseTransparent(true);
    StackPane.setAlignment(mark, Pos.CENTER_RIGHT);
    tooltip.setWrapText(true);
    field.addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
    field
        .focusedProperty()
        .addListener(
            (from, was, now) -> {
              CardCell mine = cell;
              CardRow of = row;
              if (now && of != null) {
                model.cursor().go(model.rows().indexOf(of), column);
              } else if (mine != null) {
                mine.leave();
              }
            });
    // Cells are used again for other rows: whichever shows the cursor's row takes the focus.
    model.cursor().atProperty().addListener(new WeakChangeListener<>(moved));
  }

  @Override
  protected void updateItem(@Nullable CardRow next, boolean empty) {
    super.updateItem(next, empty);
    CardCell shown = empty || next == null ? null : next.cell(column);
    if (shown != null && shown.equals(cell)) {
      return;
    }
    let();
    row = empty ? null : next;
    cell = shown;
    if (shown == null) {
      setGraphic(null);
      return;
    }
    field.setText(shown.text());
    field.textProperty().bindBidirectional(shown.textProperty());
    field.promptTextProperty().bind(shown.hintProperty());
    shown.problemProperty().addListener(told);
    show(shown.problemProperty().get());
    setGraphic(box);
    focusIfHere();
  }

  private void let() {
    CardCell before = cell;
    if (before != null) {
      field.textProperty().unbindBidirectional(before.textProperty());
      field.promptTextProperty().unbind();
      before.problemProperty().removeListener(told);
    }
  }

  private void show(@Nullable Problem now) {
    CardRow of = row;
    String says =
        now == null || of == null ? "" : model.session().words().sayAtField(of.worded(now));
    tooltip.setText(says);
    field.setTooltip(says.isEmpty() ? null : tooltip);
    mark.setText(now == null ? "" : now.refuses() ? "!" : "?");
    pseudoClassStateChanged(REFUSED, now != null && now.refuses());
    pseudoClassStateChanged(ASKS, now != null && !now.refuses());
    String whose = of == null ? "" : of.name(model.session().namesHiddenProperty().get());
    field.setAccessibleText(whose + ", " + label + (says.isEmpty() ? "" : ". " + says));
  }

  private void focusIfHere() {
    GridCursor.Spot at = model.cursor().atProperty().get();
    CardRow of = row;
    if (at == null || of == null || field.isFocused() || !at.column().equals(column)) {
      return;
    }
    if (at.row() < model.rows().size() && model.rows().get(at.row()).equals(of)) {
      // At once: the next key of a quick hand or a scanner must not land in the cell left behind.
      if (getScene() == null || !box.equals(getGraphic()) || field.getScene() == null) {
        Platform.runLater(this::take);
      } else {
        take();
      }
    }
  }

  private void take() {
    field.requestFocus();
    field.selectAll();
  }

  private void pressed(KeyEvent key) {
    boolean together = key.isShortcutDown();
    int way = key.isShiftDown() ? -1 : 1;
    boolean taken = true;
    if (together && (key.getCode() == KeyCode.D || key.getCode() == KeyCode.QUOTE)) {
      model.repeatAbove();
    } else if (together && key.getCode() == KeyCode.L) {
      model.setColumn();
    } else if (key.getCode() == KeyCode.ENTER && !together) {
      model.cursor().onward(model.downProperty().get(), way);
    } else if (key.getCode() == KeyCode.TAB && !together) {
      model.cursor().horizontal(way);
    } else if (key.getCode() == KeyCode.DOWN) {
      model.cursor().vertical(1);
    } else if (key.getCode() == KeyCode.UP) {
      model.cursor().vertical(-1);
    } else {
      taken = false;
    }
    if (taken) {
      key.consume();
    }
  }
}
