package walebook.book.pages;

import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads the record format: a header of types, then the values one after the other. */
final class Records {
  private static final int MOST_COLUMNS = 2000;

  private Records() {}

  /** The values of a record; empty when they do not fill it to its last byte. */
  static Optional<Row> read(byte[] payload) {
    ByteBuffer types = ByteBuffer.wrap(payload);
    try {
      long header = varint(types);
      if (header < 1 || header > payload.length) {
        return Optional.empty();
      }
      ByteBuffer body = ByteBuffer.wrap(payload).position((int) header);
      List<@Nullable Object> values = new ArrayList<>();
      while (types.position() < header && values.size() < MOST_COLUMNS) {
        long type = varint(types);
        if (type == 10 || type == 11 || type < 0 || size(type) > body.remaining()) {
          return Optional.empty();
        }
        values.add(value(type, body));
      }
      boolean filled = types.position() == header && !body.hasRemaining();
      return filled ? Optional.of(new Row(values)) : Optional.empty();
    } catch (BufferUnderflowException | CharacterCodingException e) {
      return Optional.empty();
    }
  }

  private static long size(long type) {
    if (type >= 12) {
      return (type - 12) / 2;
    }
    return switch ((int) type) {
      case 1 -> 1;
      case 2 -> 2;
      case 3 -> 3;
      case 4 -> 4;
      case 5 -> 6;
      case 6, 7 -> 8;
      default -> 0;
    };
  }

  private static @Nullable Object value(long type, ByteBuffer body)
      throws CharacterCodingException {
    int size = (int) size(type);
    if (type == 0) {
      return null;
    } else if (type == 7) {
      return body.getDouble();
    } else if (type == 8 || type == 9) {
      return type - 8;
    } else if (type < 12) {
      long number = body.get();
      for (int i = 1; i < size; i++) {
        number = number << 8 | (body.get() & 0xff);
      }
      return number;
    }
    byte[] bytes = new byte[size];
    body.get(bytes);
    if (type % 2 == 0) {
      return bytes;
    }
    // Strictly: a letter that is none shows that bytes were overwritten.
    return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
  }

  static long varint(ByteBuffer bytes) {
    long value = 0;
    for (int i = 0; i < 8; i++) {
      int next = bytes.get();
      value = value << 7 | (next & 0x7f);
      if (next >= 0) {
        return value;
      }
    }
    return value << 8 | (bytes.get() & 0xff);
  }
}
