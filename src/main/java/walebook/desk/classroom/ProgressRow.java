package walebook.desk.classroom;

import java.time.LocalDate;
import walebook.compare.ClassProgress;
import walebook.desk.common.DayWords;

/**
 * A student of the progress table.
 *
 * @param name or alias where names are hidden
 */
record ProgressRow(String name, ClassProgress.Row found) {
  private static final int QUARTERS = 4;

  /** What share of the lesson's plan is done; nothing planned sorts last. */
  Double share(int lesson) {
    ClassProgress.Done done = found.perLesson().get(lesson);
    return done.planned() == 0 ? Double.NaN : (double) done.logged() / done.planned();
  }

  /** Quarters that are done: nought for none at all, four only for everything; -1 for no plan. */
  static int quarters(double share) {
    if (Double.isNaN(share)) {
      return -1;
    }
    if (share <= 0 || share >= 1) {
      return share <= 0 ? 0 : QUARTERS;
    }
    return (int) Math.max(1, Math.min(QUARTERS - 1, Math.round(QUARTERS * share)));
  }

  /** When the newest piece was sewn; a dash where none was. */
  String lastDay() {
    LocalDate last = found.last();
    return last == null ? "–" : DayWords.of(last);
  }

  /** Sorts by the day, not by how it reads; nothing sewn sorts last. */
  Double lastOrder() {
    LocalDate last = found.last();
    return last == null ? Double.NaN : (double) last.toEpochDay();
  }
}
