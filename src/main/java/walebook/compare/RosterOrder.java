package walebook.compare;

import java.text.Collator;
import java.util.Comparator;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import walebook.record.Student;

/** The order of a class on every list: by name where names are shown, by code where codes are. */
public final class RosterOrder {
  private static final Pattern FIGURES = Pattern.compile("\\d+");

  private RosterOrder() {}

  /**
   * The order of students as they are shown.
   *
   * @param names false for codes; the order of names would tell whose they are
   */
  public static Comparator<Student> of(boolean names) {
    Comparator<Student> first =
        names
            ? Comparator.comparing(Student::name, Collator.getInstance(Locale.ROOT))
            : Comparator.comparing(each -> counted(each.alias()));
    return first.thenComparing(Student::alias).thenComparing(Student::id);
  }

  /** Figures count as numbers, so that S9 comes before S10. */
  private static String counted(String alias) {
    Matcher figures = FIGURES.matcher(alias);
    return figures.replaceAll(
        hit -> "0".repeat(Math.max(0, 9 - hit.group().length())) + hit.group());
  }
}
