package walebook.act.classroom;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.book.ResultFilter;
import walebook.compare.ClothStretch;
import walebook.compare.CompareFairly;
import walebook.compare.FairComparison;
import walebook.compare.FairQuestion;
import walebook.compare.FairRow;
import walebook.compare.Names;
import walebook.compare.known.KnownSoFar;
import walebook.record.Grain;
import walebook.record.ResultLine;
import walebook.record.SchoolClass;
import walebook.record.Term;

/** Asks the same question of every class and term, in one book or several. */
public final class AskKnown {
  private static final int AT_ONCE = 1000;

  private final List<Book> books;
  private final Runnable goOn;

  /**
   * Sets it up.
   *
   * @param books at least one, all open; cloths of the same name count as one
   */
  public AskKnown(List<Book> books) {
    this(books, () -> {});
  }

  /**
   * The same where somebody may change their mind: all terms of a school can be many pieces.
   *
   * @param goOn asked again and again while it is worked out; throws to stop it
   */
  public AskKnown(List<Book> books, Runnable goOn) {
    if (books.isEmpty()) {
      throw new IllegalArgumentException("books must hold at least one");
    }
    this.books = List.copyOf(books);
    this.goOn = goOn;
  }

  private record Facts(
      List<ResultLine> lines,
      Map<UUID, Map<Grain, ClothStretch>> stretches,
      Names names,
      Set<UUID> setAside) {}

  /**
   * What is known so far.
   *
   * @param clothName null for all cloths
   * @param stitch plain name of the stitch; null for all
   */
  public KnownSoFar ask(
      FairQuestion question,
      @Nullable String clothName,
      @Nullable String stitch,
      boolean namesHidden) {
    List<ResultLine> pieces = new ArrayList<>();
    Map<UUID, Map<Grain, ClothStretch>> stretches = new HashMap<>();
    List<Names> names = new ArrayList<>();
    Set<UUID> setAside = new HashSet<>();
    List<KnownSoFar.ClassLine> classes = new ArrayList<>();
    for (Book book : books) {
      List<ResultLine> lines = lines(book, clothName, stitch);
      Facts own =
          new Facts(
              lines,
              Stretches.of(book, lines),
              Names.of(book, namesHidden, lines),
              SetAside.of(book, question.outcome()));
      classes.addAll(classes(book, own, question));
      pieces.addAll(own.lines());
      stretches.putAll(own.stretches());
      names.add(own.names());
      setAside.addAll(own.setAside());
    }
    // Once: a school's students are many, and every class is compared.
    Facts all = new Facts(pieces, stretches, Names.together(names), setAside);
    classes.sort(
        Comparator.comparing(KnownSoFar.ClassLine::starts)
            .thenComparing(KnownSoFar.ClassLine::className));
    return new KnownSoFar(clothName == null ? Map.of() : ofOne(all), classes, fair(all, question));
  }

  /**
   * Plain names of the stitches that were sewn, in the alphabet's order.
   *
   * @param clothName null for all cloths
   */
  public List<String> stitches(@Nullable String clothName) {
    Set<String> names = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
    for (Book book : books) {
      goOn.run();
      filters(book, clothName).forEach(each -> names.addAll(book.results().stitches(each)));
    }
    names.remove("");
    return List.copyOf(names);
  }

  /** The stretch of the one cloth, from the book that read it most. */
  private static Map<Grain, ClothStretch> ofOne(Facts all) {
    Map<Grain, ClothStretch> best = new HashMap<>();
    all.stretches()
        .values()
        .forEach(
            each ->
                each.forEach(
                    (grain, known) ->
                        best.merge(grain, known, (one, two) -> one.n() >= two.n() ? one : two)));
    return best;
  }

  private static FairComparison fair(Facts facts, FairQuestion question) {
    return CompareFairly.of(
        facts.lines(), question, facts.stretches(), facts.names(), facts.setAside(), null);
  }

  private List<ResultLine> lines(Book book, @Nullable String clothName, @Nullable String stitch) {
    List<ResultLine> found = new ArrayList<>();
    int[] read = {0};
    for (ResultFilter filter : filters(book, clothName)) {
      book.results()
          .each(
              filter,
              (line, done) -> {
                if (read[0]++ % AT_ONCE == 0) {
                  goOn.run();
                }
                if (stitch == null || line.setTo().stitchName().equalsIgnoreCase(stitch)) {
                  found.add(line);
                }
              });
    }
    found.sort(Comparator.comparing(ResultLine::sewnOn).thenComparing(ResultLine::pieceId));
    return found;
  }

  private static List<ResultFilter> filters(Book book, @Nullable String clothName) {
    return clothName == null
        ? List.of(ResultFilter.ALL)
        : book.cloths().all().stream()
            .filter(cloth -> cloth.name().equalsIgnoreCase(clothName.strip()))
            .map(cloth -> ResultFilter.ALL.onCloth(cloth.id()))
            .toList();
  }

  private List<KnownSoFar.ClassLine> classes(Book book, Facts facts, FairQuestion question) {
    Map<UUID, Term> terms = new HashMap<>();
    book.terms().all().forEach(each -> terms.put(each.id(), each));
    Map<UUID, List<ResultLine>> byClass =
        facts.lines().stream().collect(Collectors.groupingBy(ResultLine::classId));
    List<KnownSoFar.ClassLine> classes = new ArrayList<>();
    for (SchoolClass each : book.classes().all()) {
      List<ResultLine> own = byClass.get(each.id());
      Term term = terms.get(each.termId());
      if (own != null && term != null) {
        goOn.run();
        Facts part = new Facts(own, facts.stretches(), facts.names(), facts.setAside());
        // Nothing is told apart: the class's pieces stand as one row.
        classes.add(line(book, each, term, fair(part, question.by(List.of()))));
      }
    }
    return classes;
  }

  private static KnownSoFar.ClassLine line(
      Book book, SchoolClass in, Term term, FairComparison found) {
    FairRow row = found.rows().isEmpty() ? null : found.rows().get(0);
    return new KnownSoFar.ClassLine(
        book.info().name(),
        in.name(),
        term.name(),
        term.startsOn(),
        found.pieces(),
        found.students(),
        found.setAside(),
        row == null ? null : row.raw(),
        row == null || row.lasting() == null ? null : row.lasting().median(),
        row == null ? null : row.held());
  }
}
