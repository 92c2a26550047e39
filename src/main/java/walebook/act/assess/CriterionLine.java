package walebook.act.assess;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A line of a pasted list: a code and a text; the text is empty when there is none. */
record CriterionLine(String code, String says) {
  /** What stands before a tab, or a first word with a figure in it, is the code. */
  private static final Pattern WITH_CODE =
      Pattern.compile("(?:([^\\t]+)\\t+|([^\\s]*[0-9][^\\s]*)(?:\\s+|$))(.*)");

  private static final Pattern POINT = Pattern.compile("^[-–—•*·]\\s+");

  /**
   * Reads a list; blank lines are passed over, and a line without a code is given the next number
   * that nobody has.
   *
   * @param taken codes of the list that is there, in small letters
   */
  static List<CriterionLine> all(String lines, Set<String> taken) {
    Set<String> codes = new HashSet<>(taken);
    List<CriterionLine> read = new ArrayList<>();
    for (String each : lines.split("\\R")) {
      String line = POINT.matcher(each.strip()).replaceFirst("");
      Matcher coded = WITH_CODE.matcher(line);
      if (line.isEmpty()) {
        continue;
      }
      if (coded.matches()) {
        String code = coded.group(1) == null ? coded.group(2) : coded.group(1);
        read.add(
            new CriterionLine(bare(code), one(POINT.matcher(coded.group(3)).replaceFirst(""))));
        codes.add(bare(code).toLowerCase(Locale.ROOT));
      } else {
        String code = free(codes);
        read.add(new CriterionLine(code, one(line)));
      }
    }
    return read;
  }

  /** Without the sign that parts it from the text. */
  private static String bare(String code) {
    String bare = code.strip().replaceAll("[.:)\\]]+$", "").replaceAll("^[(\\[]+", "");
    return bare.isEmpty() ? code.strip() : bare;
  }

  private static String one(String text) {
    return text.strip().replaceAll("\\s+", " ");
  }

  private static String free(Set<String> codes) {
    int next = 1;
    while (!codes.add(String.valueOf(next))) {
      next++;
    }
    return String.valueOf(next);
  }
}
