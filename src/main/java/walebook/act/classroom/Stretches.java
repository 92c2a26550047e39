package walebook.act.classroom;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.compare.ClothStretch;
import walebook.record.ClothReading;
import walebook.record.Grain;
import walebook.record.MarkedValue;
import walebook.record.ResultLine;

/** What is known of the cloths that pieces were sewn on; readings set aside are left out. */
final class Stretches {
  private Stretches() {}

  static Map<UUID, Map<Grain, ClothStretch>> of(Book book, List<ResultLine> lines) {
    return ofReadings(book, readings(book, lines));
  }

  static Map<UUID, Map<Grain, ClothStretch>> ofReadings(Book book, List<ClothReading> readings) {
    Set<UUID> aside = book.marks().setAside(MarkedValue.CLOTH_STRETCH);
    return ClothStretch.of(readings.stream().filter(each -> !aside.contains(each.id())).toList());
  }

  /** Every reading of the cloths that were sewn. */
  static List<ClothReading> readings(Book book, List<ResultLine> lines) {
    Set<UUID> cloths = new HashSet<>();
    lines.forEach(line -> cloths.add(line.setTo().clothId()));
    return cloths.stream().flatMap(cloth -> book.clothLog().readingsOf(cloth).stream()).toList();
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
