package walebook.act.cloth;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Classroom;
import walebook.problem.Problem;

class KeepClothTest {
  @TempDir Path folder;

  private static List<String> asked(Classroom room, String width) {
    return new KeepCloth(room.book, Classroom.CLOCK)
        .read(null, Map.of("cloth-name", "Rib", "cloth-width", width)).problems().stream()
            .map(Problem::code)
            .toList();
  }

  @Test
  void aWidthThatNoClothHasIsAskedAbout() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      assertThat(asked(room, "15 mm")).containsExactly("number.unlikely-small");
      assertThat(asked(room, "150 cm")).isEmpty();
      assertThat(asked(room, "30 m")).containsExactly("number.unlikely");
    }
  }
}
