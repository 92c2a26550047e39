package walebook.desk.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import walebook.act.decide.AllCalculations;
import walebook.desk.common.CheckInput;
import walebook.desk.common.ChoiceWords;
import walebook.quantity.Unit;
import walebook.tables.SharedTables;
import walebook.words.Words;
import walebook.working.Calculation;
import walebook.working.Input;

class ChecksViewModelTest {
  private final SharedTables tables = SharedTables.read();
  private final Words words = Words.english();
  private final ChecksViewModel model = new ChecksViewModel(tables, words, Unit.MM);

  private List<String> names() {
    return model.groups().stream()
        .flatMap(group -> group.lines().stream())
        .map(ChecksViewModel.Line::name)
        .toList();
  }

  @Test
  void listsEveryCalculationUnderAHeading() {
    assertThat(names())
        .containsExactlyElementsOf(
            AllCalculations.list(tables).stream().map(Calculation::name).toList());
    assertThat(model.groups()).noneMatch(group -> group.title().startsWith("["));
  }

  @Test
  void theSearchNarrowsTheListByEachWord() {
    model.searchProperty().set("BAND flat");
    assertThat(names()).containsExactly("band-flat");
    model.openFirst();
    assertThat(model.openProperty().get().name()).isEqualTo("band-flat");
    model.searchProperty().set("umbrella");
    assertThat(model.groups()).isEmpty();
    model.close();
    model.openFirst();
    assertThat(model.openProperty().get()).isNull();
    model.searchProperty().set("  ");
    assertThat(names()).hasSizeGreaterThan(30);
  }

  @Test
  void aCheckThatWasBegunIsAsItWasLeft() {
    model.open("ease");
    model.openProperty().get().type("body", "900");
    model.close();
    model.open("ease");
    model.openProperty().get().type("finished", "800");
    assertThat(model.openProperty().get().outcomeProperty().get().working()).isNotNull();
  }

  @Test
  void everyInputAndChoiceReadsAsPlainWords() {
    ChoiceWords names = new ChoiceWords(words, tables);
    for (Calculation each : AllCalculations.list(tables)) {
      for (Input input : each.inputs()) {
        CheckInput field = new CheckInput(input, Unit.CM);
        assertThat(names.label(field)).isNotBlank().doesNotContain("[", "{");
        for (String choice : input.choices()) {
          boolean same =
              choice.matches("[0-9]+")
                  || words.has("desk.decide.choice." + input.name() + "." + choice);
          assertThat(names.choice(input, choice))
              .as(each.name() + " " + input.name() + " " + choice)
              .matches(said -> same || !said.equals(choice), "said in words");
        }
      }
    }
  }
}
