package walebook.command;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** A table in plain text: words to the left, numbers to the right. */
final class Table {
  private static final Pattern NUMBER = Pattern.compile("[−+-]?[0-9][0-9.]*( [%a-z/²]+)?");

  private final List<List<String>> rows = new ArrayList<>();

  Table(List<String> header) {
    rows.add(List.copyOf(header));
  }

  void row(List<String> cells) {
    if (cells.size() != rows.get(0).size()) {
      throw new IllegalArgumentException("cells must match the header: " + cells);
    }
    rows.add(List.copyOf(cells));
  }

  @Override
  public String toString() {
    int columns = rows.get(0).size();
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < rows.size(); i++) {
      StringBuilder line = new StringBuilder();
      for (int column = 0; column < columns; column++) {
        line.append(column == 0 ? "" : "  ").append(padded(rows.get(i).get(column), column));
      }
      text.append(line.toString().stripTrailing()).append(System.lineSeparator());
      if (i == 0) {
        text.append("-".repeat(line.length())).append(System.lineSeparator());
      }
    }
    return text.toString().stripTrailing();
  }

  private String padded(String cell, int column) {
    String gap = " ".repeat(width(column) - length(cell));
    return isNumeric(column) ? gap + cell : cell + gap;
  }

  private int width(int column) {
    return rows.stream().mapToInt(row -> length(row.get(column))).max().orElse(0);
  }

  private static int length(String cell) {
    return cell.codePointCount(0, cell.length());
  }

  private boolean isNumeric(int column) {
    return rows.size() > 1
        && rows.stream()
            .skip(1)
            .map(row -> row.get(column))
            .allMatch(cell -> cell.isEmpty() || cell.equals("–") || NUMBER.matcher(cell).matches());
  }
}
