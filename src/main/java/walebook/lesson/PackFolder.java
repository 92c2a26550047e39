package walebook.lesson;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * A pack in a folder on disk. Only plain files directly inside count; links are not followed, so
 * that a pack can't show what lies elsewhere.
 */
public final class PackFolder implements PackSource {
  private final Path folder;

  public PackFolder(Path folder) {
    this.folder = folder.toAbsolutePath().normalize();
  }

  @Override
  public String name() {
    Path last = folder.getFileName();
    return last == null ? "" : last.toString();
  }

  @Override
  public SortedMap<String, Long> files() throws IOException {
    if (!Files.isDirectory(folder)) {
      throw new NotDirectoryException(folder.toString());
    }
    TreeMap<String, Long> sizes = new TreeMap<>();
    try (Stream<Path> all = Files.list(folder)) {
      for (Path each : all.filter(PackFolder::counts).limit(PackLimits.FILES + 1L).toList()) {
        sizes.put(String.valueOf(each.getFileName()), Files.size(each));
      }
    }
    return sizes;
  }

  @Override
  public byte[] read(String file, long most) throws IOException {
    Path path = folder.resolve(file);
    if (!folder.equals(path.getParent()) || !counts(path)) {
      throw new IOException(file);
    }
    try (InputStream in = Files.newInputStream(path, LinkOption.NOFOLLOW_LINKS)) {
      return in.readNBytes((int) Math.min(most + 1, Integer.MAX_VALUE));
    }
  }

  private static boolean counts(Path path) {
    return Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS)
        && !String.valueOf(path.getFileName()).startsWith(".");
  }
}
