package walebook.compare.known;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import walebook.record.Parent;
import walebook.record.PieceOutcome;
import walebook.record.TestPiece;
import walebook.statistics.Lifetime;
import walebook.statistics.ProductLimit;
import walebook.statistics.Proportion;
import walebook.statistics.TwoRates;
import walebook.working.Verdict;

/**
 * How one student grows: pieces needed until one was good, and how often the first was.
 *
 * <p>A rule of ours: good is what looks good (said to be kept, or of grade 4 or 5 where nobody
 * said) and whose seam, where it was pulled, met what is asked of it by its own verdict. Where that
 * isn't known, as with a piece that was never pulled, looks alone count.
 *
 * @param periods one for each class or term, the earliest first
 * @param notJudged tries of which no piece was judged, left out
 */
public record Growth(List<Period> periods, int notJudged) {
  /** A piece of which it wasn't said whether to keep it looks good from this grade on. */
  public static final int GOOD_GRADE = 4;

  /** A rule of ours: fewer tries than these at a piece number tell nothing of half of them. */
  private static final int FEWEST = 3;

  private static final double CONFIDENCE = 0.95;

  /**
   * A time that is looked at by itself.
   *
   * @param name the class's or term's
   * @param tries each chain, the earliest first
   * @param firstTimeRight of how many the first piece was good
   * @param half by how many pieces half of the tries came to a good one, tries without one counted
   *     as going on; null when less than half did, or when {@code tooFew}
   * @param tooFew true when half came to a good one, but by a piece number that fewer than three
   *     tries reached
   */
  public record Period(
      String name,
      List<Attempts> tries,
      Proportion firstTimeRight,
      @Nullable Double half,
      boolean tooFew) {
    public Period {
      tries = List.copyOf(tries);
    }

    /** How many tries really came to a good piece by this piece number. */
    long cameBy(double piece) {
      return tries.stream().filter(each -> each.good() && each.untilGood() <= piece).count();
    }

    public int pieces() {
      return tries.stream().mapToInt(each -> each.pieces().size()).sum();
    }
  }

  public Growth {
    periods = List.copyOf(periods);
  }

  /** First-time-right of the last period against the first, null with fewer than two. */
  public @Nullable TwoRates lastAgainstFirst() {
    return periods.size() < 2
        ? null
        : new TwoRates(
            periods.get(periods.size() - 1).firstTimeRight(), periods.get(0).firstTimeRight());
  }

  /**
   * Sorts a student's pieces into tries and those into periods.
   *
   * @param seam the verdict on a piece's seam; not known where it was never pulled
   * @param period names the period of a class
   */
  public static Growth of(
      List<TestPiece> pieces, Function<TestPiece, Verdict> seam, Function<UUID, String> period) {
    List<TestPiece> inOrder =
        pieces.stream()
            .sorted(
                Comparator.comparing((TestPiece each) -> each.whose().sewnOn())
                    .thenComparing(TestPiece::id))
            .toList();
    Map<UUID, List<TestPiece>> chains = chains(inOrder);
    Map<String, List<Attempts>> sorted = new HashMap<>();
    int notJudged = 0;
    for (List<TestPiece> chain : chains.values()) {
      List<TestPiece> judged = chain.stream().filter(Growth::isJudged).toList();
      if (judged.isEmpty()) {
        notJudged++;
        continue;
      }
      Attempts tries = attempts(chain, seam);
      sorted.computeIfAbsent(period.apply(tries.classId()), key -> new ArrayList<>()).add(tries);
    }
    List<Period> periods = new ArrayList<>();
    sorted.forEach((name, tries) -> periods.add(period(name, tries)));
    periods.sort(Comparator.comparing(Growth::began).thenComparing(Period::name));
    return new Growth(periods, notJudged);
  }

  private static LocalDate began(Period period) {
    return period.tries().get(0).began();
  }

  private static Period period(String name, List<Attempts> tries) {
    List<Attempts> inOrder = tries.stream().sorted(Comparator.comparing(Attempts::began)).toList();
    int right = (int) inOrder.stream().filter(Attempts::firstTimeRight).count();
    ProductLimit limit =
        ProductLimit.of(
            inOrder.stream().map(each -> new Lifetime(each.untilGood(), each.good())).toList(),
            CONFIDENCE);
    Double half = limit.median();
    boolean tooFew =
        half != null && inOrder.stream().filter(each -> each.untilGood() >= half).count() < FEWEST;
    return new Period(
        name, inOrder, new Proportion(right, inOrder.size()), tooFew ? null : half, tooFew);
  }

  /** Pieces by the first of their chain; a parent that is not among them begins no chain. */
  private static Map<UUID, List<TestPiece>> chains(List<TestPiece> inOrder) {
    Map<UUID, TestPiece> byId = new HashMap<>();
    inOrder.forEach(each -> byId.put(each.id(), each));
    Map<UUID, List<TestPiece>> chains = new TreeMap<>();
    for (TestPiece each : inOrder) {
      chains.computeIfAbsent(root(each, byId), key -> new ArrayList<>()).add(each);
    }
    return chains;
  }

  private static UUID root(TestPiece piece, Map<UUID, TestPiece> byId) {
    TestPiece at = piece;
    Set<UUID> seen = new HashSet<>();
    while (seen.add(at.id())) {
      Parent parent = at.parent();
      TestPiece before = parent == null ? null : byId.get(parent.pieceId());
      if (before == null) {
        break;
      }
      at = before;
    }
    return at.id();
  }

  private static boolean isJudged(TestPiece piece) {
    return piece.seen().outcome() != null || piece.seen().grade() != null;
  }

  private static boolean isGood(TestPiece piece, Function<TestPiece, Verdict> seam) {
    return looksGood(piece)
        && switch (seam.apply(piece)) {
          case MET, NOT_KNOWN -> true;
          case NOT_MET, TOO_CLOSE -> false;
        };
  }

  private static boolean looksGood(TestPiece piece) {
    PieceOutcome outcome = piece.seen().outcome();
    Integer grade = piece.seen().grade();
    return outcome == null ? grade != null && grade >= GOOD_GRADE : outcome == PieceOutcome.KEEP;
  }

  private static Attempts attempts(List<TestPiece> chain, Function<TestPiece, Verdict> seam) {
    int first = -1;
    for (int i = 0; i < chain.size() && first < 0; i++) {
      first = isGood(chain.get(i), seam) ? i : -1;
    }
    return new Attempts(
        chain.stream().map(TestPiece::id).toList(),
        chain.get(0).whose().classId(),
        chain.get(0).whose().sewnOn(),
        first < 0 ? chain.size() : first + 1,
        first >= 0);
  }
}
