package walebook.desk.classroom;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Classroom;
import walebook.compare.Outcome;
import walebook.desk.RoomBook;
import walebook.desk.Sessions;
import walebook.drawing.ValueBar;
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
      room.book.pieces().add(room.piece(SeamEnd.GAVE, 140));
      FiltersViewModel filters = new FiltersViewModel(Sessions.of(room));
      filters.outcomeProperty().set(Outcome.SEAM_STRETCH);
      ControlViewModel.Found found = requireNonNull(model(filters).foundProperty().get());
      assertThat(found.plot()).isNull();
      assertThat(found.says().get(0)).contains("Nobody has a control");
    }
  }

  @Test
  void eachSettingIsARowOfDotsWithItsRangeAndWhatCanBeSaid() {
    try (Classroom room = RoomBook.in(folder.resolve("c.walebook"))) {
      FiltersViewModel filters = new FiltersViewModel(Sessions.of(room));
      filters.outcomeProperty().set(Outcome.SEAM_STRETCH);
      ControlViewModel.Found found = requireNonNull(model(filters).foundProperty().get());
      assertThat(found.rows()).isNotEmpty();
      int read = 0;
      for (ControlViewModel.Row row : found.rows()) {
        assertThat(row.links()).hasSize(row.pieces());
        assertThat(row.says()).startsWith(row.setting());
        assertThat(row.can()).isNotBlank();
        ValueBar bar = (ValueBar) row.bar();
        assertThat(bar.row().dots()).hasSize(row.pieces());
        assertThat(bar.from()).isLessThanOrEqualTo(0);
        assertThat(bar.to()).isGreaterThanOrEqualTo(0);
        read += row.pieces();
      }
      // The pieces of all rows are those that the sentence counts, one sentence for all rows.
      String counted = "Pieces read against their sewer’s own control: " + read + " of ";
      assertThat(found.says()).filteredOn(each -> each.startsWith(counted)).hasSize(1);
      assertThat(found.says()).hasSizeLessThan(8);
    }
  }
}
