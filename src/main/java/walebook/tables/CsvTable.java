package walebook.tables;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;

/**
 * A reference table as a CSV file (RFC 4180, UTF-8) with a header row: which columns it has, of
 * which the first is the key and the last the source, and how a row becomes a value.
 *
 * @param file its name in the shared folder
 * @param columns exactly these, in order
 * @param make builds a row's value; an {@link IllegalArgumentException} of its becomes a problem
 */
record CsvTable<T>(String file, List<String> columns, Function<TableRow, T> make) {
  private static final String FOLDER = "/walebook/shared/";

  CsvTable {
    columns = List.copyOf(columns);
  }

  /**
   * Reads the table that comes with the program.
   *
   * @throws IllegalStateException when it has problems, which is a mistake of the program's own
   */
  List<T> bundled() {
    try (InputStream in = CsvTable.class.getResourceAsStream(FOLDER + file)) {
      if (in == null) {
        throw new IllegalStateException("no such table: " + FOLDER + file);
      }
      return read(new InputStreamReader(in, StandardCharsets.UTF_8)).value();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Reads a table, all its problems at once: header, keys, ranges, sources. */
  Answer<List<T>> read(Reader text) {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser parser = format.parse(text)) {
      if (!parser.getHeaderNames().equals(columns)) {
        return Answer.bad(
            Problem.refuse(
                "table.header",
                new Place.Spot(file, 1, 1, ""),
                String.join(",", parser.getHeaderNames()),
                String.join(",", columns)));
      }
      return rows(parser);
    } catch (IOException | UncheckedIOException | IllegalArgumentException e) {
      return Answer.bad(
          Problem.refuse(
              "table.unreadable", new Place.Path(file), String.valueOf(e.getMessage()), ""));
    }
  }

  private Answer<List<T>> rows(CSVParser parser) {
    List<T> values = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    Set<String> keys = new HashSet<>();
    for (CSVRecord record : parser) {
      TableRow row = new TableRow(file, (int) parser.getCurrentLineNumber(), columns, record);
      row.unique(columns.get(0), keys);
      row.text(columns.get(columns.size() - 1));
      try {
        values.add(make.apply(row));
      } catch (IllegalArgumentException e) {
        row.wrong(e);
      }
      problems.addAll(row.problems());
    }
    return problems.isEmpty() ? Answer.good(List.copyOf(values)) : Answer.bad(problems);
  }
}
