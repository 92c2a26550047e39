package walebook.book.jooq;

import static walebook.book.jooq.made.Tables.BIN_ITEM;
import static walebook.book.jooq.made.Tables.GATHER_CONFLICT;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.UUID;
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

/** Gathering behind the lock of the one writer; what came is read as records before it counts. */
record JooqGathering(Access access, Path file, Clock clock) implements Gathering {

  @Override
  public List<FromBook> gather(
      List<SourceBook> books, boolean really, By by, GatherProgress progress) {
    return access.alone(
        () ->
            new GatherBooks(file, clock, Ids.next(), CameRows::readAll)
                .gather(books, really, by, progress));
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
      access.alone(
          () ->
              new Decide(file, clock, Ids.next(), by, CameRows::readAll)
                  .decide(conflictId, choice));
      return Answer.good(open);
    } catch (IllegalArgumentException e) {
      return Answer.bad(
          Problem.refuse(
              "gather.breaks-rule",
              Place.field("conflict"),
              String.valueOf(e.getMessage()),
              open.title()));
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
