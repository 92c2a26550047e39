package walebook.act.piece;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import walebook.problem.Problem;
import walebook.record.TestPiece;
import walebook.seam.Factor;
import walebook.seam.Fault;
import walebook.seam.LikelyCause;
import walebook.seam.NextTry;
import walebook.seam.Remedy;
import walebook.words.Words;

/** From what was seen on a piece of the book to the next piece with one change. */
@SuppressWarnings("NullAway.Init")
class FindCausesTest {
  @TempDir Path folder;
  private Bench bench;

  @BeforeEach
  void open() {
    bench = new Bench(folder.resolve("class.walebook"));
  }

  @AfterEach
  void close() {
    bench.close();
  }

  private TestPiece saved(PieceEntry entry) {
    return bench.log().save(entry, bench.pieceRoom(), true).value();
  }

  private List<LikelyCause> causes(TestPiece piece) {
    List<TestPiece> chain = bench.room.book.pieces().chainOf(piece.id());
    List<FaultCauses> found = new FindCauses(bench.pieceRoom(), Bench.TABLES).of(piece, chain);
    assertThat(found).hasSize(1);
    return found.get(0).causes();
  }

  private PieceEntry entry(String stitch, String fault) {
    return bench.good().with(PieceField.STITCH, stitch).with(PieceField.FAULTS, fault);
  }

  @Test
  void aStraightStitchThatPoppedIsAnsweredByAZigzagOnTheSameMachine() {
    // Common practice: a straight stitch has no give along the seam.
    TestPiece piece = saved(entry("301", "popped-stitches"));
    LikelyCause first = causes(piece).get(0);
    assertThat(first.cause().says()).isEqualTo("a stitch without give");
    NextTry next = Objects.requireNonNull(first.next());
    PieceEntry again = new StartPiece(bench.room.book).again(piece, bench.pieceRoom());
    PieceEntry changed = SewNext.change(again, next, bench.pieceRoom());
    assertThat(changed.at(PieceField.STITCH)).isEqualTo("304");
    assertThat(changed.at(PieceField.DIAL_WIDTH)).isEqualTo("1");
    assertThat(changed.at(PieceField.MACHINE)).isEqualTo("4");
    // The width comes with the stitch: it is no second change.
    TestPiece second = saved(changed.with(PieceField.END, "").with(PieceField.END_LENGTH, ""));
    assertThat(Objects.requireNonNull(second.parent()).keys()).containsExactly("stitch");
  }

  /** Common practice: through a straight-stitch plate a needle that swings, or a twin, breaks. */
  @ParameterizedTest(name = "{0} with a {1} needle, after {2}: {3}")
  @CsvSource({
    "301, stretch, skipped-stitches, true",
    "triple-straight, stretch, swallowed, true",
    "304, stretch, skipped-stitches, false",
    "304, stretch, swallowed, false",
    "three-step, stretch, skipped-stitches, false",
    "301-twin, twin-stretch, skipped-stitches, false",
    "301, twin-stretch, skipped-stitches, false",
    "514, stretch, skipped-stitches, false"
  })
  void aPlateWithASmallHoleIsForOneNeedleThatNeverSwings(
      String stitch, String point, String fault, boolean offered) {
    PieceEntry entry =
        entry(stitch, fault)
            .with(PieceField.NEEDLE_POINT, point)
            .with(PieceField.MACHINE, "")
            .with(PieceField.PRESSURE, "higher");
    List<LikelyCause> causes = causes(saved(entry));
    assertThat(causes.stream().map(LikelyCause::next).filter(Objects::nonNull).toList())
        .extracting(each -> each.remedy().factor() == Factor.PLATE)
        .satisfies(plate -> assertThat(plate.contains(true)).isEqualTo(offered));
    assertThat(causes.stream().flatMap(each -> each.passedOver().stream()).toList())
        .extracting(each -> each.key().equals("seam.next.plate"))
        .satisfies(passed -> assertThat(passed.contains(true)).isEqualTo(!offered));
  }

