package walebook.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PieceCodeTest {
  private static final int DRAWN = 2000;

  @Test
  void noSignIsOneThatIsMistakenForAnother() {
    Random random = new Random(1);
    for (int i = 0; i < DRAWN; i++) {
      assertThat(PieceCode.draw(random)).hasSize(6).doesNotContainPattern("[IO01B8S5Z2a-z]");
    }
  }

  @Test
  void anyOneWrongSignIsNoticed() {
    Random random = new Random(2);
    for (int i = 0; i < DRAWN; i++) {
      String code = PieceCode.draw(random);
      int at = random.nextInt(6);
      for (char sign : PieceCode.SIGNS.toCharArray()) {
        String other = code.substring(0, at) + sign + code.substring(at + 1);
        assertThat(PieceCode.isCode(other)).as(other).isEqualTo(other.equals(code));
      }
    }
  }

  @Test
  void anyTwoSwappedSignsAreNoticed() {
    Random random = new Random(3);
    for (int i = 0; i < DRAWN; i++) {
      char[] signs = PieceCode.draw(random).toCharArray();
      int one = random.nextInt(6);
      int two = random.nextInt(6);
      char kept = signs[one];
      boolean same = signs[one] == signs[two];
      signs[one] = signs[two];
      signs[two] = kept;
      // The check sign weighs one, the others two to six: swapped with it, the sums still differ.
      assertThat(PieceCode.isCode(new String(signs))).as(new String(signs)).isEqualTo(same);
    }
  }

  @Test
  void aMistypedCodeLeadsBackToTheOneThatWasMeant() {
    Random random = new Random(5);
    for (int i = 0; i < 200; i++) {
      String code = PieceCode.draw(random);
      int at = random.nextInt(6);
      // 0 is no sign of a code, so that this text is never one.
      String wrong = code.substring(0, at) + "0" + code.substring(at + 1);
      assertThat(PieceCode.near(wrong)).contains(code).allMatch(PieceCode::isCode);
      assertThat(PieceCode.near(code)).isEmpty();
    }
  }

  @Test
  void spokenAndTypedBackItIsTheSame() {
    String code = PieceCode.draw(new Random(4));
    assertThat(PieceCode.read(" " + PieceCode.spoken(code).toLowerCase(java.util.Locale.ROOT)))
        .isEqualTo(code);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "AAA", "AAAAAAA", "IO01B8", "ÄÖÜ", "ACE-FG"})
  void whatIsNoCodeIsNotRead(String typed) {
    assertThat(PieceCode.read(typed)).isNull();
  }
}
