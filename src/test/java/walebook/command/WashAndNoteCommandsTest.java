package walebook.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** Washes and notes, at the command line. */
@SuppressWarnings("NullAway.Init")
class WashAndNoteCommandsTest {
  @TempDir Path folder;
  private OnePiece one;

  @BeforeEach
  void makeBook() {
    one = OnePiece.in(folder);
  }

  private Ran run(String... args) {
    return one.run(args);
  }

  private Ran wash(String... more) {
    List<String> all = new ArrayList<>(List.of("cloth", "wash", "--cloth", "Grey"));
    all.addAll(List.of(more));
    return run(all.toArray(new String[0]));
  }

  @Test
  void aWashIsLoggedWithItsWorkingAndListed() {
    Ran logged = wash("--grain", "wale", "--before", "500", "--after", "480", "--wash", "40 °C");
    assertThat(logged.err()).isEmpty();
    // ISO 5077, its formula: 100 (480 − 500) ÷ 500.
    assertThat(logged.out()).contains("−4.0 %").contains("480").contains("ISO 5077");
    JsonNode json =
        wash("--grain", "course", "--before", "50cm", "--after", "49 cm", "--json").json();
    assertThat(json.get("changePercent").asDouble()).isCloseTo(-2, within(1e-9));
    assertThat(json.get("working").get("name").asString()).isEqualTo("wash-change");
    Ran list = run("cloth", "washes", "--cloth", "Grey");
    assertThat(list.out()).contains("wale").contains("course").contains("40 °C");
    JsonNode listed = run("cloth", "washes", "--cloth", "Grey", "--json").json();
    assertThat(listed.get("washes").size()).isEqualTo(2);
    assertThat(listed.get("means").get(0).get("changePercent").asDouble())
        .isCloseTo(-4, within(1e-9));
    String key = listed.get("washes").get(0).get("key").asString();
    assertThat(run("bin", "put", key, "--kind", "wash").exit()).isZero();
    assertThat(run("cloth", "washes", "--cloth", "Grey", "--json").json().get("washes").size())
        .isEqualTo(1);
    run("book", "undo");
    assertThat(run("cloth", "washes", "--cloth", "Grey", "--json").json().get("washes").size())
        .isEqualTo(2);
  }

  @Test
  void whatIsUnlikelyWantsToBeSure() {
    Ran asked = wash("--grain", "wale", "--before", "500", "--after", "300");
    assertThat(asked.exit()).isEqualTo(Exit.REFUSED.code());
    assertThat(asked.err()).contains("300").contains("40.0 %");
    assertThat(wash("--grain", "wale", "--before", "500", "--after", "300", "--sure").exit())
        .isZero();
    Ran bias = wash("--grain", "bias", "--before", "500", "--after", "490");
    assertThat(bias.err()).contains("bias").contains("wale, course");
    assertThat(run("cloth", "washes", "--cloth", "Brown").exit()).isEqualTo(Exit.REFUSED.code());
  }

  @Test
  void notesAreAddedAndListed() {
    assertThat(run("note", "list", "--piece", one.code()).out()).contains("Nothing is noted");
    Ran added =
        run("note", "add", "--piece", one.code(), "--says", "Fed slowly", "--by", "Ada Pier");
    assertThat(added.err()).isEmpty();
    assertThat(run("note", "list", "--piece", one.code()).out())
        .contains("Fed slowly")
        .contains("Ada Pier");
    assertThat(run("note", "list", "--piece", one.code(), "--aliases").out())
        .contains("S01")
        .doesNotContain("Ada");
    run("note", "add", "--cloth", "Grey", "--says", "Curls");
    run("note", "add", "--student", "Bo", "--says", "Left-handed");
    JsonNode notes = run("note", "list", "--student", "Bo", "--json").json();
    assertThat(notes.size()).isEqualTo(1);
    assertThat(notes.get(0).get("says").asString()).isEqualTo("Left-handed");
    String key = notes.get(0).get("key").asString();
    assertThat(run("bin", "put", key, "--kind", "note").exit()).isZero();
    assertThat(run("note", "list", "--student", "Bo", "--json").json().size()).isZero();
  }

  @Test
  void aNoteNeedsOneThingAndWords() {
    assertThat(run("note", "add", "--says", "x").err()).contains("piece, cloth, lesson, student");
    assertThat(run("note", "add", "--cloth", "Grey", "--piece", one.code(), "--says", "x").exit())
        .isEqualTo(Exit.REFUSED.code());
    assertThat(run("note", "add", "--cloth", "Grey", "--says", "  ").err()).contains("needed");
    assertThat(run("note", "list", "--piece", "ZZZ").exit()).isEqualTo(Exit.REFUSED.code());
  }
}
