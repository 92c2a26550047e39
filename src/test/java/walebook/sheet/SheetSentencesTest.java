package walebook.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import walebook.compare.Factor;
import walebook.record.Broke;
import walebook.record.FaultPlace;
import walebook.record.FaultWhen;
import walebook.record.Fold;
import walebook.record.Grain;
import walebook.record.Keyed;
import walebook.record.MachineKind;
import walebook.record.Method;
import walebook.record.NeedlePoint;
import walebook.record.PieceOutcome;
import walebook.record.Pull;
import walebook.record.SeamEnd;
import walebook.record.Step;
import walebook.words.Words;

/** The bundle of this room against its code: nothing missing, nothing left over. */
class SheetSentencesTest {
  private static final Pattern LITERAL =
      Pattern.compile("(?<!Problem\\.refuse\\()(?<!refuse\\()\"(sheet\\.[a-z][a-z.-]*)\"");
  private static final Map<String, Keyed[]> CHOICES =
      Map.of(
          "sheet.grain.", Grain.values(),
          "sheet.end.", SeamEnd.values(),
          "sheet.factor.", Factor.values(),
          "sheet.how.", Origin.values(),
          "sheet.source.", Origin.values());

  @Test
  void theBundleIsWhatTheCodeSays() throws IOException {
    Set<String> used = new TreeSet<>();
    for (Path room : List.of(Path.of("sheet"), Path.of("act", "classroom"))) {
      try (Stream<Path> files = Files.walk(Path.of("src/main/java/walebook").resolve(room))) {
        for (Path file : files.filter(Files::isRegularFile).toList()) {
          Matcher literal = LITERAL.matcher(Files.readString(file));
          while (literal.find()) {
            used.add(literal.group(1));
          }
        }
      }
    }
    CHOICES.forEach(
        (prefix, choices) -> {
          assertThat(used.remove(prefix)).as(prefix).isTrue();
          for (Keyed each : choices) {
            used.add(prefix + each.key());
          }
        });
    used.removeIf(key -> Words.english().has("problem." + key));
    Set<String> kept = new TreeSet<>(Words.english().all().keySet());
    kept.removeIf(key -> !key.startsWith("sheet."));
    assertThat(kept).isEqualTo(used).hasSizeGreaterThan(200);
  }

  @Test
  void everyChoiceHasItsWords() {
    List<Keyed[]> choices =
        List.of(
            Method.values(),
            MachineKind.values(),
            NeedlePoint.values(),
            Step.values(),
            Broke.values(),
            PieceOutcome.values(),
            FaultPlace.values(),
            FaultWhen.values(),
            Fold.values(),
            Pull.values());
    for (Keyed[] each : choices) {
      for (Keyed choice : each) {
        assertThat(Words.english().has("common.choice." + choice.key())).as(choice.key()).isTrue();
      }
    }
  }
}
