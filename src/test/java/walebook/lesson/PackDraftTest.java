package walebook.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import walebook.record.Tier;
import walebook.words.Words;

/** A pack taken apart into fields and written again is the same pack; mistakes find their field. */
class PackDraftTest {
  private static final ReadPack READ = new ReadPack();

  private static PackDraft rib() throws IOException {
    return PackDraft.of(
        READ.read(new PackBytes("flat-on-rib", BrokenPacks.base("flat-on-rib"))).value());
  }

  @Test
  void everyBuiltInPackIsWrittenAsItWasRead() {
    for (PackSource each : BuiltInPacks.all()) {
      LessonPack pack = READ.read(each).value();
      PackDraft.Checked checked = PackDraft.of(pack).check(READ);
      assertThat(checked.told()).as(each.name()).isEmpty();
      LessonPack back = checked.pack().value();
      assertThat(withoutFiles(back)).isEqualTo(withoutFiles(pack));
      assertThat(back.files().pictures()).isEqualTo(pack.files().pictures());
      assertThat(back.files().lessonMd()).isEqualTo(pack.files().lessonMd());
      // And written once more it is the very same text.
      assertThat(PackDraft.of(back).yaml()).isEqualTo(PackDraft.of(pack).yaml());
    }
  }

  private static LessonPack withoutFiles(LessonPack pack) {
    PackFiles none = new PackFiles("0".repeat(64), "", "", List.of());
    return new LessonPack(
        pack.about(),
        pack.teaching(),
        pack.needs(),
        pack.log(),
        pack.measure(),
        pack.plan(),
        pack.success(),
        pack.text(),
        none);
  }

