package walebook.act.cloth;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import walebook.book.Classroom;
import walebook.problem.Answer;
import walebook.problem.Problem;
import walebook.record.ClothReading;

class LogClothReadingTest {
  @TempDir Path folder;

  private static Answer<ClothReading> log(
      Classroom room, String grain, String stretched, String pull, boolean confirmed) {
    return new LogClothReading(room.book, Classroom.CLOCK)
        .save(
            new LogClothReading.Whose(room.cloth.id(), null, null, null),
            Map.of("grain", grain, "gauge", "100", "stretched", stretched, "pull", pull),
            confirmed);
  }

  /** The class reads 31 to 34 % course-wise and 17 to 19 % wale-wise. */
  @ParameterizedTest
  @CsvSource({
    "course, 133, firm, ''",
    "course, 139, firm, ''",
    "course, 140, firm, reading.unlike-others",
    "course, 118, firm, reading.other-grain",
    "wale, 133, firm, reading.other-grain",
    "course, 118, comfortable, ''",
    "bias, 180, firm, ''"
  })
  void aReadingFarFromTheOthersIsAskedAboutOnce(
      String grain, String stretched, String pull, String code) {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      for (String each : new String[] {"131", "132", "134"}) {
        assertThat(log(room, "course", each, "firm", false).isGood()).isTrue();
      }
      for (String each : new String[] {"117", "118", "119"}) {
        assertThat(log(room, "wale", each, "firm", false).isGood()).isTrue();
      }
      Answer<ClothReading> answer = log(room, grain, stretched, pull, false);
      assertThat(answer.isGood()).isEqualTo(code.isEmpty());
      if (!code.isEmpty()) {
        assertThat(answer.problems()).extracting(Problem::code).containsExactly(code);
        assertThat(answer.problems()).noneMatch(Problem::refuses);
        assertThat(log(room, grain, stretched, pull, true).isGood()).isTrue();
      }
      assertThat(room.book.clothLog().readingsOf(room.cloth.id())).hasSize(7);
    }
  }

  @Test
  void aReadingOfADayThatIsStillToComeIsRefused() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      Map<String, String> typed =
          Map.of(
              "grain", "course", "gauge", "100", "stretched", "133", "measured-on", "2062-10-05");
      Answer<ClothReading> answer =
          new LogClothReading(room.book, Classroom.CLOCK)
              .save(
                  new LogClothReading.Whose(room.cloth.id(), null, null, room.first.id()),
                  typed,
                  true);
      assertThat(answer.problems()).extracting(Problem::code).containsExactly("date.future");
    }
  }
}
