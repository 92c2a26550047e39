package walebook.compare.odd;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.compare.Factor;
import walebook.compare.Names;
import walebook.compare.alike.AlikeStudy;
import walebook.compare.alike.MeasureAlike;
import walebook.compare.alike.Person;
import walebook.compare.alike.ReadingDot;
import walebook.record.MarkedValue;
import walebook.record.ResultLine;
import walebook.record.SeamEnd;
import walebook.record.SetTo;
import walebook.record.ValueMark;
import walebook.statistics.Robust;

/**
 * Finds odd values: beyond 3.5 robust standard deviations from the middle of at least five of their
 * like (B. Iglewicz and D. C. Hoaglin, How to Detect and Handle Outliers, 1993), beyond plain
 * limits, or by a reader whose h or k is odd (ASTM E691).
 */
public final class FindOdd {
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

  private final Names names;
  private final Map<Key, ValueMark> marks = new LinkedHashMap<>();
  private final List<OddReading> found = new ArrayList<>();

  /** Of each lot of like pieces, by the very list: working it out for each piece is slow. */
  private final IdentityHashMap<List<ResultLine>, Robust> robusts = new IdentityHashMap<>();

  private record Key(MarkedValue value, UUID targetId) {}

  private FindOdd(Names names, List<ValueMark> marks) {
    this.names = names;
    marks.forEach(each -> this.marks.put(new Key(each.value(), each.targetId()), each));
  }

  /**
   * Every odd value among pieces and readings, those not looked at first, the oddest first.
   *
   * @param alike the class's readings of cloths, with nothing set aside
   * @param marks the book's marks
   */
  public static List<OddReading> of(
      List<ResultLine> pieces, MeasureAlike alike, Names names, List<ValueMark> marks) {
    FindOdd find = new FindOdd(names, marks);
    find.pieces(pieces, MarkedValue.SEAM_STRETCH);
    find.pieces(pieces, MarkedValue.EDGE_CHANGE);
    find.pieces(pieces, MarkedValue.GRADE);
    alike.studies().forEach(find::study);
    find.found.sort(
        Comparator.comparing((OddReading each) -> each.mark() != null)
            .thenComparing(each -> each.z() == null ? 0 : -Math.abs(each.z()))
            .thenComparing(OddReading::code)
            .thenComparing(OddReading::targetId));
    return List.copyOf(find.found);
  }

  private static @Nullable Double number(ResultLine piece, MarkedValue value) {
    return switch (value) {
      case SEAM_STRETCH -> piece.seamStretch();
      case EDGE_CHANGE -> piece.edgeChange();
      case GRADE -> piece.grade() == null ? null : Double.valueOf(piece.grade());
      case CLOTH_STRETCH -> null;
    };
  }

  private void pieces(List<ResultLine> pieces, MarkedValue value) {
    robusts.clear();
    Lots same = sorted(pieces, value, ALIKE);
    Lots near = sorted(pieces, value, NEARLY_ALIKE);
    for (ResultLine piece : pieces) {
      Double number = number(piece, value);
      if (number == null) {
        continue;
      }
      List<ResultLine> like = same.of(piece, value, ALIKE);
      if (like.size() < FEWEST) {
        like = near.of(piece, value, NEARLY_ALIKE);
      }
      piece(piece, value, number, like);
    }
  }

  private void piece(ResultLine piece, MarkedValue value, double number, List<ResultLine> like) {
    List<OddReading.Reason> reasons = new ArrayList<>();
    Robust robust = null;
    if (like.size() >= FEWEST) {
      robust = robusts.computeIfAbsent(like, all -> robust(all, value));
      if (isFar(robust, number, value)) {
        reasons.add(OddReading.Reason.FAR_FROM_MIDDLE);
      }
    }
    if (Limits.beyond(value, number)) {
      reasons.add(OddReading.Reason.BEYOND_LIMIT);
    }
    if (!reasons.isEmpty()) {
      found.add(
          new OddReading(
              value,
              piece.pieceId(),
              piece.code(),
              shown(piece),
              names.of(piece.studentId()),
              number,
              robust == null ? null : robust.median(),
              like.size(),
              robust == null ? null : robust.z(number),
              reasons,
              marks.get(new Key(value, piece.pieceId()))));
    }
  }

  private static Robust robust(List<ResultLine> like, MarkedValue value) {
    return Robust.of(like.stream().map(each -> value(each, value)).toList());
  }

