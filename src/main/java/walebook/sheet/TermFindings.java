package walebook.sheet;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.compare.ClothStretch;
import walebook.compare.CompareBySetting;
import walebook.compare.CompareFairly;
import walebook.compare.Comparison;
import walebook.compare.Factor;
import walebook.compare.FairComparison;
import walebook.compare.FairQuestion;
import walebook.compare.LeaveOut;
import walebook.compare.Names;
import walebook.compare.Outcome;
import walebook.compare.alike.MeasureAlike;
import walebook.compare.odd.FindOdd;
import walebook.compare.odd.OddReading;
import walebook.record.ClothReading;
import walebook.record.Grain;
import walebook.record.MarkedValue;
import walebook.record.ResultLine;

/**
 * What the pieces of a term come to. Values that the tutor set aside are left out of all of it.
 *
 * @param comparison setting by setting, with how many values were left out
 * @param fair the same freed from who sewed what, one for each outcome that has a value
 * @param odd what deserves a second look, by piece
 * @param results what each piece brings to the comparison
 */
public record TermFindings(
    Comparison comparison,
    List<FairComparison> fair,
    Map<UUID, List<OddReading>> odd,
    List<ResultLine> results,
    Map<UUID, Map<Grain, ClothStretch>> stretches) {
  /** What settings are told apart by in the fair comparison, as far as the pieces differ in it. */
  private static final List<Factor> TELLING =
      List.of(Factor.STITCH, Factor.WIDTH, Factor.HEM_METHOD, Factor.FEED);

  /** With more of them each setting would have too few pieces to say anything. */
  private static final int MOST_FACTORS = 2;

  private static final List<Outcome> FAIRLY =
      List.of(Outcome.HELD, Outcome.SEAM_SHARE, Outcome.EDGE_CHANGE, Outcome.GRADE, Outcome.TIME);

  public TermFindings {
    fair = List.copyOf(fair);
    odd = Map.copyOf(odd);
    results = List.copyOf(results);
    stretches = Map.copyOf(stretches);
  }

  /** How many pieces have a value that nobody has looked at yet. */
  int unseen() {
    return (int)
        odd.values().stream()
            .filter(each -> each.stream().anyMatch(value -> value.mark() == null))
            .count();
  }

  static TermFindings of(
      Book book, List<ResultLine> lines, List<ClothReading> readings, Names names, UUID classId) {
    Map<MarkedValue, Set<UUID>> aside = new EnumMap<>(MarkedValue.class);
    for (MarkedValue value : MarkedValue.values()) {
      aside.put(value, book.marks().setAside(value));
    }
    Set<UUID> readingsAside = aside.getOrDefault(MarkedValue.CLOTH_STRETCH, Set.of());
    Map<UUID, Map<Grain, ClothStretch>> stretches =
        ClothStretch.of(
            readings.stream().filter(each -> !readingsAside.contains(each.id())).toList());
    LeaveOut leaving = LeaveOut.of(lines, aside);
    Comparison comparison =
        CompareBySetting.ofLines(leaving, CompareBySetting.USUAL, stretches, names);
    return new TermFindings(
        comparison,
        fair(lines, telling(comparison), stretches, names, aside),
        odd(book, lines, readings, names, classId),
        leaving.lines(),
        stretches);
  }

  private static List<Factor> telling(Comparison comparison) {
    return TELLING.stream().filter(comparison.factors()::contains).limit(MOST_FACTORS).toList();
  }

  private static List<FairComparison> fair(
      List<ResultLine> lines,
      List<Factor> factors,
      Map<UUID, Map<Grain, ClothStretch>> stretches,
      Names names,
      Map<MarkedValue, Set<UUID>> aside) {
    return FAIRLY.parallelStream()
        .map(
            outcome ->
                CompareFairly.of(
                    lines,
                    FairQuestion.of(outcome, factors),
                    stretches,
                    names,
                    outOf(aside, outcome.marked()),
                    null))
        .filter(found -> !found.isEmpty())
        .toList();
  }

  private static Set<UUID> outOf(Map<MarkedValue, Set<UUID>> aside, @Nullable MarkedValue marked) {
    return marked == null ? Set.of() : aside.getOrDefault(marked, Set.of());
  }

  private static Map<UUID, List<OddReading>> odd(
      Book book, List<ResultLine> lines, List<ClothReading> readings, Names names, UUID classId) {
    MeasureAlike alike =
        MeasureAlike.of(
            readings.stream().filter(each -> classId.equals(each.classId())).toList(),
            names,
            Set.of(),
            FairQuestion.USUAL_CONFIDENCE);
    Map<UUID, List<OddReading>> byPiece = new HashMap<>();
    for (OddReading each : FindOdd.of(lines, alike, names, book.marks().all())) {
      byPiece.computeIfAbsent(each.targetId(), key -> new ArrayList<>()).add(each);
    }
    return byPiece;
  }
}
