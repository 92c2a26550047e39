package walebook.desk.common;

import javafx.scene.SnapshotParameters;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;
import org.jspecify.annotations.Nullable;
import walebook.drawing.Palette;
import walebook.drawing.Picture;
import walebook.drawing.Role;

/** Paints pictures on canvases and makes images of them. */
final class PictureImage {
  private PictureImage() {}

  static void paint(Canvas canvas, Picture picture, Palette palette, double scale) {
    canvas.setWidth(Math.ceil(picture.width() * scale));
    canvas.setHeight(Math.ceil(picture.height() * scale));
    GraphicsContext on = canvas.getGraphicsContext2D();
    on.setTransform(1, 0, 0, 1, 0, 0);
    on.clearRect(0, 0, canvas.getWidth(), canvas.getHeight());
    on.scale(scale, scale);
    Pencil pencil = new Pencil(on, palette);
    picture.shapes().forEach(pencil::draw);
  }

  static WritableImage of(@Nullable Picture picture, Palette palette, double scale) {
    Canvas canvas = new Canvas(1, 1);
    if (picture != null) {
      paint(canvas, picture, palette, scale);
    }
    SnapshotParameters on = new SnapshotParameters();
    on.setFill(Color.web(palette.colour(Role.CARD)));
    return canvas.snapshot(on, null);
  }
}
