package walebook.desk.decide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Classroom;
import walebook.book.Ids;
import walebook.desk.Sessions;
import walebook.desk.common.Session;
import walebook.quantity.Unit;
import walebook.record.ClothWash;
import walebook.record.Grain;
import walebook.tables.SharedTables;
import walebook.words.Words;

class FromWashViewModelTest {
  @TempDir Path folder;

  private static void washed(Classroom room, Grain grain, double after, String how, int day) {
    room.book
        .clothLog()
        .add(
            new ClothWash(
                Ids.next(),
                room.cloth.id(),
                grain,
                500,
                after,
                how,
                LocalDate.of(2026, 9, day),
                Classroom.FRESH));
  }

  private static CheckViewModel check(String name, Unit unit) {
    ChecksViewModel checks = new ChecksViewModel(SharedTables.read(), Words.english(), unit);
    checks.open(name);
    return Objects.requireNonNull(checks.openProperty().get());
  }

  @Test
  void washingFirstIsFilledFromTheNewestWashAndSaysSo() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      washed(room, Grain.COURSE, 495, "", 1);
      washed(room, Grain.COURSE, 485, "40 °C, on the line", 8);
      washed(room, Grain.WALE, 475, "", 8);
      CheckViewModel check = check("wash-first", Unit.MM);
      FromWashViewModel wash = new FromWashViewModel(Sessions.of(room), check, Unit.MM);
      assertThat(check.shown("round-change")).isEmpty();
      wash.chosenProperty().set(wash.cloths().get(0));
      assertThat(wash.saysProperty().get())
          .contains("newest wash of Grey jersey")
          .contains("course-wise −3.0 % on 8 Sep 2026 (40 °C, on the line)")
          .contains("wale-wise −5.0 % on 8 Sep 2026");
      check.type("finished", "970");
      check.type("wanted", "570");
      // 500 that became 485 is −3 %: by ISO 5077 turned round, 970 mm want 1000 mm.
      assertThat(Objects.requireNonNull(check.outcomeProperty().get().working()).value())
          .isCloseTo(1000, within(1e-6));
      wash.grainProperty().set(Grain.WALE);
      assertThat(Objects.requireNonNull(check.outcomeProperty().get().working()).value())
          .isCloseTo(970 / 0.95, within(1e-6));
    }
  }

  @Test
  void whatIsTypedOverIsNoLongerTheWashsAndStays() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      washed(room, Grain.WALE, 480, "", 1);
      Session session = Sessions.of(room);
      CheckViewModel check = check("cut-length", Unit.CM);
      FromWashViewModel wash = new FromWashViewModel(session, check, Unit.CM);
      wash.chosenProperty().set(wash.cloths().get(0));
      assertThat(wash.saysProperty().get()).contains("not marked course-wise");
      assertThat(check.shown("change")).isEmpty();
      wash.grainProperty().set(Grain.WALE);
      assertThat(check.shown("change")).isEqualTo("−4");
      check.type("change", "-6");
      assertThat(wash.saysProperty().get()).isEmpty();
      washed(room, Grain.WALE, 470, "", 2);
      session.changed();
      assertThat(check.shown("change")).contains("6");
      check.startAgain();
      wash.forget();
      wash.chosenProperty().set(wash.cloths().get(0));
      assertThat(check.shown("change")).isEqualTo("−6");
      assertThat(wash.saysProperty().get()).contains("−6.0 %");
    }
  }

  @Test
  void marksAreFilledInTheBooksUnit() {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      washed(room, Grain.COURSE, 485, "", 1);
      CheckViewModel check = check("wash-change", Unit.CM);
      FromWashViewModel wash = new FromWashViewModel(Sessions.of(room), check, Unit.CM);
      wash.chosenProperty().set(wash.cloths().get(0));
      assertThat(check.shown("before")).isEqualTo("50");
      assertThat(check.shown("after")).isEqualTo("48.5");
    }
  }
}
