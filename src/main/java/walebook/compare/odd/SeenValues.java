package walebook.compare.odd;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.record.ResultLine;
import walebook.record.SeamEnd;
import walebook.record.SetTo;

/**
 * The values of pieces that come by and are not kept, to be held against their like once all are
 * known: some twenty bytes for each piece, which spares a second look at the book.
 */
public final class SeenValues {
  private static final int FIRST_ROOM = 1 << 10;

  /** Stands for a grade that nobody gave. */
  private static final byte NO_GRADE = 0;

  private final Set<UUID> marked;

  /** Pieces that somebody has marked a value of; they are few and stay whole. */
  private final List<ResultLine> whole = new ArrayList<>();

  /** One piece of each setting, and where it stands among them. */
  private final List<ResultLine> firsts = new ArrayList<>();

  private final IdentityHashMap<SetTo, Integer> places = new IdentityHashMap<>();
  private int[] setting = new int[FIRST_ROOM];
  private double[] seam = new double[FIRST_ROOM];
  private double[] edge = new double[FIRST_ROOM];
  private byte[] grade = new byte[FIRST_ROOM];
  private boolean[] held = new boolean[FIRST_ROOM];
  private int size;

  /**
   * Begins with none.
   *
   * @param marked pieces that somebody has marked a value of
   */
  public SeenValues(Set<UUID> marked) {
    this.marked = Set.copyOf(marked);
  }

  /** One more piece. */
  public void add(ResultLine piece) {
    if (marked.contains(piece.pieceId())) {
      whole.add(piece);
      return;
    }
    if (size == setting.length) {
      grow(size + size / 2);
    }
    setting[size] = place(piece);
    seam[size] = orNaN(piece.seamStretch());
    edge[size] = orNaN(piece.edgeChange());
    Integer looks = piece.grade();
    grade[size] = looks == null ? NO_GRADE : looks.byteValue();
    held[size] = piece.end() == SeamEnd.HELD;
    size++;
  }

  /** Pieces read in one go share the very same settings. */
  private int place(ResultLine piece) {
    Integer known = places.get(piece.setTo());
    if (known == null) {
      known = firsts.size();
      firsts.add(piece);
      places.put(piece.setTo(), known);
    }
    return known;
  }

  private void grow(int room) {
    setting = Arrays.copyOf(setting, room);
    seam = Arrays.copyOf(seam, room);
    edge = Arrays.copyOf(edge, room);
    grade = Arrays.copyOf(grade, room);
    held = Arrays.copyOf(held, room);
  }

  private static double orNaN(@Nullable Double value) {
    return value == null ? Double.NaN : value;
  }

  /** How many of the pieces have an odd value that nobody has looked at yet. */
  public int unseen(OddLots lots) {
    int unseen = 0;
    for (ResultLine each : whole) {
      unseen += lots.of(each).stream().anyMatch(odd -> !odd.isLookedAt()) ? 1 : 0;
    }
    for (int i = 0; i < size; i++) {
      double looks = grade[i] == NO_GRADE ? Double.NaN : grade[i];
      unseen += lots.hasOdd(firsts.get(setting[i]), held[i], seam[i], edge[i], looks) ? 1 : 0;
    }
    return unseen;
  }
}
