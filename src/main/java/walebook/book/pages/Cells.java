package walebook.book.pages;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The cells of one page, each read by itself: a broken one costs no other. */
final class Cells {
  static final int INDEX_INSIDE = 0x02;
  static final int TABLE_INSIDE = 0x05;
  static final int INDEX_LEAF = 0x0a;
  static final int TABLE_LEAF = 0x0d;

  private static final int FIRST_PAGE_HEADER = 100;

  /** A length above this is a broken one: no photo is kept that large. */
  private static final int LARGEST = 128 << 20;

  private final PageFile file;
  private final ByteBuffer page;
  private final int header;

  Cells(PageFile file, int number) throws IOException {
    this.file = file;
    this.page = file.page(number);
    this.header = number == 1 ? FIRST_PAGE_HEADER : 0;
  }

  int kind() {
    return page.get(header) & 0xff;
  }

  boolean isInside() {
    return kind() == TABLE_INSIDE || kind() == INDEX_INSIDE;
  }

  /** False for a page that no tree could have written. */
  boolean makesSense() {
    int kind = kind();
    boolean known =
        kind == INDEX_INSIDE || kind == TABLE_INSIDE || kind == INDEX_LEAF || kind == TABLE_LEAF;
    return known && pointers() + 2 * count() <= page.capacity();
  }

  int count() {
    return page.getShort(header + 3) & 0xffff;
  }

  private int pointers() {
    return header + (isInside() ? 12 : 8);
  }

  private int at(int cell) {
    return page.getShort(pointers() + 2 * cell) & 0xffff;
  }

  /** The pages below this one, left to right; numbers that can't be are left out. */
  List<Integer> below() {
    List<Integer> below = new ArrayList<>();
    for (int i = 0; i < count(); i++) {
      int at = at(i);
      below.add(at + 4 <= page.capacity() ? page.getInt(at) : 0);
    }
    below.add(page.getInt(header + 8));
    return below;
  }

  /** The row of a cell; empty when the cell makes no sense. */
  Optional<Row> row(int cell) throws IOException {
    int at = at(cell);
    if (at < pointers() || at >= page.capacity()) {
      return Optional.empty();
    }
    ByteBuffer bytes = page.duplicate().position(at);
    if (kind() == INDEX_INSIDE) {
      if (bytes.remaining() < 4) {
        return Optional.empty();
      }
      bytes.getInt();
    }
    try {
      long length = Records.varint(bytes);
      if (kind() == TABLE_LEAF) {
        Records.varint(bytes);
      }
      byte[] payload = payload(bytes, length);
      return payload.length == length ? Records.read(payload) : Optional.empty();
    } catch (java.nio.BufferUnderflowException e) {
      return Optional.empty();
    }
  }

  /** What a cell holds together with its overflow pages; shorter when the chain is broken. */
  private byte[] payload(ByteBuffer bytes, long length) throws IOException {
    int usable = file.usable();
    if (length <= 0 || length > Math.min(LARGEST, (long) file.pages() * usable)) {
      return new byte[0];
    }
    int most = kind() == TABLE_LEAF ? usable - 35 : (usable - 12) * 64 / 255 - 23;
    int least = (usable - 12) * 32 / 255 - 23;
    int split = least + (int) ((length - least) % (usable - 4));
    int here = length <= most ? (int) length : split <= most ? split : least;
    byte[] payload = new byte[(int) length];
    bytes.get(payload, 0, here);
    int have = here;
    int next = have < length ? bytes.getInt() : 0;
    while (have < length) {
      if (!file.holds(next)) {
        return new byte[0];
      }
      ByteBuffer overflow = file.page(next);
      next = overflow.getInt();
      int part = Math.min(usable - 4, (int) length - have);
      overflow.get(payload, have, part);
      have += part;
    }
    return payload;
  }
}
