package walebook.statistics;

import java.util.stream.IntStream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * Least-squares effects of levels after differences between blocks are taken out.
 *
 * <p>Block effects are removed by centring each block (Frisch and Waugh, Econometrica 1 (1933)
 * 387–401), then the centred columns of the levels, less one reference for each group, are solved
 * by QR; the result equals that of the full model with both factors, and the work grows with the
 * number of cells, not of values.
 */
final class WithinBlocks {
  private static final double SINGULAR = 1e-10;

  /** Effect of each level against the first level of its group. */
  final double[] effect;

  /** Covariance of the effects divided by the error variance; noughts for references. */
  final double[][] covariance;

  final double[] blockMean;
  final int[] blockSize;
  final double ssLevels;
  final double ssError;

  /** The part of {@link #ssError} that lies within cells. */
  final double ssPure;

  final int dfLevels;
  final int dfError;

  WithinBlocks(Layout layout) {
    int levels = layout.levels.size();
    blockMean = new double[layout.blocks.size()];
    blockSize = new int[layout.blocks.size()];
    meanBlocks(layout);
    int[] column = columns(layout);
    dfLevels = levels - layout.groups;
    dfError = total() - layout.blocks.size() - dfLevels;
    effect = new double[levels];
    covariance = new double[levels][levels];
    Cells cells = layout.cells;
    ssPure = IntStream.range(0, cells.size()).mapToDouble(cells::squares).sum();
    Rows rows = rows(cells, column);
    RealVector target = new ArrayRealVector(rows.targets(), false);
    if (dfLevels == 0) {
      ssLevels = 0;
      ssError = ssPure + squares(target);
      return;
    }
    RealMatrix x = new Array2DRowRealMatrix(rows.columns(), false);
    QRDecomposition qr = new QRDecomposition(x, SINGULAR);
    RealVector solved = qr.getSolver().solve(target);
    RealVector fitted = x.operate(solved);
    ssLevels = squares(fitted);
    ssError = ssPure + squares(target.subtract(fitted));
    spread(column, solved, qr.getR().getSubMatrix(0, dfLevels - 1, 0, dfLevels - 1));
  }

  private static double squares(RealVector vector) {
    return vector.dotProduct(vector);
  }

  private int total() {
    int n = 0;
    for (int size : blockSize) {
      n += size;
    }
    return n;
  }

  private void meanBlocks(Layout layout) {
    Cells cells = layout.cells;
    for (int i = 0; i < cells.size(); i++) {
      blockSize[cells.block(i)] += cells.n(i);
    }
    for (int i = 0; i < cells.size(); i++) {
      double share = (double) cells.n(i) / blockSize[cells.block(i)];
      blockMean[cells.block(i)] += share * cells.mean(i);
    }
  }

  /** Column of each level in the reduced model, −1 for the reference of its group. */
  private static int[] columns(Layout layout) {
    int[] column = new int[layout.levels.size()];
    boolean[] hasReference = new boolean[layout.groups];
    int next = 0;
    for (int i = 0; i < column.length; i++) {
      int group = layout.groupOfLevel[i];
      column[i] = hasReference[group] ? next++ : -1;
      hasReference[group] = true;
    }
    return column;
  }

  /** Centred columns and means of every cell, block by block. */
  private Rows rows(Cells cells, int[] column) {
    Rows rows = new Rows(dfLevels);
    int next = 0;
    while (next < cells.size()) {
      int first = next;
      int block = cells.block(first);
      double[] share = new double[dfLevels];
      for (; next < cells.size() && cells.block(next) == block; next++) {
        if (column[cells.level(next)] >= 0) {
          share[column[cells.level(next)]] = (double) cells.n(next) / blockSize[block];
        }
      }
      for (int i = first; i < next; i++) {
        double weight = Math.sqrt(cells.n(i));
        double[] row = new double[dfLevels];
        for (int k = 0; k < dfLevels; k++) {
          double own = column[cells.level(i)] == k ? 1 : 0;
          row[k] = weight * (own - share[k]);
        }
        rows.add(row, weight * (cells.mean(i) - blockMean[block]));
      }
    }
    return rows;
  }

  private void spread(int[] column, RealVector solved, RealMatrix r) {
    double[][] inverse = new double[dfLevels][];
    for (int k = 0; k < dfLevels; k++) {
      RealVector unit = new ArrayRealVector(dfLevels);
      unit.setEntry(k, 1);
      MatrixUtils.solveUpperTriangularSystem(r, unit);
      inverse[k] = unit.toArray();
    }
    RealMatrix transposed = new Array2DRowRealMatrix(inverse, false);
    RealMatrix all = transposed.transpose().multiply(transposed);
    for (int i = 0; i < column.length; i++) {
      for (int j = 0; j < column.length && column[i] >= 0; j++) {
        covariance[i][j] = column[j] < 0 ? 0 : all.getEntry(column[i], column[j]);
      }
      effect[i] = column[i] < 0 ? 0 : solved.getEntry(column[i]);
    }
  }
}
