package walebook.desk.classroom;

import java.util.List;

/**
 * Lines of cells as text that a spreadsheet takes from the clipboard: cells parted by tabs.
 *
 * @param lines the header first
 */
record CopiedTable(List<List<String>> lines) {
  CopiedTable {
    lines = lines.stream().map(List::copyOf).toList();
  }

  String text() {
    StringBuilder text = new StringBuilder();
    for (List<String> line : lines) {
      text.append(String.join("\t", line.stream().map(CopiedTable::plain).toList())).append('\n');
    }
    return text.toString();
  }

  /** A tab or a new line would begin a cell; a sign in front of words would begin a formula. */
  private static String plain(String cell) {
    // Spreadsheets take the typeset minus for a word.
    String flat = cell.replaceAll("[\\t\\r\\n]+", " ").replace('\u2212', '-');
    boolean formula = flat.matches("[=+@].*") || flat.matches("-[^0-9.].*");
    return formula ? "'" + flat : flat;
  }
}
