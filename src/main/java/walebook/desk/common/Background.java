package walebook.desk.common;

import java.util.function.Consumer;

/** Runs what takes longer than a frame away from the window's thread. */
public interface Background {

  /**
   * Work that can tell how far it is and stop when asked.
   *
   * @param <T> what it finds
   */
  @FunctionalInterface
  interface Work<T> {
    /**
     * Does it.
     *
     * @throws Exception when it failed; also {@link java.util.concurrent.CancellationException}
     *     from {@link Progress#at}
     */
    T run(Progress progress) throws Exception;
  }

  /** How work tells how far it is. */
  @FunctionalInterface
  interface Progress {
    /**
     * Tells how far the work is.
     *
     * @param share 0 to 1
     * @throws java.util.concurrent.CancellationException when the work was cancelled
     */
    void at(double share);
  }

  /**
   * Starts work. Both outcomes are told on the window's thread; after a cancel neither is.
   *
   * @param done given what was found
   * @param failed given what went wrong
   */
  <T> Task run(Work<T> work, Consumer<T> done, Consumer<Throwable> failed);
}
