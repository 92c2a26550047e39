package walebook.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import walebook.record.Parent;

class ChangedTextTest {
  private static final UUID BEFORE = new UUID(0, 1);
  private static final Set<String> FIELDS =
      Set.of("stitch", "dial-width", "dial-length", "needle-point", "machine");

  private final ChangedText text = new ChangedText(HarbourClass.WORDS);

  private Parent read(String typed) {
    return text.read(BEFORE, typed, FIELDS);
  }

  @Test
  void settingsAreCalledAsInTheForm() {
    Parent two = Parent.of(BEFORE, List.of("dial-width", "needle-point"), "roller foot; slower");
    assertThat(text.says(two))
        .isEqualTo("stitch width; needle point; changed by hand: roller foot; slower");
    assertThat(text.says(Parent.of(BEFORE, List.of(), ""))).isEmpty();
  }

  @Test
  void wordsOfNoFormStayAsTheyAre() {
    assertThat(text.says(new Parent(BEFORE, "longer stitch, held lower")))
        .isEqualTo("longer stitch, held lower");
  }

  @Test
  void whatIsSaidIsReadBack() {
    for (String hand : List.of("", "roller foot; slower", "stitch, width")) {
      for (List<String> keys :
          List.of(List.<String>of(), List.of("stitch"), List.of("dial-width", "dial-length"))) {
        Parent parent = Parent.of(BEFORE, keys, hand);
        assertThat(read(text.says(parent))).isEqualTo(parent);
      }
    }
  }

  @Test
  void keysAndOtherHandsAreReadToo() {
    assertThat(read("dial-width needle-point").keys())
        .containsExactly("dial-width", "needle-point");
    assertThat(read("other-change: foot 5").byHand()).isEqualTo("foot 5");
    assertThat(read("Stitch width, Needle point").keys())
        .containsExactly("dial-width", "needle-point");
    assertThat(read("longer stitch, held lower"))
        .isEqualTo(Parent.of(BEFORE, List.of(), "longer stitch, held lower"));
  }
}
