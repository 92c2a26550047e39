package walebook;

import java.nio.file.Path;
import java.util.Locale;
import java.util.logging.Level;
import java.util.logging.Logger;
import walebook.command.RunCommand;
import walebook.command.Terminal;
import walebook.command.WithoutScreen;
import walebook.desk.start.OpenWindow;

/**
 * The program's beginning: with words behind it the command line, without any the window; where
 * there is no screen, the window's job in text.
 */
public final class Walebook {
  // Held on to, since loggers that nobody holds forget their level.
  private static final Logger DATABASE = Logger.getLogger("org.jooq");

  private static final String BOOK = ".walebook";

  private Walebook() {}

  public static void main(String[] args) {
    System.setProperty("org.jooq.no-logo", "true");
    System.setProperty("org.jooq.no-tips", "true");
    DATABASE.setLevel(Level.WARNING);
    int exit = run(args);
    if (exit != 0 || args.length > 0) {
      System.exit(exit);
    }
  }

  private static int run(String[] args) {
    if (!isForWindow(args)) {
      return RunCommand.run(Terminal.ofProcess(), args);
    }
    if (hasScreen() && OpenWindow.open(args)) {
      return 0;
    }
    boolean ownBook = args.length == 1 && args[0].endsWith(BOOK);
    return ownBook
        ? RunCommand.run(Terminal.ofProcess(), "book", "show", "--book", args[0])
        : WithoutScreen.run(Terminal.ofProcess(), Path.of("demo"));
  }

  /** Nothing, the one word demo, or a book's file: all of them ask for the window. */
  private static boolean isForWindow(String[] args) {
    return args.length == 0
        || (args.length == 1 && (args[0].equals("demo") || args[0].endsWith(BOOK)));
  }

  /** On Linux and its like a screen is named by the environment; elsewhere there is one. */
  private static boolean hasScreen() {
    String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
    boolean named = system.contains("win") || system.contains("mac");
    return named || isSet("DISPLAY") || isSet("WAYLAND_DISPLAY");
  }

  private static boolean isSet(String name) {
    String value = System.getenv(name);
    return value != null && !value.isBlank();
  }
}
