package walebook.desk.common;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.text.Font;
import javafx.scene.text.Text;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;

@ExtendWith(ApplicationExtension.class)
class BrokenLinesTest {
  private static final Font FONT = Font.font(15);
  private static final double WIDE = 150;

  @Test
  void plainTextIsLeftToTheToolkit() {
    String plain = "Çağla’s Łódka – 5 % × 2 … at −3 → and on and on and on and on";
    assertThat(BrokenLines.of(plain, FONT, WIDE)).isEqualTo(plain);
  }

  @Test
  void shapedLettersAreBrokenAtBlanksAndNoLineIsTooWide() {
    for (String text :
        new String[] {
          "שמלה ארוכה מאוד לשיעור של יום שני בערב באולם הנמל הישן",
          "قماش مطاطي طويل الاسم جدا لدرس مساء الاثنين في قاعة الميناء",
          "🧵 of the sewing room with many signs 🪡 on it"
        }) {
      String broken = BrokenLines.of(text, FONT, WIDE);
      assertThat(broken.lines().count()).isGreaterThan(1);
      assertThat(broken.replace('\n', ' ')).isEqualTo(text);
      broken
          .lines()
          .forEach(
              line -> {
                Text measured = new Text(line);
                measured.setFont(FONT);
                assertThat(measured.getLayoutBounds().getWidth()).isLessThanOrEqualTo(WIDE);
              });
    }
  }
}
