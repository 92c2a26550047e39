package walebook.act.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import walebook.compare.Comparison;
import walebook.compare.Factor;
import walebook.words.Words;

/** One wording for settings, wherever they are read. */
class SettingWordsTest {
  private final SettingWords settings = new SettingWords(Words.english());

  @Test
  void levelsReadAsTheFieldCallsThem() {
    assertThat(
            settings.setting(
                List.of(Factor.CLOTH, Factor.GRAIN, Factor.STITCH, Factor.WIDTH, Factor.PRESSURE),
                List.of("Gull jersey", "course", "zigzag", "2.5", "lower")))
        .isEqualTo("Gull jersey · course-wise · zigzag · width 2.5 · pressure lower");
    assertThat(settings.level(Factor.NEEDLE, "twin-stretch 75"))
        .isEqualTo("needle twin, stretch 75");
  }

  @Test
  void whatIsNotNotedIsLeftOut() {
    List<Factor> two = List.of(Factor.STITCH, Factor.FEED);
    assertThat(settings.setting(two, List.of("zigzag", ""))).isEqualTo("zigzag");
    assertThat(settings.setting(two, List.of("", ""))).isEqualTo("not noted");
    assertThat(settings.setting(List.of(), List.of())).isEqualTo("all pieces");
    assertThat(settings.value(Factor.FEED, "")).isEqualTo("–");
  }

  /** A seam has no hem method: nobody forgot to note it. Of a width it cannot be told. */
  @Test
  void whatThereIsNotIsNotCalledMissing() {
    assertThat(settings.setting(List.of(Factor.WIDTH), List.of(""))).isEqualTo("no width noted");
    assertThat(settings.level(Factor.HEM_METHOD, "")).isEqualTo("no hem method");
    assertThat(settings.level(Factor.STABILISER, "")).isEqualTo("no stabiliser");
    assertThat(settings.level(Factor.FEED, "")).isEqualTo("no differential feed");
    assertThat(settings.level(Factor.NEEDLE, "")).isEqualTo("needle not noted");
  }

  /** A needle's point, a pull and a place have these words too. */
  @Test
  void namesThatPeopleGaveStandAsTheyAre() {
    assertThat(settings.level(Factor.CLOTH, "jersey")).isEqualTo("jersey");
    assertThat(settings.level(Factor.STUDENT, "start")).isEqualTo("start");
    assertThat(settings.level(Factor.HEM_METHOD, "folded")).isEqualTo("folded");
  }

  @Test
  void longLevelsAreCutForAPlotAndWhatIsAlikeStandsInOneLine() {
    assertThat(settings.brief(List.of(Factor.STITCH), List.of("coverstitch without top cover"), 10))
        .isEqualTo("coverstit…");
    assertThat(
            settings.same(
                List.of(
                    new Comparison.FixedLevel(Factor.GRAIN, "wale"),
                    new Comparison.FixedLevel(Factor.LENGTH, "2.5"))))
        .isEqualTo("wale-wise · length 2.5");
  }
}
