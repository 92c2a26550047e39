package walebook.desk.typing;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.act.piece.PieceField;
import walebook.desk.common.Session;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.Keyed;
import walebook.record.PieceCode;

/** What is said below the grid about the card and the field one stands in. */
final class HereSays {
  private HereSays() {}

  /** The field first, since that is where the hands are; then the rest of the card. */
  static String spot(Session session, CardRow row, String column) {
    CardCell cell = row.cell(column);
    Problem mine = cell == null ? null : cell.problemProperty().get();
    String name = whose(session, row);
    if (mine != null) {
      List<String> says = new ArrayList<>();
      says.add(name + " · " + says(session, row, mine));
      row.problems().stream()
          .filter(each -> !each.equals(mine))
          .forEach(each -> says.add(says(session, row, each)));
      return String.join(" · ", says);
    }
    String letters = letters(session, row, Keyed.find(PieceField.class, column), cell);
    String card = row(session, row);
    return letters.isEmpty() ? card : card + "\n" + letters;
  }

  /** A card in words: whose it is, its code, and what is in its way. */
  static String row(Session session, CardRow row) {
    StringBuilder says = new StringBuilder(whose(session, row));
    for (Problem each : row.problems()) {
      says.append(" · ").append(says(session, row, each));
    }
    return says.toString();
  }

  /** The field goes by the name that stands above its column. */
  private static String says(Session session, CardRow row, Problem problem) {
    Problem worded = row.worded(problem);
    PieceField field =
        problem.place() instanceof Place.Field at ? Keyed.find(PieceField.class, at.name()) : null;
    if (field == null) {
      return session.words().say(worded);
    }
    String head = session.words().say("desk.pieces.field." + field.key());
    return head + ": " + session.words().sayAtField(worded);
  }

  private static String whose(Session session, CardRow row) {
    String name = row.name(session.namesHiddenProperty().get());
    return row.code().isBlank() ? name : name + " · " + PieceCode.spoken(row.code());
  }

  private static String letters(
      Session session, CardRow row, @Nullable PieceField field, @Nullable CardCell cell) {
    List<String> near = field == null || cell == null ? List.of() : row.near(field, cell.text());
    return near.isEmpty()
        ? ""
        : session.words().say("desk.typing.letters", String.join(", ", near));
  }
}
