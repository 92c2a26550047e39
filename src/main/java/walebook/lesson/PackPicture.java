package walebook.lesson;

import java.util.Arrays;

/** A picture of a pack: its file name and its bytes, which never change. */
public final class PackPicture {
  private final String fileName;
  private final byte[] content;

  public PackPicture(String fileName, byte[] content) {
    this.fileName = fileName;
    this.content = content.clone();
  }

  public String fileName() {
    return fileName;
  }

  /** A copy of the file's bytes. */
  public byte[] content() {
    return content.clone();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof PackPicture that
        && fileName.equals(that.fileName)
        && Arrays.equals(content, that.content);
  }

  @Override
  public int hashCode() {
    return 31 * fileName.hashCode() + Arrays.hashCode(content);
  }

  @Override
  public String toString() {
    return fileName + " (" + content.length + " bytes)";
  }
}
