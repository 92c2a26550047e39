package walebook.desk.decide;

import java.util.ArrayList;
import java.util.List;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import walebook.desk.common.BoardLine;
import walebook.words.Words;
import walebook.working.Working;

/** A working on the board, one line at a time: the question, each step, the answer, cautions. */
public final class WorkingBoardViewModel {
  private final List<BoardLine> lines;
  private final ReadOnlyIntegerWrapper place = new ReadOnlyIntegerWrapper(this, "place", 0);

  public WorkingBoardViewModel(Working working, Words words) {
    List<BoardLine> all = new ArrayList<>();
    all.add(new BoardLine(words.say(working.title()), "", "", null));
    all.addAll(BoardLine.of(working, words));
    lines = List.copyOf(all);
  }

  /** All lines, in order. */
  public List<BoardLine> lines() {
    return lines;
  }

  /** Which line stands on the board, from 0. */
  public ReadOnlyIntegerProperty placeProperty() {
    return place.getReadOnlyProperty();
  }

  /** The line that stands on the board. */
  public BoardLine line() {
    return lines.get(place.get());
  }

  /** On to the next line; the last one stays. */
  public void next() {
    place.set(Math.min(lines.size() - 1, place.get() + 1));
  }

  /** Back by one line; the first one stays. */
  public void back() {
    place.set(Math.max(0, place.get() - 1));
  }
}
