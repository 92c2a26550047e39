package walebook.lesson;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A pack's files as they were read, for keeping beside what was taught.
 *
 * @param contentHash SHA-256 over names and contents, 64 hexadecimal digits
 * @param pictures every picture in the folder, by name
 */
public record PackFiles(
    String contentHash, String packYaml, String lessonMd, List<PackPicture> pictures) {
  public PackFiles {
    if (contentHash.length() != 64) {
      throw new IllegalArgumentException("contentHash must have 64 digits: " + contentHash);
    }
    pictures = List.copyOf(pictures);
  }

  /** Every file's content by its name in the folder. */
  public SortedMap<String, byte[]> byName() {
    SortedMap<String, byte[]> files = new TreeMap<>();
    pictures.forEach(each -> files.put(each.fileName(), each.content()));
    files.put(ReadPack.YAML, packYaml.getBytes(StandardCharsets.UTF_8));
    files.put(ReadPack.TEXT, lessonMd.getBytes(StandardCharsets.UTF_8));
    return files;
  }
}
