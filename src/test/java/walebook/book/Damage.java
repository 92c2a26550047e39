package walebook.book;

import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** One way to damage a book's file, as a worn stick or a cut copy does. */
public enum Damage {
  FLIPPED_BITS {
    @Override
    public byte[] damage(byte[] bytes, Random random) {
      for (int i = random.nextInt(40); i >= 0; i--) {
        bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
      }
      return bytes;
    }
  },
  RANDOM_BYTES {
    @Override
    public byte[] damage(byte[] bytes, Random random) {
      int from = random.nextInt(bytes.length);
      byte[] noise = new byte[1 + random.nextInt(Math.min(2000, bytes.length - from))];
      random.nextBytes(noise);
      System.arraycopy(noise, 0, bytes, from, noise.length);
      return bytes;
    }
  },
  CUT_SHORT {
    @Override
    public byte[] damage(byte[] bytes, Random random) {
      return Arrays.copyOf(bytes, random.nextInt(bytes.length));
    }
  },
  ZEROED_PAGES {
    @Override
    public byte[] damage(byte[] bytes, Random random) {
      for (int i = random.nextInt(6); i >= 0; i--) {
        int page = random.nextInt(bytes.length / PAGE);
        Arrays.fill(bytes, page * PAGE, (page + 1) * PAGE, (byte) 0);
      }
      return bytes;
    }
  },
  HEADER_OVERWRITTEN {
    @Override
    public byte[] damage(byte[] bytes, Random random) {
      int from = random.nextInt(100);
      for (int i = from; i < from + 1 + random.nextInt(100); i++) {
        bytes[i] = (byte) random.nextInt(256);
      }
      return bytes;
    }
  },
  FIRST_PAGE_LOST {
    @Override
    public byte[] damage(byte[] bytes, Random random) {
      Arrays.fill(bytes, 0, PAGE * (1 + random.nextInt(3)), (byte) random.nextInt(2));
      return bytes;
    }
  },
  PAGES_SWAPPED {
    @Override
    public byte[] damage(byte[] bytes, Random random) {
      int one = random.nextInt(bytes.length / PAGE) * PAGE;
      int other = random.nextInt(bytes.length / PAGE) * PAGE;
      byte[] kept = Arrays.copyOfRange(bytes, one, one + PAGE);
      System.arraycopy(bytes, other, bytes, one, PAGE);
      System.arraycopy(kept, 0, bytes, other, PAGE);
      return bytes;
    }
  },
  ALL_NOISE {
    @Override
    public byte[] damage(byte[] bytes, Random random) {
      byte[] noise = new byte[1 + random.nextInt(3 * PAGE)];
      random.nextBytes(noise);
      return noise;
    }
  },
  GROWN_BY_NOISE {
    @Override
    public byte[] damage(byte[] bytes, Random random) {
      byte[] more = Arrays.copyOf(bytes, bytes.length + 1 + random.nextInt(3 * PAGE));
      for (int i = bytes.length; i < more.length; i++) {
        more[i] = (byte) random.nextInt();
      }
      return more;
    }
  };

  private static final int PAGE = 4096;
  private static final List<Damage> ALL = List.of(values());

  /** One after the other, round and round. */
  public static Damage inTurn(int number) {
    return ALL.get(number % ALL.size());
  }

  /** The bytes afterwards, which may be the array that was given. */
  public abstract byte[] damage(byte[] bytes, Random random);
}
