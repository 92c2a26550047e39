package walebook.compare;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import walebook.statistics.Additivity;

/**
 * Settings compared with allowance for who sewed what.
 *
 * @param factors what rows are told apart by; each has more than one level
 * @param same factors of the question with one level in all pieces
 * @param rows one for each setting with a value, in the order of its levels
 * @param within what both settings of a pair share: the cloth, and the grain unless it is all that
 *     they differ in; empty where every two are compared
 * @param groups settings that hang together through shared students, told cloth by cloth where
 *     pairs are kept to one; empty where nothing is adjusted
 * @param pairs every two settings that are compared
 * @param cloths on how many cloths the pieces lie
 * @param pieces how many pieces have a value and count
 * @param students how many students sewed them
 * @param setAside how many were left out because the tutor set their value aside
 * @param without how many have no value of this outcome
 * @param noStretch how many of these were pulled, but their cloth's stretch isn't known along that
 *     grain
 * @param residualSd scatter left when student and setting are allowed for; null when not known
 * @param additivity whether settings do the same in everybody's hands; null when not known
 * @param measuring what measuring alone makes; null when not known
 */
public record FairComparison(
    FairQuestion question,
    List<Factor> factors,
    List<Comparison.FixedLevel> same,
    List<FairRow> rows,
    List<Factor> within,
    List<Group> groups,
    List<FairPair> pairs,
    int cloths,
    int pieces,
    int students,
    int setAside,
    int without,
    int noStretch,
    @Nullable Double residualSd,
    @Nullable Additivity additivity,
    @Nullable MeasuringError measuring) {

  /**
   * Settings that can be compared with each other.
   *
   * @param cloth theirs, where pairs are kept to one cloth; else empty
   * @param settings levels of each
   * @param students who sewed them, by name or alias
   */
  public record Group(String cloth, List<List<String>> settings, List<String> students) {
    public Group {
      settings = List.copyOf(settings);
      students = List.copyOf(students);
    }
  }

  public FairComparison {
    factors = List.copyOf(factors);
    same = List.copyOf(same);
    rows = List.copyOf(rows);
    within = List.copyOf(within);
    groups = List.copyOf(groups);
    pairs = List.copyOf(pairs);
  }

  /** How many pieces were asked about: those that count and those left out. */
  public int logged() {
    return pieces + setAside + without;
  }

  /** True when a setting's pieces lie on several cloths, so that cloth and setting stand as one. */
  public boolean mixesCloths() {
    return cloths > 1 && !factors.contains(Factor.CLOTH);
  }

  /** True when no piece has a value. */
  public boolean isEmpty() {
    return pieces == 0;
  }

  /** The pair in this order, or null when one of them is not compared. */
  public @Nullable FairPair pair(List<String> first, List<String> second) {
    for (FairPair each : pairs) {
      if (each.first().equals(first) && each.second().equals(second)) {
        return each;
      }
      if (each.first().equals(second) && each.second().equals(first)) {
        return each.turned();
      }
    }
    return null;
  }

  public @Nullable FairRow row(List<String> levels) {
    return rows.stream().filter(row -> row.levels().equals(levels)).findFirst().orElse(null);
  }

  /** The settings of which one piece alone counts. */
  public Set<List<String>> ofOnePiece() {
    return rows.stream()
        .filter(row -> row.pieces() == 1)
        .map(FairRow::levels)
        .collect(Collectors.toUnmodifiableSet());
  }

  /** Where settings fall into groups that nothing compares: cloths, or one empty name for all. */
  Set<String> apartOn() {
    Ground ground = new Ground(factors);
    return pairs.stream()
        .filter(pair -> pair.size() == FairPair.Size.NOT_COMPARABLE)
        .map(pair -> ground.cloth(pair.first()))
        .collect(Collectors.toUnmodifiableSet());
  }

  /** All pieces that count, the best first. */
  public List<Dot> bestFirst() {
    return bestFirst(rows);
  }

  private List<Dot> bestFirst(List<FairRow> some) {
    Outcome outcome = question.outcome();
    return some.stream()
        .flatMap(row -> row.dots().stream())
        .sorted(
            Comparator.comparingDouble((Dot dot) -> -outcome.goodness(dot.value()))
                .thenComparing(Dot::atLeast, Comparator.reverseOrder())
                .thenComparing(Dot::code))
        .toList();
  }

  /**
   * Pieces of which photos are wanted: the best few and the worst few, none twice. A piece that
   * only held may lie above any other, so it is never among the worst; nor is one as good as one of
   * the best. None at all where nothing is worse than the best, for a rate, where all that held are
   * alike, and of a cloth on which settings fall into groups that nothing compares.
   *
   * @param odd pieces that are not praised or blamed before somebody looked at them
   */
  public Standouts standouts(int each, Set<UUID> odd) {
    Ground ground = new Ground(factors);
    Set<String> apart = apartOn();
    List<FairRow> compared =
        rows.stream().filter(row -> !apart.contains(ground.cloth(row.levels()))).toList();
    List<Dot> all = question.outcome().isRate() ? List.of() : bestFirst(compared);
    Standouts open = standouts(each, all);
    Standouts rest =
        standouts(each, all.stream().filter(dot -> !odd.contains(dot.pieceId())).toList());
    List<Dot> first =
        Stream.concat(open.best.stream(), open.worst.stream())
            .filter(dot -> odd.contains(dot.pieceId()))
            .toList();
    List<Dot> counted =
        bestFirst().stream()
            .filter(dot -> odd.contains(dot.pieceId()) && !first.contains(dot))
            .toList();
    List<Dot> unseen = Stream.concat(first.stream(), counted.stream()).toList();
    return new Standouts(rest.best, rest.worst, first, unseen, Map.of());
  }

  private Standouts standouts(int each, List<Dot> all) {
    Outcome outcome = question.outcome();
    List<Dot> best = all.subList(0, Math.min(each, (all.size() + 1) / 2));
    double least = best.isEmpty() ? 0 : outcome.goodness(best.get(best.size() - 1).value());
    List<Dot> worse =
        all.stream()
            .skip(best.size())
            .filter(dot -> !dot.atLeast() && outcome.goodness(dot.value()) < least)
            .toList();
    List<Dot> last = new ArrayList<>(worse.subList(Math.max(0, worse.size() - each), worse.size()));
    Collections.reverse(last);
    return new Standouts(last.isEmpty() ? List.of() : best, last, List.of(), List.of(), Map.of());
  }

  /**
   * The best and the worst pieces.
   *
   * @param best the best first
   * @param worst the worst first
   * @param odd odd ones that would be among them, to be looked at first
   * @param unseen every odd one that counts in the comparison, those that would be among them first
   * @param photos keys of their photos, by piece; pieces without one are not in it
   */
  public record Standouts(
      List<Dot> best,
      List<Dot> worst,
      List<Dot> odd,
      List<Dot> unseen,
      Map<UUID, List<UUID>> photos) {
    public Standouts {
      odd = List.copyOf(odd);
      unseen = List.copyOf(unseen);
      best = List.copyOf(best);
      worst = List.copyOf(worst);
      photos = Map.copyOf(photos);
    }

    public List<UUID> pieceIds() {
      return Stream.of(best, worst, odd).flatMap(List::stream).map(Dot::pieceId).toList();
    }

    public Standouts with(Map<UUID, List<UUID>> found) {
      return new Standouts(best, worst, odd, unseen, found);
    }
  }
}
