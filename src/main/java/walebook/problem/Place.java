package walebook.problem;

/** Where in an input a problem sits. */
public sealed interface Place {

  /** The input as a whole. */
  record Whole() implements Place {}

  /** A named field of a form or an option of the command line. */
  record Field(String name) implements Place {}

  /**
   * A spot in a text file; lines and columns count from 1, 0 means unknown.
   *
   * @param field path of the field inside the file, such as {@code plan.factors[0].levels}
   */
  record Spot(String file, int line, int column, String field) implements Place {}

  /** A file or folder as a whole. */
  record Path(String path) implements Place {}

  /** A cell of a workbook; row counts from 1 as the spreadsheet shows it. */
  record Cell(String sheet, int row, String column) implements Place {}

  /** Short for a field. */
  static Place field(String name) {
    return new Field(name);
  }
}
