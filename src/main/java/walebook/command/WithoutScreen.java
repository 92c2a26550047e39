package walebook.command;

import java.nio.file.Files;
import java.nio.file.Path;
import walebook.act.book.MakeDemoBook;

/** The window's job in text, for a machine without a screen: the demo class from book to table. */
public final class WithoutScreen {
  /** The file name of the demo class's workbook. */
  static final String WORKBOOK = "harbour-hall" + ExportJobs.ENDING;

  private WithoutScreen() {}

  /**
   * Makes the demo book where there is none yet and shows what its class found, then writes the
   * class's workbook beside it, in the place of one that is there.
   *
   * @return as {@link RunCommand#run}
   */
  public static int run(Terminal terminal, Path folder) {
    terminal.out().println(terminal.say("command.say.no-screen"));
    String book = folder.resolve(MakeDemoBook.FILE).toString();
    int made =
        Files.exists(Path.of(book))
            ? RunCommand.run(terminal, "book", "show", "--book", book)
            : RunCommand.run(terminal, "demo", "make", "--to", folder.toString());
    if (made != Exit.DONE.code()) {
      return made;
    }
    terminal.out().println();
    int compared = compare(terminal, book);
    if (compared != Exit.DONE.code()) {
      return compared;
    }
    terminal.out().println();
    String workbook = folder.resolve(WORKBOOK).toString();
    return RunCommand.run(terminal, "export", "--book", book, "--to", workbook, "--replace");
  }

  private static int compare(Terminal terminal, String book) {
    return RunCommand.run(
        terminal,
        "compare",
        "--book",
        book,
        "--by",
        "stitch",
        "--by",
        "dial-width",
        "--by",
        "dial-length");
  }
}
