package walebook.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Labels read back: each code by an independent reader, also from a bad copy. */
class LabelSheetTest {
  private static final LabelGrid SMALLEST = LabelGrid.free(PaperSize.A4, 6, 16, 0, 0, 0, 0.2);

  static Stream<LabelGrid> grids() {
    return Stream.concat(LabelGrid.COMMON.stream(), Stream.of(SMALLEST));
  }

  @ParameterizedTest
  @MethodSource("grids")
  void everyCodeIsReadFromThePageAndFromItsCopy(LabelGrid grid) throws IOException {
    List<PieceSlip> slips = Slips.of(grid.perSheet(), "Ada Pier", "zigzag, width 2.5, length 2");
    try (ReadPdf pdf = Slips.pdf(pages -> pages.labels(grid, slips, 1, ""))) {
      assertThat(pdf.pages()).isEqualTo(1);
      BufferedImage page = pdf.page(0);
      BufferedImage copy = ReadPdf.photocopy(page, 9);
      for (int i = 0; i < slips.size(); i++) {
        assertThat(read(page, grid, i, 1)).as("label " + i).isEqualTo(slips.get(i).code());
        assertThat(read(copy, grid, i, 0.98)).as("copy of " + i).isEqualTo(slips.get(i).code());
      }
    }
  }

  private static String read(BufferedImage page, LabelGrid grid, int i, double scale) {
    return String.valueOf(
        ReadPdf.code(page, grid.left(i), grid.top(i), grid.widthMm(), grid.heightMm(), scale));
  }

  @ParameterizedTest
  @MethodSource("grids")
  void nothingStandsOutsideItsLabelHoweverLong(LabelGrid grid) throws IOException {
    String who = "Maximiliane-Theodora von der Hafenstraße zu Wellenbrecher-Kaimauer";
    String settings =
        "three-step zigzag with a very long name, width 4.25, length 1.75; with cut-away"
            + " stabiliser of the heaviest kind; needle stretch 75; Rindfleischetikettierung"
            + "überwachungsaufgabenübertragung";
    List<PieceSlip> slips = Slips.of(grid.perSheet(), who, settings);
    try (ReadPdf pdf = Slips.pdf(pages -> pages.labels(grid, slips, 1, ""))) {
      List<double[]> letters = pdf.letters(0);
      assertThat(letters).hasSizeGreaterThan(grid.perSheet() * 20);
      for (double[] letter : letters) {
        assertThat(inOne(grid, letter)).as(java.util.Arrays.toString(letter)).isTrue();
      }
    }
  }

  private static boolean inOne(LabelGrid grid, double[] letter) {
    for (int i = 0; i < grid.perSheet(); i++) {
      boolean across =
          letter[0] >= grid.left(i) && letter[2] <= grid.left(i) + grid.widthMm() + 0.01;
      boolean down = letter[1] >= grid.top(i) && letter[3] <= grid.top(i) + grid.heightMm();
      if (across && down) {
        return true;
      }
    }
    return false;
  }

  @Test
  void startLeavesUsedLabelsFreeAndGoesOnOverPages() throws IOException {
    LabelGrid grid = LabelGrid.COMMON.get(0);
    List<PieceSlip> slips = Slips.of(20, "Ada Pier", "zigzag");
    try (ReadPdf pdf = Slips.pdf(pages -> pages.labels(grid, slips, 4, ""))) {
      assertThat(pdf.pages()).isEqualTo(2);
      double first = pdf.letters(0).stream().mapToDouble(each -> each[1]).min().orElse(0);
      assertThat(first).isGreaterThan(grid.top(3));
      assertThat(pdf.text(1)).contains(slips.get(18).spoken()).contains(slips.get(19).spoken());
      assertThat(pdf.text(1)).doesNotContain(slips.get(17).spoken());
    }
  }

  @Test
  void codeStudentSettingsAndMachineStandThere() throws IOException {
    List<PieceSlip> slips = Slips.of(1, "Ada Pier", "zigzag, width 2.5, length 2");
    try (ReadPdf pdf = Slips.pdf(pages -> pages.labels(LabelGrid.COMMON.get(0), slips, 1, ""))) {
      assertThat(pdf.text())
          .contains(slips.get(0).spoken())
          .contains("Ada Pier · control")
          .contains("zigzag, width 2.5, length 2")
          .contains("Grey jersey")
          .contains("machine ____")
          .contains("course");
    }
  }

  @Test
  void commonGridsFillTheirSheetEvenly() {
    // What is left over on the right and below is what stands on the left and above, to a
    // millimetre: sheets are cut symmetrically (common practice).
    for (LabelGrid grid : LabelGrid.COMMON) {
      int last = grid.perSheet() - 1;
      double right = grid.paper().widthMm() - grid.left(last) - grid.widthMm();
      double below = grid.paper().heightMm() - grid.top(last) - grid.heightMm();
      assertThat(right).as(grid.key()).isCloseTo(grid.leftMm(), within(1.0));
      assertThat(below).as(grid.key()).isCloseTo(grid.topMm(), within(1.0));
    }
  }

  @Test
  void aGridOverTheEdgeOrTooSmallIsNone() {
    assertThatThrownBy(() -> LabelGrid.free(PaperSize.A4, 9, 10, 5, 5, 0, 0))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new LabelGrid("x", PaperSize.A4, 3, 8, 80, 36, 0, 0, 0, 0))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
