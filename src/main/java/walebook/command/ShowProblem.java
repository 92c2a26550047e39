package walebook.command;

import java.util.Locale;
import tools.jackson.databind.node.ObjectNode;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.words.Words;

/** A problem for programs: one JSON object on one line. */
final class ShowProblem {
  private ShowProblem() {}

  static String json(Problem problem, Words words) {
    ObjectNode node = Json.object();
    node.put("code", problem.code());
    node.put("place", place(problem.place()));
    if (problem.place() instanceof Place.Spot spot) {
      node.put("line", spot.line());
      node.put("column", spot.column());
    }
    node.put("found", problem.found());
    node.put("wanted", problem.wanted());
    node.put("weight", problem.weight().name().toLowerCase(Locale.ROOT));
    node.put("says", words.say(problem));
    return node.toString();
  }

  private static String place(Place place) {
    if (place instanceof Place.Field field) {
      return field.name();
    }
    if (place instanceof Place.Spot spot) {
      return spot.field().isEmpty() ? spot.file() : spot.file() + " " + spot.field();
    }
    if (place instanceof Place.Path path) {
      return path.path();
    }
    return place instanceof Place.Cell cell ? cell.sheet() + "!" + cell.column() + cell.row() : "";
  }
}
