package walebook.act.bring;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Needles as people write them: {@code jersey 75/11}, {@code 90/14}, {@code Stretch Nm 75}. */
final class NeedleText {
  private static final Pattern SIZE =
      Pattern.compile("(?:nm\\s*)?(\\d{2,3})(?:\\s*/\\s*\\d{1,2})?", Pattern.CASE_INSENSITIVE);

  private NeedleText() {}

  /** The metric size of a two-number size; the text itself otherwise. */
  static String size(String text) {
    Matcher found = SIZE.matcher(text.strip());
    return found.matches() ? found.group(1) : text;
  }

  /** The size that stands in a text; empty where there is none. */
  static String sizeIn(String text) {
    Matcher found = SIZE.matcher(text);
    return found.find() ? found.group(1) : "";
  }

  /** What is left of a text without its size. */
  static String pointIn(String text) {
    return SIZE.matcher(text).replaceFirst("").replaceAll("[,;]", " ").strip();
  }
}
