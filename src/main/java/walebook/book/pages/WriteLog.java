package walebook.book.pages;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.util.HashMap;
import java.util.Map;

/**
 * What a log of writes holds of saved pages: only frames whose sums hold, up to the last commit.
 */
final class WriteLog {
  private static final int HEADER = 32;
  private static final int FRAME = 24;
  private static final int MAGIC = 0x377f0682;
  private static final int SUMS_AT = 24;

  private WriteLog() {}

  /** Page numbers to where the page begins in the log. */
  static Map<Integer, Long> frames(FileChannel log, int pageSize) throws IOException {
    Map<Integer, Long> saved = new HashMap<>();
    ByteBuffer header = ByteBuffer.allocate(HEADER);
    PageFile.fill(log, header, 0);
    if ((header.getInt(0) & ~1) != MAGIC || header.getInt(8) != pageSize) {
      return saved;
    }
    ByteOrder order = (header.getInt(0) & 1) == 1 ? ByteOrder.BIG_ENDIAN : ByteOrder.LITTLE_ENDIAN;
    int[] sums = new int[2];
    add(sums, header, 0, SUMS_AT, order);
    if (sums[0] != header.getInt(SUMS_AT) || sums[1] != header.getInt(SUMS_AT + 4)) {
      return saved;
    }
    Map<Integer, Long> waiting = new HashMap<>();
    ByteBuffer frame = ByteBuffer.allocate(FRAME + pageSize);
    for (long at = HEADER; at + FRAME + pageSize <= log.size(); at += FRAME + pageSize) {
      PageFile.fill(log, frame.clear(), at);
      add(sums, frame, 0, 8, order);
      add(sums, frame, FRAME, FRAME + pageSize, order);
      boolean same =
          frame.getInt(8) == header.getInt(16)
              && frame.getInt(12) == header.getInt(20)
              && frame.getInt(16) == sums[0]
              && frame.getInt(20) == sums[1];
      if (!same) {
        return saved;
      }
      waiting.put(frame.getInt(0), at + FRAME);
      if (frame.getInt(4) != 0) {
        saved.putAll(waiting);
        waiting.clear();
      }
    }
    return saved;
  }

  private static void add(int[] sums, ByteBuffer bytes, int from, int to, ByteOrder order) {
    ByteBuffer words = bytes.duplicate().order(order);
    for (int at = from; at < to; at += 8) {
      sums[0] += words.getInt(at) + sums[1];
      sums[1] += words.getInt(at + 4) + sums[0];
    }
  }
}
