package walebook.desk;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.function.Consumer;
import walebook.desk.common.Background;
import walebook.desk.common.Task;
import walebook.desk.common.Worker;

/** Does work at once until it is told to hold; what is held is done later, as on a slow disk. */
public final class WaitingWork implements Background {
  private final Background atOnce = Worker.sameThread();
  private final Deque<Runnable> waiting = new ArrayDeque<>();
  private boolean holding;

  /** Lets all work wait from now on. */
  public void hold() {
    holding = true;
  }

  /** Does what waits, the last asked for first: answers come in the order that nobody wants. */
  public void release() {
    holding = false;
    while (!waiting.isEmpty()) {
      waiting.removeLast().run();
    }
  }

  @Override
  public <T> Task run(Work<T> work, Consumer<T> done, Consumer<Throwable> failed) {
    if (!holding) {
      return atOnce.run(work, done, failed);
    }
    waiting.addLast(() -> atOnce.run(work, done, failed));
    return new Task();
  }
}
