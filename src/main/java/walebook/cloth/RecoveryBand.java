package walebook.cloth;

import java.util.List;
import java.util.Objects;

/**
 * A row of the table of recovery bands, from {@code from} up to but not including {@code below}, in
 * per cent of the extension.
 *
 * @param key the row's key
 * @param name the plain word for the band
 * @param advice what such a cloth suits
 */
public record RecoveryBand(
    String key, double from, double below, String name, String advice, String source) {
  public RecoveryBand {
    Objects.requireNonNull(key, "key");
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(advice, "advice");
    Objects.requireNonNull(source, "source");
    if (!(from < below)) {
      throw new IllegalArgumentException("from must be under below: " + key);
    }
  }

  /**
   * The band a recovery falls into.
   *
   * @throws IllegalArgumentException when no band holds it
   */
  public static RecoveryBand holding(List<RecoveryBand> bands, double percent) {
    return bands.stream()
        .filter(band -> percent >= band.from && percent < band.below)
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no recovery band holds " + percent));
  }
}
