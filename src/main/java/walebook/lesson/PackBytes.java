package walebook.lesson;

import java.io.FileNotFoundException;
import java.util.Arrays;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** A pack held as bytes, such as one being written or taken out of an archive. */
public final class PackBytes implements PackSource {
  private final String name;
  private final TreeMap<String, byte[]> contents = new TreeMap<>();

  public PackBytes(String name, Map<String, byte[]> files) {
    this.name = name;
    files.forEach((file, bytes) -> contents.put(file, bytes.clone()));
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public SortedMap<String, Long> files() {
    TreeMap<String, Long> sizes = new TreeMap<>();
    contents.forEach((file, bytes) -> sizes.put(file, (long) bytes.length));
    return sizes;
  }

  @Override
  public byte[] read(String file, long most) throws FileNotFoundException {
    byte[] bytes = contents.get(file);
    if (bytes == null) {
      throw new FileNotFoundException(file);
    }
    return Arrays.copyOf(bytes, (int) Math.min(bytes.length, most + 1));
  }
}
