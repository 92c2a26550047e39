package walebook.sheet;

/** Told how far an export is; the place to stop it. */
@FunctionalInterface
public interface ExportProgress {
  /** For those who don't ask. */
  ExportProgress UNHEARD = share -> {};

  /**
   * Tells how far it is.
   *
   * @param share 0 to 1
   * @throws java.util.concurrent.CancellationException to stop: no file is left behind
   */
  void at(double share);
}
