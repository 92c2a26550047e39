package walebook.garment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.measure.MetricPrefix;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;
import walebook.problem.Problem;

class BodyGirthTest {

  /** EN 13402-3 letter codes; the lower end of a size is closed here, so 90 cm is an M. */
  @ParameterizedTest
  @CsvSource({
    "women, 66, XXS",
    "women, 81.9, XS",
    "women, 82, S",
    "women, 89.9, S",
    "women, 90, M",
    "women, 98, L",
    "women, 106.9, L",
    "women, 107, XL",
    "women, 119, XXL",
    "women, 142.9, 3XL",
    "men, 70, XXS",
    "men, 94, M",
    "men, 101.9, M",
    "men, 102, L",
    "men, 118, XXL",
    "men, 140, 3XL"
  })
  void letterCodes(String group, double cm, String size) {
    double mm =
        Quantities.getQuantity(cm, MetricPrefix.CENTI(Units.METRE))
            .to(MetricPrefix.MILLI(Units.METRE))
            .getValue()
            .doubleValue();
    assertThat(BodyGirth.sizeOf(Rows.ROWS.girths(), Girth.CHEST, group, mm).orElseThrow().size())
        .isEqualTo(size);
  }

  @Test
  void nobodyIsOutsideTheCodesWithoutBeingTold() {
    assertThat(BodyGirth.sizeOf(Rows.ROWS.girths(), Girth.CHEST, "women", 659)).isEmpty();
    assertThat(BodyGirth.sizeOf(Rows.ROWS.girths(), Girth.CHEST, "women", 1430)).isEmpty();
  }

  @Test
  void stepsOfTheCodesGrow() {
    // EN 13402-3: women's bust in steps of 8, 9 and 12 cm, men's chest of 8, 11 and 12 cm.
    assertThat(steps("women")).containsExactlyInAnyOrder(80.0, 90.0, 120.0);
    assertThat(steps("men")).containsExactlyInAnyOrder(80.0, 110.0, 120.0);
  }

  private static Set<Double> steps(String group) {
    Set<Double> steps = new HashSet<>();
    Rows.ROWS.girths().stream()
        .filter(row -> row.isSpan() && row.group().equals(group))
        .forEach(row -> steps.add(row.belowMm() - row.fromMm()));
    return steps;
  }

  /** ANSUR II (NATICK/TR-15/007), its percentiles as recomputed from the public data. */
  @ParameterizedTest
  @CsvSource({
    "HEAD, men, P95, 601", "HEAD, women, P5, 532", "CHEST, women, P50, 940",
    "HIP, women, P95, 1155.8", "HEEL, women, P50, 310", "HAND, men, P95, 230",
    "UPPER_ARM, women, P50, 304", "NECK_BASE, men, P5, 395"
  })
  void surveyFigures(Girth girth, String group, String percentile, double mm) {
    assertThat(
            BodyGirth.figure(Rows.ROWS.girths(), girth, group, percentile).orElseThrow().fromMm())
        .isEqualTo(mm);
  }

  @Test
  void everyGirthHasItsPercentilesInOrder() {
    for (Girth girth : Girth.values()) {
      for (String group : List.of("women", "men")) {
        double p5 = figure(girth, group, "P5");
        double p50 = figure(girth, group, "P50");
        assertThat(p5).isLessThan(p50);
        assertThat(p50).isLessThan(figure(girth, group, "P95"));
      }
    }
  }

  private static double figure(Girth girth, String group, String percentile) {
    return BodyGirth.figure(Rows.ROWS.girths(), girth, group, percentile).orElseThrow().fromMm();
  }

  @Test
  void middleOfASizeThroughTheEaseCheck() {
    // EN 13402-3: the middle of women's M is 94 cm; a top of 90 cm has −4.26 % ease and is fitted.
    BodyGirth size = BodyGirth.sizeOf(Rows.ROWS.girths(), Girth.CHEST, "women", 940).orElseThrow();
    double middle = (size.fromMm() + size.belowMm()) / 2;
    assertThat(Ease.percent(middle, 900)).isCloseTo(-4.2553, within(1e-4));
    assertThat(EaseFit.holding(Rows.ROWS.fits(), -40, Ease.percent(middle, 900)).key())
        .isEqualTo("fitted");
  }

  @Test
  void aNamedGirthKnowsWhatIsUnlikely() {
    List<BodyGirth> rows = Rows.ROWS.girths();
    assertThat(GirthCheck.ofBody("body", Girth.CHEST, 94, rows))
        .extracting(Problem::code)
        .containsExactly("girth.small");
    assertThat(GirthCheck.ofBody("body", Girth.HIP, 9400, rows))
        .extracting(Problem::code)
        .containsExactly("girth.large");
    assertThat(GirthCheck.ofBody("body", Girth.CHEST, 560, rows)).isEmpty();
    assertThat(GirthCheck.ofBody("body", Girth.WRIST, 120, rows)).isEmpty();
    assertThat(GirthCheck.ofBody("body", Girth.CHEST, 0, rows))
        .extracting(Problem::code)
        .containsExactly("girth.not-positive");
  }
}
