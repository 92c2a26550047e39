package walebook.act.classroom;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.compare.ClothStretch;
import walebook.record.Cloth;
import walebook.record.Grain;
import walebook.record.MarkedValue;
import walebook.record.ResultLine;
import walebook.record.StretchReading;

/** What is known of the cloths that pieces were sewn on; readings set aside are left out. */
final class Stretches {
  private Stretches() {}

  static Map<UUID, Map<Grain, ClothStretch>> of(Book book, List<ResultLine> lines) {
    return ofReadings(readings(book, lines), setAside(book));
  }

  /** Of every cloth of a book. */
  static Map<UUID, Map<Grain, ClothStretch>> of(Book book) {
    Set<UUID> cloths = book.cloths().all().stream().map(Cloth::id).collect(Collectors.toSet());
    return ofReadings(book.clothLog().stretchesOf(cloths), setAside(book));
  }

  /** The same from readings that are there already. */
  static Map<UUID, Map<Grain, ClothStretch>> ofReadings(
      List<StretchReading> readings, Set<UUID> setAside) {
    return ClothStretch.ofStretches(
        setAside.isEmpty()
            ? readings
            : readings.stream().filter(each -> !setAside.contains(each.id())).toList());
  }

  /** Readings that the tutor set aside. */
  static Set<UUID> setAside(Book book) {
    return book.marks().setAside(MarkedValue.CLOTH_STRETCH);
  }

  /** Every reading of the cloths that were sewn. */
  static List<StretchReading> readings(Book book, List<ResultLine> lines) {
    Set<UUID> cloths = new HashSet<>();
    lines.forEach(line -> cloths.add(line.setTo().clothId()));
    return book.clothLog().stretchesOf(cloths);
  }

  /** The mean stretch over the cloths and grains of pieces, percent; null when none is known. */
  static @Nullable Double mean(
      Map<UUID, Map<Grain, ClothStretch>> stretches, List<ResultLine> lines) {
    double sum = 0;
    int n = 0;
    for (ResultLine line : lines) {
      ClothStretch known =
          stretches.getOrDefault(line.setTo().clothId(), Map.of()).get(line.setTo().grain());
      if (known != null) {
        sum += known.percent();
        n++;
      }
    }
    return n == 0 ? null : Double.valueOf(sum / n);
  }
}
