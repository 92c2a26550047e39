package walebook.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What the sources look like: sizes, names, null marks, and a test for every view model. */
class SourcesTest {
  private static final Path MAIN = Path.of("src/main/java/walebook");
  private static final Path TEST = Path.of("src/test/java/walebook");
  private static final int LONGEST_FILE = 400;
  private static final int LONGEST_METHOD = 60;
  private static final int MEDIAN_FILE = 90;
  private static final Pattern EMPTY_NAME =
      Pattern.compile(".*(Service|Manager|Helper|Util|Utils|Impl)\\.java");
  // A member's head at the indentation of a class's or a nested type's body, up to its brace.
  private static final Pattern METHOD =
      Pattern.compile(
          "^( {2}| {4})(?=\\S)(?!(class|record|enum|interface|return|if|for|while)\\b)"
              + "[^=;]*\\)( throws [\\w., ]+)? \\{$");

  private static List<Path> sources(Path root) {
    try (Stream<Path> files = Files.walk(root)) {
      return files.filter(each -> each.toString().endsWith(".java")).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<String> lines(Path file) {
    try {
      return Files.readAllLines(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void noFileIsLongerThanItCanBeReadInOneSitting() {
    List<Integer> sizes = new ArrayList<>();
    List<String> tooLong = new ArrayList<>();
    for (Path file : sources(MAIN)) {
      int size = lines(file).size();
      sizes.add(size);
      if (size > LONGEST_FILE) {
        tooLong.add(file + ": " + size);
      }
    }
    Collections.sort(sizes);
    assertThat(tooLong).isEmpty();
    assertThat(sizes.get(sizes.size() / 2)).isLessThanOrEqualTo(MEDIAN_FILE);
  }

  @Test
  void noMethodIsLongerThanAScreen() {
    List<String> tooLong = new ArrayList<>();
    for (Path file : sources(MAIN)) {
      List<String> lines = lines(file);
      for (int i = 0; i < lines.size(); i++) {
        Matcher head = METHOD.matcher(lines.get(i));
        if (head.matches() && !isRecord(lines, i)) {
          String end = head.group(1) + "}";
          int length = 1;
          while (i + length < lines.size() && !lines.get(i + length).equals(end)) {
            length++;
          }
          if (length > LONGEST_METHOD) {
            tooLong.add(file + ":" + (i + 1) + ": " + length);
          }
        }
      }
    }
    assertThat(tooLong).isEmpty();
  }

  /** A record's components may stand on many lines; its body is not a method's. */
  private static boolean isRecord(List<String> lines, int at) {
    int head = at;
    while (head > 0 && !lines.get(head).contains("(")) {
      head--;
    }
    return lines.get(head).contains("record ");
  }

  @Test
  void namesSayWhatAThingDoes() {
    assertThat(sources(MAIN))
        .noneMatch(file -> EMPTY_NAME.matcher(file.getFileName().toString()).matches());
  }

  @Test
  void everyPackageIsNullMarkedAndSaysWhatItIsFor() {
    for (Path file : sources(MAIN)) {
      Path info = file.resolveSibling("package-info.java");
      assertThat(info).exists();
      assertThat(String.join("\n", lines(info))).contains("@NullMarked").contains("/**");
    }
  }

  @Test
  void everyViewModelHasATest() {
    List<String> untested = new ArrayList<>();
    for (Path file : sources(MAIN)) {
      String name = file.getFileName().toString();
      if (name.endsWith("ViewModel.java")) {
        Path test =
            TEST.resolve(MAIN.relativize(file)).resolveSibling(name.replace(".java", "Test.java"));
        if (!Files.exists(test)) {
          untested.add(file.toString());
        }
      }
    }
    assertThat(untested).isEmpty();
  }

  @Test
  void nothingIsLeftForLaterAndNothingSwitchedOff() {
    // Put together here, so that this file does not find itself.
    Pattern later = Pattern.compile("\\b(TO" + "DO|FIX" + "ME|XX" + "X)\\b|@Dis" + "abled");
    for (Path root : List.of(MAIN, TEST)) {
      for (Path file : sources(root)) {
        assertThat(lines(file)).as(file.toString()).noneMatch(line -> later.matcher(line).find());
      }
    }
  }
}
