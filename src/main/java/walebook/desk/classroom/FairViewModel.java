package walebook.desk.classroom;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import walebook.act.classroom.CompareFair;
import walebook.act.classroom.SettingWords;
import walebook.book.Book;
import walebook.compare.Dot;
import walebook.compare.FactorTables;
import walebook.compare.FairComparison;
import walebook.compare.FairFindings;
import walebook.compare.FairPair;
import walebook.compare.FairQuestion;
import walebook.compare.FairRow;
import walebook.compare.Outcome;
import walebook.desk.common.Background.Progress;
import walebook.drawing.Drawing;
import walebook.drawing.IntervalBar;
import walebook.drawing.ValueBar;
import walebook.quantity.Show;
import walebook.record.PieceCode;
import walebook.statistics.Interval;
import walebook.words.Words;

/** Which settings work, and how sure are we: compared with allowance for who sewed what. */
public final class FairViewModel extends AskingModel<FairFound> {
  /** More than these make no sentence. */
  private static final int MOST_NAMED = 6;

  private static final double LEAST_SHOWN = 0.001;

  public FairViewModel(FiltersViewModel filters) {
    super(filters);
  }

  @Override
  Asking.Work<FairFound> ask(CompareFair.Which which) {
    FairQuestion question = filters().question();
    boolean pValues = filters().pValuesProperty().get();
    Words words = words();
    Book book = session().book();
    return progress -> find(book, words, which, question, pValues, progress);
  }

  /** Asks about held or gave, which every pulled piece has. */
  void askHeld() {
    filters().outcomeProperty().set(Outcome.HELD);
  }

  /** The whole photos of the best and worst pieces, by piece; read away from the window. */
  Map<UUID, byte[]> photos(FairFound found) {
    Book book = session().book();
    Map<UUID, byte[]> photos = new HashMap<>();
    for (UUID piece : found.photos().keySet()) {
      book.photos().ofPiece(piece).stream()
          .findFirst()
          .ifPresent(photo -> photos.put(piece, book.photos().image(photo.id())));
    }
    return photos;
  }

  /** On how much a comparison rests, and how much of it is open. */
  static String foot(Words words, FairFound found) {
    List<FairPair> pairs = found.comparison().pairs();
    long open = pairs.stream().filter(pair -> pair.size() == FairPair.Size.CANT_TELL).count();
    int pieces = found.comparison().rows().stream().mapToInt(FairRow::pieces).sum();
    int aside = found.comparison().setAside();
    return pairs.isEmpty()
        ? words.say("desk.class.board.foot", pieces, aside)
        : words.say("desk.class.board.foot-pairs", pieces, aside, open, pairs.size());
  }

  /** One piece's code and value, as a link reads. */
  static String piece(Words words, Dot dot, Outcome outcome) {
    String code = PieceCode.spoken(dot.code());
    if (outcome.isRate()) {
      return words.say(
          dot.value() > 0 ? "desk.class.dot.held" : "desk.class.dot.gave", code, dot.who());
    }
    String value = value(dot.value(), outcome);
    return words.say(
        dot.atLeast() ? "desk.class.dot.at-least" : "desk.class.dot.value", code, dot.who(), value);
  }

  private static FairFound find(
      Book book,
      Words words,
      CompareFair.Which which,
      FairQuestion question,
      boolean pValues,
      Progress progress) {
    CompareFair act = new CompareFair(book);
    CompareFair.Found found = act.compare(which, question);
    FairComparison comparison = found.comparison();
    progress.at(1.0 / 3);
    FactorTables tables =
        question.factors().size() < 2
            ? new FactorTables(List.of(), List.of())
            : act.tables(which, question);
    progress.at(2.0 / 3);
    FairDrawn drawn = new FairDrawn(words);
    List<String> says = new ArrayList<>();
    FairFindings.of(comparison, levels -> drawn.setting(comparison.factors(), levels))
        .forEach(each -> says.add(words.say(each)));
    List<Dot> unseen = found.standouts().unseen();
    if (unseen.size() > MOST_NAMED) {
      String some = codes(unseen.subList(0, MOST_NAMED));
      says.add(words.say("desk.class.fair.odd-many", unseen.size(), some));
    } else if (!unseen.isEmpty()) {
      says.add(words.say("desk.class.fair.odd", codes(unseen)));
    }
    String same = new SettingWords(words).same(comparison.same());
    return new FairFound(
        comparison,
        says,
        same.isEmpty() ? "" : words.say("desk.class.same", same),
        rows(comparison, drawn, words),
        pairs(comparison, drawn, words),
        drawn.plot(comparison),
        drawn.single(tables),
        new AgainstNumber(words, drawn).of(tables),
        drawn.grids(tables, question.outcome()),
        standouts(found.standouts().best(), question.outcome(), words),
        standouts(found.standouts().worst(), question.outcome(), words),
        standouts(found.standouts().odd(), question.outcome(), words),
        photos(book, found.standouts()),
        pValues);
  }

  private static String codes(List<Dot> dots) {
    return dots.stream().map(dot -> PieceCode.spoken(dot.code())).collect(Collectors.joining(", "));
  }

