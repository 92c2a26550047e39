package walebook.lesson;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;

/** A built-in pack as bytes in hand, for tests that break it. */
final class GoodPack {
  static final String NAME = "seam-that-stretches";

  private static final Map<String, byte[]> FILES = Map.copyOf(load());

  private GoodPack() {}

  static Map<String, byte[]> files() {
    Map<String, byte[]> files = new TreeMap<>();
    FILES.forEach((file, content) -> files.put(file, content.clone()));
    return files;
  }

  private static Map<String, byte[]> load() {
    PackSource seam = Packs.source(NAME);
    Map<String, byte[]> files = new TreeMap<>();
    try {
      for (String file : seam.files().keySet()) {
        files.put(file, seam.read(file, PackLimits.PICTURE_BYTES));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return files;
  }

  static String text(String file) {
    return new String(files().getOrDefault(file, new byte[0]), StandardCharsets.UTF_8);
  }

  /** The pack with one file's text put in place of its own. */
  static PackSource with(String file, String text) {
    return with(file, text.getBytes(StandardCharsets.UTF_8));
  }

  static PackSource with(String file, byte[] content) {
    Map<String, byte[]> files = files();
    files.put(file, content);
    return new PackBytes(NAME, files);
  }

  static PackSource without(String file) {
    Map<String, byte[]> files = files();
    files.remove(file);
    return new PackBytes(NAME, files);
  }
}
