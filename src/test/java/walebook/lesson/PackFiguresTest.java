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
  /** Sources of figures that {@link PackWorkedFiguresTest} works out again. */
  static final Pattern WORKED = Pattern.compile(".*(worked out|definition|the published rule).*");

  private static final Pattern NUMBER = Pattern.compile("−?[0-9]+(?:[.][0-9]+)?");

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
      ease-and-fit | of {−5} to −15 percent | ease-by-fit | close | below | 0
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
      ease-and-fit | Beyond {−25} percent | ease-by-fit | beyond | below | 0
      ease-and-fit | {95} percent or more is excellent | recovery-bands | good | below | 0
      ease-and-fit | 90 to {95} good | recovery-bands | excellent | from | 0
      measuring-stretch | to {95} good | recovery-bands | good | below | 0
      measuring-stretch | 80 to {90} fair | recovery-bands | fair | below | 0
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

  /** What the lessons' texts and checks say, of numbers that stand in a table as well. */
  private static final String IN_TEXTS =
      """
      measuring-stretch | recovery of {95} % or more is called | recovery-bands | excellent | from | 0
      measuring-stretch | {90} to 95 good, 80 to 90 fair | recovery-bands | good | from | 0
      measuring-stretch | 90 to {95} good, 80 to 90 fair | recovery-bands | good | below | 0
      measuring-stretch | good, {80} to 90 fair | recovery-bands | fair | from | 0
      measuring-stretch | good, 80 to {90} fair | recovery-bands | fair | below | 0
      measuring-stretch | and below {80} poor | recovery-bands | poor | below | 0
      what-a-pattern-asks | between {80} and 90 % | recovery-bands | fair | from | 0
      what-a-pattern-asks | between 80 and {90} % | recovery-bands | fair | below | 0
      what-a-pattern-asks | look for {90} % or more | recovery-bands | good | from | 0
      seam-that-stretches | Up to {2} % lies flat | seam-growth-guide | flat | below | 0.5
      needles-for-knits | jersey point, Nm {70} to 80 | needle-advice | medium | nm_from | 0
      needles-for-knits | jersey point, Nm 70 to {80} | needle-advice | medium | nm_to | 0
      needles-for-knits | With {5} % elastane or more | needle-advice | medium-elastane | elastane_from | 0
      needles-for-knits | stretch point, Nm {75} (common | needle-advice | medium-elastane | nm_to | 0
      needles-for-knits | 75 and {11} are one size | needle-sizes | 75 | older | 0
      needles-for-knits | 90 and {14} another | needle-sizes | 90 | older | 0
      overlocker-and-allowance | turns a little less, about {6}, | neck-shapes | crew | turn | 0
      ease-and-fit | ease of {0} to −5 % | ease-by-fit | fitted | below | 0
      ease-and-fit | of 0 to {−5} % is | ease-by-fit | fitted | from | 0
      ease-and-fit | and {−5} to −15 % | ease-by-fit | close | below | 0
      ease-and-fit | −5 to {−15} % is | ease-by-fit | close | from | 0
      ease-and-fit | Below {−15} % | ease-by-fit | compression-like | below | 0
      ease-and-fit | Beyond {−25} % | ease-by-fit | beyond | below | 0
      ease-and-fit | Up to {25} % is easy | comfort-bands | easy | below | 0
      ease-and-fit | Up to {60} % is right | comfort-bands | comfortable | below | 0
      ease-and-fit | Up to {75} % is for sport | comfort-bands | firm | below | 0
      which-way-round | Thigh {613} mm | body-girths | women-thigh-P50 | from_mm | 0
      which-way-round | Heel {310} mm | body-girths | women-heel-P50 | from_mm | 0
      which-way-round | margin of {5} points | opening-margins | sport | points | 0
      hems-that-stretch | margin of {10} points | opening-margins | everyday | points | 0
      bands-that-lie-flat | Up to {0.05} over | band-fits | stands | from | 0
      bands-that-lie-flat | over, or {0.08} under | band-fits | pulls | below | -0.16
      bands-that-lie-flat | crew neck turns by about {6} | neck-shapes | crew | turn | 0
      bands-that-lie-flat | the table | {0.70} to 0.80 | band-ratios | neck-75 | ratio_from | 0
      bands-that-lie-flat | the table | 0.70 to {0.80} | band-ratios | neck-75 | ratio_to | 0
      bands-that-lie-flat | over a head of {560} mm | body-girths | women-head-P50 | from_mm | 0
      bands-that-lie-flat | margin of {10} points | opening-margins | everyday | points | 0
      garment-from-scraps | margin of {10} points | opening-margins | everyday | points | 0
      garment-from-scraps | lie flat within {2} % | seam-growth-guide | flat | below | 0.5
      """;

  static Stream<Row> rowsOfTexts() {
    return IN_TEXTS
        .lines()
        // One cell of a table on the board holds the sign that parts the columns here.
        .map(line -> line.replace("the table | ", "the table ¦ ").split(" [|] ", -1))
        .map(Row::of);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void agreesWithItsTable(Row row) {
    assertThat(Packs.named(row.pack()).teaching().figures())
        .extracting(LessonPack.Figure::says)
        .anyMatch(says -> says.contains(row.said()));
    agrees(row);
  }

  @ParameterizedTest
  @MethodSource("rowsOfTexts")
  void theTextAgreesWithTheTable(Row row) {
    assertThat(Packs.words(Packs.named(row.pack()))).contains(row.said().replace('¦', '|'));
    agrees(row);
  }

  private static void agrees(Row row) {
    Matcher number = Pattern.compile("\\{([^}]+)}").matcher(row.figure());
    assertThat(number.find()).isTrue();
    double said = Double.parseDouble(number.group(1).replace('−', '-'));
    assertThat(said + row.offset()).isCloseTo(inTable(row), within(1e-6));
  }

  /** A lesson asks for what the tables call flat or, of a band, a slight wave; and for good. */
  @Test
  void whatCountsAsDoneAgreesWithTheTables() {
    double flat = inTable("seam-growth-guide", "flat", "below") - 0.5;
    double slight = inTable("seam-growth-guide", "slight", "below") - 0.5;
    double good = inTable("recovery-bands", "good", "from");
    for (LessonPack pack : Packs.all()) {
      for (Success each : pack.success()) {
        switch (each.kind()) {
          case EDGE_CHANGE_AT_MOST -> assertThat(each.value()).as(each.says()).isIn(flat, slight);
          case RECOVERY_AT_LEAST -> assertThat(each.value()).as(each.says()).isEqualTo(good);
          case SEAM_STRETCH_AT_LEAST ->
              assertThat(((PiecesPlan) pack.plan()).controlSettings().asked(1).needPercent())
                  .as(each.says())
                  .isEqualTo(each.value());
          default -> assertThat(each.value()).isPositive();
        }
      }
    }
  }

  @Test
  void everyFigureIsInATableOrWorkedOutOrSaidToBeInNone() {
    for (LessonPack pack : Packs.all()) {
      for (LessonPack.Figure figure : pack.teaching().figures()) {
        String says = figure.says();
        boolean worked = PackWorkedFiguresTest.says(pack.about().name()).anyMatch(says::equals);
        assertThat(WORKED.matcher(figure.source()).matches()).as(says).isEqualTo(worked);
        boolean outside = IN_NO_TABLE.stream().anyMatch(says::startsWith);
        String left = withoutTabled(pack.about().name(), says);
        boolean tabled = !left.equals(says);
        assertThat(tabled || worked || outside).as(says).isTrue();
        assertThat((tabled || worked) && outside).as(says).isFalse();
        if (!worked && !outside) {
          // Nought lies between the limits of every band of changes, and the tables have no row.
          assertThat(NUMBER.matcher(left.replace("change of 0 to", "")).results())
              .as("numbers of no table in: " + left)
              .isEmpty();
        }
      }
    }
  }

  /** What a figure says with every number taken out that stands in a table. */
  private static String withoutTabled(String pack, String says) {
    StringBuilder left = new StringBuilder(says);
    rows()
        .filter(row -> row.pack().equals(pack) && says.contains(row.said()))
        .forEach(
            row -> {
              int start = says.indexOf(row.said()) + row.figure().indexOf('{');
              int length = row.figure().indexOf('}') - row.figure().indexOf('{') - 1;
              left.replace(start, start + length, "_".repeat(length));
            });
    return left.toString();
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
    return inTable(row.file(), row.key(), row.column());
  }

  static double inTable(String table, String key, String column) {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    Path file = Path.of("shared", table + ".csv");
    try (CSVParser parser = format.parse(Files.newBufferedReader(file))) {
      for (CSVRecord each : parser) {
        if (each.get(0).equals(key)) {
          return Double.parseDouble(each.get(column));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    throw new IllegalArgumentException(table + " has no row " + key);
  }
}
