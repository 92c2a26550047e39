package walebook.compare;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import walebook.book.Book;
import walebook.record.ClothReading;
import walebook.record.Grain;
import walebook.record.MarkedValue;

/** Readings of cloths without those that the tutor set aside: what a cloth is said to do. */
public final class ReadingsThatCount {
  private ReadingsThatCount() {}

  /** The stretch of every cloth of the book, grain by grain. */
  public static Map<UUID, Map<Grain, ClothStretch>> stretches(Book book) {
    return ClothStretch.of(of(book.clothLog().allReadings(), aside(book)));
  }

  /** The stretch of one cloth, by grain; empty where nobody has read it. */
  public static Map<Grain, ClothStretch> stretchOf(Book book, UUID clothId) {
    return ClothStretch.of(of(book.clothLog().readingsOf(clothId), aside(book)))
        .getOrDefault(clothId, Map.of());
  }

  /** Keys of the readings that are set aside. */
  public static Set<UUID> aside(Book book) {
    return book.marks().setAside(MarkedValue.CLOTH_STRETCH);
  }

  /** Those that are not set aside. */
  public static List<ClothReading> of(List<ClothReading> readings, Set<UUID> aside) {
    return readings.stream().filter(each -> !aside.contains(each.id())).toList();
  }
}
