package walebook.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ReachTest {
  @Test
  void aNoughtTooManyDoesNotSetTheScale() {
    assertThat(Reach.of(38, 41, 52, 47, 390)).isEqualTo(new Reach(38, 52));
    assertThat(Reach.of(-380, 41, 52, 47, 39)).isEqualTo(new Reach(39, 52));
  }

  @Test
  void ofManyOneAsFarOffAgainAsTheRestSpansIsLeftOut() {
    double[] many = new Random(9).doubles(30, 25, 110).toArray();
    double[] all = Arrays.copyOf(many, 31);
    all[30] = 230;
    assertThat(Reach.of(all).most()).isLessThanOrEqualTo(110);
    // Dixon's gap over range is 0.54 here; by chance alone one in ten samples of six from a normal
    // distribution passes 0.56 (his 90 % value for six, from memory).
    assertThat(Reach.of(30, 41, 52, 63, 70, 117)).isEqualTo(new Reach(30, 117));
  }

  @Test
  void slipsFarFromEachOtherAreAllLeftOut() {
    double[] many = new Random(7).doubles(40, 30, 60).toArray();
    double[] all = Arrays.copyOf(many, 43);
    all[40] = 455;
    all[41] = 4550;
    all[42] = -500;
    Reach reach = Reach.of(all);
    assertThat(reach.least()).isBetween(30.0, 60.0);
    assertThat(reach.most()).isBetween(30.0, 60.0);
  }

  /**
   * Standard normal and exponential samples, of 60 pieces each: nobody's slip, so nothing is to be
   * left out; a normal sample practically never, a skewed one seldom.
   */
  @Test
  void whatScattersAsMeasurementsDoIsKept() {
    Random random = new Random(3);
    int cut = 0;
    for (int turn = 0; turn < 500; turn++) {
      double[] normal = new double[60];
      double[] skewed = new double[60];
      for (int i = 0; i < 60; i++) {
        normal[i] = 50 + 12 * random.nextGaussian();
        skewed[i] = -20 * Math.log(1 - random.nextDouble());
      }
      assertThat(Reach.of(normal).most()).isEqualTo(Arrays.stream(normal).max().orElseThrow());
      cut += Reach.of(skewed).most() < Arrays.stream(skewed).max().orElseThrow() ? 1 : 0;
    }
    assertThat(cut).isLessThan(30);
  }

  @Test
  void whatARowMostlyDoesIsNoSlip() {
    double[] many = new Random(5).doubles(60, 10, 20).toArray();
    double[] strong = {150, 155, 160};
    assertThat(Reach.of(List.of(many, strong)).most()).isEqualTo(160);
    double[] oneSlip = {15, 155};
    assertThat(Reach.of(List.of(many, oneSlip)).most()).isLessThan(20);
  }

  @Test
  void gradesAndYesOrNoKeepTheirWholeScale() {
    assertThat(Reach.of(4, 5, 4, 5, 4, 5, 5, 1)).isEqualTo(new Reach(1, 5));
    double[] rate = new double[40];
    Arrays.fill(rate, 100);
    rate[7] = 0;
    assertThat(Reach.of(rate)).isEqualTo(new Reach(0, 100));
  }

  @Test
  void ofFourNobodyCanSayWhichIsTheSlip() {
    assertThat(Reach.of(40, 41, 42, 400)).isEqualTo(new Reach(40, 400));
  }

  @Test
  void anIntervalCountsNoFurtherThanOnceTheReach() {
    Reach reach = new Reach(40, 60);
    assertThat(reach.near(900)).isEqualTo(80);
    assertThat(reach.near(-900)).isEqualTo(20);
    assertThat(reach.near(45)).isEqualTo(45);
    assertThat(new Reach(5, 5).near(9)).isEqualTo(9);
  }
}
