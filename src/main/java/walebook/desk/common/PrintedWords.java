package walebook.desk.common;

import java.util.stream.Collectors;
import walebook.act.print.Printed;
import walebook.problem.Answer;
import walebook.words.Words;

/** How a printing went, in words. */
public final class PrintedWords {
  private PrintedWords() {}

  /** Where it was printed to and what is to be said of it, or why it was not. */
  public static String of(Words words, Answer<Printed> answer) {
    String remarks = answer.problems().stream().map(words::say).collect(Collectors.joining(" "));
    if (!answer.isGood()) {
      return remarks;
    }
    Printed printed = answer.value();
    String where = words.say("desk.common.print.printed", printed.file(), printed.pages());
    return (where + " " + remarks).strip();
  }
}
