package walebook.cloth;

import walebook.working.Band;

/**
 * A row of the table of recovery bands, from {@code from} up to but not including {@code below}, in
 * per cent of the extension.
 *
 * @param key the row's key
 * @param name the plain word for the band
 * @param advice what such a cloth suits
 */
public record RecoveryBand(
    String key, double from, double below, String name, String advice, String source)
    implements Band {
  public RecoveryBand {
    Band.check(key, from, below, name, advice, source);
  }
}
