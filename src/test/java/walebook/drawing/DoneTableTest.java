package walebook.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import walebook.words.Words;

class DoneTableTest {
  private static final DoneTable TABLE =
      new DoneTable(
          List.of("B7", "a name without a blank, far longer than its room is wide"),
          List.of("14 Sep", "21 Sep"),
          List.of(
              List.of(new DoneTable.Cell(0, 12), new DoneTable.Cell(6, 12)),
              List.of(new DoneTable.Cell(14, 12), new DoneTable.Cell(0, 0))));

  private final Words words = Words.english();

  @Test
  void theFillStandsAsHighAsTheShareThatIsDoneAndNeverHigherThanItsCell() {
    List<Shape.Rect> all = all(Shape.Rect.class);
    List<Shape.Rect> fills = all.stream().filter(each -> each.fill() == Role.WASH).toList();
    double whole =
        all.stream().filter(each -> each.fill() == null).findFirst().orElseThrow().height();
    assertThat(fills).hasSize(2);
    assertThat(fills.get(0).height() / whole).isCloseTo(0.5, within(1e-9));
    assertThat(fills.get(1).height() / whole).isCloseTo(1, within(1e-9));
  }

  @Test
  void everyCellSaysItsNumbersAndNothingPlannedIsADash() {
    List<String> says = all(Shape.Text.class).stream().map(Shape.Text::says).toList();
    assertThat(says).contains("0 / 12", "6 / 12", "14 / 12", "–", "B7", "14 Sep");
    assertThat(words.say(TABLE.at(500, words).says()))
        .isEqualTo("Table of what is done: 2 people, 2 lessons, done 20 of 36 planned.");
  }

  @Test
  void nothingLeavesThePicture() {
    Picture picture = TABLE.at(TABLE.leastWidth(), words);
    for (Shape.Text each : all(Shape.Text.class)) {
      double wide = TextWidth.of(each.says(), each.size());
      double left = each.anchor() == Shape.Anchor.MIDDLE ? each.x() - wide / 2 : each.x();
      assertThat(left).isGreaterThanOrEqualTo(0);
      assertThat(left + wide).isLessThanOrEqualTo(picture.width());
    }
  }

  @Test
  void aTableThatItsCellsDoNotFillIsRefused() {
    List<List<DoneTable.Cell>> one = List.of(List.of(new DoneTable.Cell(1, 2)));
    List<String> names = List.of("a", "b");
    assertThatThrownBy(() -> new DoneTable(names, List.of("c"), one))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new DoneTable(List.of("a"), names, one))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private <S extends Shape> List<S> all(Class<S> kind) {
    return TABLE.at(TABLE.leastWidth(), words).shapes().stream()
        .filter(kind::isInstance)
        .map(kind::cast)
        .toList();
  }
}
