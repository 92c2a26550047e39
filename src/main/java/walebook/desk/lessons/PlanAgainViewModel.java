package walebook.desk.lessons;

import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import walebook.act.lesson.ReadLimits;
import walebook.act.lesson.ReplanLesson;
import walebook.desk.common.Notice;
import walebook.desk.common.Session;
import walebook.record.Lesson;
import walebook.words.Words;

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
          say(changed(done));
          session.changed();
        });
  }

  private String changed(ReplanLesson.Replanned done) {
    Words words = session.words();
    if (done.handedOut() == 0 && done.takenBack() == 0) {
      return words.say("desk.lessons.plan.same");
    }
    return done.isMeasured()
        ? words.say("desk.lessons.plan.changed-readings", done.handedOut(), done.takenBack())
        : words.say("desk.lessons.plan.changed", done.handedOut(), done.takenBack());
  }

  /** Says a sentence at the foot of the plan. */
  void say(String says) {
    notice.set(new Notice(says, null));
  }
}
