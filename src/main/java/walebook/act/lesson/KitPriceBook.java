package walebook.act.lesson;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.lesson.LessonPack;
import walebook.lesson.Material;
import walebook.lesson.Plan;
import walebook.quantity.Unit;
import walebook.record.Priced;

/**
 * The prices that the book remembers of what a pack needs. A plan's cloth is priced as the cloth of
 * the room that stands for it, so that its price comes along to other lessons.
 */
public final class KitPriceBook {
  private final Book book;
  private final LessonPack pack;
  private final Map<String, Priced> things = new LinkedHashMap<>();

  /**
   * Those of one pack.
   *
   * @param clothOfSlot which cloth of the room stands for each of the plan's, as far as is known
   */
  public KitPriceBook(Book book, LessonPack pack, Map<String, UUID> clothOfSlot) {
    this.book = book;
    this.pack = pack;
    for (Plan.ClothSlot each : pack.plan().cloths()) {
      UUID cloth = clothOfSlot.get(each.slot());
      String named = each.says().isBlank() ? each.slot() : each.says();
      things.put(each.slot(), cloth == null ? Priced.of(named, true) : Priced.metreOf(cloth));
    }
    for (Material each : pack.needs().perStudent()) {
      boolean metre = each.alongMm() != null || each.threadM() != null;
      things.putIfAbsent(each.what(), Priced.of(each.what(), metre));
    }
    things.putIfAbsent(KitTyped.THREAD, Priced.of(KitTyped.THREAD, true));
  }

  /** Prices by what they are typed for: a cloth's name in the plan, a material's, or thread. */
  public Map<String, String> known() {
    Map<Priced, Double> kept = book.kitPrices().all();
    Map<String, String> known = new HashMap<>();
    things.forEach(
        (key, thing) -> {
          Double price = kept.get(thing);
          if (price != null) {
            known.put(key, BigDecimal.valueOf(price).stripTrailingZeros().toPlainString());
          }
        });
    return known;
  }

  /** What was typed with the remembered prices for what has none; one typed empty stays so. */
  public KitTyped with(KitTyped typed) {
    List<String> prices = new ArrayList<>();
    known().forEach((key, price) -> prices.add(key + "=" + price));
    prices.addAll(typed.prices());
    return new KitTyped(
        typed.students(), typed.spare(), typed.margin(), typed.widths(), typed.washes(), prices);
  }

  /**
   * Remembers the prices that were typed and forgets those typed empty, if all can be read.
   *
   * @return how many of them
   */
  public int keep(KitTyped typed) {
    KitInput read = new KitInput(pack, typed, Unit.MM);
    if (!read.problems().isEmpty() || typed.prices().isEmpty()) {
      return 0;
    }
    return book.inOneStep(
        () -> {
          read.prices().forEach((key, price) -> keep(key, price));
          read.unpriced().forEach(key -> keep(key, null));
          return read.prices().size() + read.unpriced().size();
        });
  }

  private void keep(String key, @Nullable Double price) {
    Priced thing = things.get(key);
    if (thing != null) {
      book.kitPrices().keep(thing, price);
    }
  }
}
