package walebook.drawing;

import java.util.List;
import java.util.Objects;
import walebook.working.Message;

/**
 * A finished picture.
 *
 * @param width in picture units: pixels at a text size of 100 %
 * @param height as width
 * @param shapes from the back to the front
 * @param says what it shows, for those who do not see it
 */
public record Picture(double width, double height, List<Shape> shapes, Message says) {
  public Picture {
    Objects.requireNonNull(says, "says");
    shapes = List.copyOf(shapes);
    if (!(width > 0 && height > 0 && Double.isFinite(width + height))) {
      throw new IllegalArgumentException("width and height must be above 0");
    }
  }
}
