package walebook.cloth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import javax.measure.Quantity;
import javax.measure.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;
import walebook.working.Working;

class MassAndWashTest {

  @Test
  void hundredSquareCentimetres() {
    // Textile testing guide: 1.08 g on a disc of 100 cm² is 108 g/m², 162 g a metre at 1.5 m.
    assertThat(ClothMass.of(1.08, 100, 100, 0.01, 1).value().value()).isCloseTo(108, within(1e-9));
    assertThat(AreaMass.runningMetre(108, 1500)).isCloseTo(162, within(1e-9));
  }

  @ParameterizedTest(name = "{2}")
  @CsvSource({
    "237.3, 7, textile testing guide: 7 oz/yd² (x 33.9)",
    "100, 2.95, household column: 100 g/m²",
    "180, 5.3088, by the exact definitions of ounce and yard",
  })
  void ounces(double grams, double ounces, String source) {
    assertThat(AreaMass.toOunces(grams)).as(source).isCloseTo(ounces, within(0.005));
    assertThat(ClothMass.converted(ounces, true).value().value())
        .as(source)
        .isCloseTo(grams, within(0.25));
  }

  @Test
  void ouncesAgainstALibraryOfUnits() {
    // Indriya does the arithmetic; pound and yard are those of the agreement of 1959.
    Unit<?> ounce = Units.KILOGRAM.multiply(0.45359237).divide(16);
    Unit<?> yard = Units.METRE.multiply(0.9144);
    Quantity<?> one = Quantities.getQuantity(1, ounce.divide(yard.pow(2)));
    Unit<?> gramsPerM2 = Units.GRAM.divide(Units.METRE.pow(2));
    double factor = converted(one, gramsPerM2);
    assertThat(AreaMass.fromOunces(1)).isCloseTo(factor, within(1e-9));
    assertThat(AreaMass.OUNCE_PER_SQUARE_YARD).isCloseTo(33.905747475, within(1e-9));
  }

  @Test
  void inchAgainstALibraryOfUnits() {
    Unit<?> inch = Units.METRE.multiply(0.9144).divide(36);
    Unit<?> millimetre = Units.METRE.divide(1000);
    assertThat(walebook.quantity.Unit.INCH.inBase())
        .isCloseTo(converted(Quantities.getQuantity(1, inch), millimetre), within(1e-12));
  }

  @Test
  void ouncesOfARunningYardAreAnotherThing() {
    // By definition: 10 oz a running yard at 60 in is 203.43 g/m², not 339.06.
    assertThat(AreaMass.fromRunningYard(10, 60 * 25.4)).isCloseTo(203.43, within(0.01));
  }

  @ParameterizedTest(name = "{3}")
  @CsvSource({
    "350, 332.5, -5, ISO 5077 formula: shrinkage is minus",
    "350, 357, 2, ISO 5077 formula: growth is plus",
    "350, 350, 0, ISO 5077 formula: the same",
  })
  void washing(double before, double after, double percent, String source) {
    Working working = DimensionalChange.of(before, after, 1).value();
    assertThat(working.value()).as(source).isCloseTo(percent, within(1e-9));
  }

  @Test
  void washingIsNamedByItsSign() {
    assertThat(DimensionalChange.of(350, 332.5, 1).value().says().key()).endsWith("shrunk");
    assertThat(DimensionalChange.of(350, 357, 1).value().says().key()).endsWith("grown");
    assertThat(DimensionalChange.of(350, 350, 1).value().says().key()).endsWith("same");
  }

  @Test
  void cutLongerThanTheSharePutOn() {
    // ISO 5077 turned round: 1000 mm after −5 % wants 1052.63 mm, not 1050.
    assertThat(CutLength.of(1000, -5).value().value()).isCloseTo(1052.63, within(0.005));
    assertThat(CutLength.of(1000, -100).isGood()).isFalse();
  }

  @Test
  void areaShrinksByTheProduct() {
    // −5 % and −8 %: area × 0.874, by definition.
    assertThat(DimensionalChange.ofArea(-5, -8)).isCloseTo(-12.6, within(1e-9));
  }

  @Test
  void smallSwatchIsRemarkedUpon() {
    // ASTM D3776 Option C: at least 100 cm².
    assertThat(ClothMass.of(0.5, 50, 50, 0.1, 1).value().assumptions())
        .anyMatch(message -> message.key().equals("cloth.assume.small-swatch"));
  }

  @Test
  void nonsenseIsRefusedAllAtOnce() {
    assertThat(ClothMass.of(0, -1, 0, 0.1, 1).problems()).hasSize(3);
    assertThat(DimensionalChange.of(0, -1, 1).problems()).hasSize(2);
  }

  @SuppressWarnings({"unchecked", "rawtypes"})
  private static double converted(Quantity<?> quantity, Unit<?> unit) {
    return ((Quantity) quantity).to((Unit) unit).getValue().doubleValue();
  }
}
