package walebook.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import walebook.Seeded;

/** Words made fit for a cell. */
class CellTextTest {

  @Test
  void whatAFileCannotHoldIsTakenOut() {
    assertThat(CellText.clean("a\u0000b\u001fc\u007fd\ud800e\ufffff")).isEqualTo("abcdef");
    assertThat(CellText.clean("a\tb\r\nc\rd")).isEqualTo("a\tb\nc\nd");
    assertThat(CellText.clean("🧵 نور 林")).isEqualTo("🧵 نور 林");
  }

  @Test
  void whatIsTooLongIsCutBetweenSigns() {
    String cut = CellText.clean("🧵".repeat(CellText.MOST));
    assertThat(cut).hasSizeLessThanOrEqualTo(CellText.MOST).endsWith("🧵…");
  }

  @Test
  void anyTextIsGoodXml() {
    Seeded.cases(
        11,
        random -> {
          StringBuilder text = new StringBuilder();
          random.ints(50, 0, 0x10000).forEach(sign -> text.append((char) sign));
          // XML 1.0, 2.2: #x9 | #xA | #xD | [#x20-#xD7FF] | [#xE000-#xFFFD] | [#x10000-#x10FFFF]
          assertThat(
                  CellText.clean(text.toString())
                      .codePoints()
                      .allMatch(
                          sign ->
                              sign == 9
                                  || sign == 10
                                  || (sign >= 0x20 && sign <= 0xD7FF)
                                  || (sign >= 0xE000 && sign <= 0xFFFD)
                                  || sign >= 0x10000))
              .isTrue();
        });
  }
}
