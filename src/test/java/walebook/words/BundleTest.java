package walebook.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The bundle against the sources: no sentence is missing, none is left over. */
class BundleTest {
  private static final Path MAIN = Path.of("src/main/java/walebook");
  private static final Pattern LITERAL = Pattern.compile("\"([a-z][a-z0-9]*(?:[.-][a-z0-9-]+)+)\"");
  private static final Pattern SAID =
      Pattern.compile("(?:Message\\.of|\\bsay|\\btell)\\(\\s*\"([a-z][a-z0-9.-]+)\"\\s*[,)]");
  private static final Pattern PROBLEM =
      Pattern.compile("Problem\\s*\\.(?:refuse|ask)\\(\\s*\"([a-z][a-z0-9.-]+)\"");

  /** Families whose last part is the key of a constant, a field or a row of a table. */
  private static final List<String> BY_KEY =
      List.of(
          "act.class.factor.",
          "act.class.grain.",
          "act.gather.name.",
          "act.thing.",
          "common.choice.",
          "compare.outcome.",
          "compare.value.",
          "problem.field.",
          "command.field.",
          "command.group.",
          "desk.cloths.field.",
          "desk.common.table.",
          "desk.decide.choice.",
          "desk.decide.field.",
          "desk.lessons.check.",
          "desk.lessons.setting.",
          "desk.pieces.fault.",
          "desk.pieces.field.",
          "desk.pieces.grade.",
          "desk.pieces.grain.",
          "desk.pieces.severity.",
          "desk.today.grain.",
          "desk.term.field.",
          "desk.typing.choice.",
          "desk.term.prompt.",
          "sheet.end.",
          "sheet.factor.",
          "sheet.grain.",
          "sheet.how.",
          "sheet.source.");

  private final Words words = Words.english();

  private static String sources() throws IOException {
    try (Stream<Path> files = Files.walk(MAIN)) {
      return files
          .filter(each -> each.toString().endsWith(".java"))
          .map(BundleTest::text)
          .collect(Collectors.joining("\n"));
    }
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static Set<String> found(Pattern pattern, String text) {
    Set<String> found = new TreeSet<>();
    Matcher matcher = pattern.matcher(text);
    while (matcher.find()) {
      found.add(matcher.group(1));
    }
    return found;
  }

  @Test
  void everySentenceThatIsSaidIsThere() throws IOException {
    String all = sources();
    Set<String> missing = new TreeSet<>();
    for (String key : found(SAID, all)) {
      if (!words.has(key)) {
        missing.add(key);
      }
    }
    for (String code : found(PROBLEM, all)) {
      if (!words.has("problem." + code)) {
        missing.add("problem." + code);
      }
    }
    assertThat(missing).isEmpty();
  }

  @Test
  void noSentenceIsLeftOver() throws IOException {
    Set<String> literals = found(LITERAL, sources());
    Set<String> unused = new TreeSet<>();
    for (String key : words.all().keySet()) {
      boolean byKey = BY_KEY.stream().anyMatch(key::startsWith);
      boolean problem =
          key.startsWith("problem.") && literals.contains(key.substring("problem.".length()));
      if (!byKey && !problem && !literals.contains(key)) {
        unused.add(key);
      }
    }
    assertThat(unused).isEmpty();
  }

  @Test
  void everyFamilyIsPutTogetherSomewhereAndHasSentences() throws IOException {
    String all = sources();
    for (String family : BY_KEY) {
      assertThat(all).as(family).contains('"' + family + '"');
      assertThat(words.all().keySet()).as(family).anyMatch(key -> key.startsWith(family));
    }
  }

  @Test
  void keysBeginWithTheirFilesNameAndNoneStandsTwice() throws IOException {
    for (String room : Words.ROOMS) {
      try (InputStream in = Words.class.getResourceAsStream(room + ".properties")) {
        if (in == null) {
          continue;
        }
        String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        List<String> keys =
            Arrays.stream(text.split("\\R"))
                .filter(line -> line.matches("[a-z][^=#]*=.*"))
                .map(line -> line.substring(0, line.indexOf('=')).strip())
                .toList();
        assertThat(keys).as(room).allMatch(key -> key.startsWith(room + "."));
        assertThat(keys).as(room).doesNotHaveDuplicates();
      }
    }
  }

  @Test
  void everyFileOfTheFolderIsARoomOfTheBundle() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("src/main/resources/walebook/words"))) {
      assertThat(files.map(each -> each.getFileName().toString().replace(".properties", "")))
          .isSubsetOf(Words.ROOMS);
    }
  }

  @Test
  void filesAreReadAsUtf8() throws IOException {
    Properties read = new Properties();
    try (InputStream in = Words.class.getResourceAsStream("problem.properties")) {
      read.load(new InputStreamReader(in, StandardCharsets.UTF_8));
    }
    assertThat(words.say("problem.alias.taken", "S01")).contains("’");
    assertThat(read).isNotEmpty();
  }
}
