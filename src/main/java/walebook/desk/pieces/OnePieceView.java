package walebook.desk.pieces;

import java.io.ByteArrayInputStream;
import java.util.List;
import java.util.UUID;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import walebook.desk.common.BeingRead;
import walebook.desk.common.Fold;
import walebook.desk.common.NotesPane;
import walebook.desk.common.PlaceFrame;
import walebook.desk.common.Texts;
import walebook.desk.common.VerdictBadge;
import walebook.record.PhotoInfo;
import walebook.seam.NextTry;
import walebook.words.Words;

/** One piece whole: settings, measures, looks, photos, and its chain of attempts. */
final class OnePieceView {
  private static final double LABELS = 42;

  private final Words words;
  private final PiecesViewModel place;
  private final PlaceFrame frame;
  private final VBox work = new VBox();
  private final CausesPane causes;
  private final MeaningPane meaning;
  private final LookOverPane lookOver;
  private final Label who = Texts.text("");
  private final Button next = new Button();
  private final Button again = new Button();
  private final Button mend = new Button();
  private final Button bin = new Button();
  private @Nullable UUID shown;

  OnePieceView(Words words, PiecesViewModel place) {
    this.words = words;
    this.place = place;
    this.causes = new CausesPane(words, "desk.pieces.sew-next", this::again);
    this.meaning = new MeaningPane(words, causes);
    this.lookOver = new LookOverPane(words, place.lookOver());
    this.frame = new PlaceFrame(words, words.say("desk.pieces.one-title"));
    work.getStyleClass().add("one-piece");
    frame.context(who).work(work, new NotesPane(words, place.notes())).means(meaning);
    Button list = new Button(words.say("desk.pieces.to-list"));
    list.setOnAction(pressed -> place.toList());
    again.setText(words.say("desk.pieces.again"));
    next.textProperty()
        .bind(
            place
                .nextProperty()
                .map(planned -> words.say("desk.pieces.next-piece"))
                .orElse(words.say("desk.pieces.log-one")));
    next.setOnAction(pressed -> place.logNext());
    mend.setText(words.say("desk.pieces.mend"));
    bin.setText(words.say("desk.common.bin.go"));
    frame.primary(next).lesser(again).lesser(mend).lesser(bin).lesser(list);
    frame.notice().noticeProperty().bind(place.noticeProperty());
    place.piece().pieceProperty().addListener((from, old, now) -> show(now));
    show(place.piece().pieceProperty().get());
  }

  PlaceFrame frame() {
    return frame;
  }

  /** Enter goes on to the next piece. */
  void begin() {
    next.requestFocus();
  }

  private void again(NextTry next) {
    WholePiece piece = place.piece().pieceProperty().get();
    if (piece != null) {
      place.again(piece.id(), next);
    }
  }

  private void show(@Nullable WholePiece piece) {
    work.getChildren().clear();
    meaning.show(piece == null ? null : piece.meaning());
    who.setText(piece == null ? "" : piece.who());
    again.setDisable(piece == null);
    mend.setDisable(piece == null);
    bin.setDisable(piece == null);
    causes.show(piece == null ? List.of() : piece.causes());
    if (piece == null) {
      shown = null;
      work.getChildren().add(new BeingRead(words));
      return;
    }
    if (!piece.id().equals(shown)) {
      shown = piece.id();
      frame.toTop();
    }
    again.setOnAction(pressed -> place.again(piece.id()));
    mend.setOnAction(pressed -> place.mend(piece.id()));
    bin.setOnAction(pressed -> place.bin(piece.id()));
    Label code = Texts.text(piece.code(), "piece-code");
    FlowPane cards =
        new FlowPane(
            card("desk.pieces.card.settings", lines(piece.settings())),
            card("desk.pieces.card.measures", lines(piece.measures())),
            card("desk.pieces.card.seen", lines(piece.seen())));
    cards.getStyleClass().add("piece-cards");
    // Else the pane takes the tallest card for all of it, and shows no bar where it scrolls.
    cards.setMinHeight(Region.USE_PREF_SIZE);
    work.getChildren().addAll(code, cards);
    if (!piece.photos().isEmpty()) {
      work.getChildren().add(card("desk.pieces.card.photos", photos(piece.photos())));
    }
    if (piece.chain().size() > 1) {
      work.getChildren().add(card("desk.pieces.card.chain", chain(piece.chain())));
    }
    work.getChildren().add(lookOver);
    work.getChildren().add(new Fold(words.say("desk.pieces.timeline"), lines(piece.timeline())));
  }

  private VBox card(String title, Node content) {
    VBox card = new VBox(Texts.section(words.say(title)), content);
    card.getStyleClass().addAll("card", "piece-card");
    return card;
  }

  private Node lines(List<WholePiece.Line> lines) {
    if (lines.isEmpty()) {
      return Texts.text(words.say("desk.pieces.nothing-noted"), "soft");
    }
    GridPane grid = new GridPane();
    grid.getStyleClass().add("lines");
    grid.getColumnConstraints().setAll(column(LABELS), column(100 - LABELS));
    for (int i = 0; i < lines.size(); i++) {
      Label label = Texts.text(lines.get(i).label(), "soft");
      Label value = Texts.text(lines.get(i).value());
      grid.addRow(i, label, value);
    }
    return grid;
  }

  private static ColumnConstraints column(double percent) {
    ColumnConstraints column = new ColumnConstraints();
    column.setPercentWidth(percent);
    return column;
  }

  private Node chain(List<WholePiece.Attempt> chain) {
    VBox all = new VBox();
    all.getStyleClass().add("chain");
    for (int i = 0; i < chain.size(); i++) {
      WholePiece.Attempt each = chain.get(i);
      Node code;
      if (each.shown()) {
        code = Texts.text(words.say("desk.pieces.attempt-shown", i + 1, each.code()), "strong");
      } else {
        Hyperlink link = new Hyperlink(words.say("desk.pieces.attempt", i + 1, each.code()));
        link.setOnAction(pressed -> place.open(each.id()));
        code = link;
      }
      VBox attempt = new VBox(code);
      attempt.getStyleClass().addAll("attempt", each.shown() ? "shown" : "other");
      if (!each.change().isEmpty()) {
        attempt.getChildren().add(Texts.text(each.change(), "change"));
      }
      attempt
          .getChildren()
          .addAll(
              Texts.text(words.say("desk.pieces.attempt-says", each.stitch(), each.end())),
              new VerdictBadge(words, each.verdict()));
      all.getChildren().add(attempt);
    }
    return all;
  }

  private Node photos(List<PhotoInfo> photos) {
    FlowPane strip = new FlowPane();
    strip.getStyleClass().add("photos");
    for (PhotoInfo each : photos) {
      ImageView view = new ImageView(new Image(new ByteArrayInputStream(each.thumbnail())));
      view.setAccessibleText(words.say("desk.pieces.photo", each.caption()));
      Button large = new Button();
      large.getStyleClass().add("photo");
      large.setGraphic(view);
      large.setAccessibleText(words.say("desk.pieces.photo-large"));
      large.setOnAction(pressed -> enlarge(each, view));
      strip.getChildren().add(large);
    }
    return strip;
  }

  private void enlarge(PhotoInfo photo, ImageView view) {
    place
        .piece()
        .photo(
            photo.id(),
            bytes -> {
              view.setImage(new Image(new ByteArrayInputStream(bytes)));
              view.setPreserveRatio(true);
              view.setFitWidth(Math.min(photo.widthPx(), Math.max(240, work.getWidth() - 80)));
            });
  }
}
