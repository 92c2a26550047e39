package walebook.desk.lessons;

import java.io.ByteArrayInputStream;
import javafx.geometry.Orientation;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.layout.Region;
import walebook.lesson.Block;
import walebook.lesson.PackFiles;
import walebook.lesson.PackPicture;

/** A picture of a lesson as large as its room allows. */
final class TeachPicture extends Region {
  private static final double MOST_ENLARGED = 1.6;

  private final ImageView view = new ImageView();

  TeachPicture(PackFiles files, Block.Picture picture) {
    getStyleClass().add("teach-picture");
    for (PackPicture each : files.pictures()) {
      if (each.fileName().equals(picture.shownFile())) {
        view.setImage(new Image(new ByteArrayInputStream(each.content())));
      }
    }
    view.setPreserveRatio(true);
    view.setSmooth(true);
    view.setAccessibleText(picture.alt());
    setMinSize(0, 0);
    getChildren().setAll(view);
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computePrefHeight(double width) {
    Image image = view.getImage();
    return image == null || width <= 0
        ? 0
        : Math.min(width / image.getWidth(), MOST_ENLARGED) * image.getHeight();
  }

  @Override
  protected void layoutChildren() {
    Image image = view.getImage();
    if (image == null) {
      return;
    }
    double wide = getWidth() - snappedLeftInset() - snappedRightInset();
    double high = getHeight() - snappedTopInset() - snappedBottomInset();
    double scale = Math.min(wide / image.getWidth(), high / image.getHeight());
    scale = Math.max(0, Math.min(MOST_ENLARGED, scale));
    view.setFitWidth(scale * image.getWidth());
    view.setFitHeight(scale * image.getHeight());
    view.relocate(
        snappedLeftInset() + (wide - view.getFitWidth()) / 2,
        snappedTopInset() + (high - view.getFitHeight()) / 2);
  }
}
