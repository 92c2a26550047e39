package walebook.seam;

import java.util.List;
import java.util.Objects;

/**
 * A row of the guide to edge change, from {@code from} up to but not including {@code below}, in
 * per cent of the edge before sewing.
 *
 * @param name what such an edge looks like
 * @param advice what usually helps
 */
public record GrowthBand(
    String key, double from, double below, String name, String advice, String source) {
  public GrowthBand {
    Objects.requireNonNull(key, "key");
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(advice, "advice");
    Objects.requireNonNull(source, "source");
    if (!(from < below)) {
      throw new IllegalArgumentException("from must be under below: " + key);
    }
  }

  /**
   * The band a change falls into; beyond the table's ends the band at that end.
   *
   * @throws IllegalArgumentException when it is no number or there is no band
   */
  public static GrowthBand holding(List<GrowthBand> bands, double percent) {
    double least = bands.stream().mapToDouble(GrowthBand::from).min().orElse(percent);
    double most = bands.stream().mapToDouble(GrowthBand::below).max().orElse(percent);
    double within = Math.max(least, Math.min(Math.nextDown(most), percent));
    return bands.stream()
        .filter(band -> within >= band.from && within < band.below)
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no band of edge change: " + percent));
  }
}
