package walebook.lesson;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** A pack among the program's own resources. */
record PackInProgram(String name, List<String> index) implements PackSource {
  private static final String ROOT = "/walebook/lesson-packs/";

  PackInProgram {
    index = List.copyOf(index);
  }

  @Override
  public SortedMap<String, Long> files() throws IOException {
    TreeMap<String, Long> sizes = new TreeMap<>();
    for (String file : index) {
      sizes.put(file, (long) read(file, PackLimits.PICTURE_BYTES).length);
    }
    return sizes;
  }

  @Override
  public byte[] read(String file, long most) throws IOException {
    try (InputStream in =
        index.contains(file)
            ? PackInProgram.class.getResourceAsStream(ROOT + name + "/" + file)
            : null) {
      if (in == null) {
        throw new FileNotFoundException(name + "/" + file);
      }
      return in.readNBytes((int) Math.min(most + 1, Integer.MAX_VALUE));
    }
  }
}
