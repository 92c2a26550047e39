package walebook.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;

/** Reads a line of pairs such as {@code cloth="Gull jersey" grain=course end-length=152}. */
final class ReadPairs {
  private static final Pattern PAIR =
      Pattern.compile("\\G\\s*(?:([a-z][a-z0-9-]*)=(?:\"([^\"]*)\"|([^\\s\"]*))(?=\\s|$)|(\\S+))");

  private ReadPairs() {}

  static Answer<Map<String, String>> of(String line) {
    Map<String, String> pairs = new LinkedHashMap<>();
    List<Problem> problems = new ArrayList<>();
    Matcher next = PAIR.matcher(line);
    while (next.find()) {
      if (next.group(4) != null) {
        problems.add(
            Problem.refuse(
                "pair.not-a-pair", new Place.Whole(), next.group(4), "cloth=\"Grey jersey\""));
      } else {
        String value = next.group(2) == null ? next.group(3) : next.group(2);
        if (pairs.put(next.group(1), value) != null) {
          problems.add(Problem.refuse("pair.twice", Place.field(next.group(1)), next.group(1), ""));
        }
      }
    }
    return problems.isEmpty() ? Answer.good(pairs) : Answer.bad(problems);
  }
}
