package walebook.cloth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static walebook.Seeded.between;

import org.junit.jupiter.api.Test;
import walebook.Seeded;
import walebook.tables.SharedTables;

class ClothPropertiesTest {

  @Test
  void unitsCancel() {
    Seeded.cases(
        1,
        random -> {
          double gauge = between(random, 50, 200);
          double stretched = gauge * between(random, 1, 2.5);
          double inInches = LengthChange.percent(gauge / 25.4, stretched / 25.4);
          assertThat(Stretch.of(gauge, stretched, 1).value().value())
              .isCloseTo(inInches, within(1e-9));
        });
  }

  @Test
  void stretchGrowsWithTheStretchedLength() {
    Seeded.cases(
        1000,
        random -> {
          double gauge = between(random, 50, 200);
          double stretched = gauge * between(random, 1, 2.5);
          assertThat(Stretch.of(gauge, stretched + 1, 1).value().value())
              .isGreaterThan(Stretch.of(gauge, stretched, 1).value().value());
        });
  }

  @Test
  void recoveryIsUnderAHundredUnlessItRelaxed() {
    Seeded.cases(
        2000,
        random -> {
          double gauge = between(random, 50, 200);
          double stretched = gauge * between(random, 1.05, 2.5);
          double released = between(random, 0.9 * gauge, stretched);
          double recovery = Recovery.of(gauge, stretched, released, 1).value().value();
          assertThat(recovery > 100).isEqualTo(released < gauge);
          assertThat(recovery).isGreaterThanOrEqualTo(0);
          double s = LengthChange.percent(gauge, stretched);
          double g = LengthChange.percent(gauge, released);
          assertThat(recovery).isCloseTo(100 * (s - g) / s, within(1e-9));
        });
  }

  @Test
  void longerGaugeMeasuresBetter() {
    Seeded.cases(
        3000,
        random -> {
          double gauge = between(random, 30, 200);
          double ratio = between(random, 1, 2.5);
          double u = StretchTest.uncertainty(Stretch.of(gauge, gauge * ratio, 1).value());
          double twice =
              StretchTest.uncertainty(Stretch.of(2 * gauge, 2 * gauge * ratio, 1).value());
          assertThat(twice).isCloseTo(u / 2, within(1e-9));
        });
  }

  @Test
  void cutLengthComesBackFromTheWash() {
    Seeded.cases(
        4000,
        random -> {
          double wanted = between(random, 50, 3000);
          double change = between(random, -20, 10);
          double cut = CutLength.of(wanted, change).value().value();
          assertThat(cut * (1 + change / 100)).isCloseTo(wanted, within(1e-9));
          assertThat(LengthChange.percent(cut, wanted)).isCloseTo(change, within(1e-9));
        });
  }

  @Test
  void everyClothHasABalanceBand() {
    var bands = SharedTables.read().balanceBands();
    Seeded.cases(
        5000,
        random -> {
          double wale = random.nextInt(20) == 0 ? 0 : between(random, 0, 300);
          double course = random.nextInt(20) == 0 ? 0 : between(random, 0, 300);
          var working = StretchBalance.of(wale, course, bands).value();
          assertThat(working.result() == null).isEqualTo(wale == 0);
        });
  }

  @Test
  void balanceBandsAsCommonlyUsed() {
    // Common practice: 60 % across and 15 % along is one-way, 80 and 70 two-way, 8 and 4 stable.
    var bands = SharedTables.read().balanceBands();
    assertThat(BalanceBand.holding(bands, 60, 25).key()).isEqualTo("one-way");
    assertThat(BalanceBand.holding(bands, 80, 87.5).key()).isEqualTo("two-way");
    assertThat(BalanceBand.holding(bands, 8, 50).key()).isEqualTo("stable");
    assertThat(StretchBalance.of(15, 60, bands).value().value()).isEqualTo(4);
    assertThat(StretchBalance.of(-1, 60, bands).isGood()).isFalse();
  }
}
