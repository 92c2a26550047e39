package walebook.book;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import walebook.record.Priced;

/** What the things of kits cost when they were last bought, in whatever money is paid with. */
public interface KitPrices {
  Map<Priced, Double> all();

  /**
   * Keeps a price in the place of the one before.
   *
   * @param price not negative; null to forget it
   */
  void keep(Priced of, @Nullable Double price);
}
