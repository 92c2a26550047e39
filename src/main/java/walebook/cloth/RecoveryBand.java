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
   * The band a recovery falls into; beyond the table's ends the band at that end.
   *
   * @throws IllegalArgumentException when it is no number or there is no band
   */
  public static RecoveryBand holding(List<RecoveryBand> bands, double percent) {
    double least = bands.stream().mapToDouble(RecoveryBand::from).min().orElse(percent);
    double most = bands.stream().mapToDouble(RecoveryBand::below).max().orElse(percent);
    double within = Math.max(least, Math.min(Math.nextDown(most), percent));
    return bands.stream()
        .filter(band -> within >= band.from && within < band.below)
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no recovery band holds " + percent));
  }
}
