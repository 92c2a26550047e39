package walebook.sheet;

import java.time.LocalDate;
import java.time.LocalDateTime;
import org.jspecify.annotations.Nullable;

/** What stands in one cell, typed, so that a spreadsheet can reckon with it. */
public sealed interface Value {

  /** A cell with nothing in it. */
  record Nothing() implements Value {}

  /** Words; never a formula, whatever they begin with. */
  record Text(String text) implements Value {}

  /** A number without its unit, which stands in the header. */
  record Figure(double number) implements Value {}

  record Day(LocalDate date) implements Value {}

  record Moment(LocalDateTime time) implements Value {}

  Value NOTHING = new Nothing();

  /** Words, or nothing when there are none. */
  static Value of(@Nullable String text) {
    return text == null || text.isEmpty() ? NOTHING : new Text(text);
  }

  /** A number, or nothing when there is none or it is not finite. */
  static Value of(@Nullable Number number) {
    return number == null || !Double.isFinite(number.doubleValue())
        ? NOTHING
        : new Figure(number.doubleValue());
  }

  static Value of(@Nullable LocalDate date) {
    return date == null ? NOTHING : new Day(date);
  }
}
