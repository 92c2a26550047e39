package walebook.act.bring.match;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Guesses what each column holds from its header; a person has the last word. */
public final class GuessColumns {
  /** So many of our own headers together, or all there are, stand only in our own workbook. */
  private static final int OWN = 20;

  private static final double SAME = 1.0;
  private static final double HOLDS_ALL = 0.8;
  private static final double MISTYPED = 0.6;

  private record Candidate(int column, BringField field, double score) {}

  private GuessColumns() {}

  /**
   * The guesses, column by column; no field is given to two columns.
   *
   * @param own headers of our own workbooks by title, each with its field's key or an empty text
   * @param kept what a header was taken for before, by header
   */
  public static List<ColumnMatch> of(
      BringWhat what,
      List<String> headers,
      Map<String, String> own,
      Map<String, ColumnMatch> kept) {
    @Nullable ColumnMatch[] found = new ColumnMatch[headers.size()];
    Set<String> taken = new HashSet<>();
    boolean isOwn = isOwn(headers, own);
    for (int i = 0; i < found.length; i++) {
      String header = headers.get(i);
      ColumnMatch known = kept.get(header);
      if (known == null && isOwn) {
        String field = own.getOrDefault(header, "");
        known = field.isEmpty() ? ColumnMatch.LEFT_OUT : match(what, field, header);
      }
      if (known != null && (known.isLeftOut() || taken.add(known.field()))) {
        found[i] = known;
      }
    }
    for (Candidate each : candidates(what, headers)) {
      if (found[each.column()] == null && taken.add(each.field().key())) {
        found[each.column()] = match(what, each.field().key(), headers.get(each.column()));
      }
    }
    List<ColumnMatch> matches = new ArrayList<>();
    for (ColumnMatch each : found) {
      matches.add(each == null ? ColumnMatch.LEFT_OUT : each);
    }
    return matches;
  }

  /** True for the headers of our own workbook. */
  public static boolean isOwn(List<String> headers, Map<String, String> own) {
    return !own.isEmpty()
        && headers.stream().filter(own::containsKey).count() >= Math.min(OWN, own.size());
  }

  /** A field with the unit of the header, where the field can be in it. */
  public static ColumnMatch match(BringWhat what, String field, String header) {
    BringField known = BringField.find(what, field);
    String unit = HeaderText.of(header).unit();
    return known == null
        ? ColumnMatch.LEFT_OUT
        : new ColumnMatch(field, ColumnUnit.fits(known, unit) ? unit : "");
  }

  /** The likeliest first; between equals the column further left. */
  private static List<Candidate> candidates(BringWhat what, List<String> headers) {
    List<Candidate> all = new ArrayList<>();
    // A field's own words are the same for every header: taken apart once.
    Map<String, List<String>> apart = new HashMap<>();
    for (int i = 0; i < headers.size(); i++) {
      HeaderText header = HeaderText.of(headers.get(i));
      for (BringField field : BringField.of(what)) {
        double score = score(field, header, apart);
        if (score > 0) {
          all.add(new Candidate(i, field, score));
        }
      }
    }
    all.sort(
        Comparator.comparingDouble(Candidate::score)
            .reversed()
            .thenComparingInt(Candidate::column));
    return all;
  }

  private static double score(
      BringField field, HeaderText header, Map<String, List<String>> apart) {
    if (header.words().isEmpty() || !ColumnUnit.fits(field, header.unit())) {
      return 0;
    }
    double best =
        header.words().equals(apart.computeIfAbsent(field.key(), HeaderText::words)) ? SAME : 0;
    for (String each : ColumnWords.of(field.key())) {
      best = Math.max(best, score(apart.computeIfAbsent(each, HeaderText::words), header.words()));
    }
    if (!header.unit().isEmpty()) {
      for (String each : ColumnWords.withUnit(field.key())) {
        best =
            Math.max(best, score(apart.computeIfAbsent(each, HeaderText::words), header.words()));
      }
    }
    return best;
  }

  private static double score(List<String> known, List<String> header) {
    if (header.equals(known)) {
      return SAME;
    }
    if (new HashSet<>(header).containsAll(known)) {
      return HOLDS_ALL * known.size() / header.size();
    }
    String one = String.join(" ", known);
    String other = String.join(" ", header);
    int allowed = Math.min(one.length(), other.length()) >= 7 ? 2 : 1;
    boolean near =
        Math.min(one.length(), other.length()) >= 5
            && Math.abs(one.length() - other.length()) <= allowed
            && distance(one, other) <= allowed;
    return near ? MISTYPED : 0;
  }

  /** Signs to change, put in or take out (Levenshtein's distance). */
  private static int distance(String one, String other) {
    int[] last = new int[other.length() + 1];
    for (int j = 0; j <= other.length(); j++) {
      last[j] = j;
    }
    for (int i = 1; i <= one.length(); i++) {
      int[] next = new int[other.length() + 1];
      next[0] = i;
      for (int j = 1; j <= other.length(); j++) {
        int change = last[j - 1] + (one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1);
        next[j] = Math.min(change, 1 + Math.min(last[j], next[j - 1]));
      }
      last = next;
    }
    return last[other.length()];
  }
}
