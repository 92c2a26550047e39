package walebook.sheet;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import walebook.book.Book;
import walebook.compare.ClothStretch;
import walebook.compare.CompareBySetting;
import walebook.compare.Factor;
import walebook.compare.FairFigures;
import walebook.compare.FairQuestion;
import walebook.compare.LineTally;
import walebook.compare.Names;
import walebook.compare.Outcome;
import walebook.compare.ReadingsThatCount;
import walebook.compare.TalliedComparison;
import walebook.compare.alike.MeasureAlike;
import walebook.compare.odd.FindOdd;
import walebook.compare.odd.OddLots;
import walebook.record.ClothReading;
import walebook.record.Grain;
import walebook.record.MarkedValue;

/**
 * What the pieces of a term come to. Values that the tutor set aside are left out of all of it.
 *
 * @param comparison setting by setting, with how many values were left out
 * @param fair the same freed from who sewed what, one for each outcome that has a value
 * @param odd tells what deserves a second look
 * @param unseen how many pieces have an odd value that nobody has looked at yet
 * @param unseenReadings how many readings of cloths that go out are odd and not looked at yet
 * @param readingsAside keys of the readings of cloths that are set aside
 */
public record TermFindings(
    TalliedComparison comparison,
    List<FairFigures> fair,
    OddLots odd,
    int unseen,
    int unseenReadings,
    Set<UUID> readingsAside,
    Map<UUID, Map<Grain, ClothStretch>> stretches) {
  /** A fit takes the cube of its settings; a class that teaches has some tens of them. */
  private static final int MOST_SETTINGS = 200;

  private static final List<Outcome> FAIRLY =
      List.of(Outcome.HELD, Outcome.SEAM_SHARE, Outcome.EDGE_CHANGE, Outcome.GRADE, Outcome.TIME);

  public TermFindings {
    fair = List.copyOf(fair);
    readingsAside = Set.copyOf(readingsAside);
    stretches = Map.copyOf(stretches);
  }

  /** What the tutor set aside, by the value that it is one of: keys of pieces or of readings. */
  static Map<MarkedValue, Set<UUID>> setAside(Book book) {
    Map<MarkedValue, Set<UUID>> aside = new EnumMap<>(MarkedValue.class);
    for (MarkedValue value : MarkedValue.values()) {
      aside.put(value, book.marks().setAside(value));
    }
    return aside;
  }

  static TermFindings of(
      Book book, TermScan scan, List<ClothReading> readings, Names names, UUID classId) {
    LineTally tally = scan.tally();
    Set<UUID> readingsAside = ReadingsThatCount.aside(book);
    Map<UUID, Map<Grain, ClothStretch>> stretches =
        ClothStretch.of(ReadingsThatCount.of(readings, readingsAside));
    TalliedComparison comparison =
        TalliedComparison.of(tally, CompareBySetting.USUAL, stretches, names);
    OddLots odd = OddLots.of(scan.whole(), names, book.marks().all());
    return new TermFindings(
        comparison,
        fair(tally, telling(comparison), stretches, names),
        odd,
        scan.unseen(odd),
        unseen(book, readings, names, classId, scan.choice()),
        readingsAside,
        stretches);
  }

  /**
   * All that the comparison tells settings apart by, as a class is first asked; of more settings
   * than a fit takes, the last are let go, and the cloth never.
   */
  static List<Factor> telling(TalliedComparison comparison) {
    List<Factor> factors = comparison.factors();
    int kept = factors.size();
    while (kept > 1 && settings(comparison, kept) > MOST_SETTINGS) {
      kept--;
    }
    return factors.subList(0, kept);
  }

  private static long settings(TalliedComparison comparison, int factors) {
    return comparison.rows().stream()
        .map(row -> row.levels().subList(0, factors))
        .distinct()
        .count();
  }

  private static List<FairFigures> fair(
      LineTally tally,
      List<Factor> factors,
      Map<UUID, Map<Grain, ClothStretch>> stretches,
      Names names) {
    return FAIRLY.stream()
        .map(outcome -> FairFigures.of(tally, FairQuestion.of(outcome, factors), stretches, names))
        .filter(found -> !found.isEmpty())
        .toList();
  }

  /** Of the readings of cloths that go out, as odd as they are among all of the class's. */
  private static int unseen(
      Book book, List<ClothReading> readings, Names names, UUID classId, TermChoice choice) {
    List<ClothReading> ofClass =
        readings.stream().filter(each -> classId.equals(each.classId())).toList();
    Set<UUID> chosen =
        ofClass.stream()
            .filter(choice::hasReading)
            .map(ClothReading::id)
            .collect(Collectors.toSet());
    MeasureAlike alike = MeasureAlike.of(ofClass, names, Set.of(), FairQuestion.USUAL_CONFIDENCE);
    return (int)
        FindOdd.of(List.of(), alike, names, book.marks().all()).stream()
            .filter(each -> !each.isLookedAt())
            .map(each -> each.targetId())
            .distinct()
            .filter(chosen::contains)
            .count();
  }
}
