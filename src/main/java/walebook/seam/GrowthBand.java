package walebook.seam;

import walebook.working.Band;

/**
 * A row of the guide to edge change, from {@code from} up to but not including {@code below}, in
 * per cent of the edge before sewing.
 *
 * @param name what such an edge looks like
 * @param advice what usually helps
 */
public record GrowthBand(
    String key, double from, double below, String name, String advice, String source)
    implements Band {
  public GrowthBand {
    Band.check(key, from, below, name, advice, source);
  }
}
