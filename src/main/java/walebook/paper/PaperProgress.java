package walebook.paper;

/** Told how far a print is; the place to stop it. */
@FunctionalInterface
public interface PaperProgress {
  /** For those who don't ask. */
  PaperProgress UNHEARD = share -> {};

  /**
   * Tells how far it is.
   *
   * @param share 0 to 1
   * @throws java.util.concurrent.CancellationException to stop: no file is left behind
   */
  void at(double share);
}
