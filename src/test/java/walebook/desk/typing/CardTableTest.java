package walebook.desk.typing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.piece.LoadPieceRoom;
import walebook.act.piece.PieceField;
import walebook.book.Classroom;
import walebook.tables.SharedTables;
import walebook.words.Words;

/** The words of short lists are whole in their cells, whatever the size of the letters. */
class CardTableTest {
  /**
   * What cell and field keep free at the sides by the look's sheet, the focused border of two dots
   * each side in the smallest letters, and what rounding to whole dots takes, in heights of text.
   */
  private static final double AROUND = 0.6 + 0.8 + 0.27 + 0.15;

  private static final float SIZE = 100;

  @TempDir Path folder;

  /** In a window of 1280 dots at 110 % a plan's usual columns stand beside each other whole. */
  @Test
  void whatWentFirstStandsInViewBesideTheMeasures() {
    List<PieceField> usual =
        List.of(
            PieceField.GAUGE,
            PieceField.EDGE_BEFORE,
            PieceField.EDGE_SEWN,
            PieceField.EDGE_PRESSED,
            PieceField.END,
            PieceField.END_LENGTH,
            PieceField.BROKE);
    double ems =
        CardTable.STUDENT_EMS
            + CardTable.CODE_EMS
            + CardTable.STATE_EMS
            + usual.stream().mapToDouble(CardTable::ems).sum();
    // Read off a screenshot: 1019 dots between the table's edge and the bar, letters of 16.5.
    assertThat(ems).isLessThan(1019 / 16.5);
  }

  @Test
  void everyChoiceOfAShortListIsWholeInItsCell() throws Exception {
    Font font;
    try (InputStream file =
        CardTable.class.getResourceAsStream(
            "/walebook/desk/fonts/AtkinsonHyperlegibleNext_400Regular.ttf")) {
      font = Font.createFont(Font.TRUETYPE_FONT, Objects.requireNonNull(file)).deriveFont(SIZE);
    }
    FontRenderContext fine = new FontRenderContext(null, true, true);
    Words words = Words.english();
    Set<String> shortWords =
        words.all().entrySet().stream()
            .filter(each -> each.getKey().startsWith("desk.typing.choice."))
            .map(each -> each.getValue())
            .collect(Collectors.toSet());
    List<String> cut = new ArrayList<>();
    int measured = 0;
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      CardChoices choices =
          new CardChoices(
              words, LoadPieceRoom.of(room.book, SharedTables.read(), room.schoolClass.id()));
      for (PieceField field : PieceField.values()) {
        List<String> all = choices.all(field);
        if (!shortWords.containsAll(all)) {
          continue;
        }
        for (String each : all) {
          measured++;
          double ems = font.getStringBounds(each, fine).getWidth() / SIZE + AROUND;
          if (ems > CardTable.ems(field)) {
            cut.add(field + ": " + each + " takes " + ems);
          }
        }
      }
    }
    assertThat(measured).isGreaterThan(20);
    assertThat(cut).isEmpty();
  }
}
