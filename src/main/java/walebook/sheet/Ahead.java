package walebook.sheet;

import java.util.Iterator;
import java.util.NoSuchElementException;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Works things out on a thread of its own, a few ahead of who takes them, so that reading and
 * writing go on at the same time. Closing it stops the work; what goes wrong there is thrown here.
 *
 * @param <T> what is worked out
 */
final class Ahead<T> implements Iterator<T>, AutoCloseable {
  private static final int MOST_WAITING = 4;
  private static final long LOOK_UP_MS = 50;

  private final BlockingQueue<Step<T>> ready = new ArrayBlockingQueue<>(MOST_WAITING);
  private final Thread worker;
  private volatile boolean stopped;
  private @Nullable Step<T> next;

  /** One thing, or the end, or what went wrong. */
  private record Step<T>(@Nullable T thing, @Nullable Throwable trouble) {}

  /**
   * Begins the work.
   *
   * @param source made and used by the worker alone
   */
  Ahead(Supplier<Iterator<T>> source) {
    worker = new Thread(() -> work(source), "walebook-ahead");
    worker.setDaemon(true);
    worker.start();
  }

  private void work(Supplier<Iterator<T>> made) {
    try {
      Iterator<T> source = made.get();
      while (!stopped && source.hasNext()) {
        give(new Step<>(source.next(), null));
      }
      give(new Step<>(null, null));
    } catch (RuntimeException | Error e) {
      give(new Step<>(null, e));
    }
  }

  private void give(Step<T> step) {
    try {
      while (!stopped && !ready.offer(step, LOOK_UP_MS, TimeUnit.MILLISECONDS)) {
        // Nobody has taken anything yet; look again whether anybody still wants it.
        Thread.onSpinWait();
      }
    } catch (InterruptedException e) {
      stopped = true;
      Thread.currentThread().interrupt();
    }
  }

  @Override
  public boolean hasNext() {
    return look().thing() != null;
  }

  @Override
  public T next() {
    T thing = look().thing();
    if (thing == null) {
      throw new NoSuchElementException();
    }
    next = null;
    return thing;
  }

  private Step<T> look() {
    Step<T> found = next;
    if (found == null) {
      found = take();
      next = found;
    }
    if (found.trouble() instanceof RuntimeException trouble) {
      throw trouble;
    }
    if (found.trouble() instanceof Error trouble) {
      throw trouble;
    }
    return found;
  }

  private Step<T> take() {
    try {
      return ready.take();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new java.util.concurrent.CancellationException("interrupted while writing");
    }
  }

  /** Stops the work and returns when the worker has let go of the book. */
  @Override
  public void close() {
    stopped = true;
    ready.clear();
    boolean interrupted = false;
    while (worker.isAlive()) {
      try {
        worker.join();
      } catch (InterruptedException e) {
        interrupted = true;
      }
    }
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
  }
}
