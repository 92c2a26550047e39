package walebook.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import javafx.animation.AnimationTimer;
import org.jspecify.annotations.Nullable;

/**
 * The gaps between a window's frames, and how long the two threads that make them worked in each:
 * what is more than that was waiting, for the machine or for other programs. With {@code
 * -Dwalebook.late=30} it also says what the window's thread was at when a frame was late by more
 * milliseconds than that.
 */
final class Frames extends AnimationTimer {
  private final Thread window = Thread.currentThread();
  private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
  private final AtomicLong last = new AtomicLong();
  private final AtomicLong count = new AtomicLong();
  private volatile @Nullable Thread draws;
  private long worked;
  private List<Frame> frames = new ArrayList<>();

  /**
   * One frame.
   *
   * @param gap since the frame before, ns
   * @param work of the window's thread and of the one that draws, ns
   */
  record Frame(long gap, long work) {}

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
    long until = work();
    if (before != 0) {
      synchronized (this) {
        frames.add(new Frame(at - before, until - worked));
      }
    }
    worked = until;
    count.incrementAndGet();
  }

  /** The frames since the last time. */
  synchronized List<Frame> take() {
    List<Frame> taken = frames;
    frames = new ArrayList<>();
    return taken;
  }

  private long work() {
    long work = threads.getThreadCpuTime(window.getId());
    Thread drawing = drawing();
    return drawing == null ? work : work + threads.getThreadCpuTime(drawing.getId());
  }

  /** The thread that draws; found once, it stays. */
  private @Nullable Thread drawing() {
    if (draws == null) {
      draws =
          Thread.getAllStackTraces().keySet().stream()
              .filter(each -> each.getName().startsWith("QuantumRenderer"))
              .findFirst()
              .orElse(null);
    }
    return draws;
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
    Thread drawing = draws;
    if (drawing != null) {
      lines.append("\n  drawing:").append(top(drawing.getStackTrace()));
    }
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
