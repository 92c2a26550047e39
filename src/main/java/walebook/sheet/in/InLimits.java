package walebook.sheet.in;

/** How much is read before a file is refused; each keeps memory and time bounded. */
final class InLimits {
  /** Rows of a sheet (ECMA-376 leaves it to programs; 2^20 is what they all take). */
  static final int ROWS = 1 << 20;

  /** More columns than anyone keeps about a sample. */
  static final int COLUMNS = 400;

  /** Cells of one sheet, those left empty before a filled one counted too. */
  static final int CELLS = 4_000_000;

  /** Signs in one cell, the most that spreadsheet programs take. */
  static final int SIGNS = 32_767;

  static final long FILE_BYTES = 50L << 20;

  /** Of all parts of a workbook, unpacked. */
  static final long UNPACKED_BYTES = 256L << 20;

  /** Of the parts that are held in memory whole. */
  static final long HELD_BYTES = 4L << 20;

  static final long STRINGS_BYTES = 64L << 20;

  static final int PARTS = 5_000;

  private InLimits() {}
}
