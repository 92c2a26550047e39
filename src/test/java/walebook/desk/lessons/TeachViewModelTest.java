package walebook.desk.lessons;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import walebook.act.lesson.ReadLessons;
import walebook.act.lesson.RoomCalculations;
import walebook.lesson.Block;
import walebook.lesson.LessonPack;
import walebook.quantity.Unit;
import walebook.tables.SharedTables;
import walebook.words.Words;

class TeachViewModelTest {
  private final LessonPack pack = ReadLessons.packs().get(0);
  private final Moving clock = new Moving();
  private final TeachViewModel model =
      new TeachViewModel(
          pack,
          Words.english(),
          clock,
          new CalledOutViewModel(
              RoomCalculations.of(pack, SharedTables.read()), Words.english(), Unit.MM));

  /** A clock that goes when it is told to. */
  private static final class Moving extends Clock {
    private Instant now = Instant.parse("2026-10-05T18:00:00Z");

    @Override
    public ZoneId getZone() {
      return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
      return this;
    }

    @Override
    public Instant instant() {
      return now;
    }
  }

  private void pass(Duration time) {
    clock.now = clock.now.plus(time);
    model.tick();
  }

  private String timer() {
    return model.timerProperty().get();
  }

  @Test
  void goesStepByStepAndStaysAtEitherEnd() {
    assertThat(model.placeSays()).isEqualTo("step 1 of 9");
    model.back();
    assertThat(model.placeProperty().get()).isZero();
    model.next();
    model.next();
    assertThat(model.placeSays()).isEqualTo("step 3 of 9");
    assertThat(model.step().heading()).isEqualTo("Fold and mark");
    model.last();
    model.next();
    assertThat(model.placeSays()).isEqualTo("step 9 of 9");
    model.first();
    assertThat(model.placeSays()).isEqualTo("step 1 of 9");
  }

  @Test
  void aStepsPicturesStandApartAndFillTheBoardOneAfterAnother() {
    assertThat(model.pictures()).isEmpty();
    model.nextPicture();
    assertThat(model.largeProperty().get()).isNegative();
    model.next();
    assertThat(model.pictures()).hasSize(1);
    assertThat(model.text()).isNotEmpty().noneMatch(each -> each instanceof Block.Picture);
    model.nextPicture();
    assertThat(model.largeProperty().get()).isZero();
    model.nextPicture();
    assertThat(model.largeProperty().get()).isNegative();
  }

  @Test
  void whatGoesWrongAtTheStepIsToldBeforeTheRest() {
    int all = pack.teaching().trouble().size();
    assertThat(model.troubleHere()).isEmpty();
    assertThat(model.troubleElsewhere()).hasSize(all);
    model.next();
    assertThat(model.step().heading()).isEqualTo("Find the two ways of the cloth");
    assertThat(model.troubleHere()).hasSize(1).first().asString().contains("Look for the columns");
    assertThat(model.troubleElsewhere())
        .hasSize(all - 1)
        .doesNotContainAnyElementsOf(model.troubleHere());
  }

  @Test
  void theTimerCountsDownRestsAndTurnsToWords() {
    assertThat(timer()).isEqualTo("10 min");
    model.toggleTimer();
    pass(Duration.ofSeconds(61));
    assertThat(timer()).isEqualTo("8:59 left");
    model.toggleTimer();
    pass(Duration.ofMinutes(5));
    assertThat(timer()).isEqualTo("8:59 left, resting");
    model.toggleTimer();
    pass(Duration.ofSeconds(8 * 60 + 58));
    assertThat(timer()).isEqualTo("0:01 left");
    pass(Duration.ofSeconds(1));
    assertThat(timer()).isEqualTo("time is up");
    pass(Duration.ofSeconds(60));
    assertThat(timer()).isEqualTo("1 minute over");
    pass(Duration.ofSeconds(65));
    assertThat(timer()).isEqualTo("2 minutes over");
    model.resetTimer();
    assertThat(timer()).isEqualTo("10 min");
  }

  @Test
  void aTimerGoesOnWhileAnotherStepIsShown() {
    model.toggleTimer();
    model.next();
    assertThat(timer()).isEqualTo("15 min");
    pass(Duration.ofMinutes(3));
    assertThat(timer()).isEqualTo("15 min");
    model.back();
    assertThat(timer()).isEqualTo("7:00 left");
  }

  @Test
  void escTakesAwayWhatLiesOverTheStepBeforeItLeaves() {
    model.next();
    model.asideProperty().set(true);
    model.nextPicture();
    model.workingProperty().set(true);
    assertThat(model.uncover()).isTrue();
    assertThat(model.workingProperty().get()).isFalse();
    assertThat(model.uncover()).isTrue();
    assertThat(model.largeProperty().get()).isNegative();
    assertThat(model.uncover()).isTrue();
    assertThat(model.asideProperty().get()).isFalse();
    assertThat(model.uncover()).isFalse();
  }
}
