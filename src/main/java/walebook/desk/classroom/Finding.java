package walebook.desk.classroom;

import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.drawing.Drawing;

/**
 * What the board shows of one matter.
 *
 * @param says the sentences, most important first
 * @param plot null when there is none to draw
 * @param note how the plot reads; empty where it needs no telling
 */
record Finding(List<String> says, @Nullable Drawing plot, String note) {
  Finding {
    says = List.copyOf(says);
  }
}
