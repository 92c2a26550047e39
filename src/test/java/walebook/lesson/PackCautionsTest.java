package walebook.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import walebook.record.Pull;

/** A pack that mentions a tool or a hazard carries its caution; common practice in workrooms. */
class PackCautionsTest {
  /** What a pack's steps, materials and plan may mention, and the caution that is then due. */
  private static final Map<String, Pattern> HAZARDS =
      Map.ofEntries(
          Map.entry("iron", words("irons?|steam(ed|ing)?|[Pp]ress(ed)? (it|under|the)|pressed")),
          Map.entry("fusible", words("fusible|fused?")),
          Map.entry("twin-needle", words("twin needles?|twin-stretch")),
          Map.entry("needle-change", words("needles? Nm|[a-z]+ needle, Nm|unplugs? it|needle in")),
          Map.entry("overlocker-knife", words("knife|knives|machine=overlocker")),
          Map.entry("latex", words("clear elastic|elastic bands?|rubber elastic")),
          Map.entry("tight-garment", words("close(ly)?[- ]fit(ting|s)?|try on|leggings")),
          Map.entry("small-parts", words("motifs?|buttons?|beads?")),
          Map.entry("child-neckline", words("over a head of")),
          Map.entry("nightwear", words("nightwear|pyjamas?|nightdress(es)?|pattern texts?")),
          // A cut that is a noun's adjective, such as a cut edge, is nothing that a hand does.
          Map.entry(
              "scissors",
              words(
                  "shears|scissors|rotary|cutters?|cutting|cut(?!"
                      + " (edges?|lengths?|width|girth|loops?|through|anew|sizes?|the elas))")));

  /** What a caution about cutting says where cloth is cut in the lesson itself, by any tool. */
  private static final Pattern CUTS_CLOTH = words("cut, mark|find the columns and cut|and cut");

  static Stream<LessonPack> packs() {
    return Packs.all().stream();
  }

  private static Pattern words(String words) {
    return Pattern.compile("\\b(" + words + ")\\b", Pattern.CASE_INSENSITIVE);
  }

  private static Map<String, String> cautions(LessonPack pack) {
    Map<String, String> cautions = new HashMap<>();
    pack.teaching().cautions().forEach(each -> cautions.put(each.key(), each.says()));
    return cautions;
  }

  private static String mentioned(LessonPack pack) {
    return Packs.words(pack)
        + " "
        + pack.needs()
        + " "
        + pack.plan()
        + " "
        + pack.teaching().steps();
  }

  @ParameterizedTest
  @MethodSource("packs")
  void aToolThatIsMentionedIsCautionedAbout(LessonPack pack) {
    String said = mentioned(pack);
    Set<String> due = new HashSet<>();
    HAZARDS.forEach(
        (caution, mention) -> {
          if (mention.matcher(said).find()) {
            due.add(caution);
          }
        });
    assertThat(cautions(pack).keySet()).as(pack.about().name()).containsAll(due);
  }

  @ParameterizedTest
  @MethodSource("packs")
  void whatIsSewnOrPulledIsCautionedAbout(LessonPack pack) {
    Set<String> keys = cautions(pack).keySet();
    if (pack.plan() instanceof PiecesPlan plan) {
      assertThat(keys).contains("needle-change", "needles-and-pins", "hair-and-cuffs");
      Set<String> values = new HashSet<>(plan.fixed().values().values());
      values.addAll(plan.control().values().values());
      plan.factors().forEach(each -> values.addAll(each.levels()));
      assertThat(keys.contains("overlocker-knife")).isEqualTo(values.contains("overlocker"));
      assertThat(keys.contains("twin-needle")).isEqualTo(values.contains("twin-stretch"));
      if (pack.measure().pull() == Pull.FIRM) {
        assertThat(keys).contains("snapping-thread");
      }
    } else {
      assertThat(keys).contains("elastic-snap");
    }
  }

  @ParameterizedTest
  @MethodSource("packs")
  void whereClothIsCutInTheLessonTheRotaryCutterIsSpokenOfToo(LessonPack pack) {
    boolean overlocker = cautions(pack).containsKey("overlocker-knife");
    boolean cuts =
        pack.teaching().steps().stream().anyMatch(e -> CUTS_CLOTH.matcher(e.heading()).find());
    // On the overlocker strips come cut, and what is cut by hand is the chain of threads.
    if (cuts && !overlocker) {
      assertThat(cautions(pack).get("scissors"))
          .as(pack.about().name())
          .contains("losed", "rotary cutter", "away from you", "ruler's edge", "guard");
    }
  }

  /** A hazard that no pack ever mentions would be a line of this test that cannot fail. */
  @Test
  void everyHazardIsMentionedSomewhere() {
    HAZARDS.forEach(
        (caution, mention) ->
            assertThat(Packs.all())
                .as(caution)
                .anyMatch(each -> mention.matcher(mentioned(each)).find()));
  }
}
