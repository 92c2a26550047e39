package walebook.statistics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;

/**
 * The rows of a least-squares problem. When there are many they are turned into the few rows of a
 * triangle before more come: a rotation changes neither the answer nor any sum of squares (G. H.
 * Golub, Numerische Mathematik 7 (1965) 206–216).
 */
final class Rows {
  private static final int MANY = 2048;

  private final int columns;

  /** Each with its target behind its columns. */
  private final List<double[]> rows = new ArrayList<>();

  Rows(int columns) {
    this.columns = columns;
  }

  void add(double[] row, double target) {
    if (rows.size() >= MANY + columns + 1) {
      turn();
    }
    double[] both = Arrays.copyOf(row, columns + 1);
    both[columns] = target;
    rows.add(both);
  }

  private void turn() {
    RealMatrix all = new Array2DRowRealMatrix(rows.toArray(new double[0][]), false);
    RealMatrix triangle = new QRDecomposition(all).getR();
    rows.clear();
    for (int i = 0; i <= columns; i++) {
      rows.add(triangle.getRow(i));
    }
  }

  double[][] columns() {
    return rows.stream().map(row -> Arrays.copyOf(row, columns)).toArray(double[][]::new);
  }

  double[] targets() {
    return rows.stream().mapToDouble(row -> row[columns]).toArray();
  }
}
