package walebook.cloth;

import java.util.List;
import java.util.Objects;

/**
 * A row of the table of stretch balance: which cloths count as stable, one-way or two-way.
 *
 * @param largerFrom the larger of the two stretches is at least this, per cent
 * @param largerBelow and under this
 * @param shareFrom the smaller stretch is at least this share of the larger, per cent
 * @param shareBelow and under this
 * @param name the plain word for the band
 */
public record BalanceBand(
    String key,
    double largerFrom,
    double largerBelow,
    double shareFrom,
    double shareBelow,
    String name,
    String source) {
  public BalanceBand {
    Objects.requireNonNull(key, "key");
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(source, "source");
    if (!(largerFrom < largerBelow) || !(shareFrom < shareBelow)) {
      throw new IllegalArgumentException("a band's from must be under its below: " + key);
    }
  }

  /**
   * The band a cloth falls into.
   *
   * @param larger the larger stretch, per cent
   * @param share the smaller as a share of the larger, per cent
   * @throws IllegalArgumentException when no band holds it
   */
  public static BalanceBand holding(List<BalanceBand> bands, double larger, double share) {
    double most = bands.stream().mapToDouble(BalanceBand::largerBelow).max().orElse(larger);
    double within = Math.min(Math.nextDown(most), larger);
    return bands.stream()
        .filter(band -> within >= band.largerFrom && within < band.largerBelow)
        .filter(band -> share >= band.shareFrom && share < band.shareBelow)
        .findFirst()
        .orElseThrow(
            () -> new IllegalArgumentException("no balance band: " + larger + ", " + share));
  }
}
