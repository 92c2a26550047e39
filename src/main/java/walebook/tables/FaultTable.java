package walebook.tables;

import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import walebook.seam.Factor;
import walebook.seam.Fault;
import walebook.seam.Remedy;

/** The fault catalogue; a remedy is written {@code wider zigzag {width,up,0.5 mm}}. */
final class FaultTable {
  private static final Pattern REMEDY =
      Pattern.compile("([^{}]+)\\{([a-z-]+),([a-z]+),([^{}]*)\\}");

  static final CsvTable<Fault> FAULTS =
      new CsvTable<>(
          "faults.csv",
          List.of("key", "name", "looks_like", "causes", "remedies", "measure", "source"),
          row ->
              new Fault(
                  row.text("key"),
                  row.text("name"),
                  row.text("looks_like"),
                  row.texts("causes", "|"),
                  remedies(row),
                  row.text("measure"),
                  row.text("source")));

  private FaultTable() {}

  private static List<Remedy> remedies(TableRow row) {
    return row.texts("remedies", "|").stream().flatMap(text -> remedy(row, text)).toList();
  }

  private static Stream<Remedy> remedy(TableRow row, String text) {
    Matcher form = REMEDY.matcher(text);
    Factor factor = form.matches() ? factor(form.group(2)) : null;
    Remedy.Direction direction = form.matches() ? direction(form.group(3)) : null;
    if (factor == null || direction == null) {
      row.refuse("table.remedy", "remedies", text, "longer stitch {length,up,0.5 mm}");
      return Stream.of();
    }
    return Stream.of(new Remedy(form.group(1).strip(), factor, direction, form.group(4).strip()));
  }

  private static @Nullable Factor factor(String key) {
    return Arrays.stream(Factor.values())
        .filter(one -> one.key().equals(key))
        .findFirst()
        .orElse(null);
  }

  private static Remedy.@Nullable Direction direction(String key) {
    return Arrays.stream(Remedy.Direction.values())
        .filter(one -> one.key().equals(key))
        .findFirst()
        .orElse(null);
  }
}