  private static List<FairFound.Standout> standouts(List<Dot> dots, Outcome outcome, Words words) {
    return dots.stream()
        .map(dot -> new FairFound.Standout(dot, piece(words, dot, outcome)))
        .toList();
  }

  private static Map<UUID, byte[]> photos(Book book, FairComparison.Standouts some) {
    Map<UUID, byte[]> photos = new HashMap<>();
    for (UUID piece : some.photos().keySet()) {
      book.photos().ofPiece(piece).stream()
          .findFirst()
          .ifPresent(photo -> photos.put(piece, photo.thumbnail()));
    }
    return photos;
  }

  private static List<FairFound.Row> rows(FairComparison comparison, FairDrawn drawn, Words words) {
    Outcome outcome = comparison.question().outcome();
    double confidence = comparison.question().confidence();
    List<ValueBar> bars = ValueBar.of(drawn.rows(comparison));
    List<FairFound.Row> rows = new ArrayList<>();
    for (int i = 0; i < comparison.rows().size(); i++) {
      FairRow row = comparison.rows().get(i);
      FairDrawn.Middle middle = FairDrawn.Middle.of(row, outcome, confidence);
      Drawing bar = outcome.isRate() ? rate(row, confidence) : bars.get(i);
      rows.add(
          new FairFound.Row(
              drawn.setting(comparison.factors(), row.levels()),
              row,
              raw(row, outcome, words),
              middle(row, middle, words),
              limits(middle.low(), middle.high()),
              bar));
    }
    return rows;
  }

  private static String raw(FairRow row, Outcome outcome, Words words) {
    if (outcome.isRate() && row.held() != null) {
      return row.held().count() + " / " + row.held().n();
    }
    if (row.bounds() > 0) {
      return words.say("desk.class.cell.held", row.bounds(), row.pieces());
    }
    return row.raw() == null ? "–" : number(row.raw().mean());
  }

  /** A number that allows for hands is bare; any other says what it is. */
  private static String middle(FairRow row, FairDrawn.Middle middle, Words words) {
    if (row.atLeast() != null) {
      return words.say("desk.class.cell.at-least", number(row.atLeast()));
    }
    String at = number(middle.at());
    return row.bounds() > 0 ? words.say("desk.class.cell.half", at) : at;
  }

  private static Drawing rate(FairRow row, double confidence) {
    Interval interval = row.heldInterval(confidence);
    return interval == null || row.held() == null
        ? new IntervalBar(0, 0, 0, 0)
        : new IntervalBar(
            row.held().count(), row.held().n(), 100 * interval.low(), 100 * interval.high());
  }

  private static List<FairFound.Pair> pairs(
      FairComparison comparison, FairDrawn drawn, Words words) {
    List<FairFound.Pair> pairs = new ArrayList<>();
    for (FairPair pair : comparison.pairs()) {
      pairs.add(
          new FairFound.Pair(
              drawn.setting(comparison.factors(), pair.first()),
              drawn.setting(comparison.factors(), pair.second()),
              pair,
              number(pair.estimate()),
              limits(pair.low(), pair.high()),
              words.say(verdict(pair.size()))));
    }
    // What is sure comes first, then what rests on several pieces: there may be hundreds.
    Set<List<String>> single = comparison.ofOnePiece();
    pairs.sort(
        Comparator.comparing((FairFound.Pair pair) -> !pair.found().isSure())
            .thenComparing(pair -> pair.found().isOfAny(single))
            .thenComparing(pair -> -Math.abs(orNought(pair.found().estimate()))));
    return pairs;
  }

  private static double orNought(@Nullable Double value) {
    return value == null ? 0 : value;
  }

  private static String verdict(FairPair.Size size) {
    return switch (size) {
      case MORE -> "compare.size.more";
      case LESS -> "compare.size.less";
      case DIFFERS -> "compare.size.differs";
      case DIFFERS_MAYBE_LITTLE -> "compare.size.maybe";
      case CANT_TELL -> "compare.size.cant-tell";
      case NOT_COMPARABLE -> "compare.size.not-comparable";
    };
  }

  static String number(@Nullable Double value) {
    return value == null ? "–" : Show.fixed(value, 1);
  }

  /** A p-value; never nought, which no p is. */
  static String chance(@Nullable Double p) {
    if (p == null) {
      return "–";
    }
    return p < LEAST_SHOWN ? "< " + Show.fixed(LEAST_SHOWN, 3) : Show.fixed(p, 3);
  }

  static String limits(@Nullable Double low, @Nullable Double high) {
    if (low == null) {
      return high == null ? "–" : "≤ " + number(high);
    }
    return high == null ? "≥ " + number(low) : number(low) + " … " + number(high);
  }

  private static String value(double value, Outcome outcome) {
    return switch (outcome) {
      case GRADE -> Show.fixed(value, 0);
      case TIME -> Show.upTo(value, 2) + " min";
      case SEAM_SHARE, SEAM_STRETCH, EDGE_CHANGE, HELD -> Show.percent(value);
    };
  }
}
