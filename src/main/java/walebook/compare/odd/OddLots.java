package walebook.compare.odd;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import walebook.compare.Factor;
import walebook.compare.LineTally;
import walebook.compare.Names;
import walebook.compare.SettingTally;
import walebook.record.MarkedValue;
import walebook.record.ResultLine;
import walebook.record.SeamEnd;
import walebook.record.SetTo;
import walebook.record.ValueMark;
import walebook.statistics.Counted;

/** What like pieces came to, lot by lot, so that any one piece can be held against its like. */
public final class OddLots {
  /** Pieces that differ in any of these are never held against each other. */
  private static final List<Factor> KIND =
      List.of(Factor.CLOTH, Factor.GRAIN, Factor.STITCH, Factor.HEM_METHOD, Factor.STABILISER);

  /** How the machine was set: what a value hangs on, beside hands and luck. */
  private static final List<Factor> SET =
      List.of(Factor.WIDTH, Factor.LENGTH, Factor.NEEDLE, Factor.FEED, Factor.PRESSURE);

  private static final List<Factor> SHOWN =
      List.of(
          Factor.CLOTH,
          Factor.GRAIN,
          Factor.STITCH,
          Factor.WIDTH,
          Factor.LENGTH,
          Factor.HEM_METHOD,
          Factor.STABILISER);
  private static final List<MarkedValue> OF_PIECES =
      List.of(MarkedValue.SEAM_STRETCH, MarkedValue.EDGE_CHANGE, MarkedValue.GRADE);

  private final Names names;
  private final Map<Key, ValueMark> marks = new HashMap<>();
  private final Map<Kind, Kin> kin = new ConcurrentHashMap<>();

  /** Spelling a setting's levels out is slow, and asked for with every piece. */
  private final Map<InClass, Like> bySetting = new ConcurrentHashMap<>();

  private record Key(MarkedValue value, UUID targetId) {}

  private record InClass(UUID classId, SetTo setTo) {}

  /** A seam that held is compared with others that held: their ends mean another thing. */
  private record Kind(UUID classId, MarkedValue value, boolean held, List<String> levels) {}

  /** The lots of one setting. */
  private static final class Like {
    private final Map<MarkedValue, Kin.Lot> lots = new EnumMap<>(MarkedValue.class);
    private final Kin.Lot held;

    Like(OddLots all, ResultLine piece) {
      List<String> kind = levels(piece, KIND);
      List<String> set = levels(piece, SET);
      for (MarkedValue value : OF_PIECES) {
        lots.put(value, all.lot(new Kind(piece.classId(), value, false, kind), set));
      }
      held = all.lot(new Kind(piece.classId(), MarkedValue.SEAM_STRETCH, true, kind), set);
    }

    Kin.Lot lot(MarkedValue value, boolean ofHeld) {
      return ofHeld ? held : Objects.requireNonNull(lots.get(value));
    }
  }

  private OddLots(Names names, List<ValueMark> marks) {
    this.names = names;
    marks.forEach(each -> this.marks.put(new Key(each.value(), each.targetId()), each));
  }

  private Kin.Lot lot(Kind kind, List<String> set) {
    return kin.computeIfAbsent(kind, key -> new Kin(kind.value())).lot(set);
  }

  private static List<String> levels(ResultLine piece, List<Factor> of) {
    return of.stream().map(factor -> factor.level(piece)).toList();
  }

  private Like like(ResultLine piece) {
    InClass setting = new InClass(piece.classId(), piece.setTo());
    return bySetting.computeIfAbsent(setting, key -> new Like(this, piece));
  }

  /**
   * Lots of all the pieces of one or several classes, each class by itself.
   *
   * @param pieces all that the classes sewed, so that a value is odd or not whatever is asked
   * @param marks the book's marks
   */
  public static OddLots of(List<ResultLine> pieces, Names names, List<ValueMark> marks) {
    Map<UUID, LineTally> byClass = new LinkedHashMap<>();
    for (ResultLine each : pieces) {
      byClass.computeIfAbsent(each.classId(), key -> new LineTally(Map.of())).add(each);
    }
    return of(byClass.values(), names, marks);
  }

