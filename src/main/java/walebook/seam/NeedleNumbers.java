package walebook.seam;

import org.jspecify.annotations.Nullable;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.Measured;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.working.Message;
import walebook.working.Source;
import walebook.working.Working;
import walebook.working.WorkingBuilder;

/** Needle sizes between Nm, blade diameter and the older number. */
public final class NeedleNumbers {
  /** The rule of the older numbers is printed for sizes below this one and breaks there. */
  private static final int RULE_ENDS = 19;

  private static final int RULE_BEGINS = 8;
  private static final int NM_OF_8 = 60;
  private static final int NM_STEP = 5;

  private NeedleNumbers() {}

  /** Blade diameter in mm: Nm ÷ 100. */
  public static double bladeMm(double nm) {
    return nm / 100;
  }

  /** Nm = 60 + 5 (size − 8), for older numbers 8 to 18. */
  public static int nmOf(int older) {
    if (older < RULE_BEGINS || older >= RULE_ENDS) {
      throw new IllegalArgumentException("the rule holds for 8 to 18: " + older);
    }
    return NM_OF_8 + NM_STEP * (older - RULE_BEGINS);
  }

  /** The older number of an Nm size, or null where the rule gives none. */
  public static @Nullable Integer olderOf(int nm) {
    int older = RULE_BEGINS + (nm - NM_OF_8) / NM_STEP;
    boolean even = (nm - NM_OF_8) % NM_STEP == 0;
    return even && older >= RULE_BEGINS && older < RULE_ENDS ? older : null;
  }

  /** Works out Nm and blade from an older number. */
  public static Answer<Working> fromOlder(int older) {
    if (older < RULE_BEGINS || older >= RULE_ENDS) {
      return Answer.bad(
          Problem.refuse(
              "needle.older-out-of-rule", Place.field("older"), Integer.toString(older), "8 – 18"));
    }
    int nm = nmOf(older);
    return Answer.good(
        board("needle-from-older", "seam.needle-size.title-older")
            .step(
                Message.of("seam.needle-size.step-nm"),
                "Nm = 60 + 5 × (size − 8)",
                "60 + 5 × (%s − 8) = %s".formatted(older, nm))
            .step(Message.of("seam.needle-size.step-blade"), "blade = Nm ÷ 100", blade(nm))
            .result(Measured.of(nm, Unit.RATIO))
            .says(
                Message.of(
                    "seam.needle-size.says",
                    Integer.toString(nm),
                    Integer.toString(older),
                    Show.fixed(bladeMm(nm), 2))));
  }

  /** Works out blade and older number from an Nm size. */
  public static Answer<Working> fromNm(int nm) {
    Needs needs = new Needs().between("nm", nm, 30, 200);
    if (needs.failed()) {
      return Answer.bad(needs.problems());
    }
    WorkingBuilder board =
        board("needle-size", "seam.needle-size.title")
            .step(Message.of("seam.needle-size.step-blade"), "blade = Nm ÷ 100", blade(nm))
            .result(Measured.of(bladeMm(nm), Unit.MM));
    Integer older = olderOf(nm);
    if (older == null) {
      return Answer.good(
          board.says(
              Message.of(
                  "seam.needle-size.says-no-older",
                  Integer.toString(nm),
                  Show.fixed(bladeMm(nm), 2))));
    }
    return Answer.good(
        board
            .step(
                Message.of("seam.needle-size.step-older"),
                "size = 8 + (Nm − 60) ÷ 5",
                "8 + (%s − 60) ÷ 5 = %s".formatted(nm, older))
            .says(
                Message.of(
                    "seam.needle-size.says",
                    Integer.toString(nm),
                    older.toString(),
                    Show.fixed(bladeMm(nm), 2))));
  }

  private static WorkingBuilder board(String name, String title) {
    return Working.named(name, Message.of(title))
        .assume(Message.of("seam.assume.needle-system"))
        .source(Source.Kind.STANDARD, "DIN 5325 (1953): Nm is 100 × blade diameter in mm")
        .source(Source.Kind.PUBLISHED, "rule of the older numbers, printed for sizes below 19");
  }

  private static String blade(int nm) {
    return "%s ÷ 100 = %s mm".formatted(nm, Show.fixed(bladeMm(nm), 2));
  }
}