  @ParameterizedTest(name = "{0} = {1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "title | '' | title | field-missing",
        "name | Flat on rib | name | pattern",
        "plan.factors[0].levels[1] | long | plan.factors[0].levels[1] | want-number",
        "plan.factors[0].levels[4] | 1.5 | plan.factors[0].levels[0] | list-repeats",
        "plan.factors[3].key | lenght | plan.factors[3].key | choice-near",
        "plan.fixed.length | 2 | plan.factors[0].key | factor-fixed",
        "plan.fixed.layers | '' | plan.fixed.layers | field-missing",
        "plan.control.stabiliser | '' | | ",
        "plan.control.cloth | b | plan.control.cloth | slot-unknown",
        "plan.tiers.own.cells | 7 | plan.tiers.own.cells | tier-cells",
        "materials[1].count | many | materials[1].count | want-number",
        "materials[7].count | 2 | materials[7].what | field-missing",
        "success[0].check | '' | success[0].check | field-missing",
        "steps[1].minutes | '' | steps[1].minutes | field-missing",
        "steps[1].minutes | half | steps[1].minutes | want-whole-number",
        "cautions[0].says | '' | cautions[0].says | field-missing",
        "lesson | words alone | lesson | no-steps",
        "rest | aims: [ | rest | yaml-end",
        "rest | '' | rest | field-missing",
        "rest | 'title: again' | rest | yaml-twice"
      })
  void aMistakeIsToldAtItsField(String field, String text, String at, String code)
      throws IOException {
    PackDraft.Checked checked = rib().with(field, text).check(READ);
    if (code == null) {
      assertThat(checked.told()).isEmpty();
      return;
    }
    assertThat(checked.told())
        .as(checked.told().toString())
        .anyMatch(each -> each.field().equals(at) && each.problem().code().equals("pack." + code));
  }

  @ParameterizedTest(name = "{0} = {1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "plan.first.cloth | d | plan.first.cloth | slot-unknown",
        "plan.first.cloth | '' | plan.first.cloth | field-missing",
        "plan.first.grain | '' | plan.first.grain | field-missing",
        "plan.first.grain | corse | plan.first.grain | choice-near",
        "plan.tiers.own.cells | 3 | plan.tiers.own.cells | tier-cells"
      })
  void aMistakeInAControlOfReadingsIsToldAtItsField(
      String field, String text, String at, String code) {
    PackDraft draft = PackDraft.of(Packs.named("do-we-measure-alike"));
    assertThat(draft.with(field, text).check(READ).told())
        .as(draft.with(field, text).check(READ).told().toString())
        .anyMatch(each -> each.field().equals(at) && each.problem().code().equals("pack." + code));
  }

  @Test
  void aProblemOfTheRestIsToldAtItsLine() throws IOException {
    PackDraft draft = rib();
    String rest = draft.text(PackDraft.REST);
    int line = (int) rest.substring(0, rest.indexOf("gauge_mm: 100")).lines().count();
    PackDraft bent = draft.with(PackDraft.REST, rest.replace("gauge_mm: 100", "gauge_mm: 5"));
    assertThat(bent.check(READ).told())
        .singleElement()
        .satisfies(
            each -> {
              assertThat(each.field()).isEqualTo(PackDraft.REST);
              assertThat(each.line()).isEqualTo(line);
            });
  }

  @Test
  void aDecimalCommaIsUnderstood() throws IOException {
    PackDraft draft = rib().with("plan.factors[0].levels[0]", "1,25");
    PiecesPlan plan = (PiecesPlan) draft.check(READ).pack().value().plan();
    assertThat(plan.factors().get(0).levels()).startsWith("1.25");
  }

  @Test
  void theStepsFollowTheText() throws IOException {
    PackDraft draft = rib();
    String more = draft.text(PackDraft.LESSON) + "\n## Tidy up\n\nPut the strips away.\n";
    PackDraft longer = draft.with(PackDraft.LESSON, more).with("steps[3].minutes", "5");
    LessonPack pack = longer.check(READ).pack().value();
    assertThat(pack.about().minutes()).isEqualTo(65);
    assertThat(pack.teaching().steps().get(3).heading()).isEqualTo("Tidy up");
  }

  /** Five hundred drafts with anything typed anywhere: a pack or problems in words. */
  @Test
  void anythingMayBeTypedAnywhere() throws IOException {
    Random random = new Random(3);
    PackDraft draft = rib();
    List<String> fields = draft.typed().keySet().stream().sorted().toList();
    List<String> texts =
        List.of(
            "",
            " ",
            "0",
            "-1",
            "1e9",
            "yes",
            "null",
            "~",
            "a: b",
            "- x",
            "# x",
            "\"",
            "'",
            "[",
            "{",
            "&a",
            "*a",
            "!!x",
            "|",
            "\t",
            "99999999999999999999",
            "1,5",
            "é\u2028",
            "## x");
    Words words = Words.english();
    for (int i = 0; i < 500; i++) {
      PackDraft bent = draft;
      for (int change = random.nextInt(3); change >= 0; change--) {
        String field = fields.get(random.nextInt(fields.size()));
        bent = bent.with(field, texts.get(random.nextInt(texts.size())));
      }
      for (PackDraft.Told each : bent.check(READ).told()) {
        assertThat(words.say(each.problem())).doesNotContain("[problem.");
      }
    }
  }

  /** What is told of a plan in the making is what is told of it once it is made. */
  @Test
  void countsFollowTheFields() throws IOException {
    Map<Tier, Integer> students = Map.of(Tier.CORE, 2, Tier.STANDARD, 7, Tier.OWN, 3);
    for (PackSource each : BuiltInPacks.all()) {
      LessonPack pack = READ.read(each).value();
      assertThat(PackDraft.of(pack).counts(students))
          .isEqualTo(PlanCounts.of(pack.plan(), students));
    }
    PackDraft draft = rib().with("title", "").with("plan.factors[1].levels[2]", "tape");
    PlanCounts more = Objects.requireNonNull(draft.counts(students));
    assertThat(more.combinations()).isEqualTo(9);
    assertThat(draft.with("plan.tiers.core.cells", "some").counts(students)).isNull();
  }

  @Test
  void nothingTypedIsNoPackYetAndToldSo() {
    PackDraft.Checked empty = new PackDraft(Map.of(), List.of()).check(READ);
    assertThat(empty.pack().isGood()).isFalse();
    assertThat(empty.told()).extracting(PackDraft.Told::field).contains("title", "rest", "lesson");
  }
}
