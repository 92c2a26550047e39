package walebook.desk.common;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import javafx.application.Platform;

/** The {@link Background} of the running window, on two daemon threads of its own. */
public final class DeskWorker implements Background, AutoCloseable {
  private static final int THREADS = 2;

  private final ExecutorService threads =
      Executors.newFixedThreadPool(
          THREADS,
          work -> {
            Thread thread = new Thread(work, "desk-worker");
            thread.setDaemon(true);
            return thread;
          });
  private final Worker worker = new Worker(threads, Platform::runLater);

  @Override
  public <T> Task run(Work<T> work, Consumer<T> done, Consumer<Throwable> failed) {
    return worker.run(work, done, failed);
  }

  @Override
  public void close() {
    threads.shutdownNow();
  }
}
