package walebook.sheet;

import java.util.AbstractList;
import java.util.Arrays;
import java.util.RandomAccess;
import java.util.UUID;

/** The order of a class's pieces: sixteen bytes for each is all that is kept of it. */
final class KeyList extends AbstractList<UUID> implements RandomAccess {
  private long[] halves = new long[1 << 10];
  private int size;

  @Override
  public boolean add(UUID key) {
    if (2 * size == halves.length) {
      halves = Arrays.copyOf(halves, halves.length * 3 / 2 & ~1);
    }
    halves[2 * size] = key.getMostSignificantBits();
    halves[2 * size + 1] = key.getLeastSignificantBits();
    size++;
    return true;
  }

  @Override
  public UUID get(int index) {
    java.util.Objects.checkIndex(index, size);
    return new UUID(halves[2 * index], halves[2 * index + 1]);
  }

  @Override
  public int size() {
    return size;
  }
}
