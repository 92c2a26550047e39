package walebook.seam;

import java.util.List;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.Show;
import walebook.working.Caution;
import walebook.working.Message;
import walebook.working.Source;
import walebook.working.Working;
import walebook.working.WorkingBuilder;

/** Which needle a cloth asks for, from its mass, structure and elastane, with the reasons. */
public final class NeedleChoice {
  private NeedleChoice() {}

  /**
   * The rows that speak of a cloth: those of its structure, else those for any structure.
   *
   * @param table the reference table
   */
  public static List<NeedleAdvice> rows(
      List<NeedleAdvice> table, double gramsPerM2, String structure, double elastanePercent) {
    List<NeedleAdvice> covering =
        table.stream().filter(row -> row.covers(gramsPerM2, elastanePercent)).toList();
    List<NeedleAdvice> own =
        covering.stream().filter(row -> row.structure().equals(structure)).toList();
    return own.isEmpty()
        ? covering.stream().filter(row -> row.structure().equals(NeedleAdvice.ANY)).toList()
        : own;
  }

  /**
   * Advises a needle.
   *
   * @param gramsPerM2 the cloth's mass per unit area, over 0
   * @param structure as in the table; one that it does not name counts as any
   * @param elastanePercent of the cloth, 0 to 100
   * @param table the reference table
   * @return the working; the answer is a point and a range of sizes, so it holds no single value
   */
  public static Answer<Working> of(
      double gramsPerM2, String structure, double elastanePercent, List<NeedleAdvice> table) {
    Needs needs =
        new Needs()
            .positive("mass", gramsPerM2, "180")
            .between("elastane", elastanePercent, 0, 100);
    if (needs.failed()) {
      return Answer.bad(needs.problems());
    }
    List<NeedleAdvice> rows = rows(table, gramsPerM2, structure, elastanePercent);
    if (rows.isEmpty()) {
      return Answer.bad(
          Problem.refuse(
              "needle.no-advice", Place.field("mass"), Show.upTo(gramsPerM2, 0), "50 – 800"));
    }
    WorkingBuilder board = Working.named("needle", Message.of("seam.needle.title"));
    for (NeedleAdvice row : rows) {
      board
          .step(
              Message.of("seam.needle.step", row.reason()),
              "%s ≤ g/m² < %s, %s ≤ elastane %% < %s"
                  .formatted(
                      n(row.massFrom()),
                      n(row.massBelow()),
                      n(row.elastaneFrom()),
                      n(row.elastaneBelow())),
              "%s g/m², %s %%: Nm %s"
                  .formatted(n(gramsPerM2), n(elastanePercent), range(row.nmFrom(), row.nmTo())))
          .source(Source.Kind.COMMON_PRACTICE, row.source());
    }
    int least = rows.stream().mapToInt(NeedleAdvice::nmFrom).min().orElseThrow();
    int most = rows.stream().mapToInt(NeedleAdvice::nmTo).max().orElseThrow();
    return Answer.good(
        board
            .assume(Message.of("seam.assume.needle-guide"))
            .assume(Message.of("seam.assume.needle-system"))
            .caution(new Caution("needle-change", Message.of("seam.caution.needle-change")))
            .says(Message.of("seam.needle.says", rows.get(0).point(), range(least, most))));
  }

  private static String range(int from, int to) {
    return from == to ? Integer.toString(from) : from + "–" + to;
  }

  private static String n(double value) {
    return Show.upTo(value, 1);
  }
}
