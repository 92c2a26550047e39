package walebook.desk.decide;

import java.util.Map;
import java.util.UUID;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import walebook.act.decide.KeepGarmentDraft;
import walebook.desk.common.Session;
import walebook.record.GarmentSheet;
import walebook.record.Student;

/**
 * The draft of one sheet's form, away from the window's thread. It belongs to whoever sat at the
 * screen when the sheet was begun.
 */
final class SheetDraft {
  private final Session session;
  private final KeepGarmentDraft act;
  private final @Nullable UUID student;

  SheetDraft(Session session) {
    this.session = session;
    this.act = new KeepGarmentDraft(session.book());
    Student now = session.studentProperty().get();
    this.student = now == null ? null : now.id();
  }

  /** Tells what was typed and not saved, where there is any. */
  void find(@Nullable GarmentSheet saved, Consumer<Map<String, String>> found) {
    session.run(
        progress -> {
          Map<String, String> typed = act.find(saved, student);
          return typed == null ? Map.<String, String>of() : typed;
        },
        typed -> {
          if (!typed.isEmpty()) {
            found.accept(typed);
          }
        });
  }

  void keep(@Nullable GarmentSheet saved, Map<String, String> typed) {
    session.run(
        progress -> {
          act.keep(saved, student, typed);
          return typed;
        },
        kept -> {});
  }

  void keepNow(@Nullable GarmentSheet saved, Map<String, String> typed) {
    act.keep(saved, student, typed);
  }

  void drop(@Nullable GarmentSheet saved) {
    session.run(
        progress -> {
          act.drop(saved, student);
          return act;
        },
        dropped -> {});
  }
}
