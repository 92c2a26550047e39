package walebook.compare.odd;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.compare.Names;
import walebook.compare.alike.AlikeStudy;
import walebook.compare.alike.Conditions;
import walebook.compare.alike.FarOff;
import walebook.compare.alike.MeasureAlike;
import walebook.compare.alike.Person;
import walebook.compare.alike.ReadingDot;
import walebook.record.MarkedValue;
import walebook.record.ResultLine;
import walebook.record.ValueMark;
import walebook.statistics.Robust;

/**
 * Finds odd values: beyond 3.5 robust standard deviations from the middle of at least five of their
 * like (B. Iglewicz and D. C. Hoaglin, How to Detect and Handle Outliers, 1993), beyond plain
 * limits, or by a reader whose h or k is odd (ASTM E691).
 */
public final class FindOdd {
  private final Names names;
  private final Map<Key, ValueMark> marks = new LinkedHashMap<>();
  private final List<OddReading> found = new ArrayList<>();

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
    return of(pieces, OddLots.of(pieces, names, marks), alike, names, marks);
  }

  /**
   * The same of some of the pieces, held against all that their class sewed alike.
   *
   * @param lots of all that the class sewed
   */
  public static List<OddReading> of(
      List<ResultLine> pieces,
      OddLots lots,
      MeasureAlike alike,
      Names names,
      List<ValueMark> marks) {
    FindOdd find = new FindOdd(names, marks);
    pieces.forEach(piece -> find.found.addAll(lots.of(piece)));
    alike.studies().forEach(study -> find.study(study, otherGrains(study, alike)));
    find.found.sort(
        Comparator.comparing(OddReading::isLookedAt)
            .thenComparing(each -> each.z() == null ? 0 : -Math.abs(each.z()))
            .thenComparing(OddReading::code)
            .thenComparing(OddReading::targetId));
    return List.copyOf(find.found);
  }

  /** What was read of the same cloth along each other grain. */
  private static List<FarOff> otherGrains(AlikeStudy study, MeasureAlike alike) {
    Conditions here = study.conditions();
    return alike.studies().stream()
        .filter(other -> other.conditions().clothId().equals(here.clothId()))
        .filter(other -> other.conditions().grain() != here.grain())
        .map(other -> FarOff.of(stretches(other)))
        .toList();
  }

  private static List<Double> stretches(AlikeStudy study) {
    return study.people().stream()
        .flatMap(person -> person.readings().stream())
        .map(ReadingDot::stretch)
        .toList();
  }

  private void study(AlikeStudy study, List<FarOff> otherGrains) {
    List<Double> all = stretches(study);
    FarOff off = FarOff.of(all);
    Robust robust = off.robust();
    for (Person person : study.people()) {
      ReadingDot farthest = farthest(person);
      for (ReadingDot dot : person.readings()) {
        List<OddReading.Reason> reasons = new ArrayList<>();
        if (off.isFar(dot.stretch())) {
          if (otherGrains.stream().anyMatch(other -> other.isAmong(dot.stretch()))) {
            reasons.add(OddReading.Reason.AS_OTHER_GRAIN);
          }
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
          found.add(reading(study, person, dot, robust, all, reasons));
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
      List<Double> all,
      List<OddReading.Reason> reasons) {
    return new OddReading(
        MarkedValue.CLOTH_STRETCH,
        dot.readingId(),
        "",
        List.of(names.of(study.conditions().clothId()), study.conditions().grain().key()),
        person.who(),
        dot.stretch(),
        robust == null ? null : robust.median(),
        all.size(),
        robust == null
            ? null
            : OddReading.Mostly.of(robust, all.stream().mapToDouble(Double::doubleValue)),
        robust == null ? null : robust.z(dot.stretch()),
        reasons,
        marks.get(new Key(MarkedValue.CLOTH_STRETCH, dot.readingId())));
  }
}
