package walebook.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.book.DemoBook;
import walebook.act.classroom.CompareFair;
import walebook.act.classroom.ExportTerm;
import walebook.book.Book;
import walebook.book.Classroom;
import walebook.compare.CompareBySetting;
import walebook.compare.FairComparison;
import walebook.compare.FairQuestion;
import walebook.compare.FairRow;
import walebook.compare.Outcome;
import walebook.statistics.Interval;

/**
 * The workbook's fair comparison of the demo class, figure by figure, against what the window finds
 * when it is asked about all lessons as it first stands: by all that usually tells settings apart.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FairSheetTest {
  private static final List<Outcome> OUTCOMES =
      List.of(Outcome.HELD, Outcome.SEAM_SHARE, Outcome.EDGE_CHANGE, Outcome.GRADE, Outcome.TIME);

  private final List<Found> window = new ArrayList<>();
  private XSSFWorkbook workbook;

  private record Found(FairComparison of, FairRow row) {
    @Nullable Interval interval() {
      if (row.adjusted() != null) {
        return row.adjusted().interval();
      }
      if (row.lasting() != null || row.held() == null) {
        return null;
      }
      Interval held = row.held().wilson(of.question().confidence());
      return new Interval(100 * held.low(), 100 * held.high(), held.confidence());
    }

    @Nullable Double low() {
      Interval interval = interval();
      return interval == null
          ? row.lasting() == null ? null : row.lasting().low()
          : Double.valueOf(interval.low());
    }

    @Nullable Double high() {
      Interval interval = interval();
      return interval == null
          ? row.lasting() == null ? null : row.lasting().high()
          : Double.valueOf(interval.high());
    }
  }

  @BeforeAll
  void bothAreAsked(@TempDir Path folder) {
    Path file = folder.resolve("term.xlsx");
    try (Book demo = DemoBook.open(folder.resolve("demo.walebook"))) {
      UUID classId = demo.classes().all().get(0).id();
      new ExportTerm(demo, HarbourClass.WORDS, HarbourClass.TABLES, Classroom.CLOCK)
          .export(file, classId, TermChoice.CODES, false, ExportProgress.UNHEARD)
          .value();
      var which = new CompareFair.Which(List.of(classId), null, null, true);
      for (Outcome each : OUTCOMES) {
        FairQuestion question = FairQuestion.of(each, CompareBySetting.USUAL);
        FairComparison found = new CompareFair(demo).compare(which, question).comparison();
        found.rows().forEach(row -> window.add(new Found(found, row)));
      }
    }
    workbook = Grid.open(file);
  }

  @AfterAll
  void close() throws IOException {
    workbook.close();
  }

  @Test
  void everyFigureIsTheWindows() {
    Grid rows = new Grid(workbook.getSheet("Fair comparison"));
    assertThat(rows.sheet().getLastRowNum()).isEqualTo(window.size()).isGreaterThan(200);
    for (int i = 0; i < window.size(); i++) {
      Found found = window.get(i);
      int at = i + 1;
      String as = rows.text(at, "Outcome") + ", " + rows.text(at, "Setting");
      SettingLabel label = new SettingLabel(found.of().factors(), new Choices(HarbourClass.WORDS));
      assertThat(rows.text(at, "Setting")).isEqualTo(label.of(found.row().levels()));
      assertThat(rows.number(at, "Pieces")).as(as).isEqualTo(found.row().pieces());
      assertThat(rows.number(at, "Students")).as(as).isEqualTo(found.row().students());
      assertThat(rows.number(at, "Set aside")).as(as).isEqualTo(found.of().setAside());
      same(rows.cell(at, "Middle"), found.row().middle(), as);
      same(rows.cell(at, "Low end"), found.low(), as);
      same(rows.cell(at, "High end"), found.high(), as);
      same(
          rows.cell(at, "Plain mean"),
          found.row().raw() == null ? null : found.row().raw().mean(),
          as);
    }
  }

  private static void same(Cell cell, @Nullable Double wanted, String as) {
    if (wanted == null) {
      assertThat(cell.getCellType()).as(as).isEqualTo(CellType.BLANK);
    } else {
      assertThat(cell.getNumericCellValue()).as(as).isCloseTo(wanted, within(1e-8));
    }
  }

  @Test
  void aChartShowsSettingsOfOneClothAndEverySettingHasABar() {
    Grid rows = new Grid(workbook.getSheet("Fair comparison"));
    Set<Integer> drawn = new HashSet<>();
    for (XSSFChart each : workbook.getSheet("Charts").getDrawingPatriarch().getCharts()) {
      String labels =
          each.getCTChart()
              .getPlotArea()
              .getBarChartArray(0)
              .getSerArray(0)
              .getCat()
              .getStrRef()
              .getF();
      if (!labels.startsWith("'Fair comparison'")) {
        continue;
      }
      var area = new org.apache.poi.ss.util.AreaReference(labels, null);
      Set<String> cloths = new HashSet<>();
      for (int i = area.getFirstCell().getRow(); i <= area.getLastCell().getRow(); i++) {
        cloths.add(rows.text(i, "Setting").split(" · ", -1)[0]);
        assertThat(drawn.add(i)).as("row " + i + " is drawn once").isTrue();
      }
      assertThat(cloths).hasSize(1);
      assertThat(each.getTitleText().getString()).startsWith(cloths.iterator().next() + ", fair");
    }
    assertThat(drawn).hasSize(window.size());
  }
}
