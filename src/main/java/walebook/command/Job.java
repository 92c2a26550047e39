package walebook.command;

import java.util.ArrayList;
import java.util.List;

/**
 * One command: how it is called, what it takes, what it does.
 *
 * @param words such as {@code piece log}
 * @param says key of the sentence that explains it
 * @param operands words that follow without a hyphen, all of them needed
 */
record Job(
    String words,
    String says,
    List<Option> options,
    List<Option> operands,
    boolean json,
    Work work) {

  static final Option BOOK = Option.needed("book", "FILE", "command.option.book");
  static final Option CLASS = Option.of("class", "NAME", "command.option.class");
  static final Option LESSON = Option.of("lesson", "NUMBER", "command.option.lesson");
  static final Option STUDENT = Option.of("student", "NAME", "command.option.student");
  static final Option SURE = Option.flag("sure", "command.option.sure");

  /** What a command does with what was typed. */
  interface Work {
    /** Does it; a refusal is thrown. */
    Exit run(Typed typed, Terminal terminal);
  }

  Job {
    options = List.copyOf(options);
    operands = List.copyOf(operands);
  }

  /** A command that shows something, as text or with {@code --json}. */
  static Job shows(String words, String says, Work work, Option... options) {
    return new Job(words, says, List.of(options), List.of(), true, work);
  }

  /** The same with a word that may follow. */
  Job mayFollow(String name, String explains) {
    List<Option> more = new ArrayList<>(operands);
    more.add(Option.of(name, name, explains));
    return new Job(words, says, options, more, json, work);
  }

  /** The same with a word that must follow. */
  Job operand(String name, String explains) {
    List<Option> more = new ArrayList<>(operands);
    more.add(Option.needed(name, name, explains));
    return new Job(words, says, options, more, json, work);
  }
}
