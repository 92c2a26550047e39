package walebook.command;

import java.nio.file.Files;
import java.nio.file.Path;
import walebook.act.book.MakeDemoBook;

/** The window's job in text, for a machine without a screen: the demo class from book to table. */
public final class WithoutScreen {
  private WithoutScreen() {}

  /**
   * Makes the demo book where there is none yet and shows what its class found.
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
