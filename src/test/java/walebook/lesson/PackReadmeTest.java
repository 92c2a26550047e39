package walebook.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import walebook.problem.Problem;
import walebook.words.Words;

/** What the guide for tutors shows is true of the program. */
class PackReadmeTest {
  @Test
  void theWorkedExampleIsAGoodPack() throws IOException {
    PackSource example =
        new PackBytes(
            "flat-on-rib", Map.of("pack.yaml", block("yaml"), "lesson.md", block("markdown")));
    assertThat(new ReadPack().read(example).problems()).isEmpty();
    PiecesPlan plan = (PiecesPlan) new ReadPack().read(example).value().plan();
    assertThat(plan.cellCount()).isEqualTo(6);
    assertThat(plan.controlSettings().asked(1).dialLength()).isEqualTo(2.5);
  }

  @Test
  void theMistakeIsToldAsShown() throws IOException {
    String broken =
        GoodPack.text("pack.yaml").replace("needle_point: stretch", "needle_point: strech");
    Problem problem = new ReadPack().read(GoodPack.with("pack.yaml", broken)).problems().get(0);
    assertThat(guide()).contains(Words.english().say(problem));
  }

  @Test
  void everyBuiltInPackIsListed() throws IOException {
    for (PackSource each : BuiltInPacks.all()) {
      int minutes = new ReadPack().read(each).value().about().minutes();
      assertThat(guide()).contains("| `" + each.name() + "` | " + minutes + " |");
    }
  }

  private static byte[] block(String language) throws IOException {
    Matcher block = Pattern.compile("(?s)```" + language + "\\n(.*?)```").matcher(guide());
    assertThat(block.find()).isTrue();
    return block.group(1).getBytes(StandardCharsets.UTF_8);
  }

  private static String guide() throws IOException {
    return Files.readString(Path.of("lesson-packs", "README.md"));
  }
}
