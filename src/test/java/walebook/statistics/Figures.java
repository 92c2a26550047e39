package walebook.statistics;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Reads the published figures kept beside the tests; each file's first line names its source. */
final class Figures {
  private Figures() {}

  static List<String[]> rows(String file) {
    InputStream stream = Objects.requireNonNull(Figures.class.getResourceAsStream(file), file);
    try (var reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
      return reader
          .lines()
          .filter(line -> !line.isBlank() && !line.startsWith("#"))
          .skip(1)
          .map(line -> line.strip().split(",", -1))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static List<Double> column(String file, int column) {
    return rows(file).stream().map(row -> Double.valueOf(row[column])).toList();
  }

  static List<Sample> samples(List<String[]> rows, int name, int value) {
    Map<String, List<Double>> sorted = new LinkedHashMap<>();
    for (String[] row : rows) {
      sorted.computeIfAbsent(row[name], k -> new ArrayList<>()).add(Double.valueOf(row[value]));
    }
    return sorted.entrySet().stream().map(e -> new Sample(e.getKey(), e.getValue())).toList();
  }

  static Sample sample(String name, Double... values) {
    return new Sample(name, List.of(values));
  }

  /** A value that may be unknown but must not be here. */
  static double known(@Nullable Double value) {
    return Objects.requireNonNull(value);
  }

  static <T> T there(@Nullable T value) {
    return Objects.requireNonNull(value);
  }
}