  private static boolean isFar(Robust robust, double number, MarkedValue value) {
    double away = Math.abs(number - robust.median());
    return robust.isOdd(number) && away > Limits.readingAlone(value);
  }

  private static double value(ResultLine piece, MarkedValue value) {
    Double number = number(piece, value);
    if (number == null) {
      throw new IllegalStateException("sorted without a value: " + piece.code());
    }
    return number;
  }

  private List<String> shown(ResultLine piece) {
    return ALIKE.stream()
        .map(factor -> names.show(factor, factor.level(piece)))
        .filter(level -> !level.isEmpty())
        .toList();
  }

  private static Lots sorted(List<ResultLine> pieces, MarkedValue value, List<Factor> factors) {
    Lots sorted = new Lots();
    for (ResultLine piece : pieces) {
      if (number(piece, value) != null) {
        sorted.of(piece, value, factors).add(piece);
      }
    }
    return sorted;
  }

  /** A seam that held is compared with others that held: their ends mean another thing. */
  private static List<String> levels(ResultLine piece, boolean held, List<Factor> factors) {
    List<String> levels = new ArrayList<>();
    factors.forEach(factor -> levels.add(factor.level(piece)));
    levels.add(held ? "held" : "");
    return levels;
  }

  /** Lots of like pieces, each found by the first of it that was set so. */
  private static final class Lots {
    private final Map<List<String>, List<ResultLine>> byLevels = new HashMap<>();
    private final IdentityHashMap<SetTo, List<ResultLine>> given = new IdentityHashMap<>();
    private final IdentityHashMap<SetTo, List<ResultLine>> held = new IdentityHashMap<>();

    /** The lot of a piece, in which it need not be. */
    List<ResultLine> of(ResultLine piece, MarkedValue value, List<Factor> factors) {
      boolean isHeld = value == MarkedValue.SEAM_STRETCH && piece.end() == SeamEnd.HELD;
      return (isHeld ? held : given)
          .computeIfAbsent(
              piece.setTo(),
              set ->
                  byLevels.computeIfAbsent(
                      levels(piece, isHeld, factors), key -> new ArrayList<>()));
    }
  }

  private void study(AlikeStudy study) {
    List<Double> all =
        study.people().stream()
            .flatMap(person -> person.readings().stream())
            .map(ReadingDot::stretch)
            .toList();
    Robust robust = all.size() < FEWEST ? null : Robust.of(all);
    for (Person person : study.people()) {
      ReadingDot farthest = farthest(person);
      for (ReadingDot dot : person.readings()) {
        List<OddReading.Reason> reasons = new ArrayList<>();
        if (robust != null && isFar(robust, dot.stretch(), MarkedValue.CLOTH_STRETCH)) {
          reasons.add(OddReading.Reason.FAR_FROM_MIDDLE);
        }
        if (Limits.beyond(MarkedValue.CLOTH_STRETCH, dot.stretch())) {
          reasons.add(OddReading.Reason.BEYOND_LIMIT);
        }
        if (person.bias() == Person.Bias.ODD) {
          reasons.add(OddReading.Reason.READER_OFF);
        }
        if (person.scatter() == Person.Scatter.ODD && dot.equals(farthest)) {
          reasons.add(OddReading.Reason.READER_SCATTERS);
        }
        if (!reasons.isEmpty()) {
          found.add(reading(study, person, dot, robust, all.size(), reasons));
        }
      }
    }
  }

  private static ReadingDot farthest(Person person) {
    double middle =
        Robust.of(person.readings().stream().map(ReadingDot::stretch).toList()).median();
    return person.readings().stream()
        .max(Comparator.comparingDouble(dot -> Math.abs(dot.stretch() - middle)))
        .orElseThrow();
  }

  private OddReading reading(
      AlikeStudy study,
      Person person,
      ReadingDot dot,
      @Nullable Robust robust,
      int among,
      List<OddReading.Reason> reasons) {
    return new OddReading(
        MarkedValue.CLOTH_STRETCH,
        dot.readingId(),
        "",
        List.of(names.of(study.conditions().clothId()), study.conditions().grain().key()),
        person.who(),
        dot.stretch(),
        robust == null ? null : robust.median(),
        among,
        robust == null ? null : robust.z(dot.stretch()),
        reasons,
        marks.get(new Key(MarkedValue.CLOTH_STRETCH, dot.readingId())));
  }
}
