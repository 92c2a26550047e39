package walebook.desk.classroom;

import java.util.List;
import javafx.scene.image.Image;
import org.jspecify.annotations.Nullable;
import walebook.drawing.Drawing;

/**
 * What the board shows of one matter.
 *
 * @param says the sentences, most important first
 * @param plot null when there is none to draw
 * @param note how the plot reads; empty where it needs no telling
 * @param photos of pieces, each with what is said of it
 */
record Finding(List<String> says, @Nullable Drawing plot, String note, List<Photo> photos) {
  /** A piece's photo. */
  record Photo(String says, Image image) {}

  Finding {
    says = List.copyOf(says);
    photos = List.copyOf(photos);
  }

  /** Without photos. */
  Finding(List<String> says, @Nullable Drawing plot, String note) {
    this(says, plot, note, List.of());
  }
}
