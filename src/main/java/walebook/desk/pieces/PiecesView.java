package walebook.desk.pieces;

import java.util.Objects;
import javafx.scene.Node;
import javafx.scene.layout.StackPane;
import walebook.words.Words;

/** The place of test pieces: the list, the log form or one piece, one at a time. */
public final class PiecesView extends StackPane {
  private final PiecesViewModel model;
  private final PieceListView list;
  private final LogFormView form;
  private final OnePieceView one;

  public PiecesView(Words words, PiecesViewModel model) {
    this.model = model;
    this.list = new PieceListView(words, model);
    this.form = new LogFormView(words, model);
    this.one = new OnePieceView(words, model);
    getStylesheets()
        .add(Objects.requireNonNull(PiecesView.class.getResource("pieces.css")).toExternalForm());
    model.modeProperty().addListener((from, old, now) -> show());
    model.form().titleProperty().addListener((from, old, now) -> show());
    show();
  }

  private void show() {
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
