package walebook.act.cloth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import walebook.act.lesson.KitCloth;
import walebook.book.Classroom;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.By;
import walebook.record.ClothWash;
import walebook.record.Grain;
import walebook.working.Working;

class LogWashTest {
  @TempDir Path folder;

  private static Map<String, String> square(
      String waleBefore, String waleAfter, String courseBefore, String courseAfter) {
    Map<String, String> typed = new HashMap<>();
    typed.put("wale-before", waleBefore);
    typed.put("wale-after", waleAfter);
    typed.put("course-before", courseBefore);
    typed.put("course-after", courseAfter);
    typed.put("wash", " 40 °C, line dried ");
    return typed;
  }

  private static Map<String, String> one(String grain, String before, String after) {
    return Map.of("grain", grain, "before", before, "after", after);
  }

  private static String said(Problem problem) {
    return ((Place.Field) problem.place()).name() + " " + problem.code();
  }

  @Test
  void aSquareIsLoggedBothWaysInOneStep() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      LogWash act = new LogWash(room.book, Classroom.CLOCK);
      UUID cloth = room.cloth.id();
      Answer<List<ClothWash>> saved =
          act.save(cloth, square("500", "48 cm", "500", "49,5cm"), false);
      assertThat(saved.problems()).isEmpty();
      List<ClothWash> washes = room.book.clothLog().washesOf(cloth);
      assertThat(washes).containsExactlyInAnyOrderElementsOf(saved.value());
      assertThat(washes).extracting(ClothWash::grain).containsOnly(Grain.WALE, Grain.COURSE);
      assertThat(washes).extracting(ClothWash::afterMm).containsOnly(480.0, 495.0);
      assertThat(washes).extracting(ClothWash::wash).containsOnly("40 °C, line dried");
      assertThat(washes).extracting(ClothWash::washedOn).containsOnly(LocalDate.of(2026, 10, 5));
      UUID step = Objects.requireNonNull(room.book.history().lastDone(null));
      room.book.history().undo(step, By.NOBODY);
      assertThat(room.book.clothLog().washesOf(cloth)).isEmpty();
    }
  }

  /** ISO 5077: D = 100 (after − before) ÷ before, shrinkage is minus. */
  @ParameterizedTest
  @CsvSource({"350, 332.5, -5", "350, 357, 2", "500, 500, 0", "500, 480, -4"})
  void theChangeIsThatOfTheStandard(String before, String after, double percent) {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      ClothWash wash =
          new LogWash(room.book, Classroom.CLOCK)
              .save(room.cloth.id(), one("wale", before, after), false)
              .value()
              .get(0);
      assertThat(wash.changePercent()).isCloseTo(percent, within(1e-9));
      Working working = LogWash.working(wash).value();
      assertThat(working.value()).isCloseTo(percent, within(1e-9));
      assertThat(working.sources().get(0).citation()).contains("ISO 5077").contains("ISO 3759");
    }
  }

  @Test
  void theDoubtComesFromTheRuler() {
    // GUM, rectangular reading to 1 mm: u = 1 ÷ √12 at both ends, so 100 √2 ÷ (√12 · 500) for 500
    // that stay 500.
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      new LogWash(room.book, Classroom.CLOCK)
          .save(room.cloth.id(), one("course", "500", "500"), false);
      WashSummary summary = WashSummary.of(room.book.clothLog().washesOf(room.cloth.id())).get(0);
      double u = 100 * Math.sqrt(2) / (Math.sqrt(12) * 500);
      assertThat(summary.giveOrTake()).isCloseTo(2 * u, within(1e-9));
    }
  }

  @Test
  void aKitIsWorkedOutWithTheMeanOfWhatIsLogged() {
    try (Classroom room = Classroom.in(folder.resolve("d.walebook"))) {
      LogWash act = new LogWash(room.book, Classroom.CLOCK);
      UUID cloth = room.cloth.id();
      act.save(cloth, square("500", "470", "500", "495"), false);
      act.save(cloth, one("wale", "500", "480"), false);
      KitCloth kit = Objects.requireNonNull(KitCloth.in(room.book, Map.of("a", cloth)).get("a"));
      List<WashSummary> means = WashSummary.of(room.book.clothLog().washesOf(cloth));
      assertThat(means).extracting(WashSummary::grain).containsExactly(Grain.WALE, Grain.COURSE);
      assertThat(means.get(0).percent()).isCloseTo(-5, within(1e-9));
      assertThat(kit.alongPercent()).isCloseTo(-5, within(1e-9));
      assertThat(kit.acrossPercent()).isCloseTo(-1, within(1e-9));
      // ISO 5077 turned round: 1000 mm after −5 % wants 1052.63 mm.
      assertThat(means.get(0).cut(1000).value()).isCloseTo(1052.63, within(0.005));
      assertThat(means.get(0).giveOrTake())
          .as("two that differ leave more open than their reading")
          .isGreaterThan(means.get(1).giveOrTake());
    }
  }

  @ParameterizedTest
  @CsvSource({
    "500, 374, after wash.shrank",
    "500, 551, after wash.grew",
    "1200, 1190, before number.unlikely",
  })
  void whatIsUnlikelyIsAskedOnce(String before, String after, String said) {
    try (Classroom room = Classroom.in(folder.resolve("e.walebook"))) {
      LogWash act = new LogWash(room.book, Classroom.CLOCK);
      Answer<List<ClothWash>> asked = act.save(room.cloth.id(), one("wale", before, after), false);
      assertThat(asked.problems()).extracting(LogWashTest::said).contains(said);
      assertThat(asked.problems()).noneMatch(Problem::refuses);
      assertThat(room.book.clothLog().washesOf(room.cloth.id())).isEmpty();
      assertThat(act.save(room.cloth.id(), one("wale", before, after), true).isGood()).isTrue();
      assertThat(room.book.clothLog().washesOf(room.cloth.id())).hasSize(1);
    }
  }

  @ParameterizedTest
  @CsvSource(
      nullValues = "-",
      value = {
        "wale, 500, '', after field.needed",
        "wale, '', 480, before field.needed",
        "'', 500, 480, grain field.needed",
        "bias, 500, 480, grain choice.unknown",
        "wale, 500, 48 x, after length.unit",
        "wale, 500, -480, after number.too-small",
        "wale, 50, 480, after wash.doubled",
      })
  void whatIsWrongIsNamedWhereItStands(String grain, String before, String after, String said) {
    try (Classroom room = Classroom.in(folder.resolve("f.walebook"))) {
      Answer<List<ClothWash>> answer =
          new LogWash(room.book, Classroom.CLOCK)
              .save(room.cloth.id(), one(grain, before, after), true);
      assertThat(answer.isGood()).isFalse();
      assertThat(answer.problems()).extracting(LogWashTest::said).contains(said);
      assertThat(room.book.clothLog().washesOf(room.cloth.id())).isEmpty();
    }
  }

  @Test
  void aSquareThatIsHalfReadIsNotSavedByHalves() {
    try (Classroom room = Classroom.in(folder.resolve("g.walebook"))) {
      LogWash act = new LogWash(room.book, Classroom.CLOCK);
      UUID cloth = room.cloth.id();
      assertThat(act.save(cloth, square("500", "480", "500", ""), true).problems())
          .extracting(LogWashTest::said)
          .containsExactly("course-after field.needed");
      assertThat(act.save(cloth, square("", "", "", ""), true).problems())
          .extracting(LogWashTest::said)
          .containsExactly("wale-after field.needed");
      assertThat(room.book.clothLog().washesOf(cloth)).isEmpty();
      assertThat(act.save(cloth, square("", "", "500", "490"), true).value()).hasSize(1);
      Map<String, String> tomorrow = square("", "", "500", "490");
      tomorrow.put("washed-on", "2026-10-06");
      assertThat(act.save(cloth, tomorrow, true).problems())
          .extracting(LogWashTest::said)
          .containsExactly("washed-on date.future");
    }
  }
}
