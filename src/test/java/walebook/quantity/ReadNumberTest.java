package walebook.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;

/** Reading and showing numbers, the same whatever language the machine speaks. */
@ParameterizedClass
@MethodSource("locales")
class ReadNumberTest {
  private static final Place FIELD = Place.field("width");

  static Stream<Locale> locales() {
    return Stream.of(
        Locale.ENGLISH,
        Locale.GERMAN,
        Locale.forLanguageTag("tr-TR"),
        Locale.forLanguageTag("ar-EG"));
  }

  @SuppressWarnings("NullAway.Init")
  @Parameter
  Locale locale;

  private final Locale before = Locale.getDefault();

  @BeforeEach
  void speak() {
    Locale.setDefault(locale);
  }

  @AfterEach
  void fallSilent() {
    Locale.setDefault(before);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2.5|2.5",
        "2,5|2.5",
        " 2,5 |2.5",
        "0|0",
        ".5|0.5",
        ",5|0.5",
        "1/2|0.5",
        "2 1/2|2.5",
        "2 1⁄2|2.5",
        "-3|-3",
        "−3|-3",
        "+4|4",
        "12 %|12",
        "0,125|0.125"
      })
  void numbersAsPeopleTypeThem(String typed, double value) {
    assertThat(ReadNumber.plain(typed, FIELD).value()).isCloseTo(value, within(1e-12));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "abc",
        "2,5,5",
        "1.000,5",
        "1,000.5",
        "2..5",
        "--2",
        "1/0",
        "2 mm",
        "1/",
        "/2",
        "NaN",
        "Infinity",
        "1e3",
        "2.5x",
        "½½",
        "١٢",
        "99999999999999999999999999999999999999999"
      })
  void whatIsNoNumberIsRefusedAndSaysWhatWasFound(String typed) {
    Answer<Double> answer = ReadNumber.plain(typed, FIELD);
    assertThat(answer.isGood()).isFalse();
    assertThat(answer.problems()).hasSize(1);
    assertThat(answer.problems().get(0).place()).isEqualTo(FIELD);
    assertThat(answer.problems().get(0).wanted()).isNotEmpty();
  }

  /** The inch is 25.4 mm exactly: international yard and pound agreement, 1959. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "15|15", "15 mm|15", "1.5 cm|15", "1,5CM|15", "1/4 in|6.35", "3/8 in|9.525",
        "1/2\"|12.7", "5/8 in|15.875", "1 inch|25.4", "1 IN|25.4", "0.1 m|100", "2 INCHES|50.8"
      })
  void lengthsInAnyUnit(String typed, double mm) {
    assertThat(ReadNumber.length(typed, Unit.MM, FIELD).value()).isCloseTo(mm, within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(strings = {"12o", "1O", "2l", "1I.5", "12o mm", "9o cm"})
  void aLetterThatLooksLikeADigitIsNamed(String typed) {
    assertThat(ReadNumber.plain(typed, FIELD).problems())
        .extracting(Problem::code)
        .containsExactly("number.letter-for-digit");
    assertThat(ReadNumber.length(typed, Unit.MM, FIELD).problems())
        .extracting(Problem::code)
        .containsExactly("number.letter-for-digit");
  }

  @ParameterizedTest
  @ValueSource(strings = {"15 ft", "15 mmm", "15 %", "cm", "15cm2"})
  void unknownUnitsAreRefused(String typed) {
    assertThat(ReadNumber.length(typed, Unit.MM, FIELD).isGood()).isFalse();
  }

  @ParameterizedTest
  @CsvSource({"2,MM,2", "2,CM,20", "2,INCH,50.8"})
  void aLengthWithoutAUnitIsInTheUsersUnit(String typed, Unit usual, double mm) {
    assertThat(ReadNumber.length(typed, usual, FIELD).value()).isCloseTo(mm, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "52.04|1|52.0",
        "-0.04|1|0.0",
        "-2.55|1|−2.6",
        "1234567.5|0|1234568",
        "0.125|2|0.13"
      })
  void numbersAreShownOneWay(double value, int decimals, String shown) {
    assertThat(Show.fixed(value, decimals)).isEqualTo(shown);
  }

  @ParameterizedTest
  @CsvSource({"2.50,2.5", "2.00,2", "100,100", "0.126,0.13", "1000,1000"})
  void trailingNoughtsAreDropped(double value, String shown) {
    assertThat(Show.upTo(value, 2)).isEqualTo(shown);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.5, 2.25, 17, 100, 152.5, 999.75})
  void whatIsShownReadsBackAsTheSameLength(double mm) {
    for (Unit unit : List.of(Unit.MM, Unit.CM)) {
      String shown = Show.length(mm, unit);
      assertThat(ReadNumber.length(shown, Unit.INCH, FIELD).value()).isCloseTo(mm, within(0.06));
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"52|0.9014|52.0 ± 1.8 %"})
  void aMeasuredValueCarriesItsExpandedUncertainty(double value, double u, String shown) {
    assertThat(Show.measured(Measured.of(value, Unit.PERCENT, u))).isEqualTo(shown);
  }
}
