package walebook.desk.classroom;

import walebook.problem.Place;
import walebook.problem.Problem;

/** Problems of a value's own field, put to the form's field in which the value was typed. */
final class FieldOf {
  private FieldOf() {}

  static Problem renamed(Problem problem, String from, String to) {
    boolean here = problem.place() instanceof Place.Field place && place.name().equals(from);
    if (!here) {
      return problem;
    }
    return problem.refuses()
        ? Problem.refuse(problem.code(), Place.field(to), problem.found(), problem.wanted())
        : Problem.ask(problem.code(), Place.field(to), problem.found(), problem.wanted());
  }
}
