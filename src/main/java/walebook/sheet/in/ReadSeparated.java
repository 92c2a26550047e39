package walebook.sheet.in;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;

/**
 * Reads text in columns (RFC 4180, also with semicolons or tabs). A cell is always words here: what
 * begins like a formula is words too, and an apostrophe that guards it is taken off.
 */
final class ReadSeparated {
  private static final String GUARDED = "=+-@\t\n＝＋－＠";

  private final Path file;

  ReadSeparated(Path file) {
    this.file = file;
  }

  Answer<InFile> open() {
    return Answer.good(new InFile(file, List.of(name()), List.of()));
  }

  Answer<InGrid> read() {
    long line = 0;
    try {
      byte[] bytes = Files.readAllBytes(file);
      GuessText guess = GuessText.of(bytes);
      if (guess.text().indexOf('\0') >= 0) {
        return Answer.bad(Problem.refuse("in.no-text", place(), "", ""));
      }
      CSVFormat format =
          CSVFormat.RFC4180
              .builder()
              .setDelimiter(guess.separator())
              .setIgnoreEmptyLines(false)
              .get();
      List<InRow> rows = new ArrayList<>();
      try (CSVParser parser = CSVParser.parse(new StringReader(guess.text()), format)) {
        long held = 0;
        for (CSVRecord each : parser) {
          line = parser.getCurrentLineNumber();
          List<InCell> cells = cells(each, rows.isEmpty());
          held += cells.size();
          limit(each.getRecordNumber(), held);
          if (!cells.isEmpty()) {
            rows.add(new InRow((int) each.getRecordNumber(), cells));
          }
        }
      }
      Problem told = Problem.ask("in.guessed", place(), guess.encoding(), said(guess.separator()));
      return Answer.good(new InGrid(name(), rows, List.of(told)));
    } catch (Stopped e) {
      return Answer.bad(e.problem());
    } catch (IOException | UncheckedIOException e) {
      return Answer.bad(
          Problem.refuse(
              "in.bad-quotes",
              new Place.Spot(name(), (int) line + 1, 1, ""),
              ReadWorkbook.shortened(e),
              ""));
    }
  }

  private List<InCell> cells(CSVRecord record, boolean first) throws Stopped {
    List<InCell> cells = new ArrayList<>();
    int row = (int) record.getRecordNumber();
    if (first
        && record.size() <= 2
        && record.get(0).toLowerCase(java.util.Locale.ROOT).startsWith("sep=")) {
      return cells;
    }
    for (int i = 0; i < record.size(); i++) {
      String text = record.get(i);
      if (text.length() > InLimits.SIGNS) {
        throw new Stopped(
            "in.cell-too-long",
            new Place.Cell(name(), row, InGrid.letters(i)),
            "",
            String.valueOf(InLimits.SIGNS));
      }
      if (text.isBlank()) {
        continue;
      }
      if (i >= InLimits.COLUMNS) {
        throw new Stopped(
            "in.too-many-columns",
            new Place.Cell(name(), row, InGrid.letters(i)),
            InGrid.letters(i),
            String.valueOf(InLimits.COLUMNS));
      }
      while (cells.size() < i) {
        cells.add(InCell.EMPTY);
      }
      cells.add(InCell.words(bare(text)));
    }
    return cells;
  }

  private static String bare(String text) {
    boolean guarded =
        text.length() > 1 && text.charAt(0) == '\'' && GUARDED.indexOf(text.charAt(1)) >= 0;
    return guarded ? text.substring(1) : text;
  }

  private void limit(long row, long held) throws Stopped {
    if (row > InLimits.ROWS) {
      throw new Stopped(
          "in.too-many-rows", place(), String.valueOf(row), String.valueOf(InLimits.ROWS));
    }
    if (held > InLimits.CELLS) {
      throw new Stopped(
          "in.too-many-cells", place(), String.valueOf(row), String.valueOf(InLimits.CELLS));
    }
  }

  private static String said(char separator) {
    return separator == '\t' ? "→" : String.valueOf(separator);
  }

  private String name() {
    return String.valueOf(file.getFileName());
  }

  private Place place() {
    return new Place.Path(name());
  }
}
