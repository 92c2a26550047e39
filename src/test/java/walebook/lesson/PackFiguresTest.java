package walebook.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Figures of the packs against the reference tables of the program, each number read from both. The
 * tables name their own sources.
 */
class PackFiguresTest {
  /** Sources of figures that the worked examples' test works out again, or that define a word. */
  private static final Pattern WORKED = Pattern.compile("^(worked out|definition).*");

  /**
   * One number of a figure, in braces, and where it stands in a table.
   *
   * @param figure a part of what the pack says, the number in braces
   * @param file the table
   * @param key of its row
   * @param column of its number
   * @param offset what the table's number is more than the figure's, since a table of bands has its
   *     limits between whole numbers
   */
  record Row(String pack, String figure, String file, String key, String column, double offset) {
    @Override
    public String toString() {
      return pack + ": " + figure;
    }

    static Row of(String[] cells) {
      return new Row(
          cells[0], cells[1], cells[2], cells[3], cells[4], Double.parseDouble(cells[5].strip()));
    }

    String said() {
      return figure.replace("{", "").replace("}", "");
    }
  }

  /** Pack, what it says, table, key, column, offset. 0.08 under a ratio is −0.08 in its table. */
  private static final String TABLE =
      """
      measuring-stretch | of {95} percent or more is ex | recovery-bands | excellent | from | 0
      measuring-stretch | {90} to 95 good | recovery-bands | good | from | 0
      measuring-stretch | {80} to 90 fair | recovery-bands | fair | from | 0
      measuring-stretch | below {80} poor | recovery-bands | poor | below | 0
      measuring-stretch | stretches {25} to 60 | fabric-kinds | single-jersey | course_from | 0
      measuring-stretch | 25 to {60} percent | fabric-kinds | single-jersey | course_to | 0
      measuring-stretch | and {10} to 30 | fabric-kinds | single-jersey | wale_from | 0
      measuring-stretch | 10 to {30} wale | fabric-kinds | single-jersey | wale_to | 0
      measuring-stretch | rib {60} to 140 | fabric-kinds | rib-1x1 | course_from | 0
      measuring-stretch | 60 to {140} percent | fabric-kinds | rib-1x1 | course_to | 0
      what-a-pattern-asks | of {90} to 95 percent is | recovery-bands | good | from | 0
      what-a-pattern-asks | 90 to {95} percent is | recovery-bands | good | below | 0
      what-a-pattern-asks | below {80} percent | recovery-bands | poor | below | 0
      what-a-pattern-asks | least {50} percent of its | balance-bands | two-way | share_from | 0
      what-a-pattern-asks | about {25} percent | ease-by-fit | skimming | stretch_from | 0
      what-a-pattern-asks | fitted one {35} | ease-by-fit | fitted | stretch_from | 0
      what-a-pattern-asks | close one {50} | ease-by-fit | close | stretch_from | 0
      which-way-round | stretches {50} to 120 | fabric-kinds | jersey-elastane | course_from | 0
      which-way-round | 50 to {120} percent | fabric-kinds | jersey-elastane | course_to | 0
      which-way-round | and {30} to 90 | fabric-kinds | jersey-elastane | wale_from | 0
      which-way-round | 30 to {90} percent | fabric-kinds | jersey-elastane | wale_to | 0
      which-way-round | rib stretches {60} to | fabric-kinds | rib-1x1 | course_from | 0
      which-way-round | 60 to {140} percent | fabric-kinds | rib-1x1 | course_to | 0
      which-way-round | and {10} to 30 | fabric-kinds | rib-1x1 | wale_from | 0
      which-way-round | 10 to {30} percent | fabric-kinds | rib-1x1 | wale_to | 0
      ease-and-fit | Recovery of {95} percent | recovery-bands | excellent | from | 0
      ease-and-fit | {90} to 95 good | recovery-bands | good | from | 0
      seam-that-stretches | stitch type {304} | stitch-types | 304 | number | 0
      seam-that-stretches | lockstitch {301} | stitch-types | 301 | number | 0
      seam-that-stretches | of 0 to {2} percent lies flat | seam-growth-guide | flat | below | 0.5
      seam-that-stretches | {3} to 5 waves | seam-growth-guide | slight | from | -0.5
      seam-that-stretches | 3 to {5} waves | seam-growth-guide | slight | below | 0.5
      seam-that-stretches | {6} to 10 plain | seam-growth-guide | wavy | from | -0.5
      seam-that-stretches | 6 to {10} plain | seam-growth-guide | wavy | below | 0.5
      needles-for-knits | number is {11} | needle-sizes | 75 | older | 0
      needles-for-knits | older number {14} | needle-sizes | 90 | older | 0
      needles-for-knits | of {130} to 200 | needle-advice | medium | mass_from | 0
      needles-for-knits | 130 to {200} g | needle-advice | medium | mass_below | 0
      needles-for-knits | Nm {70} to 80 | needle-advice | medium | nm_from | 0
      needles-for-knits | Nm 70 to {80} | needle-advice | medium | nm_to | 0
      needles-for-knits | with {5} percent | needle-advice | medium-elastane | elastane_from | 0
      needles-for-knits | point of Nm {75} | needle-advice | medium-elastane | nm_from | 0
      needles-for-knits | From {200} to 300 | needle-advice | heavy | mass_from | 0
      needles-for-knits | From 200 to {300} | needle-advice | heavy | mass_below | 0
      needles-for-knits | takes Nm {80} to 90 | needle-advice | heavy | nm_from | 0
      needles-for-knits | takes Nm 80 to {90} | needle-advice | heavy | nm_to | 0
      overlocker-and-allowance | turns by about {6} | neck-shapes | crew | turn | 0
      overlocker-and-allowance | type {504} | stitch-types | 504 | number | 0
      overlocker-and-allowance | threads {514} | stitch-types | 514 | number | 0
      overlocker-and-allowance | about {16} times | thread-ratios | 514-common | ratio | 0
      overlocker-and-allowance | about {14} times | thread-ratios | 504-common | ratio | 0
      overlocker-and-allowance | of 0 to {2} percent lies flat | seam-growth-guide | flat | below | 0.5
      which-way-round | of 0 to {2} percent lies flat | seam-growth-guide | flat | below | 0.5
      hems-that-stretch | of 0 to {2} percent lies flat | seam-growth-guide | flat | below | 0.5
      hems-that-stretch | {3} to 5 waves | seam-growth-guide | slight | from | -0.5
      hems-that-stretch | 3 to {5} waves | seam-growth-guide | slight | below | 0.5
      hems-that-stretch | {6} to 10 plainly | seam-growth-guide | wavy | from | -0.5
      hems-that-stretch | 6 to {10} plainly | seam-growth-guide | wavy | below | 0.5
      hems-that-stretch | stitch type {301} | stitch-types | 301 | number | 0
      hems-that-stretch | zigzag {304} | stitch-types | 304 | number | 0
      garment-from-scraps | of 0 to {2} percent lies flat | seam-growth-guide | flat | below | 0.5
      ease-and-fit | Up to {25} percent | comfort-bands | easy | below | 0
      ease-and-fit | up to {60} percent | comfort-bands | comfortable | below | 0
      ease-and-fit | up to {75} percent | comfort-bands | firm | below | 0
      ease-and-fit | ease of {0} to −5 | ease-by-fit | fitted | below | 0
      ease-and-fit | 0 to {−5} percent | ease-by-fit | fitted | from | 0
      ease-and-fit | −5 to {−15} percent | ease-by-fit | close | from | 0
      ease-and-fit | below {−15} percent | ease-by-fit | compression-like | below | 0
      ease-and-fit | cloth of {35} percent | ease-by-fit | fitted | stretch_from | 0
      ease-and-fit | close {50} | ease-by-fit | close | stretch_from | 0
      ease-and-fit | very close {70} | ease-by-fit | compression-like | stretch_from | 0
      ease-and-fit | girths is {940} mm | body-girths | women-chest-P50 | from_mm | 0
      ease-and-fit | girths {1018.5} mm | body-girths | women-hip-P50 | from_mm | 0
      which-way-round | heel of {310} mm | body-girths | women-heel-P50 | from_mm | 0
      which-way-round | margin of {5} points | opening-margins | sport | points | 0
      which-way-round | thigh of {613} mm | body-girths | women-thigh-P50 | from_mm | 0
      hems-that-stretch | margin of {10} points | opening-margins | everyday | points | 0
      bands-that-lie-flat | turns by about {6} | neck-shapes | crew | turn | 0
      bands-that-lie-flat | scoop by {5} | neck-shapes | scoop | turn | 0
      bands-that-lie-flat | shallow neck by {4} | neck-shapes | shallow | turn | 0
      bands-that-lie-flat | than {0.05} over | band-fits | stands | from | 0
      bands-that-lie-flat | than {0.08} under | band-fits | pulls | below | -0.16
      bands-that-lie-flat | stretches {30} to 50 | band-ratios | neck-30 | from | 0
      bands-that-lie-flat | 30 to {50} percent | band-ratios | neck-30 | below | 0
      bands-that-lie-flat | at {0.85} to 0.90 | band-ratios | neck-30 | ratio_from | 0
      bands-that-lie-flat | 0.85 to {0.90} | band-ratios | neck-30 | ratio_to | 0
      bands-that-lie-flat | at {75} to 110 | band-ratios | neck-75 | from | 0
      bands-that-lie-flat | 75 to {110} percent | band-ratios | neck-75 | below | 0
      bands-that-lie-flat | at {0.70} to 0.80 | band-ratios | neck-75 | ratio_from | 0
      bands-that-lie-flat | 0.70 to {0.80} | band-ratios | neck-75 | ratio_to | 0
      bands-that-lie-flat | heads is {560} mm | body-girths | women-head-P50 | from_mm | 0
      bands-that-lie-flat | margin of {10} points | opening-margins | everyday | points | 0
      bands-that-lie-flat | child's {15} | opening-margins | child | points | 0
      garment-from-scraps | margin of {10} points | opening-margins | everyday | points | 0
      garment-from-scraps | wrists is {154} mm | body-girths | women-wrist-P50 | from_mm | 0
      garment-from-scraps | men's {176} mm | body-girths | men-wrist-P50 | from_mm | 0
      garment-from-scraps | hands is {187} mm | body-girths | women-hand-P50 | from_mm | 0
      garment-from-scraps | men's {212} mm | body-girths | men-hand-P50 | from_mm | 0
      """;

