package walebook.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;

class PackStripTest {
  private record Problem(double width, double optimum, List<CutPiece> pieces) {}

  private static Map<String, Problem> published() throws IOException {
    Map<String, Problem> all = new LinkedHashMap<>();
    try (BufferedReader in =
        new BufferedReader(
            new InputStreamReader(
                Objects.requireNonNull(
                    PackStripTest.class.getResourceAsStream("hopper-turton-c1-c3.csv")),
                StandardCharsets.UTF_8))) {
      in.lines()
          .filter(line -> line.startsWith("C"))
          .map(line -> line.split(","))
          .forEach(
              cells -> {
                Problem problem =
                    all.computeIfAbsent(
                        cells[0],
                        name ->
                            new Problem(
                                Double.parseDouble(cells[1]),
                                Double.parseDouble(cells[2]),
                                new ArrayList<>()));
                problem
                    .pieces()
                    .add(
                        new CutPiece(
                            "piece",
                            1,
                            Double.parseDouble(cells[3]),
                            Double.parseDouble(cells[4]),
                            false));
              });
    }
    return all;
  }

  /**
   * Nine problems of Hopper and Turton, European Journal of Operational Research 128 (2001) 34–57,
   * each cut from a rectangle, so that the optimum is known. Measured: eight of nine reach it at
   * every seed tried, C3P2 stays one unit of thirty above; mean gap 0.37 %, worst 3.3 %.
   */
  @Test
  void publishedProblemsAreSolvedOrNearlySo() throws IOException {
    Map<String, Problem> problems = published();
    assertThat(problems).hasSize(9);
    double sum = 0;
    int solved = 0;
    for (Map.Entry<String, Problem> each : problems.entrySet()) {
      Problem problem = each.getValue();
      double area = problem.pieces().stream().mapToDouble(CutPiece::areaMm2).sum();
      assertThat(area).as(each.getKey()).isEqualTo(problem.width() * problem.optimum());
      CuttingPlan plan = PackStrip.of(problem.pieces(), problem.width(), 0, 1);
      check(plan, Double.POSITIVE_INFINITY);
      double gap = 100 * (plan.alongMm() / problem.optimum() - 1);
      assertThat(gap).as(each.getKey()).isBetween(-1e-9, 3.4);
      sum += gap;
      solved += gap < 1e-9 ? 1 : 0;
    }
    assertThat(sum / 9).isLessThan(0.5);
    assertThat(solved).isGreaterThanOrEqualTo(8);
  }

  /** Common practice: from 1 m of 145 cm usable width 70 strips of 20 cm by 10, either way. */
  @Test
  void stripsComeOutAsInTheTrade() {
    for (double[] size : new double[][] {{200, 100}, {100, 200}}) {
      CutPiece strip = new CutPiece("strip", 70, size[0], size[1], false);
      assertThat(PackStrip.of(List.of(strip), 1450, 0, 1).alongMm()).isCloseTo(1000, within(1e-6));
    }
  }

  @Test
  void plansKeepInsideApartAndStraight() {
    for (int round = 0; round < 25; round++) {
      Random random = new Random(round);
      List<CutPiece> pieces = pieces(random, 1 + random.nextInt(6), 700);
      double margin = random.nextInt(3) * 4;
      CuttingPlan plan = PackStrip.of(pieces, 700, margin, round);
      check(plan, Double.POSITIVE_INFINITY);
      int count = pieces.stream().mapToInt(CutPiece::count).sum();
      assertThat(plan.placed()).hasSize(count);
      assertThat(plan.alongMm())
          .isGreaterThanOrEqualTo(PackStrip.boundMm(pieces, 700, margin) - 1e-6);
      assertThat(PackStrip.of(pieces, 700, margin, round)).isEqualTo(plan);
      assertThat(plan.wastePercent()).isBetween(-1e-9, 100.0);
    }
  }

  static List<CutPiece> pieces(Random random, int kinds, int most) {
    List<CutPiece> pieces = new ArrayList<>();
    for (int i = 0; i < kinds; i++) {
      pieces.add(
          new CutPiece(
              "p" + i,
              1 + random.nextInt(5),
              20 + random.nextInt(most - 20),
              20 + random.nextInt(most - 20),
              random.nextBoolean()));
    }
    return pieces;
  }

  /** Nothing overlaps or stands out, margins are kept, sizes are right and grain is respected. */
  static void check(CuttingPlan plan, double most) {
    List<Placed> placed = plan.placed();
    for (int i = 0; i < placed.size(); i++) {
      Placed one = placed.get(i);
      CutPiece piece = plan.pieces().get(one.piece());
      boolean straight =
          near(one.acrossMm(), piece.acrossMm()) && near(one.alongMm(), piece.alongMm());
      boolean turned =
          near(one.acrossMm(), piece.alongMm()) && near(one.alongMm(), piece.acrossMm());
      assertThat(straight || (piece.turnable() && turned)).isTrue();
      assertThat(one.xMm()).isGreaterThanOrEqualTo(-1e-6);
      assertThat(one.yMm()).isGreaterThanOrEqualTo(-1e-6);
      assertThat(one.xMm() + one.acrossMm()).isLessThanOrEqualTo(plan.acrossMm() + 1e-6);
      assertThat(one.yMm() + one.alongMm())
          .isLessThanOrEqualTo(Math.min(most, plan.alongMm()) + 1e-6);
      for (int j = 0; j < i; j++) {
        Placed other = placed.get(j);
        double aside =
            Math.max(
                one.xMm() - other.xMm() - other.acrossMm(),
                other.xMm() - one.xMm() - one.acrossMm());
        double above =
            Math.max(
                one.yMm() - other.yMm() - other.alongMm(), other.yMm() - one.yMm() - one.alongMm());
        assertThat(Math.max(aside, above)).isGreaterThanOrEqualTo(plan.marginMm() - 1e-6);
      }
    }
  }

  private static boolean near(double one, double other) {
    return Math.abs(one - other) < 1e-6;
  }
}
