package walebook.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class NearMissTest {
  /**
   * Kitten to sitting is 3 and Saturday to Sunday 3, the usual worked examples (Wagner and Fischer
   * 1974 and after; from memory); a swap of neighbours counts 1 (Damerau 1964).
   */
  @Test
  void slipsAreCountedAsPublished() {
    assertThat(NearMiss.slips("kitten", "sitting")).isEqualTo(3);
    assertThat(NearMiss.slips("saturday", "sunday")).isEqualTo(3);
    assertThat(NearMiss.slips("ca", "ac")).isEqualTo(1);
    assertThat(NearMiss.slips("ca", "abc")).isEqualTo(3);
    assertThat(NearMiss.slips("", "abc")).isEqualTo(3);
  }

  @Test
  void theNearestIsMeantOrNone() {
    List<String> known = List.of("width", "length", "needle_nm");
    assertThat(NearMiss.of("widht", known)).isEqualTo("width");
    assertThat(NearMiss.of("Needle-NM", known)).isEqualTo("needle_nm");
    assertThat(NearMiss.of("colour", known)).isNull();
    assertThat(NearMiss.of("x".repeat(10_000), known)).isNull();
  }
}
