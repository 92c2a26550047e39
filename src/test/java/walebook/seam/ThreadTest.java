package walebook.seam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import walebook.tables.SharedTables;
import walebook.working.Message;
import walebook.working.Working;

class ThreadTest {
  private static final double INCH = 25.4;

  @ParameterizedTest(name = "{5}")
  @CsvSource({
    "101, 0.127, 2.8222222, 0, 3.09, textile calculation text: T 0.005 in and 9 stitches an inch",
    "401, 0.635, 2.54, 0, 4.5, textile calculation text: T 0.025 in and 10 an inch",
    "401, 0.381, 1.6933333, 0, 4.45, inputs of the same text: T 0.015 in and 15 an inch",
    "301, 1.0, 2.5, 0, 2.8, the textbook formula in mm",
    "401, 1.0, 2.5, 0, 4.8, the textbook formula in mm",
    "504, 1.0, 2.5, 5, 12.6, the textbook formula in mm with the constant 3",
    "304, 0.6, 1.5, 4, 6.50, zigzag path and crimp by geometry",
    "304, 0.6, 2.5, 2, 3.04, zigzag path and crimp by geometry",
    "304, 0.6, 2.5, 0, 2.48, a zigzag without width is a lockstitch",
  })
  void geometry(
      String type, double thickness, double length, double width, double ratio, String source) {
    assertThat(ThreadUse.perSeam(type, thickness, length, width))
        .as(source)
        .isCloseTo(ratio, within(0.005));
  }

  @Test
  void lockstitchIsAZigzagWithoutWidth() {
    assertThat(ThreadUse.perSeam("304", 0.8, 2.5, 0))
        .isEqualTo(ThreadUse.perSeam("301", 0.8, 2.5, 3));
  }

  @Test
  void unknownGeometry() {
    assertThat(ThreadUse.perSeam("607", 0.8, 2.5, 5)).isNull();
  }

  @Test
  void printedRatio() {
    // Embroidery calculation text: stitch type 301, 220 cm, ratio 2.5: 550 cm.
    assertThat(ThreadUse.lengthMm(2.5, 2200, 0)).isEqualTo(5500);
  }

  @Test
  void conflictIsShown() {
    List<ThreadRatio> ratios = SharedTables.read().threadRatios();
    Working working = ThreadUse.of("304", 0.6, 2.5, 2, 1000, 20, ratios).value();
    assertThat(working.value()).isCloseTo(3.0413 * 1.2, within(1e-3));
    assertThat(working.says().key()).isEqualTo("seam.thread.says-conflict");
    // 5.5 (thread maker's guide) and 7 (commonly printed) times 1.2.
    assertThat(working.says().args()).containsExactly("3.6", "3.6", "8.4");
  }

  @Test
  void ratioAloneIsRemarkedUpon() {
    List<ThreadRatio> ratios = SharedTables.read().threadRatios();
    Working working = ThreadUse.of("607", 0.8, 2.5, 5, 1000, 0, ratios).value();
    // Government training textbook: 32 m of thread a metre.
    assertThat(working.value()).isEqualTo(32);
    assertThat(working.assumptions()).extracting(Message::key).contains("seam.assume.ratio-only");
    assertThat(ThreadUse.of("999", 0.8, 2.5, 5, 1000, 0, ratios).isGood()).isFalse();
  }

  @Test
  void unravelled() {
    // Apparel measuring text: 15 cm of 401 give 19.5 and 62.0 cm; 100 cm of seam with 15 % waste
    // want 624.8 cm (621 printed, from rounded factors); without waste 543.3 (540 printed).
    assertThat(UnravelledThread.of(150, 195, 620, 1000, 15).value().value())
        .isCloseTo(6.248, within(5e-4));
    assertThat(UnravelledThread.of(150, 195, 620, 1000, 0).value().value())
        .isCloseTo(5.433, within(5e-4));
    assertThat(UnravelledThread.of(150, 195, 620, 1000, 15).value().value())
        .isCloseTo(6.21, within(0.05));
    assertThat(UnravelledThread.of(0, 0, -1, 0, -1).problems()).hasSize(5);
  }

  @Test
  void formulasAreFreeOfUnits() {
    assertThat(ThreadUse.perSeam("504", 1 / INCH, 2.5 / INCH, 5 / INCH))
        .isCloseTo(12.6, within(1e-9));
  }
}
