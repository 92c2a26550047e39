package walebook.act.bring;

import java.util.List;
import walebook.problem.Problem;
import walebook.record.Keyed;

/**
 * What becomes of one row.
 *
 * @param row its number as a spreadsheet program shows it
 * @param about what the row is about: a name, a piece's code
 * @param problems why it is refused or what is asked, each with its cell where there is one
 */
public record RowFate(int row, Fate fate, String about, List<Problem> problems) {
  /** What can become of a row. */
  public enum Fate implements Keyed {
    NEW("new"),
    /** The book has it already. */
    THERE("there"),
    /** Unlikely: taken once somebody says that it is right. */
    ASKED("asked"),
    REFUSED("refused");

    private final String key;

    Fate(String key) {
      this.key = key;
    }

    @Override
    public String key() {
      return key;
    }
  }

  public RowFate {
    problems = List.copyOf(problems);
  }

  /** True for a row that stays outside and should not. */
  public boolean isProblem() {
    return fate == Fate.ASKED || fate == Fate.REFUSED;
  }
}
