package walebook.desk.decide;

import org.jspecify.annotations.Nullable;
import walebook.working.Verdict;

/**
 * What stands on the board at one time.
 *
 * @param says what this line works out, or the answer as a sentence
 * @param formula in letters; empty when there is none
 * @param numbers the same in numbers; empty when there are none
 * @param verdict on the last line, where one was asked for
 */
public record BoardLine(String says, String formula, String numbers, @Nullable Verdict verdict) {}
