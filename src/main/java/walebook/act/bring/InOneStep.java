package walebook.act.bring;

import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.book.Ids;

/**
 * Brings rows in within one transaction. A dry run is the same with nothing of it kept, so that
 * what is foretold is what comes.
 */
final class InOneStep {
  private final Book book;

  InOneStep(Book book) {
    this.book = book;
  }

  /**
   * Runs the rows.
   *
   * @param dry true to keep nothing
   * @param rows told the step, saves what is good and answers with every row's fate
   */
  Trial run(BringPlan plan, boolean dry, boolean needsOrder, Function<UUID, List<RowFate>> rows) {
    UUID step = Ids.next();
    try {
      return book.inOneStep(
          () -> {
            List<RowFate> fates =
                rows.apply(step).stream().sorted(Comparator.comparingInt(RowFate::row)).toList();
            Trial trial = new Trial(fates, step, needsOrder);
            boolean bars = trial.hasProblems() && !plan.goodRows();
            if (dry || bars || trial.count(RowFate.Fate.NEW) == 0) {
              throw new TakenBack(without(trial, null));
            }
            new KeepMapping(book).keep(plan.what(), plan.sheet().headers(), plan.columns());
            return trial;
          });
    } catch (TakenBack e) {
      return e.trial();
    }
  }

  private static Trial without(Trial trial, @Nullable UUID step) {
    return new Trial(trial.fates(), step, trial.needsOrder());
  }
}
