package walebook.desk.classroom;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import walebook.act.classroom.SettingWords;
import walebook.compare.Dot;
import walebook.compare.Factor;
import walebook.compare.FactorTables;
import walebook.compare.FairComparison;
import walebook.compare.FairQuestion;
import walebook.compare.FairRow;
import walebook.compare.Outcome;
import walebook.drawing.ScatterBand;
import walebook.quantity.Show;
import walebook.statistics.Interval;
import walebook.statistics.Line;
import walebook.words.Words;

/** An outcome against each factor that is a number, with the line through the pieces. */
final class AgainstNumber {
  private static final Set<Factor> NUMBERS = EnumSet.of(Factor.WIDTH, Factor.LENGTH, Factor.FEED);
  private static final int LEAST_LEVELS = 3;
  private static final int STEPS = 24;

  private final Words words;
  private final FairDrawn drawn;

  AgainstNumber(Words words, FairDrawn drawn) {
    this.words = words;
    this.drawn = drawn;
  }

  /** A scatter for each; none where pieces only held, since a bound has no place on a line. */
  List<FairFound.Against> of(FactorTables tables) {
    List<FairFound.Against> all = new ArrayList<>();
    for (FairComparison each : tables.single()) {
      Factor factor = each.factors().get(0);
      Outcome outcome = each.question().outcome();
      List<Line.Point> points = points(each);
      long levels = points.stream().map(Line.Point::x).distinct().count();
      boolean bounds = each.rows().stream().anyMatch(row -> row.bounds() > 0);
      if (NUMBERS.contains(factor) && !outcome.isRate() && !bounds && levels >= LEAST_LEVELS) {
        all.add(against(factor, outcome, points));
      }
    }
    return all;
  }

  private FairFound.Against against(Factor factor, Outcome outcome, List<Line.Point> points) {
    String name = new SettingWords(words).factor(factor);
    Line line = Line.fit(points);
    List<ScatterBand.Edge> band = new ArrayList<>();
    Interval slope = line == null ? null : line.slopeInterval(FairQuestion.USUAL_CONFIDENCE);
    if (line != null && slope != null) {
      for (int i = 0; i <= STEPS; i++) {
        double x = line.xLeast() + (line.xGreatest() - line.xLeast()) * i / STEPS;
        Interval at = line.bandAt(x, FairQuestion.USUAL_CONFIDENCE);
        if (at != null) {
          band.add(new ScatterBand.Edge(x, at.low(), line.at(x), at.high()));
        }
      }
    }
    List<ScatterBand.Point> dots =
        points.stream().map(each -> new ScatterBand.Point(each.x(), each.y())).toList();
    return new FairFound.Against(
        name,
        slope == null
            ? words.say("desk.class.against.no-line")
            : words.say(
                "desk.class.against.note", Show.fixed(slope.low(), 1), Show.fixed(slope.high(), 1)),
        new ScatterBand(name, drawn.axis(outcome), dots, band));
  }

  private static List<Line.Point> points(FairComparison found) {
    List<Line.Point> points = new ArrayList<>();
    for (FairRow row : found.rows()) {
      String level = row.levels().isEmpty() ? "" : row.levels().get(0);
      if (level.matches("[0-9]+([.][0-9]+)?")) {
        for (Dot dot : row.dots()) {
          points.add(new Line.Point(Double.parseDouble(level), dot.value()));
        }
      }
    }
    return points;
  }
}
