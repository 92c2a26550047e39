package walebook.desk.common;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.quantity.Measured;
import walebook.quantity.Show;
import walebook.words.Words;
import walebook.working.Caution;
import walebook.working.Step;
import walebook.working.Verdict;
import walebook.working.Working;

/**
 * What stands on the board at one time.
 *
 * @param says what this line works out, or the answer as a sentence
 * @param formula in letters; empty when there is none
 * @param numbers the same in numbers; empty when there are none
 * @param verdict on the last line, where one was asked for
 */
public record BoardLine(String says, String formula, String numbers, @Nullable Verdict verdict) {

  /** A working's lines behind its title: each step, the answer, what can hurt someone. */
  public static List<BoardLine> of(Working working, Words words) {
    List<BoardLine> all = new ArrayList<>();
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
    return List.copyOf(all);
  }
}
