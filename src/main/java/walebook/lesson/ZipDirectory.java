package walebook.lesson;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a zip's central directory says of its entries: what the JDK's own reader keeps to itself,
 * such as whether an entry is a link. (PKWARE's APPNOTE.TXT 6.3.10, 4.3.12 and 4.3.16.)
 */
final class ZipDirectory {
  private static final int END = 0x06054b50;
  private static final int END_BYTES = 22;
  private static final int ENTRY = 0x02014b50;
  private static final int ENTRY_BYTES = 46;
  private static final int LONGEST_REMARK = 0xffff;
  private static final int UNIX = 3;
  private static final int KIND = 0170000;
  private static final int FOLDER = 0040000;
  private static final int FILE = 0100000;

  private ZipDirectory() {}

  /**
   * One entry as the directory lists it.
   *
   * @param special true for a link, a device or another thing that is no plain file or folder
   */
  record Entry(String name, boolean encrypted, boolean special) {
    boolean isFolder() {
      return name.endsWith("/");
    }
  }

  /**
   * The entries in order, or null when there is no directory that can be read.
   *
   * @param most entries at most; one more is read, to show that there are too many
   */
  static @Nullable List<Entry> of(byte[] zip, int most) {
    ByteBuffer in = ByteBuffer.wrap(zip).order(ByteOrder.LITTLE_ENDIAN);
    int end = end(in);
    if (end < 0) {
      return null;
    }
    int count = Short.toUnsignedInt(in.getShort(end + 10));
    long at = Integer.toUnsignedLong(in.getInt(end + 16));
    List<Entry> entries = new ArrayList<>();
    while (entries.size() < Math.min(count, most + 1)) {
      if (at + ENTRY_BYTES > zip.length || in.getInt((int) at) != ENTRY) {
        return null;
      }
      int start = (int) at;
      int nameBytes = Short.toUnsignedInt(in.getShort(start + 28));
      int more = Short.toUnsignedInt(in.getShort(start + 30));
      int remark = Short.toUnsignedInt(in.getShort(start + 32));
      if (start + ENTRY_BYTES + nameBytes > zip.length) {
        return null;
      }
      String name = new String(zip, start + ENTRY_BYTES, nameBytes, StandardCharsets.UTF_8);
      boolean encrypted = (in.getShort(start + 8) & 1) != 0;
      entries.add(new Entry(name, encrypted, isSpecial(in, start)));
      at += ENTRY_BYTES + nameBytes + more + remark;
    }
    return entries;
  }

  private static boolean isSpecial(ByteBuffer in, int start) {
    int madeBy = Byte.toUnsignedInt(in.get(start + 5));
    int kind = (in.getInt(start + 38) >>> 16) & KIND;
    return madeBy == UNIX && kind != 0 && kind != FILE && kind != FOLDER;
  }

  /** Where the record at the end begins, found from behind since a remark may follow it; or -1. */
  private static int end(ByteBuffer in) {
    int last = in.limit() - END_BYTES;
    for (int at = last; at >= Math.max(0, last - LONGEST_REMARK); at--) {
      if (in.getInt(at) == END) {
        return at;
      }
    }
    return -1;
  }
}
