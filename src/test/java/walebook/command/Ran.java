package walebook.command;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;
import java.util.function.ToIntFunction;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import walebook.book.Classroom;
import walebook.words.Words;

/**
 * One run of the command line, and what it left behind.
 *
 * @param exit the number it ended by
 * @param out what stood on standard output
 * @param err what stood on standard error
 */
record Ran(int exit, String out, String err) {
  private static final int CHANCE = 3;

  /** Runs the program with these words behind it. */
  static Ran of(String... args) {
    return typing("", args);
  }

  /** Runs it on a book. */
  static Ran on(Path book, String... args) {
    String[] all = Arrays.copyOf(args, args.length + 2);
    all[args.length] = "--book";
    all[args.length + 1] = book.toString();
    return of(all);
  }

  /** Runs it with something typed into it. */
  static Ran typing(String in, String... args) {
    return at(in, terminal -> RunCommand.run(terminal, args));
  }

  /** Runs what answers at a terminal by the number it ends by. */
  static Ran at(String in, ToIntFunction<Terminal> run) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Terminal terminal =
        new Terminal(
            new BufferedReader(new StringReader(in)),
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8),
            Words.english(),
            Classroom.CLOCK,
            new Random(CHANCE));
    int exit = run.applyAsInt(terminal);
    return new Ran(
        exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  JsonNode json() {
    return JsonMapper.shared().readTree(out);
  }
}
