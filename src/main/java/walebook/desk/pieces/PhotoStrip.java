package walebook.desk.pieces;

import java.io.ByteArrayInputStream;
import java.io.File;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.input.DragEvent;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import walebook.act.piece.ReadyPhoto;
import walebook.desk.common.FieldBox;
import walebook.words.Words;

/** Photos to be kept with the piece: picked, or dropped here. */
final class PhotoStrip extends FieldBox {
  private static final double HEIGHT = 96;

  private final Words words;
  private final PhotosViewModel model;
  private final FlowPane strip;

  PhotoStrip(Words words, PhotosViewModel model) {
    this(words, model, new FlowPane());
  }

  private PhotoStrip(Words words, PhotosViewModel model, FlowPane strip) {
    super(words, words.say("desk.pieces.photos"), strip);
    this.words = words;
    this.model = model;
    this.strip = strip;
    strip.getStyleClass().add("photos");
    setOnDragOver(this::over);
    setOnDragDropped(this::dropped);
    model.photos().addListener((ListChangeListener<ReadyPhoto>) change -> show());
    model.problemProperty().addListener((from, old, now) -> showProblem(now));
    show();
  }

  /** Takes a drag of files; for a parent that lets people drop anywhere on it. */
  void over(DragEvent event) {
    if (event.getDragboard().hasFiles()) {
      event.acceptTransferModes(TransferMode.COPY);
      event.consume();
    }
  }

  private void dropped(DragEvent event) {
    if (event.getDragboard().hasFiles()) {
      model.add(event.getDragboard().getFiles().stream().map(File::toPath).toList());
      event.setDropCompleted(true);
      event.consume();
    }
  }

  private void show() {
    strip.getChildren().setAll(model.photos().stream().map(this::photo).toList());
    Button pick = new Button(words.say("desk.pieces.add-photo"));
    pick.setOnAction(pressed -> model.pick());
    strip.getChildren().add(pick);
  }

  private Node photo(ReadyPhoto photo) {
    ImageView view = new ImageView(new Image(new ByteArrayInputStream(photo.thumbnail())));
    view.setPreserveRatio(true);
    view.setFitHeight(HEIGHT);
    view.setAccessibleText(words.say("desk.pieces.photo", photo.name()));
    Button remove = new Button(words.say("desk.pieces.remove-photo"));
    remove.getStyleClass().add("quiet");
    remove.setAccessibleText(words.say("desk.pieces.remove", photo.name()));
    remove.setOnAction(pressed -> model.remove(photo));
    return new VBox(view, remove);
  }
}
