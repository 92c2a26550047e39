package walebook.paper;

import java.util.List;

/**
 * Labels on a sheet, by their geometry.
 *
 * @param key such as {@code 3x7}: columns and rows
 * @param leftMm from the sheet's edge to the first column
 * @param topMm from the sheet's edge to the first row
 * @param gapAcrossMm between columns
 * @param gapDownMm between rows
 */
public record LabelGrid(
    String key,
    PaperSize paper,
    int columns,
    int rows,
    double widthMm,
    double heightMm,
    double leftMm,
    double topMm,
    double gapAcrossMm,
    double gapDownMm) {
  /** Smaller ones have no room for a code that can be read back. */
  public static final double LEAST_WIDTH = 34;

  public static final double LEAST_HEIGHT = 18;

  /** Sheets of self-adhesive labels as they are commonly cut; figures are common practice. */
  public static final List<LabelGrid> COMMON =
      List.of(
          new LabelGrid("3x7", PaperSize.A4, 3, 7, 63.5, 38.1, 7.25, 15.15, 2.5, 0),
          new LabelGrid("3x8", PaperSize.A4, 3, 8, 70, 37, 0, 0.5, 0, 0),
          new LabelGrid("5x13", PaperSize.A4, 5, 13, 38.1, 21.2, 4.75, 10.7, 2.5, 0),
          new LabelGrid("3x10", PaperSize.LETTER, 3, 10, 66.7, 25.4, 4.8, 12.7, 3.1, 0));

  public LabelGrid {
    if (columns < 1 || rows < 1) {
      throw new IllegalArgumentException("columns and rows must be above 0");
    }
    if (widthMm < LEAST_WIDTH || heightMm < LEAST_HEIGHT) {
      throw new IllegalArgumentException("labels must not be smaller than the least");
    }
    if (leftMm < 0 || topMm < 0 || gapAcrossMm < 0 || gapDownMm < 0) {
      throw new IllegalArgumentException("margins and gaps must not be below 0");
    }
    if (right(leftMm, columns, widthMm, gapAcrossMm) > paper.widthMm() + 0.3
        || right(topMm, rows, heightMm, gapDownMm) > paper.heightMm() + 0.3) {
      throw new IllegalArgumentException("labels must not stand over the sheet's edge");
    }
  }

  /**
   * A grid that fills a sheet between equal margins left and right, and top and bottom.
   *
   * @throws IllegalArgumentException when the labels come out too small
   */
  public static LabelGrid free(
      PaperSize paper,
      int columns,
      int rows,
      double leftMm,
      double topMm,
      double gapAcrossMm,
      double gapDownMm) {
    double width = (paper.widthMm() - 2 * leftMm - (columns - 1) * gapAcrossMm) / columns;
    double height = (paper.heightMm() - 2 * topMm - (rows - 1) * gapDownMm) / rows;
    return new LabelGrid(
        columns + "x" + rows,
        paper,
        columns,
        rows,
        width,
        height,
        leftMm,
        topMm,
        gapAcrossMm,
        gapDownMm);
  }

  private static double right(double from, int count, double size, double gap) {
    return from + count * size + (count - 1) * gap;
  }

  public int perSheet() {
    return columns * rows;
  }

  /** Where a label's left edge stands; labels count from 0, row by row. */
  public double left(int label) {
    return leftMm + label % columns * (widthMm + gapAcrossMm);
  }

  public double top(int label) {
    return topMm + label / columns % rows * (heightMm + gapDownMm);
  }
}
