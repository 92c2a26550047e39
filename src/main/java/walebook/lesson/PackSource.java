package walebook.lesson;

import java.io.IOException;
import java.util.SortedMap;

/** Where a pack's files come from: a folder, the program itself, bytes in hand. */
public interface PackSource {
  /** Name of the folder. */
  String name();

  /**
   * File names directly in the folder with their sizes in bytes, sorted by name.
   *
   * @throws IOException when the folder can't be listed
   */
  SortedMap<String, Long> files() throws IOException;

  /**
   * The bytes of one listed file.
   *
   * @param most how many bytes at most; a longer file is cut there, with one byte more to show it
   * @throws IOException when the file can't be read
   */
  byte[] read(String file, long most) throws IOException;
}
