package walebook.garment;

import java.util.List;
import walebook.working.Band;

/**
 * A row of the table of ease by fit. A garment smaller than the body is told by its ease in per
 * cent of the body, a larger one in mm.
 *
 * @param inPercent whether from and below are per cent of the body; otherwise mm
 * @param from ease, this and more
 * @param below and under this
 * @param name the plain word for the fit
 * @param stretchFrom the least stretch round the body that is usual for it, per cent
 */
public record EaseFit(
    String key,
    boolean inPercent,
    double from,
    double below,
    String name,
    double stretchFrom,
    String advice,
    String source)
    implements Band {
  public EaseFit {
    Band.check(key, from, below, name, advice, source);
    if (!(stretchFrom >= 0)) {
      throw new IllegalArgumentException("stretchFrom must not be negative: " + key);
    }
  }

  /**
   * The fit of an ease.
   *
   * @param easeMm finished less body
   * @param easePercent the same in per cent of the body
   * @throws IllegalArgumentException when no row holds it
   */
  public static EaseFit holding(List<EaseFit> fits, double easeMm, double easePercent) {
    boolean smaller = easeMm < 0;
    return Band.holding(
        fits.stream().filter(fit -> fit.inPercent == smaller).toList(),
        smaller ? easePercent : easeMm);
  }
}
