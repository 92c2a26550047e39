package walebook.desk.start;

import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import walebook.desk.common.Remember;
import walebook.desk.look.TextSize;
import walebook.desk.look.Theme;

/**
 * What the window keeps from one start to the next on this machine: theme, text size, books opened
 * last. Written to a file beside the old one and moved into its place, so that it is never half; a
 * file that can't be read counts as empty, since nothing in it is worth a fault.
 */
public final class KeptSettings implements Remember {
  private static final int RECENT = 6;

  private final Path file;
  private final Properties kept = new Properties();

  private KeptSettings(Path file) {
    this.file = file;
  }

  /** Reads the settings of this user. */
  public static KeptSettings ofUser() {
    String home = System.getProperty("user.home", ".");
    return at(Path.of(home, ".walebook", "settings.properties"));
  }

  /** Reads settings from a file that may be missing. */
  public static KeptSettings at(Path file) {
    KeptSettings settings = new KeptSettings(file);
    if (Files.isRegularFile(file)) {
      try (Reader in = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
        settings.kept.load(in);
      } catch (IOException | IllegalArgumentException e) {
        settings.kept.clear();
      }
    }
    return settings;
  }

  public Theme theme() {
    return "dark".equals(kept.getProperty("theme")) ? Theme.DARK : Theme.LIGHT;
  }

  public TextSize textSize() {
    try {
      return new TextSize(Integer.parseInt(kept.getProperty("text-size", "100")));
    } catch (IllegalArgumentException e) {
      return TextSize.USUAL;
    }
  }

  /** Books opened last that are still there, newest first. */
  public List<Path> recentBooks() {
    List<Path> books = new ArrayList<>();
    for (int i = 0; i < RECENT; i++) {
      String path = kept.getProperty("book." + i);
      if (path != null && Files.isRegularFile(Path.of(path))) {
        books.add(Path.of(path));
      }
    }
    return books;
  }

  public synchronized void keep(Theme theme, TextSize textSize) {
    kept.setProperty("theme", theme.name().toLowerCase(Locale.ROOT));
    kept.setProperty("text-size", String.valueOf(textSize.percent()));
    write();
  }

  /** Puts a book first among those opened last. */
  public synchronized void opened(Path book) {
    List<Path> books = new ArrayList<>(recentBooks());
    Path whole = book.toAbsolutePath();
    books.remove(whole);
    books.add(0, whole);
    for (int i = 0; i < RECENT; i++) {
      if (i < books.size()) {
        kept.setProperty("book." + i, books.get(i).toString());
      } else {
        kept.remove("book." + i);
      }
    }
    write();
  }

  @Override
  public synchronized String recall(String name) {
    return kept.getProperty("place." + name, "");
  }

  @Override
  public synchronized void keep(String name, String value) {
    if (!value.equals(kept.setProperty("place." + name, value))) {
      write();
    }
  }

  private synchronized void write() {
    try {
      Path folder = file.toAbsolutePath().getParent();
      if (folder != null) {
        Files.createDirectories(folder);
      }
      Path fresh = file.resolveSibling(file.getFileName() + ".new");
      try (Writer out = Files.newBufferedWriter(fresh, StandardCharsets.UTF_8)) {
        kept.store(out, null);
      }
      Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException e) {
      // A home that can't be written costs comfort, not work: go on without.
      System.getLogger(KeptSettings.class.getName())
          .log(System.Logger.Level.INFO, "settings not kept", e);
    }
  }
}
