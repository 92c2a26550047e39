package walebook.garment;

import java.util.List;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.Show;
import walebook.quantity.Unit;

/** What is wrong with or unlikely about a girth as typed; units mixed up are the usual mistake. */
public final class GirthCheck {
  /** No wrist of a child that sews is under this. */
  private static final double SMALLEST_MM = 100;

  private static final double LARGEST_MM = 3000;

  /** A girth this much off a survey's ends is asked about: children are smaller than it knows. */
  private static final double UNDER_P5 = 0.4;

  private static final double OVER_P95 = 2;

  private GirthCheck() {}

  /** Refuses what is not over 0; asks about a girth that would fit in another unit. */
  public static List<Problem> of(String field, double mm) {
    return within(field, mm, SMALLEST_MM, LARGEST_MM);
  }

  /**
   * The same for a girth of the body that is known by name.
   *
   * @param rows the reference table of body girths
   */
  public static List<Problem> ofBody(String field, Girth girth, double mm, List<BodyGirth> rows) {
    double least =
        BodyGirth.figure(rows, girth, "women", "P5")
            .map(row -> row.fromMm() * UNDER_P5)
            .orElse(SMALLEST_MM);
    double most =
        BodyGirth.figure(rows, girth, "men", "P95")
            .map(row -> row.fromMm() * OVER_P95)
            .orElse(LARGEST_MM);
    return within(field, mm, least, most);
  }

  /** Asks about a measure that is many times the body's, or the body's many times it. */
  public static Problem mixed(String field, double mm, double bodyMm) {
    return Problem.ask("girth.mixed", Place.field(field), Show.mm(mm), Show.mm(bodyMm));
  }

  private static List<Problem> within(String field, double mm, double least, double most) {
    Place place = Place.field(field);
    if (!(Double.isFinite(mm) && mm > 0)) {
      return List.of(Problem.refuse("girth.not-positive", place, Show.mm(mm), "900 mm"));
    }
    if (mm < least) {
      return List.of(Problem.ask("girth.small", place, Show.mm(mm), Show.length(mm * 10, Unit.CM)));
    }
    if (mm > most) {
      return List.of(Problem.ask("girth.large", place, Show.mm(mm), Show.mm(mm / 10)));
    }
    return List.of();
  }
}
