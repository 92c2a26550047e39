package walebook.desk.shell;

import java.util.UUID;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.jspecify.annotations.Nullable;
import walebook.act.history.SayChange;
import walebook.act.history.StepBack;
import walebook.desk.common.Session;
import walebook.problem.Answer;
import walebook.record.Student;

/**
 * Undo and redo for the whole window. Who sits at the screen is offered their own steps only; while
 * nobody said who that is, anybody's.
 */
public final class StepsViewModel {
  private final Session session;
  private final ReadOnlyObjectWrapper<StepBack.@Nullable Offer> undo =
      new ReadOnlyObjectWrapper<>(this, "undo");
  private final ReadOnlyObjectWrapper<StepBack.@Nullable Offer> redo =
      new ReadOnlyObjectWrapper<>(this, "redo");
  private final ReadOnlyStringWrapper says = new ReadOnlyStringWrapper(this, "says", "");
  private boolean turning;

  private record Offers(StepBack.@Nullable Offer undo, StepBack.@Nullable Offer redo) {}

  public StepsViewModel(Session session) {
    this.session = session;
    session
        .changesProperty()
        .addListener(
            (from, old, now) -> {
              if (!turning) {
                says.set("");
              }
              look();
            });
    session.studentProperty().addListener((from, old, now) -> look());
    session.namesHiddenProperty().addListener((from, old, now) -> look());
    look();
  }

  /** What undo takes back, or null. */
  public ReadOnlyObjectProperty<StepBack.@Nullable Offer> undoProperty() {
    return undo.getReadOnlyProperty();
  }

  /** What redo does again, or null. */
  public ReadOnlyObjectProperty<StepBack.@Nullable Offer> redoProperty() {
    return redo.getReadOnlyProperty();
  }

  /** What came of the last one: what was done, or why it stays and who changed it since. */
  public ReadOnlyStringProperty saysProperty() {
    return says.getReadOnlyProperty();
  }

  private StepBack act() {
    boolean hidden = session.namesHiddenProperty().get();
    return new StepBack(session.book(), new SayChange(session.book(), session.words(), hidden));
  }

  private void look() {
    Student student = session.studentProperty().get();
    UUID id = student == null ? null : student.id();
    StepBack act = act();
    session.run(
        progress -> new Offers(act.undo(id), act.redo(id)),
        found -> {
          undo.set(found.undo());
          redo.set(found.redo());
        });
  }

  /** Takes back what is offered. */
  public void undo() {
    StepBack.Offer offer = undo.get();
    if (offer != null) {
      session.run(
          progress -> act().undo(offer, session.by()), done -> said("desk.shell.undone", done));
    }
  }

  /** Does again what is offered. */
  public void redo() {
    StepBack.Offer offer = redo.get();
    if (offer != null) {
      session.run(
          progress -> act().redo(offer, session.by()), done -> said("desk.shell.redone", done));
    }
  }

  private void said(String key, Answer<StepBack.Offer> answer) {
    says.set(
        answer.isGood()
            ? session.words().say(key, answer.value().says())
            : session.words().say(answer.problems().get(0)));
    turning = true;
    try {
      session.changed();
    } finally {
      turning = false;
    }
  }
}
