package walebook.garment;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import walebook.working.Message;
import walebook.working.Verdict;

/** The answers of one garment with two choices, such as two cloths, check against check. */
public record TwoChoices(GarmentAnswers one, GarmentAnswers other) {

  /** How the other choice stands against the first at one check. */
  public enum Differs {
    /** Same verdict and same figures. */
    SAME("garment.differs.same"),
    /** Same verdict, other figures. */
    FIGURES("garment.differs.figures"),
    BETTER("garment.differs.better"),
    WORSE("garment.differs.worse"),
    /** Asked of one of them alone, or not known of one of them: neither better nor worse. */
    ONE_SIDED("garment.differs.one-sided");

    private final String sayKey;

    Differs(String sayKey) {
      this.sayKey = sayKey;
    }

    /** The key of its words in the bundle, with a mark that needs no colour. */
    public String sayKey() {
      return sayKey;
    }
  }

  /**
   * The same check of both; null where it is asked of one alone.
   *
   * @param about its name
   */
  public record Pair(Message about, @Nullable Check one, @Nullable Check other, Differs differs) {
    public Pair {
      Objects.requireNonNull(about, "about");
      if (one == null && other == null) {
        throw new IllegalArgumentException("a pair has at least one check");
      }
    }
  }

  public TwoChoices {
    Objects.requireNonNull(one, "one");
    Objects.requireNonNull(other, "other");
  }

  /** Check against check in the order of the first; what only the other asks stands behind. */
  public List<Pair> pairs() {
    List<Pair> pairs = new ArrayList<>();
    List<Check> left = new ArrayList<>(other.checks());
    for (Check check : one.checks()) {
      Check same = left.stream().filter(each -> isSame(each, check)).findFirst().orElse(null);
      left.remove(same);
      pairs.add(new Pair(check.about(), check, same, differs(check, same)));
    }
    left.forEach(each -> pairs.add(new Pair(each.about(), null, each, Differs.ONE_SIDED)));
    return List.copyOf(pairs);
  }

  private static boolean isSame(Check a, Check b) {
    return a.kind() == b.kind() && a.about().equals(b.about());
  }

  private static Differs differs(Check one, @Nullable Check other) {
    if (other == null) {
      return Differs.ONE_SIDED;
    }
    if (one.verdict() == other.verdict()) {
      boolean same =
          one.working().says().equals(other.working().says())
              && Objects.equals(one.weakest(), other.weakest());
      return same ? Differs.SAME : Differs.FIGURES;
    }
    if (one.verdict() == Verdict.NOT_KNOWN || other.verdict() == Verdict.NOT_KNOWN) {
      return Differs.ONE_SIDED;
    }
    return rank(other.verdict()) > rank(one.verdict()) ? Differs.BETTER : Differs.WORSE;
  }

  private static int rank(Verdict verdict) {
    return switch (verdict) {
      case NOT_MET -> 0;
      case NOT_KNOWN, TOO_CLOSE -> 1;
      case MET -> 2;
    };
  }
}
