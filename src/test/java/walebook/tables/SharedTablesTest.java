package walebook.tables;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import walebook.cloth.FabricKind;
import walebook.cloth.RecoveryBand;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.seam.GrowthBand;
import walebook.seam.StitchType;
import walebook.working.Band;

class SharedTablesTest {

  static Stream<CsvTable<?>> tables() {
    return SharedTables.all().stream();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("tables")
  void readsWithoutAProblem(CsvTable<?> table) throws IOException {
    var answer = table.read(new StringReader(Files.readString(Path.of("shared", table.file()))));
    assertThat(answer.problems()).isEmpty();
    assertThat(answer.value()).isNotEmpty();
    assertThat(table.columns()).last().isEqualTo("source");
  }

  @Test
  void everyFileOfTheFolderIsReadAndEveryTableIsAFile() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("shared"))) {
      assertThat(files.map(each -> each.getFileName().toString()).toList())
          .containsExactlyInAnyOrderElementsOf(tables().map(CsvTable::file).toList());
    }
    assertThat(tables().map(CsvTable::file))
        .contains(
            "comfort-bands.csv",
            "ease-by-fit.csv",
            "needle-advice.csv",
            "band-ratios.csv",
            "stitch-types.csv",
            "thread-ratios.csv",
            "body-girths.csv",
            "needle-sizes.csv",
            "faults.csv",
            "fabric-kinds.csv");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("tables")
  void aKeyTwiceAndARowWithoutASourceAreTold(CsvTable<?> table) throws IOException {
    List<String> lines = Files.readAllLines(Path.of("shared", table.file()));
    String row = lines.get(1);
    String text = String.join("\n", lines.get(0), row, row);
    assertThat(table.read(new StringReader(text)).problems())
        .extracting(Problem::code)
        .containsExactly("table.duplicate");
    String bare = row.replaceFirst(",(\"[^\"]*\"|[^,]*)$", ",");
    assertThat(table.read(new StringReader(lines.get(0) + "\n" + bare)).problems())
        .extracting(Problem::code)
        .contains("table.empty");
  }

  @Test
  void usualRangesOfAClothAreRanges() {
    // Common practice: no knit of a class weighs under 50 or over 800 g/m², nor stretches over 250
    // %.
    for (FabricKind each : SharedTables.read().fabricKinds()) {
      assertThat(each.massFrom()).as(each.key()).isBetween(50.0, each.massTo());
      assertThat(each.massTo()).as(each.key()).isLessThanOrEqualTo(800);
      assertThat(each.courseFrom()).as(each.key()).isBetween(0.0, each.courseTo());
      assertThat(each.waleFrom()).as(each.key()).isBetween(0.0, each.waleTo());
      assertThat(Math.max(each.courseTo(), each.waleTo())).isLessThanOrEqualTo(250);
    }
  }

  @Test
  void theClassPathHoldsTheSameTables() {
    SharedTables tables = SharedTables.read();
    assertThat(tables.faults()).hasSizeGreaterThan(25);
    assertThat(tables.fabricKinds()).isNotEmpty();
    assertThat(tables.cautions()).isNotEmpty();
    assertThat(tables.needleSizes()).hasSize(11);
  }

  @Test
  void bandsLieEdgeToEdge() {
    SharedTables tables = SharedTables.read();
    List<GrowthBand> growth =
        tables.seamGrowth().stream().sorted(Comparator.comparing(GrowthBand::from)).toList();
    for (int i = 1; i < growth.size(); i++) {
      assertThat(growth.get(i).from()).isEqualTo(growth.get(i - 1).below());
    }
    List<RecoveryBand> recovery =
        tables.recoveryBands().stream().sorted(Comparator.comparing(RecoveryBand::from)).toList();
    for (int i = 1; i < recovery.size(); i++) {
      assertThat(recovery.get(i).from()).isEqualTo(recovery.get(i - 1).below());
    }
  }

  @Test
  void recoveryBandsAsCommonlyUsed() {
    // Common practice: 95 and more excellent, 90 good, 80 fair, below poor.
    List<RecoveryBand> bands = SharedTables.read().recoveryBands();
    assertThat(Band.holding(bands, 96).key()).isEqualTo("excellent");
    assertThat(Band.holding(bands, 100).key()).isEqualTo("excellent");
    assertThat(Band.holding(bands, 90).key()).isEqualTo("good");
    assertThat(Band.holding(bands, 85).key()).isEqualTo("fair");
    assertThat(Band.holding(bands, 50).key()).isEqualTo("poor");
    assertThat(Band.holding(bands, 102).key()).isEqualTo("over");
  }

  @Test
  void stitchNumbersBelongToTheirClass() {
    // ISO 4915: class 300 are lockstitches, 500 overedge, 600 covering stitches.
    for (StitchType type : SharedTables.read().stitchTypes()) {
      Integer number = type.number();
      if (number != null && number / 100 == 5) {
        assertThat(type.machines()).contains("overlocker");
      }
      if (number != null && number / 100 == 3) {
        assertThat(type.machines()).contains("sewing");
      }
    }
  }

  @Test
  void threadsAreNoFewerThanNeedles() {
    for (StitchType type : SharedTables.read().stitchTypes()) {
      assertThat(type.threads()).as(type.key()).isGreaterThanOrEqualTo(type.needles());
    }
  }

  @Test
  void everyCauseAndRemedyReadsAsWritten() throws IOException {
    String text = Files.readString(Path.of("shared", "faults.csv"));
    long written = text.chars().filter(sign -> sign == '{').count();
    long read =
        SharedTables.read().faults().stream()
            .mapToLong(each -> each.remedies().size() + each.causes().size())
            .sum();
    assertThat(read).isEqualTo(written);
  }

  @Test
  void problemsAreToldAllAtOnceWithTheirPlace() {
    var answer =
        SeamTables.THREAD_RATIOS.read(
            new StringReader(
                """
                key,stitch_type,ratio,kind,source
                a,301,two,published,guide
                b,301,-1,published,guide
                b,301,2.5,hearsay,
                """));
    assertThat(answer.problems())
        .extracting(Problem::code)
        .containsExactly(
            "table.number", "table.range", "table.duplicate", "table.empty", "table.word");
    assertThat(answer.problems().get(0).place())
        .isEqualTo(new Place.Spot("thread-ratios.csv", 2, 3, "ratio"));
  }

  @Test
  void wrongColumnsAreTold() {
    var answer = SeamTables.NEEDLE_SIZES.read(new StringReader("nm,old,source\n60,8,guide\n"));
    assertThat(answer.problems()).extracting(Problem::code).containsExactly("table.header");
  }

  @Test
  void unknownFactorIsTold() {
    var answer =
        FaultTable.FAULTS.read(
            new StringReader(
                """
                key,name,looks_like,causes,remedies,measure,seen,source
                a,b,c,d,"hope {luck,up,}",count,sewn,guide
                """));
    assertThat(answer.problems()).extracting(Problem::code).contains("table.remedy");
  }
}
