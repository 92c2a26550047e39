package walebook.command;

import java.util.ArrayList;
import java.util.List;
import walebook.quantity.Show;
import walebook.words.Words;
import walebook.working.Step;
import walebook.working.Working;

/** A working as a teacher would write it on the board. */
final class WorkingText {
  private WorkingText() {}

  static String of(Working working, Words words) {
    List<String> lines = new ArrayList<>();
    lines.add(words.say(working.title()));
    for (Step each : working.steps()) {
      lines.add("  " + words.say(each.says()));
      lines.add("    " + each.formula());
      lines.add("    " + each.numbers());
    }
    if (working.result() != null) {
      lines.add("  = " + Show.measured(working.result()));
    }
    lines.add(words.say(working.says()));
    working.assumptions().forEach(each -> lines.add("  · " + words.say(each)));
    working.cautions().forEach(each -> lines.add("  ! " + words.say(each.says())));
    working.sources().forEach(each -> lines.add("  [" + each.citation() + "]"));
    return String.join(System.lineSeparator(), lines);
  }
}
