package walebook.desk.common;

import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;

/**
 * A {@link Background} made of two executors: one that works, one that is the window's thread. With
 * {@code Runnable::run} for both it works at once on the calling thread, as plain tests want.
 */
public final class Worker implements Background {
  private final Executor away;
  private final Executor window;

  public Worker(Executor away, Executor window) {
    this.away = away;
    this.window = window;
  }

  /** Everything at once on the calling thread. */
  public static Worker sameThread() {
    return new Worker(Runnable::run, Runnable::run);
  }

  @Override
  public <T> Task run(Work<T> work, Consumer<T> done, Consumer<Throwable> failed) {
    Task task = new Task();
    away.execute(() -> work(task, work, done, failed));
    return task;
  }

  // Whatever the work throws belongs to whoever asked for it.
  private <T> void work(Task task, Work<T> work, Consumer<T> done, Consumer<Throwable> failed) {
    if (task.stopping()) {
      return;
    }
    try {
      T found = work.run(progress(task));
      window.execute(
          () -> {
            task.at(1);
            task.end(Task.State.DONE, () -> done.accept(found));
          });
    } catch (CancellationException e) {
      window.execute(task::cancel);
    } catch (Exception | Error e) {
      window.execute(() -> task.end(Task.State.FAILED, () -> failed.accept(e)));
    }
  }

  private Progress progress(Task task) {
    // Only the latest share is told, however often the work reports.
    AtomicReference<Double> waiting = new AtomicReference<>(Double.NaN);
    return share -> {
      if (task.stopping()) {
        throw new CancellationException();
      }
      if (waiting.getAndSet(share).isNaN()) {
        window.execute(() -> task.at(waiting.getAndSet(Double.NaN)));
      }
    };
  }
}
