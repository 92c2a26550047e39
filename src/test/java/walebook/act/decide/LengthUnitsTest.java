package walebook.act.decide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;
import walebook.problem.Answer;
import walebook.problem.Problem;
import walebook.tables.SharedTables;
import walebook.working.Calculation;
import walebook.working.Input;
import walebook.working.Working;

/**
 * Every calculation that takes a length takes it in mm, cm and in. The lengths are converted by
 * Indriya (the reference implementation of JSR 385), so that no factor of the program's is used.
 */
class LengthUnitsTest {
  private static final List<Calculation> ALL = AllCalculations.list(SharedTables.read());
  private static final Unit<Length> MM = Units.METRE.divide(1000);
  private static final Unit<Length> CM = Units.METRE.divide(100);
  // International yard and pound agreement, 1959: a yard of 0.9144 m, 36 in to the yard.
  private static final Unit<Length> INCH = Units.METRE.multiply(0.9144).divide(36);

  /** Lengths in mm that make sense beside one another, for inputs that need such. */
  private static final Map<String, String> LIKELY =
      Map.ofEntries(
          Map.entry("released", "104"),
          Map.entry("stretched", "150"),
          Map.entry("gauge-to", "150"),
          Map.entry("reached", "160"),
          Map.entry("allowance", "15"),
          Map.entry("sewn", "6"),
          Map.entry("opening", "560"),
          Map.entry("over", "601"),
          Map.entry("body", "900"),
          Map.entry("finished", "800"),
          Map.entry("band-length", "448"),
          Map.entry("band-width", "20"),
          Map.entry("knife", "6.5"),
          Map.entry("segments", "90;190;280"),
          Map.entry("motifs", "60;60"),
          Map.entry("gaps", "20"),
          Map.entry("line", "400"),
          Map.entry("width", "2"),
          Map.entry("length", "2.5"),
          Map.entry("thickness", "0.8"));

  static Stream<String> withLengths() {
    return ALL.stream()
        .filter(each -> each.inputs().stream().anyMatch(LengthUnitsTest::isLength))
        .map(Calculation::name);
  }

  private static boolean isLength(Input input) {
    return input.kind() == Input.Kind.LENGTH || input.kind() == Input.Kind.LENGTHS;
  }

  @ParameterizedTest
  @MethodSource("withLengths")
  void theSameLengthInAnotherUnitGivesTheSameAnswer(String name) {
    Calculation calculation =
        ALL.stream().filter(each -> each.name().equals(name)).findFirst().orElseThrow();
    Map<String, String> mm = typed(calculation, MM, "mm");
    Answer<Working> plain = run(calculation, mm);
    assertThat(plain.isGood()).as(mm + ": " + plain.problems()).isTrue();
    for (Map<String, String> other :
        List.of(
            typed(calculation, CM, "cm"),
            typed(calculation, INCH, "in"),
            typed(calculation, INCH, "\""))) {
      Answer<Working> again = run(calculation, other);
      assertThat(again.isGood()).as(other + ": " + again.problems()).isTrue();
      assertThat(again.value().verdict()).isEqualTo(plain.value().verdict());
      if (plain.value().result() != null) {
        assertThat(again.value().value())
            .as(other.toString())
            .isCloseTo(plain.value().value(), within(1e-6));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("withLengths")
  void anUnknownUnitIsNamedAtItsField(String name) {
    Calculation calculation =
        ALL.stream().filter(each -> each.name().equals(name)).findFirst().orElseThrow();
    for (Input each : calculation.inputs()) {
      if (isLength(each)) {
        Map<String, String> typed = typed(calculation, MM, "mm");
        typed.put(each.name(), "9 ells");
        assertThat(run(calculation, typed).problems())
            .as(each.name())
            .extracting(Problem::code)
            .containsExactly("length.unit");
      }
    }
  }

  private static Answer<Working> run(Calculation calculation, Map<String, String> typed) {
    return calculation.runTyped(typed, walebook.quantity.Unit.MM);
  }

  private static Map<String, String> typed(
      Calculation calculation, Unit<Length> unit, String sign) {
    Map<String, String> typed = new HashMap<>();
    for (Input each : calculation.inputs()) {
      String usual = each.usual() == null ? LIKELY.get(each.name()) : each.usual();
      if (isLength(each) && (usual != null || each.required())) {
        typed.put(each.name(), in(usual == null ? "100" : usual, unit, sign));
      } else if (each.required()) {
        typed.put(each.name(), value(each));
      }
    }
    return typed;
  }

  private static String value(Input input) {
    return switch (input.kind()) {
      case NUMBERS -> "20;30;40";
      case WHOLE -> "2";
      default -> input.name().equals("ratio") ? "0.8" : "10";
    };
  }

  private static String in(String millimetres, Unit<Length> unit, String sign) {
    return Arrays.stream(millimetres.split(";", -1))
        .map(
            each ->
                new BigDecimal(
                            Quantities.getQuantity(Double.parseDouble(each), MM)
                                .to(unit)
                                .getValue()
                                .doubleValue())
                        .setScale(12, java.math.RoundingMode.HALF_EVEN)
                        .stripTrailingZeros()
                        .toPlainString()
                    + " "
                    + sign)
        .collect(Collectors.joining(";"));
  }
}
