package walebook.lesson;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Writes a pack as a zip that holds its folder. The same content makes the same bytes. */
public final class WriteZip {
  /** The first moment a zip can tell; that of the writing would make every zip another. */
  private static final LocalDateTime ALWAYS = LocalDateTime.of(1980, 1, 1, 0, 0);

  private WriteZip() {}

  /**
   * Writes the zip; the stream stays open.
   *
   * @param name of the pack, which is its folder's
   */
  public static void write(String name, PackFiles files, OutputStream out) throws IOException {
    ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8);
    for (Map.Entry<String, byte[]> each : files.byName().entrySet()) {
      ZipEntry entry = new ZipEntry(name + "/" + each.getKey());
      entry.setTimeLocal(ALWAYS);
      zip.putNextEntry(entry);
      zip.write(each.getValue());
      zip.closeEntry();
    }
    zip.finish();
  }
}
