package walebook.desk.lessons;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import walebook.act.lesson.ReadLessons;
import walebook.act.lesson.RoomCalculations;
import walebook.desk.common.CheckInput;
import walebook.lesson.Packs;
import walebook.quantity.Unit;
import walebook.tables.SharedTables;
import walebook.words.Words;
import walebook.working.Working;

class CalledOutViewModelTest {
  private final CalledOutViewModel model =
      new CalledOutViewModel(
          RoomCalculations.of(ReadLessons.packs().get(0), SharedTables.read()),
          Words.english(),
          Unit.MM);

  private void type(String input, String text) {
    CheckInput field =
        model.inputs().stream().filter(each -> each.input().name().equals(input)).findFirst().get();
    Objects.requireNonNull(field.number()).textProperty().set(text);
  }

  @Test
  void theLessonsOwnCalculationIsOpenAtOnce() {
    assertThat(model.chosenProperty().get().name()).isEqualTo("stretch");
    assertThat(RoomCalculations.of(Packs.seam(), SharedTables.read()))
        .extracting(each -> each.name())
        .startsWith("seam-stretch")
        .doesNotHaveDuplicates()
        .contains("band", "repeats");
  }

  @Test
  void theWorkingComesLineByLine() {
    assertThat(model.hintProperty().get()).startsWith("Call out");
    type("stretched", "150");
    assertThat(model.hintProperty().get()).isEmpty();
    assertThat(model.lines()).isEmpty();
    model.nextLine();
    // 10 cm that reach 15 cm have stretched 50 percent: by definition.
    assertThat(model.lines()).singleElement().matches(each -> each.numbers().endsWith("50.0 %"));
    model.lineBack();
    assertThat(model.lines()).isEmpty();
    for (int i = 0; i < 20; i++) {
      model.nextLine();
    }
    assertThat(model.hasMore()).isFalse();
  }

  @Test
  void answersCalledOutOneAfterAnotherGiveMeanAndSpread() {
    for (String each : new String[] {"150", "147", "155"}) {
      type("stretched", each);
      assertThat(Objects.requireNonNull(model.keep()).input().name()).isEqualTo("stretched");
      assertThat(model.workingProperty().get()).isNull();
    }
    assertThat(model.called()).containsExactly("50 %", "47 %", "55 %");
    Working spread = Objects.requireNonNull(model.spreadProperty().get());
    // (50 + 47 + 55) ÷ 3; s = √(((−0.67)² + (−3.67)² + 4.33²) ÷ 2) = 4.041: JCGM 100 (GUM), 4.2.
    assertThat(spread.value()).isCloseTo(152.0 / 3, within(1e-9));
    assertThat(model.spreadLines()).anyMatch(each -> each.numbers().contains("4.041"));
    model.takeBack();
    model.takeBack();
    assertThat(model.called()).containsExactly("50 %");
    assertThat(model.spreadProperty().get()).isNull();
    assertThat(model.keep()).isNull();
  }

  @Test
  void whatWasTypedInOneCalculationWaitsWhileAnotherIsShown() {
    type("stretched", "150");
    model.keep();
    type("stretched", "160");
    var stretch = model.chosenProperty().get();
    model.chosenProperty().set(model.all().get(1));
    assertThat(model.called()).isEmpty();
    model.chosenProperty().set(stretch);
    assertThat(Objects.requireNonNull(model.workingProperty().get()).value()).isEqualTo(60);
    assertThat(model.called()).containsExactly("50 %");
  }
}
