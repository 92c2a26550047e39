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
   * The band a change falls into.
   *
   * @throws IllegalArgumentException when no band holds it
   */
  public static GrowthBand holding(List<GrowthBand> bands, double percent) {
    return bands.stream()
        .filter(band -> percent >= band.from && percent < band.below)
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no band of edge change: " + percent));
  }
}
