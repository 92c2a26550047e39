package walebook.desk.classroom;

import walebook.compare.ClassProgress;

/**
 * A student of the progress table.
 *
 * @param name or alias where names are hidden
 */
record ProgressRow(String name, ClassProgress.Row found) {

  /** What share of the lesson's plan is done; nothing planned sorts last. */
  Double share(int lesson) {
    ClassProgress.Done done = found.perLesson().get(lesson);
    return done.planned() == 0 ? Double.NaN : (double) done.logged() / done.planned();
  }
}
