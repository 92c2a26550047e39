package walebook.act.card;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.act.piece.PieceEntry;
import walebook.act.piece.PieceField;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.ReadMinutes;
import walebook.quantity.ReadNumber;
import walebook.quantity.Unit;
import walebook.record.PieceCode;
import walebook.record.SeamEnd;

/** What can't be true of cards together, or of a card beside what the book has. Pure. */
public final class CardClashes {
  /** The field of a code on a card without a plan. */
  public static final String CODE = "code";

  private static final double SAME = 1e-6;

  private CardClashes() {}

  /** What contradicts itself on one card; the log form would not ask for it. */
  public static List<Problem> within(PieceEntry entry) {
    List<Problem> problems = new ArrayList<>();
    // Of several pulls one may have held before another gave.
    boolean gave =
        List.of(PieceField.END, PieceField.END_2, PieceField.END_3).stream()
            .anyMatch(each -> entry.at(each).equals(SeamEnd.GAVE.key()));
    boolean held = entry.at(PieceField.END).equals(SeamEnd.HELD.key()) && !gave;
    if (held && !entry.at(PieceField.BROKE).isEmpty()) {
      problems.add(
          Problem.refuse(
              "card.broke-but-held",
              Place.field(PieceField.BROKE.key()),
              entry.at(PieceField.BROKE),
              ""));
    }
    return problems;
  }

  /**
   * Codes that can't be: no code at all, the same on two cards. The book's own are not asked.
   *
   * @param codes as typed, by the piece's key; blank for one that is still to be drawn
   */
  public static Map<UUID, Problem> codes(Map<UUID, String> codes) {
    Map<String, Integer> count = new HashMap<>();
    codes.values().forEach(each -> count.merge(PieceCode.bare(each), 1, Integer::sum));
    Map<UUID, Problem> found = new HashMap<>();
    codes.forEach(
        (piece, typed) -> {
          String bare = PieceCode.bare(typed);
          if (bare.isEmpty()) {
            return;
          }
          if (!PieceCode.isCode(bare)) {
            found.put(piece, code("code.not-a-code", typed));
          } else if (count.getOrDefault(bare, 0) > 1) {
            found.put(piece, code("card.code-twice", PieceCode.spoken(bare)));
          }
        });
    return found;
  }

  static Problem code(String problem, String found) {
    return Problem.refuse(problem, Place.field(CODE), found, "");
  }

  /** That a card says another value than the book, or null when they agree. */
  public static @Nullable Problem differs(
      PieceField field, String typed, @Nullable String logged, Unit lengthUnit) {
    if (typed.isBlank()) {
      return null;
    }
    String has = logged == null ? "" : logged;
    if (same(field, typed.strip(), has, lengthUnit)) {
      return null;
    }
    return Problem.refuse(
        has.isEmpty() ? "card.differs-empty" : "card.differs",
        Place.field(field.key()),
        typed.strip(),
        has);
  }

  private static boolean same(PieceField field, String one, String other, Unit lengthUnit) {
    if (field == PieceField.FAULTS) {
      return faults(one).equals(faults(other));
    }
    Double first = number(field, one, lengthUnit);
    Double second = number(field, other, lengthUnit);
    return (first == null || second == null)
        ? one.equalsIgnoreCase(other)
        : Math.abs(first - second) < SAME;
  }

  private static Set<String> faults(String text) {
    Set<String> keys = new HashSet<>();
    for (String each : text.split(";", -1)) {
      keys.add(each.strip().split(",", 2)[0]);
    }
    return keys;
  }

  private static @Nullable Double number(PieceField field, String text, Unit lengthUnit) {
    Place place = Place.field(field.key());
    Answer<Double> read =
        switch (field.kind()) {
          case LENGTH -> ReadNumber.length(text, lengthUnit, place);
          case NUMBER, WHOLE -> ReadNumber.plain(text, place);
          case MINUTES -> ReadMinutes.read(text, place);
          case CHOICE, TEXT, DATE -> null;
        };
    return read != null && read.isGood() ? read.value() : null;
  }
}
