package walebook.compare;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.record.ResultLine;
import walebook.record.SeamEnd;
import walebook.record.SetTo;
import walebook.statistics.Additive;
import walebook.statistics.Counted;
import walebook.statistics.Moments;
import walebook.statistics.Shares;

/**
 * One question over pieces that are read one after the other and not kept: for each setting how
 * often each value came, and for each student in it number, mean and scatter. It finds what {@link
 * CompareFairly} finds of the same pieces.
 */
public final class FairTally {
  private final FairQuestion question;
  private final boolean keeps;
  private final boolean byPiece;
  private final Map<List<String>, Lot> lots = new LinkedHashMap<>();

  /** Pieces read in one go share the very same settings. */
  private final IdentityHashMap<SetTo, Lot> known = new IdentityHashMap<>(4);

  private final Map<UUID, Integer> numbers = new HashMap<>();
  private final List<UUID> students = new ArrayList<>();
  private final Shares shares = new Shares();
  private final Set<UUID> cloths = new HashSet<>();
  private int pieces;
  private int setAside;
  private int without;
  private int noStretch;

  /**
   * Begins with none.
   *
   * @param question not within machines, of which pieces tell too many
   * @param keeps true to keep the single pieces all the same, for who lists them
   */
  public FairTally(FairQuestion question, boolean keeps) {
    if (question.withinMachine()) {
      throw new IllegalArgumentException("single pieces are needed for " + question);
    }
    this.question = question;
    this.keeps = keeps;
    byPiece = question.factors().contains(Factor.STUDENT);
  }

  /** What has one level of every factor that was asked about. */
  private static final class Lot {
    private final int number;
    private final ResultLine first;
    private final Counted values = new Counted();
    private final Counted lowerBounds = new Counted();
    private final List<ResultLine> kept = new ArrayList<>();
    private final List<Double> keptValues = new ArrayList<>();

    Lot(int number, ResultLine first) {
      this.number = number;
      this.first = first;
    }
  }

  /**
   * One more piece.
   *
   * @param stretch of its cloth along its grain; null when not known
   * @param isAside true when the tutor set its value aside
   */
  public void add(ResultLine piece, @Nullable ClothStretch stretch, boolean isAside) {
    Outcome outcome = question.outcome();
    PieceResult result = PieceResult.of(piece, stretch);
    Double value = outcome.value(result);
    if (value == null) {
      without++;
      noStretch += outcome.lacksStretch(piece) ? 1 : 0;
      return;
    }
    if (isAside) {
      setAside++;
      return;
    }
    pieces++;
    Lot lot = lot(piece);
    int student = numbers.computeIfAbsent(piece.studentId(), this::number);
    if (outcome.isOfSeam() && result.held()) {
      lot.lowerBounds.add(value);
      shares.add(student, lot.number, new Moments());
    } else {
      lot.values.add(value);
      shares.add(student, lot.number, value);
    }
    if (keeps) {
      lot.kept.add(piece);
      lot.keptValues.add(value);
    }
  }

  private int number(UUID student) {
    students.add(student);
    return students.size() - 1;
  }

  private Lot lot(ResultLine piece) {
    Lot lot = byPiece ? null : known.get(piece.setTo());
    if (lot == null) {
      List<String> levels = question.factors().stream().map(each -> each.level(piece)).toList();
      lot = lots.computeIfAbsent(levels, key -> new Lot(lots.size(), piece));
      cloths.add(piece.setTo().clothId());
      if (!byPiece) {
        known.put(piece.setTo(), lot);
      }
    }
    return lot;
  }

