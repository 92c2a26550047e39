package walebook.act.cloth;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import walebook.book.Book;
import walebook.record.Cloth;
import walebook.record.ClothWash;
import walebook.record.Grain;

/**
 * What the newest wash did to a cloth.
 *
 * @param along for each grain that was marked in a wash, the newest
 */
public record NewestWash(UUID clothId, String cloth, Map<Grain, ClothWash> along) {
  public NewestWash {
    along = Map.copyOf(along);
  }

  /** The cloths in use of which a wash is logged, in the order of the room's list. */
  public static List<NewestWash> in(Book book) {
    List<NewestWash> all = new ArrayList<>();
    for (Cloth cloth : book.cloths().all()) {
      Map<Grain, ClothWash> along = new EnumMap<>(Grain.class);
      // Oldest first, so that the newest stays.
      book.clothLog().washesOf(cloth.id()).forEach(each -> along.put(each.grain(), each));
      if (!cloth.retired() && !along.isEmpty()) {
        all.add(new NewestWash(cloth.id(), cloth.name(), along));
      }
    }
    return all;
  }
}
