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
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.book.ResultFilter;
import walebook.compare.ClothStretch;
import walebook.compare.CompareBySetting;
import walebook.compare.FairComparison;
import walebook.compare.FairQuestion;
import walebook.compare.FairRow;
import walebook.compare.FairTally;
import walebook.compare.Names;
import walebook.compare.known.KnownSoFar;
import walebook.record.Grain;
import walebook.record.ResultLine;
import walebook.record.SchoolClass;
import walebook.record.Term;

/**
 * Asks the same question of every class and term, in one book or several. The pieces of a school
 * are many: each is read once, tallied, and let go.
 */
public final class AskKnown {
  private static final int AT_ONCE = 1000;

  private final List<Book> books;
  private final Runnable goOn;

  /**
   * Sets it up.
   *
   * @param books at least one, all open; cloths of the same name count as one, and a piece that
   *     several books hold counts once, as the first of them has it
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

  /**
   * Which pieces are asked about.
   *
   * @param clothName null for all cloths
   * @param stitch plain name of the stitch; null for all
   * @param namesHidden true to show students' aliases
   */
  public record Which(@Nullable String clothName, @Nullable String stitch, boolean namesHidden) {
    boolean has(ResultLine piece) {
      return stitch == null || piece.setTo().stitchName().equalsIgnoreCase(stitch);
    }
  }

  /** One book's pieces as they are read. */
  private record Reading(
      Map<UUID, Map<Grain, ClothStretch>> stretches,
      Set<UUID> setAside,
      Map<UUID, FairTally> byClass,
      Set<UUID> cloths) {}

  /** What is known so far, setting by setting; its rows have no dots. */
  public KnownSoFar ask(Which which, FairQuestion question) {
    return ask(which, question, new FairTally(question, false));
  }

  /** The same with every single piece among the dots of its row: all of them are kept. */
  public KnownSoFar askForPieces(Which which, FairQuestion question) {
    return ask(which, question, new FairTally(question, true));
  }

  private KnownSoFar ask(Which which, FairQuestion question, FairTally together) {
    List<KnownSoFar.ClassLine> classes = new ArrayList<>();
    List<Names> names = new ArrayList<>();
    Map<Grain, ClothStretch> ofOne = new HashMap<>();
    Predicate<UUID> first = books.size() == 1 ? piece -> true : new HashSet<UUID>()::add;
    for (Book book : books) {
      Reading read =
          read(
              book,
              piece -> which.has(piece) && first.test(piece.pieceId()),
              which.clothName(),
              question,
              together);
      Names own = Names.of(book, which.namesHidden());
      classes.addAll(classes(book, read, own));
      names.add(own);
      if (which.clothName() != null) {
        read.cloths().forEach(cloth -> readMost(ofOne, read.stretches().get(cloth)));
      }
    }
    classes.sort(
        Comparator.comparing(KnownSoFar.ClassLine::starts)
            .thenComparing(KnownSoFar.ClassLine::className));
    goOn.run();
    return new KnownSoFar(ofOne, classes, together.compare(Names.together(names)));
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
  private static void readMost(
      Map<Grain, ClothStretch> best, @Nullable Map<Grain, ClothStretch> known) {
    if (known != null) {
      known.forEach(
          (grain, stretch) ->
              best.merge(grain, stretch, (one, two) -> one.n() >= two.n() ? one : two));
    }
  }

  private Reading read(
      Book book,
      Predicate<ResultLine> counts,
      @Nullable String clothName,
      FairQuestion question,
      FairTally together) {
    Reading read =
        new Reading(
            Stretches.of(book),
            SetAside.of(book, question.outcome()),
            new HashMap<>(),
            new HashSet<>());
    // Nothing is told apart: a class's pieces stand as one row.
    FairQuestion inClass = question.by(List.of());
    int[] pieces = {0};
    for (ResultFilter filter : filters(book, clothName)) {
      book.results()
          .each(
              filter,
              (piece, done) -> {
                if (pieces[0]++ % AT_ONCE == 0) {
                  goOn.run();
                }
                if (counts.test(piece)) {
                  add(read, piece, inClass, together);
                }
              });
    }
    return read;
  }

  private static void add(
      Reading read, ResultLine piece, FairQuestion inClass, FairTally together) {
    ClothStretch stretch = CompareBySetting.stretch(read.stretches(), piece);
    boolean isAside = read.setAside().contains(piece.pieceId());
    together.add(piece, stretch, isAside);
    read.byClass()
        .computeIfAbsent(piece.classId(), id -> new FairTally(inClass, false))
        .add(piece, stretch, isAside);
    read.cloths().add(piece.setTo().clothId());
  }

  private static List<ResultFilter> filters(Book book, @Nullable String clothName) {
    return clothName == null
        ? List.of(ResultFilter.ALL)
        : book.cloths().all().stream()
            .filter(cloth -> cloth.name().equalsIgnoreCase(clothName.strip()))
            .map(cloth -> ResultFilter.ALL.onCloth(cloth.id()))
            .toList();
  }

  private List<KnownSoFar.ClassLine> classes(Book book, Reading read, Names names) {
    Map<UUID, Term> terms =
        book.terms().all().stream().collect(Collectors.toMap(Term::id, each -> each));
    String called = book.info().name();
    List<KnownSoFar.ClassLine> classes = new ArrayList<>();
    for (SchoolClass each : book.classes().all()) {
      FairTally own = read.byClass().get(each.id());
      Term term = terms.get(each.termId());
      if (own != null && term != null) {
        goOn.run();
        classes.add(line(called, each, term, own.compare(names)));
      }
    }
    return classes;
  }

  private static KnownSoFar.ClassLine line(
      String book, SchoolClass in, Term term, FairComparison found) {
    FairRow row = found.rows().isEmpty() ? null : found.rows().get(0);
    return new KnownSoFar.ClassLine(
        book,
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
