package walebook.seam;

import java.util.List;

/**
 * The rows of the reference tables that the calculations on seams go by.
 *
 * @param ratios thread ratios
 * @param needles needle advice
 * @param growth guide to edge change
 */
public record SeamRows(
    List<ThreadRatio> ratios, List<NeedleAdvice> needles, List<GrowthBand> growth) {
  public SeamRows {
    ratios = List.copyOf(ratios);
    needles = List.copyOf(needles);
    growth = List.copyOf(growth);
  }
}
