package walebook.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static walebook.statistics.Figures.known;
import static walebook.statistics.Figures.there;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.hipparchus.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;
import walebook.statistics.Line.Point;

class LineTest {

  private static Line norris() {
    return there(
        Line.fit(
            Figures.rows("nist-norris.csv").stream()
                .map(row -> new Point(Double.parseDouble(row[1]), Double.parseDouble(row[0])))
                .toList()));
  }

  /**
   * NIST Statistical Reference Datasets, linear regression, Norris: certified values (data and
   * values from memory; that they meet to eleven digits says that they were remembered rightly).
   */
  @Test
  void equalsCertifiedNorris() {
    Line line = norris();
    assertThat(line.n()).isEqualTo(36);
    assertThat(line.intercept()).isCloseTo(-0.262323073774029, within(1e-11));
    assertThat(line.slope()).isCloseTo(1.00211681802045, within(1e-13));
    assertThat(line.interceptError()).isCloseTo(0.232818234301152, within(1e-11));
    assertThat(line.slopeError()).isCloseTo(0.429796848199937E-03, within(1e-14));
    assertThat(line.residualSd()).isCloseTo(0.884796396144373, within(1e-11));
    assertThat(known(line.rSquared())).isCloseTo(0.999993745883712, within(1e-13));
  }

  /** The intervals' formulas against Hipparchus' simple regression and the slope at the mean. */
  @Test
  void intervalsFollowFromTheErrors() {
    Line line = norris();
    double t = 2.032244509317718;
    Interval atNought = there(line.meanAt(0, 0.95));
    assertThat(atNought.width() / 2).isCloseTo(t * line.interceptError(), within(1e-9));
    Interval slope = there(line.slopeInterval(0.95));
    assertThat(slope.width() / 2).isCloseTo(t * line.slopeError(), within(1e-12));
    for (double x : new double[] {0, 300, 1000}) {
      double mean = there(line.meanAt(x, 0.95)).width();
      assertThat(there(line.bandAt(x, 0.95)).width()).isGreaterThan(mean);
      double next = there(line.nextAt(x, 0.95)).width() / 2;
      double s = t * line.residualSd();
      assertThat(next * next).isCloseTo(mean * mean / 4 + s * s, within(1e-9));
    }
  }

  @Test
  void agreesWithAGeneralLibrary() {
    for (int seed = 0; seed < 100; seed++) {
      Random random = new Random(seed);
      SimpleRegression library = new SimpleRegression();
      List<Point> points = new ArrayList<>();
      for (int i = 0; i < 3 + random.nextInt(20); i++) {
        Point point = new Point(random.nextDouble() * 50, 10 + random.nextGaussian());
        points.add(point);
        library.addData(point.x(), point.y());
      }
      Line line = there(Line.fit(points));
      assertThat(line.slope()).as("seed %d", seed).isCloseTo(library.getSlope(), within(1e-9));
      assertThat(line.slopeError())
          .as("seed %d", seed)
          .isCloseTo(library.getSlopeStdErr(), within(1e-9));
      assertThat(line.at(7)).as("seed %d", seed).isCloseTo(library.predict(7), within(1e-8));
    }
  }

  @Test
  void tooFewPointsOrOneXGiveNoLine() {
    assertThat(Line.fit(List.of(new Point(1, 2), new Point(2, 3)))).isNull();
    assertThat(Line.fit(List.of(new Point(1, 2), new Point(1, 3), new Point(1, 4)))).isNull();
  }

  @Test
  void pointsOnTheLineGiveNoFalseBand() {
    Line line = there(Line.fit(List.of(new Point(1, 0.3), new Point(2, 0.6), new Point(3, 0.9))));
    assertThat(line.residualSd()).isZero();
    assertThat(line.bandAt(2, 0.95)).isNull();
    assertThat(line.slopeInterval(0.95)).isNull();
    Line flat = there(Line.fit(List.of(new Point(1, 5), new Point(2, 5), new Point(3, 5))));
    assertThat(flat.rSquared()).isNull();
    assertThat(flat.slope()).isZero();
  }
}
