package walebook.act.cloth;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.book.PieceFilter;
import walebook.cloth.StretchBalance;
import walebook.compare.ClothStretch;
import walebook.compare.Names;
import walebook.compare.ReadingsThatCount;
import walebook.problem.Answer;
import walebook.record.Cloth;
import walebook.record.ClothReading;
import walebook.record.Grain;
import walebook.record.PieceOutcome;
import walebook.record.TestPiece;
import walebook.tables.SharedTables;
import walebook.working.Working;

/** Reads what the book knows of cloths. */
public final class ReadClothCard {
  private static final int BEST = 5;

  private final Book book;
  private final SharedTables tables;

  public ReadClothCard(Book book, SharedTables tables) {
    this.book = book;
    this.tables = tables;
  }

  /**
   * A cloth in a list.
   *
   * @param stretches what is known of its stretch, by grain
   */
  public record Line(Cloth cloth, Map<Grain, ClothStretch> stretches, int readings, int pieces) {}

  /** Every cloth of the book, those no longer used last. */
  public List<Line> list() {
    List<ClothReading> readings = book.clothLog().allReadings();
    Map<UUID, Map<Grain, ClothStretch>> stretches =
        ClothStretch.of(ReadingsThatCount.of(readings, ReadingsThatCount.aside(book)));
    List<Line> lines = new ArrayList<>();
    for (Cloth cloth : book.cloths().all()) {
      int read = (int) readings.stream().filter(r -> r.clothId().equals(cloth.id())).count();
      int sewn = book.pieces().count(PieceFilter.ALL.onCloth(cloth.id()));
      lines.add(new Line(cloth, stretches.getOrDefault(cloth.id(), Map.of()), read, sewn));
    }
    lines.sort(Comparator.comparing(line -> line.cloth().retired()));
    return lines;
  }

  /** One cloth's card, or null when the book has no such cloth. */
  public @Nullable ClothCard card(UUID clothId, boolean namesHidden) {
    Cloth cloth = book.cloths().find(clothId);
    if (cloth == null) {
      return null;
    }
    List<ClothReading> readings = new ArrayList<>(book.clothLog().readingsOf(clothId));
    Set<UUID> aside = ReadingsThatCount.aside(book);
    List<ClothReading> counting = ReadingsThatCount.of(readings, aside);
    Map<Grain, ClothStretch> known = ClothStretch.of(counting).getOrDefault(clothId, Map.of());
    List<GrainSummary> grains = new ArrayList<>();
    for (Grain grain : Grain.values()) {
      ClothStretch stretch = known.get(grain);
      if (stretch != null) {
        List<ClothReading> along = counting.stream().filter(r -> r.grain() == grain).toList();
        grains.add(GrainSummary.of(grain, along, stretch.pull(), tables.recoveryBands()));
      }
    }
    Collections.reverse(readings);
    List<TestPiece> sewn = book.pieces().list(PieceFilter.ALL.onCloth(clothId));
    return new ClothCard(
        cloth,
        readings,
        aside,
        grains,
        balance(known),
        book.clothLog().washesOf(clothId),
        sewn.size(),
        best(sewn),
        Names.of(book, namesHidden),
        book.info().lengthUnit());
  }

  private @Nullable Working balance(Map<Grain, ClothStretch> known) {
    ClothStretch wale = known.get(Grain.WALE);
    ClothStretch course = known.get(Grain.COURSE);
    if (wale == null || course == null) {
      return null;
    }
    Answer<Working> answer =
        StretchBalance.of(wale.percent(), course.percent(), tables.balanceBands());
    return answer.isGood() ? answer.value() : null;
  }

  private static List<TestPiece> best(List<TestPiece> sewn) {
    return sewn.stream()
        .filter(each -> each.seen().outcome() == PieceOutcome.KEEP)
        .sorted(Comparator.comparingInt(ReadClothCard::grade).reversed())
        .limit(BEST)
        .toList();
  }

  private static int grade(TestPiece piece) {
    Integer grade = piece.seen().grade();
    return grade == null ? 0 : grade;
  }
}
