package walebook.sheet.in;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.Enumeration;
import java.util.Locale;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import walebook.problem.Place;

/**
 * Unpacks every part of a workbook once and throws it away, counting: what a part claims of its
 * size may be a lie, so the bytes themselves are counted before anything is held in memory.
 */
final class GuardZip {
  private static final int BUFFER = 1 << 16;

  private GuardZip() {}

  /** Refuses what is too much, too many, or no workbook. */
  static void check(Path file) throws IOException, Stopped {
    Place place = new Place.Path(file.toString());
    try (ZipFile zip = new ZipFile(file.toFile())) {
      if (zip.size() > InLimits.PARTS) {
        throw new Stopped("in.too-many-parts", place, String.valueOf(zip.size()), "");
      }
      if (zip.getEntry("mimetype") != null && zip.getEntry("content.xml") != null) {
        throw new Stopped("in.open-document", place, "", "");
      }
      if (zip.getEntry("[Content_Types].xml") == null) {
        throw new Stopped("in.no-workbook", place, "", "");
      }
      long all = 0;
      byte[] buffer = new byte[BUFFER];
      for (Enumeration<? extends ZipEntry> each = zip.entries(); each.hasMoreElements(); ) {
        ZipEntry part = each.nextElement();
        all += unpacked(zip, part, buffer, InLimits.UNPACKED_BYTES - all, place);
      }
    }
  }

  private static long unpacked(ZipFile zip, ZipEntry part, byte[] buffer, long left, Place place)
      throws IOException, Stopped {
    long most = Math.min(left, most(part.getName()));
    long bytes = 0;
    try (InputStream in = zip.getInputStream(part)) {
      for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
        bytes += n;
        if (bytes > most) {
          throw new Stopped("in.unpacks-too-large", place, part.getName(), "");
        }
      }
    }
    return bytes;
  }

  private static long most(String name) {
    String lower = name.toLowerCase(Locale.ROOT);
    if (lower.endsWith("sharedstrings.xml")) {
      return InLimits.STRINGS_BYTES;
    }
    boolean held =
        lower.endsWith(".rels")
            || lower.endsWith("styles.xml")
            || lower.endsWith("workbook.xml")
            || lower.startsWith("docprops/")
            || lower.contains("theme")
            || lower.equals("[content_types].xml");
    return held ? InLimits.HELD_BYTES : InLimits.UNPACKED_BYTES;
  }
}
