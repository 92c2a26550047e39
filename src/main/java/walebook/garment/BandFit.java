package walebook.garment;

import walebook.working.Band;

/**
 * A row of the table of how a band lies: by its ratio less the ratio at which it would lie flat.
 *
 * @param from difference of the ratios, this and more
 * @param below and under this
 */
public record BandFit(
    String key, double from, double below, String name, String advice, String source)
    implements Band {
  public BandFit {
    Band.check(key, from, below, name, advice, source);
  }
}
