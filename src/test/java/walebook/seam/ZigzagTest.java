package walebook.seam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static walebook.Seeded.between;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import walebook.Seeded;
import walebook.working.Message;
import walebook.working.Working;

class ZigzagTest {

  // Pythagorean triples and plain geometry of the zigzag (ISO 4915 stitch type 304).
  @ParameterizedTest
  @CsvSource({
    "3, 4, 5, 25",
    "4, 3, 5, 66.667",
    "0.5, 2.5, 2.54951, 1.980",
    "1, 2.5, 2.69258, 7.703",
    "2, 2.5, 3.20156, 28.062",
    "2.5, 2.5, 3.53553, 41.421",
    "0, 2.5, 2.5, 0",
  })
  void geometry(double width, double length, double path, double extension) {
    Zigzag stitch = Zigzag.plain(width, length);
    assertThat(stitch.pathMm()).isCloseTo(path, within(1e-5));
    assertThat(stitch.extensionPercent()).isCloseTo(extension, within(1e-3));
    assertThat(ZigzagStretch.of(width, length, 1, false, 0, 0).value().value())
        .isCloseTo(extension, within(1e-3));
  }

  // Table of the trade notes, geometry column: three-step swings of 5 mm, a third a drop.
  @ParameterizedTest
  @CsvSource({"5, 1.5, 49", "5, 1, 94"})
  void threeStep(double width, double length, double percent) {
    assertThat(new Zigzag(width, length, 3).extensionPercent()).isCloseTo(percent, within(0.5));
  }

  // The lockstitch geometry of textbooks, 2 + 2TS for both threads, leaves T·S for each; 40 and
  // 24 % bracket the 30 % that trade texts print for a lockstitch.
  @ParameterizedTest
  @CsvSource({"1.0, 40", "0.6, 24"})
  void crimpOfALockstitch(double thickness, double percent) {
    assertThat(ZigzagStretch.of(0, 2.5, 1, false, thickness, 0).value().value())
        .isCloseTo(percent, within(1e-9));
  }

  @Test
  void threadStretchMultiplies() {
    // By definition: 25 % of geometry and 10 % of thread make 1.25 × 1.10 − 1 = 37.5 %.
    Working working = ZigzagStretch.of(3, 4, 1, false, 0, 10).value();
    assertThat(working.value()).isCloseTo(37.5, within(1e-9));
    assertThat(working.says().key()).isEqualTo("seam.zigzag.says-thread");
  }

  @Test
  void saysWhichReservesAreIn() {
    assertThat(ZigzagStretch.of(2, 2.5, 1, false, 0.6, 10).value().assumptions())
        .extracting(Message::key)
        .contains("seam.assume.crimp", "seam.assume.thread-stretch");
    assertThat(ZigzagStretch.of(2, 2.5, 1, false, 0, 0).value().assumptions())
        .extracting(Message::key)
        .doesNotContain("seam.assume.crimp", "seam.assume.thread-stretch");
  }

  @Test
  void dialOfTheFullZigzag() {
    // Some dials mean the zigzag there and back: 5 mm of it are 2.5 mm a drop.
    double full = ZigzagStretch.of(2, 5, 1, true, 0, 0).value().value();
    assertThat(full).isCloseTo(Zigzag.plain(2, 2.5).extensionPercent(), within(1e-12));
  }

  @Test
  void requiredWidth() {
    // Geometry turned round: 50 % at 2.5 mm wants 2.7951 mm.
    assertThat(RequiredWidth.of(50, 2.5, 1).value().value()).isCloseTo(2.7951, within(5e-5));
    assertThat(RequiredWidth.of(0, 2.5, 1).value().value()).isZero();
  }

  @Test
  void nonsenseIsRefusedAllAtOnce() {
    assertThat(ZigzagStretch.of(-1, 0, 0, false, -1, Double.NaN).problems()).hasSize(5);
    assertThat(RequiredWidth.of(-5, -1, 1).problems()).hasSize(2);
  }

  @Test
  void propertiesOfThePath() {
    Seeded.cases(
        1,
        random -> {
          double w = between(random, 0, 7);
          double l = between(random, 0.3, 5);
          int k = 1 + random.nextInt(4);
          Zigzag stitch = new Zigzag(w, l, k);
          assertThat(stitch.pathMm()).isGreaterThanOrEqualTo(l);
          assertThat(new Zigzag(w + 0.1, l, k).extensionPercent())
              .isGreaterThan(stitch.extensionPercent());
          if (w > 0.01) {
            assertThat(new Zigzag(w, l + 0.1, k).extensionPercent())
                .isLessThan(stitch.extensionPercent());
          }
          assertThat(Zigzag.widthFor(stitch.extensionPercent(), l, k)).isCloseTo(w, within(1e-6));
          assertThat(new Zigzag(w / 25.4, l / 25.4, k).extensionPercent())
              .isCloseTo(stitch.extensionPercent(), within(1e-9));
          assertThat(stitch.extensionPercent(0.8, 10)).isGreaterThan(stitch.extensionPercent());
        });
  }

  @Test
  void density() {
    // Jersey tops are sewn at 10 to 12 stitches an inch, 2.5 to 2.1 mm (trade notes).
    assertThat(StitchDensity.perInch(2.54)).isCloseTo(10, within(1e-12));
    assertThat(StitchDensity.perCm(2.5)).isEqualTo(4);
    assertThat(StitchDensity.of(2.1).value().says().args().get(1)).isEqualTo("12.1");
    assertThat(StitchDensity.of(0).isGood()).isFalse();
  }
}
