package walebook.desk.classroom;

import java.util.Set;
import javafx.scene.Node;
import org.jspecify.annotations.Nullable;

/** One part of the place. */
interface PartView {
  /** What stands in it. */
  Node node();

  /** Which filters bear on it. */
  Set<FiltersView.Ask> asks();

  /** The question that it asks of the class; null when it asks none that takes long. */
  @Nullable Asking<?> asking();

  /** Says whether anybody looks. */
  void shown(boolean now);

  /** Puts it on the board, without names; nothing where there is nothing to show. */
  void showLarge(Large board);

  /** The board. */
  interface Large {
    /** What was found, a screen at a time; says so where that is nothing. */
    void show(ClassBoard.Shown shown);
  }
}