  /**
   * What they come to.
   *
   * @param names of students, cloths and machines
   */
  public FairComparison compare(Names names) {
    IdentityHashMap<ResultLine, Lot> byFirst = new IdentityHashMap<>();
    lots.values().forEach(lot -> byFirst.put(lot.first, lot));
    Settings settings =
        Settings.of(
            lots.values().stream().map(lot -> lot.first).toList(), question.factors(), names);
    Map<List<String>, List<Lot>> inCell = new LinkedHashMap<>();
    settings
        .cells()
        .forEach(
            (levels, firsts) ->
                inCell.put(
                    levels,
                    firsts.stream().map(one -> Objects.requireNonNull(byFirst.get(one))).toList()));
    Map<List<String>, CompareCells.Cell> cells = new LinkedHashMap<>();
    Map<List<String>, BitSet> sewers = sewers(inCell);
    inCell.forEach(
        (levels, some) -> cells.put(levels, cell(some, in(sewers, levels).cardinality(), names)));
    CompareCells.Count count =
        new CompareCells.Count(
            cloths.size(), pieces, students.size(), setAside, without, noStretch);
    return new CompareCells(question, settings, cells)
        .compare(
            (settled, each) -> fit(inCell, settled, each),
            some -> called(some.stream().map(each -> in(sewers, each)).toList(), names),
            count,
            null);
  }

  /** For each lot which of some settings it belongs to, by number; below 0 where to none. */
  private int[] places(Iterable<List<Lot>> settings) {
    int[] places = new int[lots.size()];
    Arrays.fill(places, -1);
    int next = 0;
    for (List<Lot> some : settings) {
      for (Lot lot : some) {
        places[lot.number] = next;
      }
      next++;
    }
    return places;
  }

  private CompareCells.Cell cell(List<Lot> some, int sewers, Names names) {
    Counted values = new Counted();
    Counted lowerBounds = new Counted();
    List<Dot> dots = new ArrayList<>();
    for (Lot lot : some) {
      values.addAll(lot.values);
      lowerBounds.addAll(lot.lowerBounds);
      for (int i = 0; i < lot.kept.size(); i++) {
        dots.add(dot(lot.kept.get(i), lot.keptValues.get(i), names));
      }
    }
    dots.sort(Dot.BY_VALUE);
    boolean averaged = lowerBounds.isEmpty() && !question.outcome().isRate();
    return new CompareCells.Cell(
        values,
        lowerBounds,
        sewers,
        averaged ? values.moments().summary() : null,
        Collections.unmodifiableList(dots));
  }

  private Dot dot(ResultLine piece, double value, Names names) {
    return new Dot(
        piece.pieceId(),
        piece.code(),
        piece.studentId(),
        names.of(piece.studentId()),
        value,
        question.outcome().isOfSeam() && piece.end() == SeamEnd.HELD);
  }

  private Additive fit(
      Map<List<String>, List<Lot>> inCell, List<List<String>> settled, double each) {
    Shares exact = shares.atLevels(places(settled.stream().map(one -> in(inCell, one)).toList()));
    return Additive.ofShares(
        exact,
        students.stream().map(UUID::toString).toList(),
        settled.stream().map(CompareCells::name).toList(),
        question.confidence(),
        each);
  }

  /** Who sewed each setting, by number. */
  private Map<List<String>, BitSet> sewers(Map<List<String>, List<Lot>> inCell) {
    BitSet[] ofLot = new BitSet[lots.size()];
    Map<List<String>, BitSet> sewers = new LinkedHashMap<>();
    inCell.forEach(
        (levels, some) -> {
          BitSet own = new BitSet(students.size());
          some.forEach(lot -> ofLot[lot.number] = own);
          sewers.put(levels, own);
        });
    shares.each((student, lot) -> ofLot[lot].set(student));
    return sewers;
  }

  private List<String> called(List<BitSet> some, Names names) {
    BitSet all = new BitSet();
    some.forEach(all::or);
    return all.stream()
        .mapToObj(student -> names.of(students.get(student)))
        .distinct()
        .sorted()
        .toList();
  }

  private static <T> T in(Map<List<String>, T> settings, List<String> levels) {
    return Objects.requireNonNull(settings.get(levels));
  }
}
