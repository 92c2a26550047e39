package walebook.command;

import java.io.Serial;
import java.util.List;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;

/** Ends a command with its problems; caught where commands are run and nowhere else. */
final class Refused extends RuntimeException {
  @Serial private static final long serialVersionUID = 1;
  private final transient List<Problem> problems;
  private final Exit exit;

  Refused(Exit exit, List<Problem> problems) {
    super(String.valueOf(problems));
    this.exit = exit;
    this.problems = List.copyOf(problems);
  }

  static Refused field(String field, String code, String found, String wanted) {
    return new Refused(
        Exit.REFUSED, List.of(Problem.refuse(code, Place.field(field), found, wanted)));
  }

  /** The value of a good answer. */
  static <T> T unless(Answer<T> answer) {
    return unless(answer, Exit.REFUSED);
  }

  static <T> T unless(Answer<T> answer, Exit exit) {
    if (!answer.isGood()) {
      throw new Refused(exit, answer.problems());
    }
    return answer.value();
  }

  List<Problem> problems() {
    return problems;
  }

  Exit exit() {
    return exit;
  }
}
