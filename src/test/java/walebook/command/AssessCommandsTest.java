package walebook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** For the assessor, at the command line. */
@SuppressWarnings("NullAway.Init")
class AssessCommandsTest {
  @TempDir Path folder;
  private OnePiece one;

  @BeforeEach
  void makeBook() {
    one = OnePiece.in(folder);
  }

  private Ran run(String... args) {
    List<String> all = new ArrayList<>(List.of(args));
    all.add(0, "assess");
    return one.run(all.toArray(new String[0]));
  }

  @Test
  void aTermFromTheListToWhatIsMissing() throws IOException {
    Path list = Files.writeString(folder.resolve("list.txt"), "1.1 Chooses\n1.2 Works safely\n");
    assertThat(run("criteria", "--list", list.toString(), "--add", "2 Tells why").exit()).isZero();
    assertThat(run("criteria", "--move", "2", "--to", "1", "--json").json().get(0).get("code"))
        .hasToString("\"2\"");
    assertThat(run("criteria", "--change", "2", "--code", "2.1").out()).contains("2.1  Tells why");
    assertThat(run("tag", "1.1", "--piece", one.code()).exit()).isZero();
    JsonNode missing = run("missing", "--json").json();
    // Three criteria and two students, none of them checked yet.
    assertThat(missing.get("missing")).hasSize(6);
    assertThat(missing.get("warning").asBoolean()).isFalse();
    JsonNode checked =
        run(
                "check",
                "--piece",
                one.code(),
                "--by",
                "tutor",
                "--performance-mark",
                "0",
                "--reasoning-mark",
                "3",
                "--help-given",
                "prompted",
                "--json")
            .json();
    assertThat(checked.get("tutor").get("reasoning").asInt()).isEqualTo(3);
    assertThat(checked.get("self").isNull()).isTrue();
    run("check", "--piece", one.code(), "--by", "tutor", "--finish-mark", "2");
    JsonNode marks = run("marks", "--json").json();
    assertThat(marks.get(0).get("standing").asString()).isEqualTo("reasoned");
    assertThat(marks.get(0).get("tutor").get("finish").asInt()).isEqualTo(2);
    assertThat(run("missing", "--on", "2026-12-10").out())
        .contains("Two weeks’ warning", ": 5.", "Bo Quay");
    assertThat(run("marks").out()).contains("– | 3", "passes in reasoning");
    var marked = run("criteria", "--change", "2.1", "--marks", "reasoning", "--json").json();
    assertThat(marked.get(0).get("marks").toString()).isEqualTo("[\"reasoning\"]");
    assertThat(run("criteria", "--change", "2.1", "--says", "Tells why").out())
        .contains("Tells why", "Record and reasoning", "All five");
    assertThat(run("criteria", "--change", "2.1", "--marks", "shine").exit()).isEqualTo(1);
    assertThat(run("criteria", "--remove", "1.1", "--json").json()).hasSize(2);
  }

  @Test
  void feedbackIsSaidAndKept() {
    Ran said = run("feedback", "--piece", one.code(), "--says", "Even feed.", "--keep", "--json");
    assertThat(said.json().get("feedback").get(0).get("on").asString()).isEqualTo("2026-10-05");
    assertThat(said.json().get("bank").get(0).asString()).isEqualTo("Even feed.");
    assertThat(run("feedback", "--piece", one.code(), "--drop", "Even feed.").out())
        .contains("2026-10-05  Even feed.")
        .doesNotContain("Bank");
  }

  @Test
  void whatIsWrongIsSaidAndNothingIsChanged() {
    assertThat(run("criteria").out()).contains("Nothing is asked for yet");
    run("criteria", "--add", "1 One");
    List<Ran> refused =
        List.of(
            run("criteria", "--add", "2 Two", "--remove", "9"),
            run("criteria", "--add", "1 Again"),
            run("criteria", "--move", "1", "--to", "7"),
            run("criteria", "--list", folder.resolve("none.txt").toString()),
            run("tag", "9", "--piece", one.code()),
            run("tag", "1"),
            run("check", "--piece", one.code(), "--by", "me"),
            run("check", "--piece", one.code(), "--by", "self", "--choice-mark", "5"),
            run("feedback", "--piece", one.code(), "--says", " "),
            run("missing", "--on", "soon"));
    assertThat(refused).allMatch(each -> each.exit() == 1 && !each.err().isBlank());
    assertThat(refused).allMatch(each -> !each.err().contains("["));
    assertThat(run("criteria", "--json").json()).hasSize(1);
    assertThat(run("marks").out()).contains("No piece was looked over");
    assertThat(run("missing", "--json").json().get("missing")).hasSize(2);
  }
}
