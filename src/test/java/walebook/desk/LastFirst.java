package walebook.desk;

import java.util.ArrayDeque;
import java.util.Deque;
import walebook.desk.common.Background;
import walebook.desk.common.Worker;

/** Work that waits until it is told to, and is done last first, as can come of several threads. */
public final class LastFirst {
  private final Deque<Runnable> waiting = new ArrayDeque<>();

  public Background worker() {
    return new Worker(waiting::push, Runnable::run);
  }

  public void workAll() {
    while (!waiting.isEmpty()) {
      waiting.pop().run();
    }
  }
}
