package walebook.compare.odd;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
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
import walebook.statistics.Robust;

/** What like pieces came to, lot by lot, so that any one piece can be held against its like. */
public final class OddLots {
  private static final int FEWEST = 5;
  private static final List<Factor> ALIKE =
      List.of(
          Factor.CLOTH,
          Factor.GRAIN,
          Factor.STITCH,
          Factor.WIDTH,
          Factor.LENGTH,
          Factor.HEM_METHOD,
          Factor.STABILISER);
  private static final List<Factor> NEARLY_ALIKE =
      List.of(Factor.CLOTH, Factor.GRAIN, Factor.STITCH);
  private static final List<MarkedValue> OF_PIECES =
      List.of(MarkedValue.SEAM_STRETCH, MarkedValue.EDGE_CHANGE, MarkedValue.GRADE);

  private final Names names;
  private final Map<Key, ValueMark> marks = new HashMap<>();
  private final Map<Levels, Lot> lots = new ConcurrentHashMap<>();

  /** Spelling a setting's levels out is slow, and asked for with every piece. */
  private final Map<SetTo, Like> bySetting = new ConcurrentHashMap<>();

  private record Key(MarkedValue value, UUID targetId) {}

  /** The values of like pieces. */
  private static final class Lot {
    private final Counted values = new Counted();
    private @Nullable Robust robust;

    /** Null where they are too few to say what is usual. */
    @Nullable Robust robust() {
      if (robust == null && values.n() >= FEWEST) {
        robust = Robust.of(values);
      }
      return robust;
    }
  }

  /** The lots of one setting: those set alike, and those nearly alike. */
  private static final class Like {
    private final Map<MarkedValue, Lot> same = new EnumMap<>(MarkedValue.class);
    private final Map<MarkedValue, Lot> near = new EnumMap<>(MarkedValue.class);
    private final Lot sameHeld;
    private final Lot nearHeld;

    Like(OddLots all, ResultLine piece) {
      for (MarkedValue value : OF_PIECES) {
        same.put(value, all.lot(piece, value, false, ALIKE));
        near.put(value, all.lot(piece, value, false, NEARLY_ALIKE));
      }
      sameHeld = all.lot(piece, MarkedValue.SEAM_STRETCH, true, ALIKE);
      nearHeld = all.lot(piece, MarkedValue.SEAM_STRETCH, true, NEARLY_ALIKE);
    }

    Lot same(MarkedValue value, boolean held) {
      return held ? sameHeld : Objects.requireNonNull(same.get(value));
    }

    Lot near(MarkedValue value, boolean held) {
      return held ? nearHeld : Objects.requireNonNull(near.get(value));
    }

    /** Those set alike; where they are too few, those nearly alike. */
    Lot lot(MarkedValue value, boolean held) {
      Lot alike = same(value, held);
      return alike.values.n() < FEWEST ? near(value, held) : alike;
    }
  }

  /** A seam that held is compared with others that held: their ends mean another thing. */
  private record Levels(MarkedValue value, boolean held, List<Factor> by, List<String> levels) {}

  private OddLots(Names names, List<ValueMark> marks) {
    this.names = names;
    marks.forEach(each -> this.marks.put(new Key(each.value(), each.targetId()), each));
  }

  private Lot lot(ResultLine piece, MarkedValue value, boolean held, List<Factor> by) {
    List<String> levels = by.stream().map(factor -> factor.level(piece)).toList();
    return lots.computeIfAbsent(new Levels(value, held, by, levels), key -> new Lot());
  }

  private Like like(ResultLine piece) {
    return bySetting.computeIfAbsent(piece.setTo(), set -> new Like(this, piece));
  }

  /**
   * Lots of the pieces that were tallied, those set aside among them.
   *
   * @param marks the book's marks
   */
  public static OddLots of(LineTally tally, Names names, List<ValueMark> marks) {
    OddLots lots = new OddLots(names, marks);
    for (MarkedValue value : OF_PIECES) {
      for (SettingTally each : tally.settings()) {
        lots.add(each, value, false);
        if (value == MarkedValue.SEAM_STRETCH) {
          lots.add(each, value, true);
        }
      }
    }
    return lots;
  }

  private void add(SettingTally tally, MarkedValue value, boolean held) {
    Counted values = tally.all(value, held);
    if (!values.isEmpty()) {
      Like like = like(tally.first());
      like.same(value, held).values.addAll(values);
      like.near(value, held).values.addAll(values);
    }
  }

  /** What is odd about one of the pieces that went in; usually nothing. */
  public List<OddReading> of(ResultLine piece) {
    List<OddReading> found = List.of();
    Like like = like(piece);
    for (MarkedValue value : OF_PIECES) {
      Double number = number(piece, value);
      OddReading odd = number == null ? null : of(piece, value, number, like);
      if (odd != null) {
        found = found.isEmpty() ? new ArrayList<>() : found;
        found.add(odd);
      }
    }
    return found;
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
    Robust robust = of.lot(value, held).robust();
    return Limits.beyond(value, number) || (robust != null && isFar(robust, number, value));
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
    Lot like = of.lot(value, held);
    Robust robust = like.robust();
    boolean far = robust != null && isFar(robust, number, value);
    boolean beyond = Limits.beyond(value, number);
    if (!far && !beyond) {
      return null;
    }
    List<OddReading.Reason> reasons = new ArrayList<>();
    if (far) {
      reasons.add(OddReading.Reason.FAR_FROM_MIDDLE);
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
        robust == null ? null : robust.median(),
        like.values.n(),
        robust == null ? null : OddReading.Mostly.of(robust, like.values.different()),
        robust == null ? null : robust.z(number),
        reasons,
        marks.get(new Key(value, piece.pieceId())));
  }

  /** Beyond what chance and what reading alone would bring. */
  static boolean isFar(Robust robust, double number, MarkedValue value) {
    double away = Math.abs(number - robust.median());
    return robust.isOdd(number) && away > Limits.readingAlone(value);
  }

  private List<String> shown(ResultLine piece) {
    return ALIKE.stream()
        .map(factor -> names.show(factor, factor.level(piece)))
        .filter(level -> !level.isEmpty())
        .toList();
  }
}
