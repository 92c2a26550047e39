package walebook.desk.lessons;

import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import walebook.act.lesson.ReadLimits;
import walebook.act.lesson.ReplanLesson;
import walebook.desk.common.Notice;
import walebook.desk.common.Session;
import walebook.record.Lesson;

/** Plans a lesson again for who is in the class now, and says what that changed. */
public final class PlanAgainViewModel {
  private final Session session;
  private final ReplanLesson act;
  private final ReadOnlyObjectWrapper<Notice> notice =
      new ReadOnlyObjectWrapper<>(this, "notice", Notice.NONE);

  public PlanAgainViewModel(Session session) {
    this.session = session;
    this.act = new ReplanLesson(session.book(), session.clock());
  }

  /** What the last new plan changed, or why there is none. */
  public ReadOnlyObjectProperty<Notice> noticeProperty() {
    return notice.getReadOnlyProperty();
  }

  /** Forgets what was said, as when another lesson is shown. */
  void forget() {
    notice.set(Notice.NONE);
  }

  /** Plans again. */
  public void again(Lesson lesson) {
    long seed = session.chance().nextLong();
    session.run(
        progress -> act.replan(lesson, ReadLimits.Typed.NOTHING, seed),
        answer -> {
          if (!answer.isGood()) {
            say(
                answer.problems().stream()
                    .map(session.words()::say)
                    .collect(Collectors.joining(" ")));
            return;
          }
          ReplanLesson.Replanned done = answer.value();
          boolean same = done.added().isEmpty() && done.back().isEmpty();
          say(
              same
                  ? session.words().say("desk.lessons.plan.same")
                  : session
                      .words()
                      .say("desk.lessons.plan.changed", done.added().size(), done.back().size()));
          session.changed();
        });
  }

  /** Says a sentence at the foot of the plan. */
  void say(String says) {
    notice.set(new Notice(says, null));
  }
}
