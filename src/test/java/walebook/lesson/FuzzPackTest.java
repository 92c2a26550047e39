package walebook.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import walebook.problem.Answer;
import walebook.problem.Problem;
import walebook.words.Words;

/**
 * Good packs bent at random, two thousand times: always a pack or problems in words, no more of
 * them than are told at once, never a crash.
 */
class FuzzPackTest {
  private static final ReadPack READ = new ReadPack();
  private static final Words WORDS = Words.english();
  private static final List<String> SNIPPETS =
      List.of(
          "\n", " ", "  ", "\t", ":", ": ", "- ", "[", "]", "{", "}", "\"", "'", "#", "&a ", "*a",
          "!!x ", "|", ">", "%", "---\n", "...", "~", "null", "-1", "1e9", "0x10", "\u0000",
          "\u2028", "é", "![](", "](", "<b>", "| ", "## ", "```\n", "\\", "&#0;", "<!--", "]]>");

  @RepeatedTest(10)
  void neverCrashes(RepetitionInfo round) {
    Random random = new Random(round.getCurrentRepetition());
    IntStream.range(0, 200).forEach(i -> bend(random));
  }

  private static void bend(Random random) {
    String base = List.of("flat-on-rib", "two-cloths", GoodPack.NAME).get(random.nextInt(3));
    Map<String, byte[]> files = base.equals(GoodPack.NAME) ? GoodPack.files() : base(base);
    List<String> texts = files.keySet().stream().filter(each -> !each.endsWith(".png")).toList();
    String any = texts.get(random.nextInt(texts.size()));
    String file = random.nextBoolean() ? "pack.yaml" : any;
    String text = new String(files.getOrDefault(file, new byte[0]), StandardCharsets.UTF_8);
    int changes = 1 + random.nextInt(4);
    for (int i = 0; i < changes; i++) {
      text = bent(text, random);
    }
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    if (random.nextInt(10) == 0) {
      bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
    }
    files.put(file, bytes);
    Answer<LessonPack> answer = READ.read(new PackBytes(base, files));
    assertThat(answer.problems()).hasSizeLessThanOrEqualTo(PackLimits.PROBLEMS);
    for (Problem each : answer.problems()) {
      assertThat(WORDS.say(each)).doesNotContain("[problem.");
    }
    if (answer.isGood()) {
      assertThat(answer.value().plan().cellCount()).isPositive();
    }
  }

  private static Map<String, byte[]> base(String name) {
    try {
      return BrokenPacks.base(name);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String bent(String text, Random random) {
    int at = random.nextInt(text.length());
    int to = Math.min(text.length(), at + 1 + random.nextInt(random.nextBoolean() ? 3 : 200));
    String snippet = SNIPPETS.get(random.nextInt(SNIPPETS.size()));
    return switch (random.nextInt(5)) {
      case 0 -> text.substring(0, at) + text.substring(to) + " ";
      case 1 -> text.substring(0, at) + snippet + text.substring(at);
      case 2 -> text.substring(0, to) + text.substring(at, to) + text.substring(to);
      case 3 -> text.substring(0, at) + snippet + text.substring(to);
      default ->
          text.substring(0, at) + snippet.repeat(1 + random.nextInt(50)) + text.substring(at);
    };
  }
}
