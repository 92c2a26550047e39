package walebook.statistics;

import org.jspecify.annotations.Nullable;

/**
 * Whether levels do the same in every block: what the additive model leaves between cells against
 * the scatter within them (lack-of-fit test; N. R. Draper and H. Smith, Applied Regression
 * Analysis, 3rd ed. 1998, section 2.1).
 *
 * @param ssLeft sum of squares that the additive model leaves between cells
 * @param dfLeft cells − blocks − levels + groups, at least 1
 * @param ssPure sum of squares within cells
 * @param dfPure values − cells, at least 1
 * @param f {@code (ssLeft/dfLeft) / (ssPure/dfPure)}
 * @param p chance of an F as large if levels did the same in every block; a large one is no proof
 *     that they do
 */
public record Additivity(double ssLeft, int dfLeft, double ssPure, int dfPure, double f, double p) {

  static @Nullable Additivity of(Layout layout, WithinBlocks fit) {
    int cells = layout.cells.size();
    int dfLeft = cells - layout.blocks.size() - fit.dfLevels;
    int dfPure = fit.dfError - dfLeft;
    if (dfLeft < 1
        || dfPure < 1
        || Rounding.clean(Math.sqrt(fit.ssPure / dfPure), layout.greatestSize) == 0) {
      return null;
    }
    double left = Math.max(0, fit.ssError - fit.ssPure);
    double f = left / dfLeft / (fit.ssPure / dfPure);
    return new Additivity(left, dfLeft, fit.ssPure, dfPure, f, Quantiles.fTail(f, dfLeft, dfPure));
  }
}