  @Test
  void aUniversalNeedleInElastaneIsChangedFirst() {
    // Common practice: elastane asks for a stretch needle.
    TestPiece piece =
        saved(entry("304", "skipped-stitches").with(PieceField.NEEDLE_POINT, "universal"));
    NextTry next = Objects.requireNonNull(causes(piece).get(0).next());
    assertThat(next.from()).isEqualTo("universal");
    assertThat(next.to()).isEqualTo("stretch");
    assertThat(SayNext.says(Words.english(), next, bench.pieceRoom()))
        .isEqualTo("a stretch needle: universal → stretch");
    assertThat(SayNext.command(piece.code(), next))
        .endsWith("--needle-point stretch")
        .startsWith("piece log --again ");
  }

  @Test
  void aChangeByHandIsKeptInItsOwnWordsAndNotOfferedTwice() {
    PieceEntry wavy = entry("304", "wavy-seam,all-along,2,sewn");
    TestPiece piece = saved(wavy.with(PieceField.PRESSURE, "lower"));
    NextTry hand = tryOf(causes(piece), "cloth pulled by hand");
    PieceEntry again =
        SewNext.change(
                new StartPiece(bench.room.book).again(piece, bench.pieceRoom()),
                hand,
                bench.pieceRoom())
            .with(PieceField.FAULTS, "wavy-seam");
    var answer = bench.log().save(again, bench.pieceRoom(), false);
    assertThat(answer.problems()).extracting(Problem::code).doesNotContain("change.none");
    TestPiece second = answer.value();
    assertThat(Objects.requireNonNull(second.parent()).byHand())
        .isEqualTo("guide the cloth without pulling");
    assertThat(bench.room.book.pieces().find(second.id())).isEqualTo(second);
    LikelyCause pulled =
        causes(second).stream()
            .filter(each -> each.cause().says().equals("cloth pulled by hand"))
            .findFirst()
            .orElseThrow();
    assertThat(pulled.next()).isNull();
  }

  private static NextTry tryOf(List<LikelyCause> causes, String says) {
    return Objects.requireNonNull(
        causes.stream()
            .filter(each -> each.cause().says().equals(says))
            .findFirst()
            .orElseThrow()
            .next());
  }

  @Test
  void aFaultLookedForAndNotFoundHasNoCauses() {
    TestPiece piece = saved(entry("304", "wavy-seam,all-along,0,sewn"));
    assertThat(new FindCauses(bench.pieceRoom(), Bench.TABLES).of(piece, List.of())).isEmpty();
  }

  /** Every remedy of the table, put into the form, changes exactly one setting. */
  @Test
  void everyRemedyChangesExactlyOneSetting() {
    PieceRoom room = bench.pieceRoom();
    TestPiece piece =
        saved(
            entry("304", "")
                .with(PieceField.PRESSURE, "normal")
                .with(PieceField.TENSION, "normal")
                .with(PieceField.DIFFERENTIAL_FEED, "1"));
    PieceEntry before = new StartPiece(bench.room.book).again(piece, room);
    int filled = 0;
    for (Fault fault : Bench.TABLES.faults()) {
      for (Remedy each : fault.remedies()) {
        NextTry next = new NextTry(each, "", value(each), "");
        PieceEntry after = SewNext.change(before, next, room);
        List<PieceField> expected = new ArrayList<>();
        if (!SewNext.typed(next).isEmpty()) {
          expected.add(SewNext.field(each.factor()));
          filled++;
        }
        assertThat(OneChange.fields(before, after, room))
            .as(fault.key() + ": " + each.says())
            .isEqualTo(expected);
      }
    }
    assertThat(filled).isGreaterThan(80);
  }

  private static String value(Remedy remedy) {
    return switch (remedy.factor()) {
      case WIDTH, LENGTH, DIFFERENTIAL_FEED -> remedy.size() == null ? "" : "3.7";
      case NEEDLE_SIZE -> "100";
      case TENSION_TOP, PRESSURE -> remedy.direction() == Remedy.Direction.UP ? "higher" : "lower";
      case STITCH ->
          remedy.stitches().stream()
              .map(Remedy.Target::stitch)
              .filter(stitch -> !stitch.equals("304"))
              .findFirst()
              .orElse("");
      case NEEDLE_POINT -> remedy.step().equals("jersey") ? "stretch" : remedy.step();
      case THREAD, STABILISER -> remedy.step();
      default -> "";
    };
  }

  @Test
  void everyFactorHasAPlaceInTheForm() {
    for (Factor each : Factor.values()) {
      assertThat(SewNext.field(each).isSetting()).as(each.key()).isTrue();
    }
  }
}
