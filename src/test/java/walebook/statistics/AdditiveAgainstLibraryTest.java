package walebook.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static walebook.statistics.Figures.known;
import static walebook.statistics.Figures.there;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.hipparchus.stat.regression.OLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;

/** The two-way fit against Hipparchus' multiple regression on columns of 0 and 1. */
class AdditiveAgainstLibraryTest {

  private static List<Response> made(Random random, int blocks, int levels) {
    List<Response> all = new ArrayList<>();
    for (int j = 0; j < blocks; j++) {
      for (int i = 0; i < levels; i++) {
        int pieces = i == j % levels ? 1 : i == 0 ? 1 + random.nextInt(2) : random.nextInt(3);
        for (int k = 0; k < pieces; k++) {
          double value = 150 + 3 * i - 2 * j + random.nextGaussian();
          all.add(new Response("b" + j, "l" + i, value));
        }
      }
    }
    return all;
  }

  private static double[][] columns(List<Response> all, int blocks, int levels) {
    double[][] x = new double[all.size()][blocks + levels - 2];
    for (int row = 0; row < x.length; row++) {
      int j = Integer.parseInt(all.get(row).block().substring(1));
      int i = Integer.parseInt(all.get(row).level().substring(1));
      if (j > 0) {
        x[row][j - 1] = 1;
      }
      if (i > 0) {
        x[row][blocks + i - 2] = 1;
      }
    }
    return x;
  }

  @Test
  void effectsErrorsAndMarginalMeansAgree() {
    for (int seed = 0; seed < 100; seed++) {
      Random random = new Random(seed);
      int levels = 2 + random.nextInt(4);
      int blocks = levels + 1 + random.nextInt(6);
      List<Response> all = made(random, blocks, levels);
      OLSMultipleLinearRegression library = new OLSMultipleLinearRegression();
      double[] y = all.stream().mapToDouble(Response::value).toArray();
      library.newSampleData(y, columns(all, blocks, levels));
      double[] beta = library.estimateRegressionParameters();
      double[][] spread = library.estimateRegressionParametersVariance();
      double variance = library.estimateErrorVariance();
      Additive found = Additive.of(all, 0.95);
      assertThat(found.ssError())
          .as("seed %d", seed)
          .isCloseTo(library.calculateResidualSumOfSquares(), within(1e-8));
      for (int i = 0; i < levels; i++) {
        double[] weight = new double[beta.length];
        weight[0] = 1;
        for (int j = 1; j < blocks; j++) {
          weight[j] = 1.0 / blocks;
        }
        if (i > 0) {
          weight[blocks + i - 1] = 1;
          Difference d = there(found.difference("l" + i, "l0"));
          assertThat(d.estimate())
              .as("seed %d", seed)
              .isCloseTo(beta[blocks + i - 1], within(1e-9));
          double error = Math.sqrt(variance * spread[blocks + i - 1][blocks + i - 1]);
          assertThat(known(d.error())).as("seed %d", seed).isCloseTo(error, within(1e-9));
        }
        double mean = 0;
        double square = 0;
        for (int a = 0; a < beta.length; a++) {
          mean += weight[a] * beta[a];
          for (int b = 0; b < beta.length; b++) {
            square += weight[a] * weight[b] * spread[a][b];
          }
        }
        AdjustedMean adjusted = there(found.mean("l" + i));
        assertThat(adjusted.mean()).as("seed %d", seed).isCloseTo(mean, within(1e-9));
        assertThat(known(adjusted.error()))
            .as("seed %d", seed)
            .isCloseTo(Math.sqrt(variance * square), within(1e-9));
      }
    }
  }

  @Test
  void orderOffsetAndBlockShiftsChangeNothing() {
    for (int seed = 0; seed < 50; seed++) {
      Random random = new Random(seed);
      List<Response> all = made(random, 6, 4);
      List<Response> shifted = new ArrayList<>();
      for (Response one : all) {
        double shift = 1000 * Integer.parseInt(one.block().substring(1));
        shifted.add(new Response(one.block(), one.level(), one.value() + shift));
      }
      Collections.shuffle(shifted, random);
      Additive plain = Additive.of(all, 0.95);
      Additive moved = Additive.of(shifted, 0.95);
      for (Difference d : plain.differences()) {
        Difference same = there(moved.difference(d.first(), d.second()));
        assertThat(same.estimate()).as("seed %d", seed).isCloseTo(d.estimate(), within(1e-8));
        assertThat(known(same.holm())).as("seed %d", seed).isCloseTo(known(d.holm()), within(1e-8));
      }
    }
  }
}
