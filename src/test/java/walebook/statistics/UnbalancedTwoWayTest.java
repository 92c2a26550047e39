package walebook.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static walebook.statistics.Figures.there;

import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Four drugs on three diseases in 58 patients, 3 to 6 in a cell: M. H. Kutner, The American
 * Statistician 28 (1974) 98–100, printed in handbooks of linear models ever since (data and sums of
 * squares from memory).
 */
class UnbalancedTwoWayTest {

  private static List<Response> patients() {
    return Figures.rows("drug-disease.csv").stream()
        .map(row -> new Response(row[1], row[0], Double.parseDouble(row[2])))
        .toList();
  }

  @Test
  void sumsOfSquaresOfDrugsAfterDiseases() {
    Additive found = Additive.of(patients(), 0.95);
    assertThat(found.n()).isEqualTo(58);
    assertThat(found.ssLevels()).isCloseTo(3063.432863, within(5e-7));
    assertThat(found.dfLevels()).isEqualTo(3);
    Additivity additivity = there(found.additivity());
    assertThat(additivity.ssLeft()).isCloseTo(707.266259, within(5e-7));
    assertThat(additivity.dfLeft()).isEqualTo(6);
    assertThat(additivity.ssPure()).isCloseTo(5080.816667, within(5e-7));
    assertThat(additivity.dfPure()).isEqualTo(46);
    assertThat(additivity.f()).isCloseTo(1.07, within(5e-3));
    assertThat(additivity.p()).isCloseTo(0.3958, within(5e-5));
  }

  @Test
  void sumsOfSquaresOfDiseasesAfterDrugs() {
    List<Response> turned = patients().stream().map(Response::turned).toList();
    Additive found = Additive.of(turned, 0.95);
    assertThat(found.ssLevels()).isCloseTo(418.833741, within(5e-7));
    assertThat(found.dfLevels()).isEqualTo(2);
  }

  @Test
  void drugsAlone() {
    OneWay found = OneWay.of(Figures.samples(Figures.rows("drug-disease.csv"), 0, 2));
    assertThat(found.ssBetween()).isCloseTo(3133.238506, within(5e-7));
    assertThat(found.ssBetween() + found.ssWithin()).isCloseTo(9340.155172, within(5e-7));
  }
}
