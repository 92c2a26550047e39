package walebook.desk.lessons;

import java.util.function.Consumer;
import javafx.scene.control.Button;
import walebook.act.lesson.ReadTaught;
import walebook.act.lesson.RoomCalculations;
import walebook.desk.common.ChoiceWords;
import walebook.desk.common.Session;
import walebook.desk.look.Look;
import walebook.lesson.LessonPack;
import walebook.lesson.ReadPack;
import walebook.problem.Answer;
import walebook.quantity.Unit;
import walebook.record.Lesson;

/** The button that teaches a pack, or a lesson's pack as it was taken up. */
final class TeachButton extends Button {
  private final Session session;
  private final Look look;

  private TeachButton(Session session, Look look) {
    super(session.words().say("desk.lessons.teach"));
    this.session = session;
    this.look = look;
  }

  /** Teaches a pack that is being read. */
  static TeachButton pack(Session session, Look look, LessonPack pack) {
    TeachButton button = new TeachButton(session, look);
    button.setOnAction(
        pressed ->
            session.run(
                progress -> session.book().info().lengthUnit(), unit -> button.open(pack, unit)));
    return button;
  }

  /**
   * Teaches a lesson from its pack as the book keeps it.
   *
   * @param say told in words when the pack can't be read
   */
  static TeachButton lesson(Session session, Look look, Lesson lesson, Consumer<String> say) {
    TeachButton button = new TeachButton(session, look);
    button.setOnAction(pressed -> session.run(progress -> read(session, lesson), button.told(say)));
    return button;
  }

  private record Ready(Answer<LessonPack> pack, Unit lengths) {}

  private static Ready read(Session session, Lesson lesson) {
    return new Ready(
        new ReadTaught(session.book(), new ReadPack()).pack(lesson.packId()),
        session.book().info().lengthUnit());
  }

  private Consumer<Ready> told(Consumer<String> say) {
    return ready -> {
      if (ready.pack().isGood()) {
        open(ready.pack().value(), ready.lengths());
      } else {
        String why = session.words().say(ready.pack().problems().get(0));
        say.accept(session.words().say("desk.lessons.teach.unreadable", why));
      }
    };
  }

  private void open(LessonPack pack, Unit lengths) {
    CalledOutViewModel calledOut =
        new CalledOutViewModel(
            RoomCalculations.of(pack, session.tables()), session.words(), lengths);
    TeachViewModel model = new TeachViewModel(pack, session.words(), session.clock(), calledOut);
    TeachBoard.show(
        session.words(),
        look,
        new ChoiceWords(session.words(), session.tables()),
        getScene() == null ? null : getScene().getWindow(),
        model);
  }
}
