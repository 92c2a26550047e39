package walebook.quantity;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;

/**
 * Minutes as people write them: {@code 4}, {@code 4,5}, {@code 4 1/2}, {@code 4 min}, {@code 4 min
 * 30 s}, {@code 270 s}; {@code 4:30} are minutes and seconds, {@code 0:04:30} hours before them.
 */
public final class ReadMinutes {
  private static final double SECONDS = 60;

  /** Kept to a thousandth, so that what is shown and typed again is the same number. */
  private static final double KEPT = 1000;

  private static final int LONGEST = 40;
  private static final Pattern CLOCK = Pattern.compile("(?:(\\d{1,2}):)?(\\d{1,3}):([0-5]\\d)");
  private static final Pattern WITH_UNITS =
      Pattern.compile(
          "(?:([^a-z]*\\d)\\s*(?:m|mins?\\.?|minutes?))?"
              + "\\s*(?:([^a-z]*\\d)\\s*(?:s|secs?\\.?|seconds?))?");
  private static final Pattern OTHER_UNIT = Pattern.compile("[^a-z]*\\d\\s*[a-z].*");

  private ReadMinutes() {}

  /** Minutes, below 0 where a minus stands before them. */
  public static Answer<Double> read(String typed, Place place) {
    String text = typed.strip().toLowerCase(Locale.ROOT);
    if (text.isEmpty() || text.length() > LONGEST) {
      return notMinutes(typed, place);
    }
    Matcher clock = CLOCK.matcher(text);
    if (clock.matches()) {
      double hours = clock.group(1) == null ? 0 : Double.parseDouble(clock.group(1));
      double minutes = 60 * hours + Double.parseDouble(clock.group(2));
      return kept(minutes + Double.parseDouble(clock.group(3)) / SECONDS);
    }
    Matcher parts = WITH_UNITS.matcher(text);
    if (parts.matches()) {
      Double minutes = part(parts.group(1));
      Double seconds = part(parts.group(2));
      return minutes == null || seconds == null
          ? notMinutes(typed, place)
          : kept(minutes + seconds / SECONDS);
    }
    if (OTHER_UNIT.matcher(text).matches()) {
      return Answer.bad(Problem.refuse("minutes.unit", place, typed.strip(), "min, s"));
    }
    Double plain = part(text);
    return plain == null ? notMinutes(typed, place) : kept(plain);
  }

  private static Answer<Double> kept(double minutes) {
    return Answer.good(Math.rint(minutes * KEPT) / KEPT);
  }

  private static Answer<Double> notMinutes(String typed, Place place) {
    String text = typed.strip();
    String shown = text.length() <= LONGEST ? text : text.substring(0, LONGEST) + "…";
    return Answer.bad(Problem.refuse("minutes.not-minutes", place, shown, "4.5"));
  }

  /** 0 where nothing stands, null where it can't be read. */
  private static @Nullable Double part(@Nullable String number) {
    if (number == null) {
      return 0.0;
    }
    Answer<Double> read = ReadNumber.plain(number, new Place.Whole());
    return read.isGood() && !number.endsWith("%") ? read.value() : null;
  }
}
