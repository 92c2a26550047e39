package walebook.lesson;

import java.util.List;

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
}
