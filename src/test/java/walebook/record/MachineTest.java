package walebook.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MachineTest {
  private static final LocalDate DAY = LocalDate.of(2026, 9, 7);

  private static Machine machine(double... pairs) {
    List<DialReading> dials = new java.util.ArrayList<>();
    for (int i = 0; i < pairs.length; i += 2) {
      dials.add(new DialReading(UUID.randomUUID(), null, Dial.LENGTH, pairs[i], pairs[i + 1], DAY));
    }
    return new Machine(
        UUID.randomUUID(),
        4,
        "",
        MachineKind.SEWING,
        List.of(),
        null,
        StepDial.UNKNOWN,
        StepDial.UNKNOWN,
        null,
        null,
        dials,
        "",
        false,
        Stamp.fresh(Instant.EPOCH));
  }

  /** Between two readings on the straight line through them, by hand: 1.5 lies half-way. */
  @ParameterizedTest
  @CsvSource({"1,0.8", "2,1.8", "1.5,1.3", "0.5,0.4", "4,3.6"})
  void theCardSaysWhatADialSews(double dial, double sewn) {
    assertThat(machine(2, 1.8, 1, 0.8).sewn(Dial.LENGTH, dial)).isCloseTo(sewn, within(1e-12));
  }

  /** Common practice: a card tells between its readings and only guesses beyond them. */
  @ParameterizedTest
  @CsvSource({"1,true", "1.5,true", "2,true", "0.5,false", "4,false"})
  void theCardReachesAsFarAsItWasMeasured(double dial, boolean reaches) {
    assertThat(machine(2, 1.8, 1, 0.8).reaches(Dial.LENGTH, dial)).isEqualTo(reaches);
    assertThat(machine(2, 1.8, 1, 0.8).reaches(Dial.WIDTH, dial)).isFalse();
  }

  @Test
  void withoutAReadingNothingIsGuessed() {
    assertThat(machine().sewn(Dial.LENGTH, 2.5)).isNull();
    assertThat(machine(2, 1.8).sewn(Dial.WIDTH, 2.5)).isNull();
  }

  @Test
  void aReadingAtNoughtDoesNotDivideByIt() {
    assertThat(machine(0, 0.1).sewn(Dial.LENGTH, 2)).isEqualTo(0.1);
  }

  @Test
  void aWrongArgumentIsNamed() {
    assertThatThrownBy(() -> new Needle(NeedlePoint.JERSEY, 7)).hasMessageContaining("nm");
    assertThatThrownBy(
            () ->
                new Term(UUID.randomUUID(), "x", DAY, DAY.minusDays(1), Stamp.fresh(Instant.EPOCH)))
        .hasMessageContaining("endsOn");
    assertThatThrownBy(() -> new FaultSeen("wavy-seam", FaultPlace.END, 4, FaultWhen.SEWN))
        .hasMessageContaining("severity");
  }
}
