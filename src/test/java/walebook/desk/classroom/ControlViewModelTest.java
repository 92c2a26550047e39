package walebook.desk.classroom;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Classroom;
import walebook.compare.Outcome;
import walebook.desk.Sessions;
import walebook.record.PullReading;
import walebook.record.SeamEnd;

class ControlViewModelTest {
  @TempDir Path folder;

  private static ControlViewModel model(FiltersViewModel filters) {
    ControlViewModel model = new ControlViewModel(filters);
    model.asking().shown(true);
    return model;
  }

  @Test
  void aRateHasNoDifferenceAndAnotherMeasureIsOnePressAway() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      FiltersViewModel filters = new FiltersViewModel(Sessions.of(room));
      filters.outcomeProperty().set(Outcome.HELD);
      ControlViewModel model = model(filters);
      assertThat(requireNonNull(model.foundProperty().get()).rate()).isTrue();
      model.askShare();
      assertThat(requireNonNull(model.foundProperty().get()).rate()).isFalse();
    }
  }

  @Test
  void withoutAControlNothingIsDrawnAndASentenceSaysWhy() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      room.book
          .pieces()
          .add(
              room.piece(
                  room.first.id(),
                  2.5,
                  List.of(new PullReading(1, SeamEnd.GAVE, 140)),
                  List.of(),
                  null));
      FiltersViewModel filters = new FiltersViewModel(Sessions.of(room));
      filters.outcomeProperty().set(Outcome.SEAM_STRETCH);
      ControlViewModel.Found found = requireNonNull(model(filters).foundProperty().get());
      assertThat(found.plot()).isNull();
      assertThat(found.says().get(0)).contains("Nobody has a control");
    }
  }
}