  static Stream<Row> rows() {
    return TABLE.lines().map(line -> Row.of(line.split(" [|] ", -1)));
  }

  /** Figures that no table of the program holds; what they rest on stands beside them. */
  private static final List<String> IN_NO_TABLE =
      List.of(
          "Measure 5 to 7 cm or more away from a cut edge.",
          "Readings of one person on one strip",
          "A seam should stretch a little further than the cloth",
          "A seam that reaches less than 80 percent",
          "A straight seam on light jersey gives",
          "Two readings of one person differ by more than 2.8 times",
          "Scatter within a person and between persons",
          "Hand methods agree better",
          "A pull by weight is 500 g",
          "Comfortable stretch is some 60 to 70 percent",
          "Change a needle after 6 to 8 hours",
          "Larger needles lower the strength",
          "From needle to knife is usually",
          "Differential feed starts at",
          "Bending adds some 25 to 45 percent",
          "The greatest stretch goes round the body.",
          "A hem of a top at the hip wants",
          "Twin needles stand 2.5 mm apart",
          "A twin-needle hem is 20 to 25 mm deep",
          "A shoulder wants 0 to 5 percent",
          "A stay goes nowhere",
          "Fusible knit interfacing is laid",
          "An interfacing is lighter than the cloth",
          "Clear elastic 6 to 10 mm wide",
          "Over the thumb a hand is",
          "A cuff seam wants",
          "Scraps smaller than 80 by 120 mm");

