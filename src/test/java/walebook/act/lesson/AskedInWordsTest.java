package walebook.act.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import walebook.record.Grain;
import walebook.record.MachineKind;
import walebook.record.Method;
import walebook.record.Needle;
import walebook.record.NeedlePoint;
import walebook.record.PieceAsked;
import walebook.tables.SharedTables;
import walebook.words.Words;

class AskedInWordsTest {
  private final PieceAsked straight = asked("301", null, NeedlePoint.JERSEY, "");
  private final PieceAsked zigzag = asked("304", 2.0, NeedlePoint.JERSEY, "");

  private static PieceAsked asked(
      String stitch, @Nullable Double width, NeedlePoint point, String stabiliser) {
    return new PieceAsked(
        Grain.COURSE,
        2,
        Method.SEAM,
        MachineKind.SEWING,
        stitch,
        width,
        2.5,
        new Needle(point, 75),
        "",
        stabiliser,
        null,
        1);
  }

  private static String says(PieceAsked one, PieceAsked... others) {
    List<PieceAsked> all = new java.util.ArrayList<>(List.of(others));
    all.add(one);
    return new AskedInWords(Words.english(), SharedTables.read().stitchTypes(), all).says(one);
  }

  @Test
  void stitchWidthAndLengthAlwaysStandThere() {
    assertThat(says(zigzag)).isEqualTo("zigzag · width 2 · length 2.5");
    assertThat(says(straight, zigzag)).isEqualTo("straight stitch (lockstitch) · length 2.5");
  }

  @Test
  void whatAPlanComparesStandsThereTooAndWhatIsTheSameDoesNot() {
    PieceAsked stretch = asked("304", 2.0, NeedlePoint.STRETCH, "");
    assertThat(says(stretch, zigzag)).endsWith(" · stretch needle, Nm 75");
    PieceAsked taped = asked("304", 2.0, NeedlePoint.JERSEY, "knit tape");
    assertThat(says(taped, zigzag)).endsWith("length 2.5 · knit tape");
    assertThat(says(zigzag, taped)).endsWith("length 2.5 · nothing under it");
    PieceAsked bare = asked("304", 2.0, NeedlePoint.JERSEY, "none");
    assertThat(says(bare, taped)).endsWith("length 2.5 · nothing under it");
    assertThat(says(bare, zigzag)).endsWith("length 2.5");
  }
}
