package walebook.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import walebook.compare.Factor;
import walebook.words.Words;

class SettingLabelTest {
  private static String of(List<Factor> factors, String... levels) {
    return new SettingLabel(factors, new Choices(Words.english())).of(List.of(levels));
  }

  /** As on the screen: numbers say what they are the number of, what is not noted is left out. */
  @Test
  void aSettingReadsAsOnTheScreen() {
    assertThat(
            of(
                List.of(Factor.GRAIN, Factor.STITCH, Factor.WIDTH, Factor.LENGTH, Factor.FEED),
                "course",
                "zigzag",
                "2.5",
                "1.5",
                ""))
        .isEqualTo("course-wise · zigzag · width 2.5 · length 1.5");
    assertThat(of(List.of(Factor.STITCH), "")).isEqualTo("not noted");
    assertThat(of(List.of())).isEqualTo("all pieces alike");
  }
}
