package walebook.lesson;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** The fixture folder of broken packs: each a good pack with one thing made wrong. */
public final class BrokenPacks {
  private static final Path FOLDER = Path.of("src/test/resources/walebook/lesson/broken");

  /** A pack with one mistake, and everything that is to be said of it; nothing where it is good. */
  public record Case(String name, PackSource pack, List<String> says) {
    @Override
    public String toString() {
      return name;
    }
  }

  private BrokenPacks() {}

  public static List<Case> all() {
    List<Case> cases = new ArrayList<>();
    try (InputStream in = Files.newInputStream(FOLDER.resolve("index.yaml"))) {
      for (Object each :
          (List<?>) new Load(LoadSettings.builder().build()).loadFromInputStream(in)) {
        cases.add(broken((Map<?, ?>) each));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return cases;
  }

  /** A good pack of the folder. */
  public static Map<String, byte[]> base(String name) throws IOException {
    Map<String, byte[]> files = new TreeMap<>();
    try (Stream<Path> all = Files.list(FOLDER.resolve(name))) {
      for (Path each : all.toList()) {
        files.put(String.valueOf(each.getFileName()), Files.readAllBytes(each));
      }
    }
    return files;
  }

  private static Case broken(Map<?, ?> entry) throws IOException {
    String base = text(entry, "base");
    Map<String, byte[]> files = base(base);
    if (entry.containsKey("in")) {
      String file = text(entry, "in");
      String good = text(files, file);
      String was = text(entry, "was");
      int at = good.indexOf(was);
      if (at < 0) {
        throw new IllegalStateException(file + " of " + base + " has no " + was);
      }
      String bent = good.substring(0, at) + text(entry, "now") + good.substring(at + was.length());
      files.put(file, bent.getBytes(StandardCharsets.UTF_8));
    } else if (entry.containsKey("drop")) {
      files.remove(text(entry, "drop"));
    } else if (entry.containsKey("mark")) {
      String file = text(entry, "mark");
      files.put(file, ("\uFEFF" + text(files, file)).getBytes(StandardCharsets.UTF_8));
    } else if (entry.containsKey("crlf")) {
      String file = text(entry, "crlf");
      files.put(file, text(files, file).replace("\n", "\r\n").getBytes(StandardCharsets.UTF_8));
    } else if (entry.containsKey("from")) {
      Path from = FOLDER.resolve("files").resolve(text(entry, "from"));
      files.put(text(entry, "put"), Files.readAllBytes(from));
    } else {
      int times = entry.get("times") instanceof Integer many ? many : 1;
      String text = text(entry, "text").repeat(times);
      files.put(text(entry, "put"), text.getBytes(StandardCharsets.UTF_8));
    }
    List<String> says =
        ((List<?>) Objects.requireNonNull(entry.get("says")))
            .stream().map(String::valueOf).toList();
    return new Case(text(entry, "name"), new PackBytes(base, files), says);
  }

  private static String text(Map<?, ?> entry, String key) {
    Object value = entry.get(key);
    return value instanceof byte[] bytes
        ? new String(bytes, StandardCharsets.UTF_8)
        : String.valueOf(value);
  }
}
