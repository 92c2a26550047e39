package walebook.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import javafx.animation.AnimationTimer;

/**
 * The gaps between a window's frames. With {@code -Dwalebook.late=30} it also says what the
 * window's thread was at when a frame was late by more milliseconds than that.
 */
final class Frames extends AnimationTimer {
  private final Thread window = Thread.currentThread();
  private final AtomicLong last = new AtomicLong();
  private final AtomicLong count = new AtomicLong();
  private List<Long> gaps = new ArrayList<>();

  /** Starts at once; to be made on the window's thread. */
  Frames() {
    start();
    Long late = Long.getLong("walebook.late");
    if (late != null) {
      Thread watch = new Thread(() -> watch(late * 1_000_000), "watch");
      watch.setDaemon(true);
      watch.start();
    }
  }

  @Override
  public void handle(long now) {
    long at = System.nanoTime();
    long before = last.getAndSet(at);
    if (before != 0) {
      synchronized (this) {
        gaps.add(at - before);
      }
    }
    count.incrementAndGet();
  }

  /** The gaps since the last time, in nanoseconds. */
  synchronized List<Long> take() {
    List<Long> taken = gaps;
    gaps = new ArrayList<>();
    return taken;
  }

  /** Waits until so many more frames were drawn. */
  void await(int more) throws InterruptedException {
    long wanted = count.get() + more;
    while (count.get() < wanted) {
      Thread.sleep(2);
    }
  }

  private void watch(long late) {
    long told = 0;
    while (true) {
      long before = last.get();
      if (before != 0 && System.nanoTime() - before > late) {
        System.out.println((told == before ? "still" : "late") + ": " + at());
        told = before;
      }
      try {
        Thread.sleep(5);
      } catch (InterruptedException e) {
        return;
      }
    }
  }

  private String at() {
    StringBuilder lines = new StringBuilder(top(window.getStackTrace()));
    Thread.getAllStackTraces().keySet().stream()
        .filter(each -> each.getName().startsWith("QuantumRenderer"))
        .forEach(each -> lines.append("\n  drawing:").append(top(each.getStackTrace())));
    return lines.toString();
  }

  private static String top(StackTraceElement[] stack) {
    StringBuilder lines = new StringBuilder();
    for (int i = 0; i < stack.length; i++) {
      String line = stack[i].toString();
      if (i < 8 || line.contains("walebook.")) {
        lines.append("\n    ").append(line);
      }
    }
    return lines.toString();
  }
}
