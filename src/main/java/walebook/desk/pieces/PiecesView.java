package walebook.desk.pieces;

import java.util.Objects;
import javafx.scene.Node;
import javafx.scene.layout.StackPane;
import org.jspecify.annotations.Nullable;
import walebook.desk.common.ClickedHere;
import walebook.words.Words;

/** The place of test pieces: the list, the log form or one piece, one at a time. */
public final class PiecesView extends StackPane {
  private final PiecesViewModel model;
  private final PieceListView list;
  private final LogFormView form;
  private final OnePieceView one;
  private final ClickedHere clicked = ClickedHere.watch(this);

  public PiecesView(Words words, PiecesViewModel model) {
    this.model = model;
    this.list = new PieceListView(words, model);
    this.form = new LogFormView(words, model);
    this.one = new OnePieceView(words, model);
    getStylesheets()
        .add(Objects.requireNonNull(PiecesView.class.getResource("pieces.css")).toExternalForm());
    model.piece().pieceProperty().addListener((from, old, now) -> otherPiece(old, now));
    model.modeProperty().addListener((from, old, now) -> show());
    model.form().titleProperty().addListener((from, old, now) -> show());
    show();
  }

  private void otherPiece(@Nullable WholePiece old, @Nullable WholePiece now) {
    if (old == null || now == null || !old.id().equals(now.id())) {
      clicked.isOther();
    }
  }

  private void show() {
    clicked.isOther();
    Node shown =
        switch (model.modeProperty().get()) {
          case LIST -> list.frame();
          case FORM -> form.frame();
          case PIECE -> one.frame();
        };
    getChildren().setAll(shown);
    switch (model.modeProperty().get()) {
      case LIST -> {}
      case FORM -> form.begin();
      case PIECE -> one.begin();
    }
  }
}
