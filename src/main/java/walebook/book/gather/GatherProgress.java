package walebook.book.gather;

import java.nio.file.Path;

/** Told how far a gathering is; may stop it. */
@FunctionalInterface
public interface GatherProgress {
  /** Nobody listens. */
  GatherProgress UNHEARD = (share, file) -> {};

  /**
   * Tells how far it is.
   *
   * @param share 0 to 1
   * @param file the book in hand
   * @throws java.util.concurrent.CancellationException to stop it; the book is then as it was
   */
  void at(double share, Path file);
}
