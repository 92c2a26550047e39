package walebook.act.lesson;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.cloth.LengthChange;
import walebook.record.Cloth;
import walebook.record.ClothWash;
import walebook.record.Grain;

/**
 * What is known of the cloth that stands for one of a plan's.
 *
 * @param name empty when no cloth was named
 * @param widthMm usable width
 * @param alongPercent mean change of its length in the wash; minus is shrinkage
 * @param acrossPercent the same of its width
 * @param thicknessMm of one layer
 */
public record KitCloth(
    String name,
    @Nullable Double widthMm,
    @Nullable Double alongPercent,
    @Nullable Double acrossPercent,
    @Nullable Double thicknessMm) {
  /** A cloth of which nothing is known. */
  public static final KitCloth UNKNOWN = new KitCloth("", null, null, null, null);

  /** The same under a name. */
  KitCloth named(String called) {
    return new KitCloth(called, widthMm, alongPercent, acrossPercent, thicknessMm);
  }

  /** What the book knows of the cloths that stand for a plan's, by the plan's slots. */
  public static Map<String, KitCloth> in(Book book, Map<String, UUID> clothOfSlot) {
    Map<String, KitCloth> known = new HashMap<>();
    clothOfSlot.forEach(
        (slot, id) -> {
          Cloth cloth = book.cloths().find(id);
          if (cloth != null) {
            List<ClothWash> washes = book.clothLog().washesOf(id);
            known.put(
                slot,
                new KitCloth(
                    cloth.name(),
                    cloth.widthMm(),
                    change(washes, Grain.WALE),
                    change(washes, Grain.COURSE),
                    cloth.thicknessMm()));
          }
        });
    return known;
  }

  private static @Nullable Double change(List<ClothWash> washes, Grain grain) {
    double[] changes =
        washes.stream()
            .filter(each -> each.grain() == grain)
            .mapToDouble(each -> LengthChange.percent(each.beforeMm(), each.afterMm()))
            .toArray();
    return changes.length == 0 ? null : Arrays.stream(changes).average().orElse(0);
  }
}
