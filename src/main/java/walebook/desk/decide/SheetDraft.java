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

  /** Whose it is; null for whoever comes without a name. */
  @Nullable UUID typist() {
    return student;
  }

  /** Tells what was typed and not saved, where there is any. */
  void find(@Nullable GarmentSheet saved, Consumer<KeepGarmentDraft.Found> found) {
    session.run(
        progress -> {
          KeepGarmentDraft.Found draft = act.find(saved, student);
          return draft == null ? new KeepGarmentDraft.Found(Map.of(), false) : draft;
        },
        draft -> {
          if (!draft.typed().isEmpty()) {
            found.accept(draft);
          }
        });
  }

  void keep(@Nullable GarmentSheet saved, Map<String, String> typed, Map<String, String> before) {
    session.run(
        progress -> {
          act.keep(saved, student, typed, before);
          return typed;
        },
        kept -> {});
  }

  void keepNow(
      @Nullable GarmentSheet saved, Map<String, String> typed, Map<String, String> before) {
    act.keep(saved, student, typed, before);
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
