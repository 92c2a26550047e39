package walebook;

import java.nio.file.Path;
import java.util.Locale;
import java.util.logging.Level;
import java.util.logging.Logger;
import walebook.command.RunCommand;
import walebook.command.Terminal;
import walebook.command.WithoutScreen;

/**
 * The program's beginning: with words behind it the command line, without any the window; where
 * there is no screen, the window's job in text.
 */
public final class Walebook {
  // Held on to, since loggers that nobody holds forget their level.
  private static final Logger DATABASE = Logger.getLogger("org.jooq");

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
    if (args.length > 0) {
      return RunCommand.run(Terminal.ofProcess(), args);
    }
    if (hasScreen() && openWindow(args)) {
      return 0;
    }
    return WithoutScreen.run(Terminal.ofProcess(), Path.of("demo"));
  }

  /** Opens the window and waits until it is closed; false when that can't be done here. */
  static boolean openWindow(String[] args) {
    return false;
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
