package walebook.desk.common;

import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/**
 * Work under way: how far it is, and a way to stop it. Properties change on the window's thread.
 */
public final class Task {

  /** What became of the work. */
  public enum State {
    RUNNING,
    DONE,
    FAILED,
    CANCELLED
  }

  private final ReadOnlyDoubleWrapper share = new ReadOnlyDoubleWrapper(this, "share", 0);
  private final ReadOnlyObjectWrapper<State> state =
      new ReadOnlyObjectWrapper<>(this, "state", State.RUNNING);
  private volatile boolean stopping;

  /** How far it is, 0 to 1. */
  public ReadOnlyDoubleProperty shareProperty() {
    return share.getReadOnlyProperty();
  }

  public ReadOnlyObjectProperty<State> stateProperty() {
    return state.getReadOnlyProperty();
  }

  public State state() {
    return state.get();
  }

  /** Asks the work to stop; nothing it finds is told any more. Called on the window's thread. */
  public void cancel() {
    if (state.get() == State.RUNNING) {
      stopping = true;
      state.set(State.CANCELLED);
    }
  }

  boolean stopping() {
    return stopping;
  }

  void at(double now) {
    share.set(Math.max(0, Math.min(1, now)));
  }

  void end(State how, Runnable tell) {
    if (state.get() == State.RUNNING) {
      state.set(how);
      tell.run();
    }
  }
}
