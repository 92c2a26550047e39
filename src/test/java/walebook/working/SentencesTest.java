package walebook.working;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import walebook.words.Words;

/** The bundle against the code of the calculations: nothing missing, nothing left over. */
class SentencesTest {
  private static final Words WORDS = Words.english();
  private static final List<String> ROOMS =
      List.of("cloth", "seam", "garment", "tables", "working");

  @Test
  void everyKeyInTheCodeIsInTheBundle() {
    Set<String> keys = found("\"((?:cloth|seam|garment)\\.[a-z][a-z0-9.-]+)\"");
    assertThat(keys).hasSizeGreaterThan(100);
    assertThat(keys).allMatch(WORDS::has);
  }

  @Test
  void everySentenceIsUsed() {
    Set<String> used = found("\"((?:cloth|seam|garment)\\.[a-z][a-z0-9.-]+)\"");
    Set<String> kept =
        WORDS.all().keySet().stream()
            .filter(key -> key.matches("(cloth|seam|garment)\\..*"))
            .collect(Collectors.toCollection(TreeSet::new));
    assertThat(kept).isEqualTo(used);
  }

  @Test
  void everyProblemIsSaidInWords() {
    Set<String> codes =
        found(
            "(?:refuse|ask|check)\\([^;]*?\"((?:reading|number|input|percent|repeats|decision|mass"
                + "|wash|thread|needle|fit|table|girth|gauge|marks|locked|length)\\.[a-z-]+)\"");
    assertThat(codes).hasSizeGreaterThan(20);
    assertThat(codes).allMatch(code -> WORDS.has("problem." + code));
  }

  @Test
  void everyFieldIsNamed() {
    Set<String> fields =
        found("(?:Place\\.field|positive|notNegative|between|girth)\\(\\s*\"([a-z-]+)\"");
    assertThat(fields).hasSizeGreaterThan(20);
    assertThat(fields).allMatch(field -> WORDS.has("problem.field." + field));
  }

  private static Set<String> found(String pattern) {
    Pattern literal = Pattern.compile(pattern, Pattern.DOTALL);
    Set<String> found = new TreeSet<>();
    for (String room : ROOMS) {
      for (String source : sources(Path.of("src/main/java/walebook", room))) {
        Matcher matcher = literal.matcher(source);
        while (matcher.find()) {
          found.add(matcher.group(1));
        }
      }
    }
    return found;
  }

  private static List<String> sources(Path folder) {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(Files::isRegularFile).map(SentencesTest::read).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
