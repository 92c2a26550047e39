package walebook.act.classroom;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.book.ResultFilter;
import walebook.compare.ClothStretch;
import walebook.compare.CompareFairly;
import walebook.compare.FactorTables;
import walebook.compare.FairComparison;
import walebook.compare.FairQuestion;
import walebook.compare.MeasuringError;
import walebook.compare.Names;
import walebook.compare.Outcome;
import walebook.compare.alike.Repeatability;
import walebook.compare.odd.OddLots;
import walebook.compare.odd.OddReading;
import walebook.record.Grain;
import walebook.record.MarkedValue;
import walebook.record.ResultLine;
import walebook.record.StretchReading;

/** Compares the settings of one or several classes with allowance for who sewed what. */
public final class CompareFair {
  private static final int STANDOUTS = 3;

  private final Book book;

  public CompareFair(Book book) {
    this.book = book;
  }

  /**
   * Whose pieces are asked about.
   *
   * @param classIds empty for every class of the book
   * @param lessonId null for all lessons and pieces without one
   * @param clothId null for all cloths
   * @param namesHidden true to show students' aliases
   */
  public record Which(
      List<UUID> classIds, @Nullable UUID lessonId, @Nullable UUID clothId, boolean namesHidden) {
    public Which {
      classIds = List.copyOf(classIds);
    }

    ResultFilter filter() {
      return ResultFilter.ALL.ofClasses(classIds).ofLesson(lessonId).onCloth(clothId);
    }
  }

  /**
   * What was found.
   *
   * @param standouts the best and worst pieces with the keys of their photos
   */
  public record Found(FairComparison comparison, FairComparison.Standouts standouts) {}

  /** Everything that the question leans on, read once. */
  private record Facts(
      List<ResultLine> lines,
      Map<UUID, Map<Grain, ClothStretch>> stretches,
      Names names,
      Set<UUID> setAside,
      @Nullable MeasuringError measuring) {}

  /** Reads the pieces and compares them. */
  public Found compare(Which which, FairQuestion question) {
    Facts facts = facts(which, question.outcome());
    FairComparison found =
        CompareFairly.of(
            facts.lines(),
            question,
            facts.stretches(),
            facts.names(),
            facts.setAside(),
            facts.measuring());
    FairComparison.Standouts some =
        found.standouts(STANDOUTS, odd(which, facts, question.outcome()));
    return new Found(found, some.with(book.photos().idsOf(some.pieceIds())));
  }

  /** Pieces whose value is odd and that nobody has looked at yet. */
  private Set<UUID> odd(Which which, Facts facts, Outcome outcome) {
    MarkedValue marked = outcome.marked();
    if (marked == null || outcome.isRate()) {
      return Set.of();
    }
    List<ResultLine> whole = AskOdd.whole(book, which, facts.lines());
    OddLots lots = OddLots.of(whole, facts.names(), book.marks().all());
    return facts.lines().stream()
        .map(line -> lots.of(line, marked))
        .filter(Objects::nonNull)
        .filter(odd -> !odd.isLookedAt())
        .map(OddReading::targetId)
        .collect(Collectors.toUnmodifiableSet());
  }

  /** The same question taken apart: factor by factor, and every two of them. */
  public FactorTables tables(Which which, FairQuestion question) {
    Facts facts = facts(which, question.outcome());
    return FactorTables.of(
        facts.lines(),
        question,
        facts.stretches(),
        facts.names(),
        facts.setAside(),
        facts.measuring());
  }

  private Facts facts(Which which, Outcome outcome) {
    List<ResultLine> lines = book.results().list(which.filter());
    Names names = Names.of(book, which.namesHidden(), lines);
    boolean seam = outcome.isOfSeam();
    List<StretchReading> readings = seam ? Stretches.readings(book, lines) : List.of();
    Set<UUID> aside = seam ? Stretches.setAside(book) : Set.of();
    Map<UUID, Map<Grain, ClothStretch>> stretches = Stretches.ofReadings(readings, aside);
    Double clothStretch = Stretches.mean(stretches, lines);
    return new Facts(
        lines,
        stretches,
        names,
        SetAside.of(book, outcome),
        MeasuringError.of(outcome, Repeatability.sd(readings, aside), clothStretch));
  }
}
