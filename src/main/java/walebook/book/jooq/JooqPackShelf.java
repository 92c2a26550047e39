package walebook.book.jooq;

import static walebook.book.jooq.made.Tables.PACK;
import static walebook.book.jooq.made.Tables.SHELVED_PACK;

import java.time.Clock;
import java.util.List;
import java.util.UUID;
import walebook.book.Ids;
import walebook.book.PackShelf;
import walebook.book.jooq.made.tables.records.ShelvedPackRecord;
import walebook.record.Stamp;
import walebook.record.TaughtPack;

/** The packs that stand on the book's shelf. */
record JooqPackShelf(Access access, Clock clock) implements PackShelf {

  @Override
  public List<TaughtPack> all() {
    return access.read(
        dsl ->
            dsl.select(PACK.fields())
                .from(PACK)
                .join(SHELVED_PACK)
                .on(SHELVED_PACK.PACK_ID.eq(PACK.ID))
                .orderBy(PACK.NAME, SHELVED_PACK.CREATED_AT.desc(), SHELVED_PACK.ID.desc())
                .fetchInto(PACK)
                .map(LessonRows::pack));
  }

  @Override
  public boolean has(UUID packId) {
    return access.read(dsl -> dsl.fetchExists(SHELVED_PACK, SHELVED_PACK.PACK_ID.eq(packId)));
  }

  @Override
  public void put(UUID packId) {
    access.write(
        dsl -> {
          if (!has(packId)) {
            ShelvedPackRecord row =
                Rows.stamped(new ShelvedPackRecord(), Ids.next(), Stamp.fresh(clock.instant()));
            row.setPackId(packId);
            access.insert(row);
          }
          return packId;
        });
  }

  @Override
  public boolean take(UUID packId) {
    return access.write(
        dsl -> {
          UUID id =
              dsl.select(SHELVED_PACK.ID)
                  .from(SHELVED_PACK)
                  .where(SHELVED_PACK.PACK_ID.eq(packId))
                  .fetchOne(SHELVED_PACK.ID);
          if (id != null) {
            access.changing(SHELVED_PACK, id, Recorder.As.PLAIN);
            dsl.deleteFrom(SHELVED_PACK).where(SHELVED_PACK.ID.eq(id)).execute();
          }
          return id != null;
        });
  }
}
