package walebook.act.assess;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.Criterion;
import walebook.record.Keyed;
import walebook.record.Marking;

/** Reads which of the marks count for a criterion. */
public final class ReadMarkings {
  private static final String ALL = "all";

  private ReadMarkings() {}

  /** Reads keys with commas or blanks between them; nothing, or the word all, is all of them. */
  static Answer<Set<Marking>> read(String field, String typed) {
    String plain = typed.strip().toLowerCase(Locale.ROOT);
    if (plain.isEmpty() || plain.equals(ALL)) {
      return Answer.good(Criterion.ALL);
    }
    if (plain.equals(KeepCriteria.NO_MARKS)) {
      return Answer.bad(Problem.refuse("criterion.no-marks", Place.field(field), "", ""));
    }
    Set<Marking> found = EnumSet.noneOf(Marking.class);
    for (String each : plain.split("[\\s,;]+")) {
      Marking marking = Keyed.find(Marking.class, each);
      if (marking == null) {
        return Answer.bad(
            Problem.refuse("choice.unknown", Place.field(field), each, keys(Criterion.ALL)));
      }
      found.add(marking);
    }
    return Answer.good(found);
  }

  /** Those that are typed, as far as they are known; none where none is to count. */
  public static Set<Marking> ticked(String typed) {
    Answer<Set<Marking>> read = read(KeepCriteria.MARKS, typed);
    return read.isGood() ? read.value() : Set.of();
  }

  /** Marks as they are typed: empty for all of them. */
  public static String typed(Set<Marking> marks) {
    return marks.isEmpty()
        ? KeepCriteria.NO_MARKS
        : marks.size() == Criterion.ALL.size() ? "" : keys(marks);
  }

  private static String keys(Set<Marking> marks) {
    return Arrays.stream(Marking.values())
        .filter(marks::contains)
        .map(Marking::key)
        .collect(Collectors.joining(", "));
  }
}
