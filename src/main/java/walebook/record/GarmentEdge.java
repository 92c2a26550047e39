package walebook.record;

import org.jspecify.annotations.Nullable;

/**
 * Something that goes round an opening and must stretch with it.
 *
 * @param link key of what it is, such as {@code hem}
 * @param stitch what it is sewn with; null when as the garment's seams
 * @param statedPercent how far a packet says that it stretches; null where test pieces speak
 */
public record GarmentEdge(
    String link, @Nullable StitchChoice stitch, @Nullable Double statedPercent) {
  public GarmentEdge {
    Check.text("link", link);
    Check.notNegative("statedPercent", statedPercent);
  }
}
