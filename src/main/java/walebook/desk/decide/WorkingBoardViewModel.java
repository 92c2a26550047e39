package walebook.desk.decide;

import java.util.ArrayList;
import java.util.List;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import walebook.quantity.Measured;
import walebook.quantity.Show;
import walebook.words.Words;
import walebook.working.Caution;
import walebook.working.Step;
import walebook.working.Working;

/** A working on the board, one line at a time: the question, each step, the answer, cautions. */
public final class WorkingBoardViewModel {
  private final List<BoardLine> lines;
  private final ReadOnlyIntegerWrapper place = new ReadOnlyIntegerWrapper(this, "place", 0);

  public WorkingBoardViewModel(Working working, Words words) {
    List<BoardLine> all = new ArrayList<>();
    all.add(new BoardLine(words.say(working.title()), "", "", null));
    for (Step step : working.steps()) {
      all.add(new BoardLine(words.say(step.says()), step.formula(), step.numbers(), null));
    }
    Measured result = working.result();
    String value = result == null ? "" : Show.measured(result);
    all.add(new BoardLine(words.say(working.says()), "", value, working.verdict()));
    for (Caution caution : working.cautions()) {
      String says = words.say("desk.common.caution", words.say(caution.says()));
      all.add(new BoardLine(says, "", "", null));
    }
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
