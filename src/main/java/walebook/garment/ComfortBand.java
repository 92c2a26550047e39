package walebook.garment;

import java.util.List;
import java.util.Set;
import walebook.working.Band;

/**
 * A row of the table of comfort bands: how much of the cloth's stretch a worn garment uses up.
 *
 * @param from share of the stretch, per cent, this and more
 * @param below and under this
 * @param name the plain word for the band
 * @param advice what it is right for
 * @param wears the wears that it suits; empty when it suits none
 */
public record ComfortBand(
    String key,
    double from,
    double below,
    String name,
    String advice,
    Set<Wear> wears,
    String source)
    implements Band {
  public ComfortBand {
    Band.check(key, from, below, name, advice, source);
    wears = Set.copyOf(wears);
  }

  /**
   * The largest share that suits a wear, per cent.
   *
   * @throws IllegalArgumentException when no band suits it
   */
  public static double limit(List<ComfortBand> bands, Wear wear) {
    return bands.stream()
        .filter(band -> band.wears.contains(wear))
        .mapToDouble(ComfortBand::below)
        .max()
        .orElseThrow(() -> new IllegalArgumentException("no comfort band for " + wear.key()));
  }
}
