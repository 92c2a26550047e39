package walebook.sheet;

import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import walebook.words.Words;
import walebook.working.Message;

/**
 * One column of a table of rows, as data: the same list feeds the workbook, a CSV file and the
 * sheet that explains every column.
 *
 * @param key short and fixed, such as {@code seam-stretch}: for choosing columns and for programs
 * @param header the sentence key of its name, with arguments where the name holds any
 * @param unit sign of the unit, empty where there is none
 * @param says the sentence key of what it is
 * @param origin how its values came about
 * @param width in characters
 * @param value what a row has in it
 * @param <T> what a row is made from
 */
public record Column<T>(
    String key,
    Message header,
    String unit,
    Message says,
    Origin origin,
    Format format,
    int width,
    Function<T, Value> value) {

  public Column {
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(origin, "origin");
    Objects.requireNonNull(value, "value");
    if (!key.matches("[a-z][a-z0-9-]*")) {
      throw new IllegalArgumentException("key must be lower case with hyphens: " + key);
    }
  }

  /** A column as wide as its format is usually. */
  public Column(
      String key,
      Message header,
      String unit,
      Message says,
      Origin origin,
      Format format,
      Function<T, Value> value) {
    this(key, header, unit, says, origin, format, format.width(), value);
  }

  /** The same in another width, for a sheet that would be too wide for a page. */
  Column<T> wide(int characters) {
    return new Column<>(key, header, unit, says, origin, format, characters, value);
  }

  /** The name as shown, with the unit in brackets where there is one. */
  public String title(Words words) {
    String name = words.say(header);
    return unit.isEmpty() ? name : words.say("sheet.header.with-unit", name, unit);
  }

  /** Whether its cells are words. */
  boolean isWords() {
    return format.isWords();
  }

  static <T> Column<T> words(
      String key, String header, String says, Origin origin, Function<T, @Nullable String> value) {
    return text(key, header, says, origin, Format.WORD, value);
  }

  static <T> Column<T> text(
      String key,
      String header,
      String says,
      Origin origin,
      Format format,
      Function<T, @Nullable String> value) {
    return of(key, header, "", says, origin, format, row -> Value.of(value.apply(row)));
  }

  static <T> Column<T> whole(
      String key, String header, String says, Origin origin, Function<T, @Nullable Number> value) {
    return figure(key, header, "", says, origin, Format.WHOLE, value);
  }

  /** A small count in a narrow column. */
  static <T> Column<T> tally(
      String key, String header, String says, Origin origin, Function<T, @Nullable Number> value) {
    return figure(key, header, "", says, origin, Format.TALLY, value);
  }

  static <T> Column<T> figure(
      String key,
      String header,
      String unit,
      String says,
      Origin origin,
      Format format,
      Function<T, @Nullable Number> value) {
    return of(key, header, unit, says, origin, format, row -> Value.of(value.apply(row)));
  }

  static <T> Column<T> of(
      String key,
      String header,
      String unit,
      String says,
      Origin origin,
      Format format,
      Function<T, Value> value) {
    return new Column<>(key, Message.of(header), unit, Message.of(says), origin, format, value);
  }
}
