package walebook.desk.classroom;

import javafx.scene.layout.Region;
import javafx.scene.transform.Scale;
import walebook.desk.common.PicturePane;

/** A picture made smaller where it would be higher than the room that is left for it. */
final class FittedPicture extends Region {
  private static final int PASSES = 4;

  private final PicturePane picture;
  private final Scale scale = new Scale(1, 1);

  FittedPicture(PicturePane picture) {
    this.picture = picture;
    picture.getTransforms().add(scale);
    getChildren().add(picture);
  }

  @Override
  protected double computeMinWidth(double height) {
    return 0;
  }

  @Override
  protected double computeMinHeight(double width) {
    return 0;
  }

  @Override
  protected double computePrefHeight(double width) {
    return width > 0 ? picture.prefHeight(width) : 0;
  }

  @Override
  protected void layoutChildren() {
    double wide = getWidth();
    double high = getHeight();
    if (wide <= 0 || high <= 0) {
      return;
    }
    double times = Math.min(1, wide / Math.max(1, picture.minWidth(-1)));
    // A wider picture is no higher, yet its lines may wrap otherwise: the size settles soon.
    for (int pass = 0; pass < PASSES; pass++) {
      times = Math.min(times, high / Math.max(1, picture.prefHeight(wide / times)));
    }
    scale.setX(times);
    scale.setY(times);
    picture.resizeRelocate(0, 0, wide / times, picture.prefHeight(wide / times));
  }
}
