package walebook.book.jooq;

import static walebook.book.jooq.made.Tables.BIN_ITEM;
import static walebook.book.jooq.made.Tables.CLOTH;
import static walebook.book.jooq.made.Tables.GATHER_CONFLICT;
import static walebook.book.jooq.made.Tables.STUDENT;
import static walebook.book.jooq.made.Tables.TEST_PIECE;

import java.nio.file.Path;
import java.sql.Connection;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.SQLDialect;
import org.jooq.Select;
import org.jooq.Table;
import org.jooq.conf.Settings;
import org.jooq.impl.DSL;
import walebook.book.BookTrouble;
import walebook.book.Ids;
import walebook.book.gather.Choice;
import walebook.book.gather.Conflict;
import walebook.book.gather.FromBook;
import walebook.book.gather.GatherProgress;
import walebook.book.gather.Gathering;
import walebook.book.gather.SourceBook;
import walebook.book.sqlite.gather.Decide;
import walebook.book.sqlite.gather.GatherBooks;
import walebook.book.sqlite.gather.ReadConflicts;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.By;
import walebook.record.FaultSeen;
import walebook.record.PullReading;

/** Gathering behind the lock of the one writer; what came is read as records before it counts. */
record JooqGathering(Access access, Path file, Clock clock) implements Gathering {

  @Override
  public List<FromBook> gather(
      List<SourceBook> books, boolean really, By by, GatherProgress progress) {
    return access.alone(
        () ->
            new GatherBooks(file, clock, Ids.next(), JooqGathering::readAll)
                .gather(books, really, by, progress));
  }

  /** Rows that the tables' rules let through may still be no records. */
  private static void readAll(Connection link) {
    DSLContext dsl =
        DSL.using(
            link,
            SQLDialect.SQLITE,
            new Settings().withRenderSchema(false).withExecuteLogging(false));
    Select<?> pieces = dsl.select(TEST_PIECE.ID).from(TEST_PIECE).where(came(TEST_PIECE));
    Map<UUID, List<PullReading>> pulls = PiecePartRows.pulls(dsl, pieces);
    Map<UUID, List<FaultSeen>> faults = PiecePartRows.faults(dsl, pieces);
    dsl.selectFrom(TEST_PIECE)
        .where(came(TEST_PIECE))
        .fetch()
        .forEach(
            row ->
                PieceRows.piece(
                    row,
                    pulls.getOrDefault(row.getId(), List.of()),
                    faults.getOrDefault(row.getId(), List.of())));
    dsl.selectFrom(STUDENT).where(came(STUDENT)).fetch().forEach(PeopleRows::student);
    dsl.selectFrom(CLOTH).where(came(CLOTH)).fetch().forEach(ClothRows::cloth);
  }

  private static Condition came(Table<?> table) {
    Field<String> id = DSL.field(DSL.name("our_id"), String.class);
    Table<?> plan = DSL.table(DSL.name("temp", "plan"));
    return Rows.id(table)
        .cast(String.class)
        .in(
            DSL.select(id)
                .from(plan)
                .where(DSL.field(DSL.name("entity"), String.class).eq(table.getName()))
                .and(DSL.field(DSL.name("fate"), String.class).in("new", "take")));
  }

  @Override
  public List<Conflict> conflicts() {
    return access.alone(() -> ReadConflicts.open(file));
  }

  @Override
  public Answer<Conflict> decide(UUID conflictId, Choice choice, By by) {
    Conflict open =
        conflicts().stream().filter(each -> each.id().equals(conflictId)).findFirst().orElse(null);
    if (open == null) {
      return Answer.bad(
          Problem.refuse("gather.no-conflict", Place.field("conflict"), conflictId.toString(), ""));
    }
    try {
      if (choice == Choice.THEIRS && open.why() == Conflict.Why.REMOVED_HERE) {
        outOfBin(conflictId, by);
      }
      access.alone(() -> new Decide(file, clock, Ids.next(), by).decide(conflictId, choice));
      return Answer.good(open);
    } catch (BookTrouble e) {
      if (!e.code().equals("constraint")) {
        throw e;
      }
      return Answer.bad(
          Problem.refuse(
              "gather.refers",
              Place.field("conflict"),
              open.title(),
              String.valueOf(e.getMessage())));
    }
  }

  /** What lies in the bin comes back with its pictures and all that hung on it, before theirs. */
  private void outOfBin(UUID conflictId, By by) {
    UUID item =
        access.read(
            dsl ->
                dsl.select(BIN_ITEM.ID)
                    .from(BIN_ITEM)
                    .join(GATHER_CONFLICT)
                    .on(GATHER_CONFLICT.ENTITY.eq(BIN_ITEM.ENTITY))
                    .and(GATHER_CONFLICT.OUR_ID.eq(BIN_ITEM.ENTITY_ID))
                    .where(GATHER_CONFLICT.ID.eq(conflictId))
                    .fetchOne(BIN_ITEM.ID));
    if (item != null) {
      new JooqBin(access, clock).restore(item, by);
    }
  }
}
