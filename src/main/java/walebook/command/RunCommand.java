package walebook.command;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import walebook.act.book.RescueBook;
import walebook.book.BookTrouble;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.words.Words;

/** Runs one command of the command line and says by a number how it went. */
public final class RunCommand {
  private final Terminal terminal;
  private final CommandLine commands;

  private RunCommand(Terminal terminal) {
    this.terminal = terminal;
    this.commands = new CommandTree(terminal.words()).of(Jobs.all());
  }

  /**
   * Runs it.
   *
   * @param args the command's words, then its options
   * @return 0 done, 1 the input was refused, 2 wrongly written, 3 the book can't be opened or saved
   */
  public static int run(Terminal terminal, String... args) {
    return new RunCommand(terminal).run(args).code();
  }

  private Exit run(String... args) {
    ParseResult parsed;
    try {
      parsed = commands.parseArgs(listing(pairs(args)));
    } catch (ParameterException e) {
      terminal.err().println(e.getMessage());
      e.getCommandLine().usage(terminal.err());
      return Exit.USAGE;
    }
    ParseResult last = parsed;
    boolean help = last.isUsageHelpRequested();
    while (last.hasSubcommand()) {
      last = last.subcommand();
      help |= last.isUsageHelpRequested();
    }
    CommandSpec spec = last.commandSpec();
    if (help) {
      spec.commandLine().usage(terminal.out());
      return Exit.DONE;
    }
    if (!(spec.userObject() instanceof Job job)) {
      spec.commandLine().usage(terminal.err());
      return Exit.USAGE;
    }
    return run(job, new Typed(last));
  }

  /** {@code odd} by itself lists, as the other comparisons do. */
  private static String[] listing(String... args) {
    boolean alone = args.length > 1 && args[0].equals("odd") && args[1].startsWith("--");
    return alone && !args[1].equals("--help")
        ? Stream.concat(Stream.of("odd", "list"), Arrays.stream(args).skip(1))
            .toArray(String[]::new)
        : args;
  }

  /** A calculation's inputs may also be written as on a record card: {@code body=90cm}. */
  private static String[] pairs(String... args) {
    boolean work = args.length > 0 && args[0].equals("work");
    return Arrays.stream(args)
        .map(each -> work && each.matches("[a-z][a-z0-9-]*=.*") ? "--" + each : each)
        .toArray(String[]::new);
  }

  private Exit run(Job job, Typed typed) {
    try {
      return job.work().run(typed, terminal);
    } catch (Refused e) {
      boolean sure = job.options().contains(Job.SURE);
      complain(terminal, job.json() && typed.has("json"), e.problems(), sure);
      if (e.exit() == Exit.NO_BOOK && !(job.json() && typed.has("json"))) {
        sayNext(typed.text("book", ""), e.problems());
      }
      return e.exit();
    } catch (BookTrouble e) {
      Problem problem =
          Problem.refuse(
              "book.trouble",
              new Place.Path(typed.text("book", "")),
              String.valueOf(e.getMessage()),
              e.code());
      complain(terminal, job.json() && typed.has("json"), List.of(problem), false);
      return Exit.NO_BOOK;
    }
  }

  /** What helps a damaged book: its backups first, since they are whole. */
  private void sayNext(String book, List<Problem> problems) {
    if (problems.stream().anyMatch(RescueBook::helps)) {
      terminal.err().println(terminal.say("command.say.damaged-next", book));
    }
  }

  /**
   * Each problem on a line of its own: where, what was found, what is wanted.
   *
   * @param sure whether the command can be told that what is unlikely is right
   */
  static void complain(Terminal terminal, boolean json, List<Problem> problems, boolean sure) {
    Words words = terminal.words();
    for (Problem each : problems) {
      terminal.err().println(json ? ShowProblem.json(each, words) : words.say(each));
    }
    if (sure && problems.stream().noneMatch(Problem::refuses)) {
      terminal.err().println(terminal.say("command.say.sure"));
    }
  }
}
