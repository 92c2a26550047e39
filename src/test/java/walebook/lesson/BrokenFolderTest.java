package walebook.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import walebook.problem.Answer;
import walebook.words.Words;

/** Every broken pack of the fixture folder, and word for word what is said of it. */
class BrokenFolderTest {
  private static final ReadPack READ = new ReadPack();
  private static final Words WORDS = Words.english();

  static List<BrokenPacks.Case> cases() {
    return BrokenPacks.all();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  void isToldWordForWord(BrokenPacks.Case broken) {
    Answer<LessonPack> answer = READ.read(broken.pack());
    assertThat(answer.problems().stream().map(WORDS::say).toList())
        .containsExactlyElementsOf(broken.says());
  }

  @Test
  void thePacksThatAreBrokenAreGoodByThemselves() throws IOException {
    for (String base : List.of("flat-on-rib", "two-cloths")) {
      PackSource good = new PackBytes(base, BrokenPacks.base(base));
      assertThat(READ.read(good).problems()).as(base).isEmpty();
    }
  }

  @Test
  void thereAreManyAndEachIsRefusedButThoseMeantToPass() {
    List<BrokenPacks.Case> cases = cases();
    assertThat(cases).extracting(BrokenPacks.Case::name).doesNotHaveDuplicates();
    assertThat(cases.stream().filter(each -> !READ.read(each.pack()).isGood()))
        .hasSizeGreaterThan(80);
    assertThat(cases.stream().filter(each -> READ.read(each.pack()).isGood()))
        .extracting(BrokenPacks.Case::name)
        .containsExactly(
            "a load without a pull by load",
            "a fault misspelt",
            "a file that belongs to no pack",
            "a byte order mark before the text",
            "a byte order mark before the fields",
            "lines ended as on another system");
  }

  /** The schema can't read the table of faults, so its list is held to it here. */
  @Test
  void theSchemaKnowsTheFaultsOfTheTable() throws IOException {
    List<String> table =
        Files.readAllLines(Path.of("shared", "faults.csv")).stream()
            .skip(1)
            .map(line -> line.substring(0, line.indexOf(',')))
            .toList();
    assertThat(PackSchema.load().faults()).containsExactlyElementsOf(table);
  }
}
