package walebook.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Takes a folder of a measurement away again. */
public final class Folders {
  private Folders() {}

  public static void delete(Path folder) throws IOException {
    List<Path> all;
    try (Stream<Path> walk = Files.walk(folder)) {
      all = walk.sorted(Comparator.reverseOrder()).toList();
    }
    for (Path each : all) {
      Files.deleteIfExists(each);
    }
  }
}
