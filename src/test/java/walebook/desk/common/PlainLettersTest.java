package walebook.desk.common;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is taken apart is Unicode's canonical decomposition; the rest are the usual spellings. */
class PlainLettersTest {
  @ParameterizedTest
  @CsvSource({
    "Çağla, cagla",
    "Håkon, hakon",
    "' Iğdır ', igdir",
    "İpek, ipek",
    "Søren Łącki, soren lacki",
    "Weißæœ, weissaeoe",
    "Zoe\u0308, zoe",
    "Ада, ада"
  })
  void aNameIsSpeltWithoutItsMarks(String name, String plain) {
    assertThat(PlainLetters.of(name)).isEqualTo(plain);
  }
}
