package walebook.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.words.Words;

/** One mistake at a time put into a good pack: where it is said to be, and as what. */
class BrokenPackTest {
  private static final ReadPack READ = new ReadPack();
  private static final Words WORDS = Words.english();

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\'',
      textBlock =
          """
          'format: 1\\nname' | 'format: 2\\nname' | format | 1 | 9 | format | '1'
          'format: 1\\nname' | 'format: one\\nname' | want-whole-number | 1 | 9 | format |
          'format: 1\\nname' | 'name' | field-missing | 1 | 1 | format | 'format'
          'name: seam-that-stretches' | 'name: seam-that-strains' | name-folder | 2 | 7 | name | 'seam-that-stretches'
          'name: seam-that-stretches' | 'nmae: seam-that-stretches' | field-unknown-near | 2 | 1 | nmae | 'name'
          'version: "1.0"' | 'version: 1.5' | want-text | 3 | 10 | version | '"1.0"'
          'version: "1.0"' | 'version: "first"' | pattern | 3 | 10 | version | '"1.0"'
          'title: A seam that stretches' | 'title: ""' | text-empty | 4 | 8 | title |
          'minutes: 150' | 'minutes: 1500' | too-large | 8 | 10 | minutes | '600'
          'minutes: 150' | 'minutes: 151' | minutes-sum | 8 | 10 | minutes | '150'
          'minutes: 150' | 'minutes: -150' | too-small | 8 | 10 | minutes | '5'
          'minutes: 150' | 'minutes: 2.5 h' | number-unit | 8 | 10 | minutes |
          'minutes: 150' | 'minutes: 150\\nmood: calm' | field-unknown | 9 | 1 | mood |
          'heading: Sew your own pieces' | 'heading: Sew your own piece' | step-unknown-near | 19 | 14 | steps[4].heading | 'Sew your own pieces'
          'heading: Sew your own pieces' | 'headign: Sew your own pieces' | field-unknown-near | 19 | 5 | steps[4].headign | 'heading'
          '    minutes: 35' | '    minutes: many' | want-whole-number | 20 | 14 | steps[4].minutes |
          'count: 8' | 'count: 0' | not-above | 38 | 12 | materials[0].count | '0'
          'cloth: b\\n    along' | 'cloth: c\\n    along' | slot-unknown | 45 | 12 | materials[1].cloth | 'a, b'
          'grain: course\\n  - what: Strips' | 'grain: corse\\n  - what: Strips' | choice-near | 42 | 12 | materials[0].grain | 'course'
          '- key: iron' | '- key: hair-and-cuffs' | key-twice | 80 | 10 | cautions[5].key |
          '- key: iron' | '- key: Hot Iron' | pattern | 74 | 10 | cautions[2].key | 'hot-iron'
          'log: [cloth, grain' | 'log: [cloth, gain' | choice-near | 91 | 14 | log[1] | 'grain'
          'log: [cloth, grain' | 'log: [cloth, cloth, grain' | list-repeats | 91 | 6 | log |
          'log: [cloth, grain' | 'log: [cloth, weather, grain' | choice | 91 | 14 | log[1] |
          'gauge_mm: 100' | 'gauge_mm: 10 cm' | number-unit | 94 | 13 | measure.gauge_mm |
          'gauge_mm: 100' | 'gauge_mm: 1' | too-small | 94 | 13 | measure.gauge_mm | '10'
          'gauge_mm: 100' | 'gauge: 100' | field-unknown-near | 94 | 3 | measure.gauge | 'gauge_mm'
          'pull: firm' | 'pull: load' | field-missing | 93 | 1 | measure.load_g | 'load_g'
          'pull: firm' | 'pull: hard' | choice | 99 | 9 | measure.pull | 'comfortable, firm, load'
          'kind: pieces' | 'kind: peices' | choice-near | 102 | 9 | plan.kind | 'pieces'
          '    - slot: b' | '    - slot: a' | slot-twice | 107 | 13 | plan.cloths[1].slot |
          '    layers: 2\\n' | '' | field-missing | 109 | 3 | plan.fixed.layers | 'layers'
          '    layers: 2\\n' | '    layers: 2.5\\n' | want-whole-number | 111 | 13 | plan.fixed.layers |
          'stitch_type: "304"' | 'stitch_type: 304' | want-text | 114 | 18 | plan.fixed.stitch_type | '"304"'
          'stitch_type: "304"' | 'stitch_type: zigzag' | pattern | 114 | 18 | plan.fixed.stitch_type | '"304"'
          'needle_point: stretch' | 'needle_point: strech' | choice-near | 115 | 19 | plan.fixed.needle_point | 'stretch'
          '    needle_nm: 75\\n' | '' | field-missing | 109 | 3 | plan.fixed.needle_nm | 'needle_nm'
          'needle_nm: 75' | 'needle_nm: 750' | too-large | 116 | 16 | plan.fixed.needle_nm | '200'
          'need_percent: cloth' | 'need_percent: clotth' | choice-near | 117 | 19 | plan.fixed.need_percent | 'cloth'
          'need_percent: cloth' | 'need_percent: 900' | too-large | 117 | 19 | plan.fixed.need_percent | '400'
          '    cloth: a\\n    stitch' | '    cloth: z\\n    stitch' | slot-unknown | 119 | 12 | plan.control.cloth | 'a, b'
          '    cloth: a\\n    stitch' | '    stitch' | field-missing | 118 | 3 | plan.control.cloth | 'cloth'
          'levels: [a, b]' | 'levels: [a]' | list-short | 126 | 15 | plan.factors[0].levels | '2'
          'levels: [a, b]' | 'levels: [a, d]' | slot-unknown | 126 | 19 | plan.factors[0].levels[1] | 'a, b'
          'levels: [1, 2, 3]' | 'levels: [1, 2, wide]' | want-number | 129 | 22 | plan.factors[1].levels[2] |
          'levels: [1, 2, 3]' | 'levels: [1, 2, 2.0]' | list-repeats | 129 | 15 | plan.factors[1].levels |
          'levels: [1, 2, 3]' | 'levels: 1 to 3' | want-list | 129 | 15 | plan.factors[1].levels |
          '- key: width' | '- key: lenght' | choice-near | 127 | 12 | plan.factors[1].key | 'length'
          'core:\\n      cells: 2' | 'core:\\n      cells: 13' | too-large | 135 | 14 | plan.tiers.core.cells | '12'
          'check: edge_change_at_most' | 'check: edge_changes_at_most' | choice-near | 148 | 12 | success[1].check | 'edge_change_at_most'
          'fault: ladders\\n' | 'fault: needle-holes\\n' | key-twice | 177 | 12 | trouble[7].fault |
          """)
  void isSaidWhereItStands(
      String was, String now, String code, int line, int column, String field, String wanted) {
    String yaml = GoodPack.text("pack.yaml");
    String from = was.replace("\\n", "\n");
    assertThat(yaml).contains(from);
    String broken = yaml.replaceFirst(Pattern.quote(from), matcher(now));
    Answer<LessonPack> answer = READ.read(GoodPack.with("pack.yaml", broken));
    List<Problem> problems = answer.problems();
    assertThat(problems).as(problems.toString()).hasSizeBetween(1, 4);
    List<Problem> meant =
        problems.stream().filter(each -> each.code().equals("pack." + code)).toList();
    assertThat(meant).as(problems.toString()).isNotEmpty();
    Problem problem = meant.get(0);
    assertThat(problem.place())
        .isEqualTo(
            new Place.Spot(
                "seam-that-stretches/pack.yaml", line, column, field == null ? "" : field));
    if (wanted != null) {
      assertThat(problem.wanted()).isEqualTo(wanted);
    }
    assertThat(answer.isGood()).isFalse();
    assertThat(WORDS.say(problem)).doesNotContain("[problem.", "{0}", "{1}");
  }

  private static String matcher(String now) {
    return Matcher.quoteReplacement(now.replace("\\n", "\n"));
  }
}
