package walebook.book.jooq;

import static walebook.book.jooq.made.Tables.KIT_PRICE;

import java.time.Clock;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.jooq.Condition;
import org.jspecify.annotations.Nullable;
import walebook.book.Ids;
import walebook.book.KitPrices;
import walebook.book.jooq.made.tables.records.KitPriceRecord;
import walebook.record.Priced;
import walebook.record.Stamp;

/** Prices; one for each thing. */
record JooqKitPrices(Access access, Clock clock) implements KitPrices {

  @Override
  public Map<Priced, Double> all() {
    return access.read(
        dsl -> {
          Map<Priced, Double> prices = new HashMap<>();
          dsl.selectFrom(KIT_PRICE).fetch().forEach(row -> prices.put(priced(row), row.getPrice()));
          return prices;
        });
  }

  /** Nothing is written where the price stays what it is. */
  @Override
  public void keep(Priced of, @Nullable Double price) {
    access.write(
        dsl -> {
          KitPriceRecord was = dsl.selectFrom(KIT_PRICE).where(is(of)).fetchOne();
          if (was == null) {
            if (price != null) {
              access.insert(row(of, price, Ids.next(), Stamp.fresh(clock.instant())));
            }
          } else if (price == null) {
            access.changing(KIT_PRICE, was.getId(), Recorder.As.PLAIN);
            dsl.deleteFrom(KIT_PRICE).where(KIT_PRICE.ID.eq(was.getId())).execute();
          } else if (!price.equals(was.getPrice())) {
            access.update(row(of, price, was.getId(), Rows.stamp(was).next(clock.instant())));
          }
          return of;
        });
  }

  private static Condition is(Priced of) {
    UUID cloth = of.clothId();
    return cloth == null
        ? KIT_PRICE
            .CLOTH_ID
            .isNull()
            .and(KIT_PRICE.WHAT.eq(of.what()))
            .and(KIT_PRICE.IS_METRE.eq(of.metre()))
        : KIT_PRICE.CLOTH_ID.eq(cloth);
  }

  private static KitPriceRecord row(Priced of, double price, UUID id, Stamp stamp) {
    KitPriceRecord row = Rows.stamped(new KitPriceRecord(), id, stamp);
    row.setClothId(of.clothId());
    row.setWhat(of.what());
    row.setIsMetre(of.metre());
    row.setPrice(price);
    return row;
  }

  static Priced priced(KitPriceRecord row) {
    return new Priced(row.getClothId(), row.getWhat(), row.getIsMetre());
  }
}