  @ParameterizedTest
  @MethodSource("rows")
  void agreesWithItsTable(Row row) {
    assertThat(Packs.named(row.pack()).teaching().figures())
        .extracting(LessonPack.Figure::says)
        .anyMatch(says -> says.contains(row.said()));
    Matcher number = Pattern.compile("\\{([^}]+)}").matcher(row.figure());
    assertThat(number.find()).isTrue();
    double said = Double.parseDouble(number.group(1).replace('−', '-'));
    assertThat(said + row.offset()).isCloseTo(inTable(row), within(1e-6));
  }

  @Test
  void everyFigureIsInATableOrSaidToBeInNone() {
    for (LessonPack pack : Packs.all()) {
      for (LessonPack.Figure figure : pack.teaching().figures()) {
        boolean tabled =
            rows()
                .anyMatch(
                    row ->
                        row.pack().equals(pack.about().name())
                            && figure.says().contains(row.said()));
        boolean outside = IN_NO_TABLE.stream().anyMatch(figure.says()::startsWith);
        boolean worked = WORKED.matcher(figure.source()).matches();
        assertThat(tabled || worked || outside).as(figure.says()).isTrue();
        assertThat(tabled && outside).as(figure.says()).isFalse();
      }
    }
  }

  @Test
  void noneIsExcusedThatIsGone() {
    assertThat(IN_NO_TABLE)
        .allMatch(
            start ->
                Packs.all().stream()
                    .flatMap(each -> each.teaching().figures().stream())
                    .anyMatch(each -> each.says().startsWith(start)));
  }

  private static double inTable(Row row) {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    Path file = Path.of("shared", row.file() + ".csv");
    try (CSVParser parser = format.parse(Files.newBufferedReader(file))) {
      for (CSVRecord each : parser) {
        if (each.get(0).equals(row.key())) {
          return Double.parseDouble(each.get(row.column()));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    throw new IllegalArgumentException(row.file() + " has no row " + row.key());
  }
}
