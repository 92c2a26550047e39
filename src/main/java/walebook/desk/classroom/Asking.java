package walebook.desk.classroom;

import walebook.desk.common.Session;

/** Asks again when what an answer hangs on changes, but only while the answer is looked at. */
final class Asking {
  private final Runnable ask;
  private boolean shown;
  private boolean stale = true;

  Asking(Session session, Narrowing narrowing, Runnable ask) {
    this.ask = ask;
    session.schoolClassProperty().addListener((from, old, now) -> again());
    session.namesHiddenProperty().addListener((from, old, now) -> again());
    session.changesProperty().addListener((from, old, now) -> again());
    narrowing.lessonProperty().addListener((from, old, now) -> again());
    narrowing.clothProperty().addListener((from, old, now) -> again());
  }

  void again() {
    stale = !shown;
    if (shown) {
      ask.run();
    }
  }

  void shown(boolean on) {
    shown = on;
    if (on && stale) {
      again();
    }
  }
}