  /**
   * Lots of the pieces that were tallied, those set aside among them.
   *
   * @param tallies all that a class sewed; each of pieces of one class alone
   * @param marks the book's marks
   */
  public static OddLots of(Collection<LineTally> tallies, Names names, List<ValueMark> marks) {
    OddLots lots = new OddLots(names, marks);
    for (LineTally tally : tallies) {
      for (SettingTally each : tally.settings()) {
        for (MarkedValue value : OF_PIECES) {
          lots.add(each, value, false);
        }
        lots.add(each, MarkedValue.SEAM_STRETCH, true);
      }
    }
    return lots;
  }

  private void add(SettingTally tally, MarkedValue value, boolean held) {
    Counted values = tally.all(value, held);
    if (!values.isEmpty()) {
      like(tally.first()).lot(value, held).addAll(values);
    }
  }

  /** What is odd about one of the pieces that went in; usually nothing. */
  public List<OddReading> of(ResultLine piece) {
    List<OddReading> found = List.of();
    for (MarkedValue value : OF_PIECES) {
      OddReading odd = of(piece, value);
      if (odd != null) {
        found = found.isEmpty() ? new ArrayList<>() : found;
        found.add(odd);
      }
    }
    return found;
  }

  /** What is odd about one value of such a piece; null where nothing is, or it has none. */
  public @Nullable OddReading of(ResultLine piece, MarkedValue value) {
    Double number = number(piece, value);
    return number == null ? null : of(piece, value, number, like(piece));
  }

  /**
   * Whether any of a piece's values is odd; those that it lacks are not a number.
   *
   * @param like a piece of the same setting
   * @param held true where the seam held
   */
  boolean hasOdd(ResultLine like, boolean held, double seam, double edge, double grade) {
    Like of = like(like);
    return isOdd(of, MarkedValue.SEAM_STRETCH, held, seam)
        || isOdd(of, MarkedValue.EDGE_CHANGE, false, edge)
        || isOdd(of, MarkedValue.GRADE, false, grade);
  }

  private static boolean isOdd(Like of, MarkedValue value, boolean held, double number) {
    if (Double.isNaN(number)) {
      return false;
    }
    return Limits.beyond(value, number) || of.lot(value, held).isFar(number);
  }

  private static @Nullable Double number(ResultLine piece, MarkedValue value) {
    return switch (value) {
      case SEAM_STRETCH -> piece.seamStretch();
      case EDGE_CHANGE -> piece.edgeChange();
      case GRADE -> piece.grade() == null ? null : Double.valueOf(piece.grade());
      case CLOTH_STRETCH -> null;
    };
  }

  private @Nullable OddReading of(ResultLine piece, MarkedValue value, double number, Like of) {
    boolean held = value == MarkedValue.SEAM_STRETCH && piece.end() == SeamEnd.HELD;
    Kin.Lot like = of.lot(value, held);
    boolean far = like.isFar(number);
    boolean beyond = Limits.beyond(value, number);
    if (!far && !beyond) {
      return null;
    }
    List<OddReading.Reason> reasons = new ArrayList<>();
    Usual usual = like.usual();
    if (far && usual != null) {
      reasons.add(
          usual.expected()
              ? OddReading.Reason.FAR_FROM_EXPECTED
              : OddReading.Reason.FAR_FROM_MIDDLE);
    }
    if (beyond) {
      reasons.add(OddReading.Reason.BEYOND_LIMIT);
    }
    return new OddReading(
        value,
        piece.pieceId(),
        piece.code(),
        shown(piece),
        names.of(piece.studentId()),
        number,
        usual == null ? null : usual.middle(),
        usual == null ? like.size() : usual.among(),
        usual == null ? null : usual.mostly(),
        usual == null || usual.scale() == 0 ? null : usual.z(number),
        reasons,
        marks.get(new Key(value, piece.pieceId())));
  }

  private List<String> shown(ResultLine piece) {
    return SHOWN.stream()
        .map(factor -> names.show(factor, factor.level(piece)))
        .filter(level -> !level.isEmpty())
        .toList();
  }
}
