package walebook.sheet;

import java.text.Normalizer;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Covers full names wherever they stand in free text. Case, the blanks between the parts of a name
 * and the way accents are put together do not matter. A first name alone stays: it is a common word
 * too often.
 */
public final class NameCover implements UnaryOperator<String> {
  private static final int MOST_KNOWN = 10_000;
  private static final int LONG = 80;

  /** Below this sign a text is in its composed form whatever it says. */
  private static final int FIRST_MARK = 0x300;

  private final Map<String, String> instead;

  /** No name has fewer signs. */
  private final int shortest;

  /** Words that came before: the words of settings stand in every row. */
  private final Map<String, String> covered = new ConcurrentHashMap<>();

  private final Pattern names;

  private NameCover(Map<String, String> instead, Pattern names) {
    this.instead = instead;
    this.shortest = instead.keySet().stream().mapToInt(String::length).min().orElse(0);
    this.names = names;
  }

  /**
   * Makes a cover.
   *
   * @param insteadOf what stands in the place of each full name
   */
  public static UnaryOperator<String> of(Map<String, String> insteadOf) {
    if (insteadOf.isEmpty()) {
      return UnaryOperator.identity();
    }
    Map<String, String> plain = new HashMap<>();
    insteadOf.forEach((name, other) -> plain.put(plain(name), other));
    return new NameCover(plain, anyOf(plain.keySet()));
  }

  /** Finds any of these plain names, the longest first. */
  static Pattern anyOf(Set<String> plain) {
    String any =
        plain.stream()
            .sorted(Comparator.comparingInt(String::length).reversed().thenComparing(n -> n))
            .map(NameCover::pattern)
            .collect(Collectors.joining("|"));
    int flags = Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE | Pattern.UNICODE_CHARACTER_CLASS;
    return Pattern.compile(any, flags);
  }

  @Override
  public String apply(String text) {
    boolean composed = isComposed(text);
    if (composed && text.length() < shortest) {
      return text;
    }
    String known = covered.get(text);
    if (known != null) {
      return known;
    }
    String found = cover(text, composed);
    if (covered.size() < MOST_KNOWN && text.length() < LONG) {
      covered.put(text, found);
    }
    return found;
  }

  private static boolean isComposed(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) >= FIRST_MARK) {
        return false;
      }
    }
    return true;
  }

  private String cover(String text, boolean isComposed) {
    Matcher found = names.matcher(isComposed ? text : composed(text));
    if (!found.find()) {
      return text;
    }
    return found.replaceAll(
        hit -> Matcher.quoteReplacement(instead.getOrDefault(plain(hit.group()), "–")));
  }

  /** Accents put together in one way. */
  static String composed(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFC);
  }

  /** A name as it is looked up: case and blanks do not matter. */
  static String plain(String name) {
    return composed(name)
        .strip()
        .replaceAll("(?U)\\s+", " ")
        .toUpperCase(Locale.ROOT)
        .toLowerCase(Locale.ROOT);
  }

  /** Scripts without capitals write words together or with letters put before: no edge there. */
  private static String pattern(String name) {
    String parts =
        List.of(name.split(" ")).stream().map(Pattern::quote).collect(Collectors.joining("\\s+"));
    String before = hasCase(name.codePointAt(0)) ? "(?<![\\p{L}\\p{M}])" : "";
    String after = hasCase(name.codePointBefore(name.length())) ? "(?![\\p{L}\\p{M}])" : "";
    return before + parts + after;
  }

  private static boolean hasCase(int sign) {
    return Character.isUpperCase(sign) || Character.isLowerCase(sign);
  }
}
