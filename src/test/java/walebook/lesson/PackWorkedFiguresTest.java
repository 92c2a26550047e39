package walebook.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static walebook.lesson.PackFiguresTest.inTable;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import walebook.garment.AllowanceChange;
import walebook.garment.BandPlan;
import walebook.garment.CurvedEdge;
import walebook.garment.Ease;
import walebook.garment.GaugeNeed;
import walebook.garment.LockedSpan;
import walebook.quantity.Show;

/**
 * Figures of the packs that call themselves worked out, worked out again word for word: by the
 * program's calculations, or by the formula that stands here where there is none. What they begin
 * from is taken from the tables where a table has it.
 */
class PackWorkedFiguresTest {
  /** A figure as it has to read. */
  record Said(String pack, String says) {}

  static Stream<Said> figures() {
    double everyday = inTable("opening-margins", "everyday", "points");
    double sport = inTable("opening-margins", "sport", "points");
    double crew = inTable("neck-shapes", "crew", "turn");
    double heel = inTable("body-girths", "women-heel-P50", "from_mm");
    double thigh = inTable("body-girths", "women-thigh-P50", "from_mm");
    double hem = Ease.wornStrain(1020, 920);
    double leg = Ease.wornStrain(heel, 240);
    double hand = Ease.wornStrain(220, 160);
    BandPlan half = new BandPlan(Math.PI * 60, 0.75, 15, 10, 10);
    BandPlan neck = new BandPlan(520, 0.78, 20, 10, 10);
    List<Double> motifs = List.of(20.0, 20.0);
    double each = LockedSpan.locked(motifs, List.of(20.0), false);
    double go = LockedSpan.locked(motifs, List.of(20.0), true);
    return Stream.of(
        said(
            "measuring-stretch",
            "A gauge of 10 cm that reaches 15 cm has stretched %s percent; one that reaches 13 cm,"
                + " %s percent.",
            new GaugeNeed(100, 150).percent(),
            new GaugeNeed(100, 130).percent()),
        said(
            "what-a-pattern-asks",
            "A gauge that takes 100 mm to 140 mm asks for %s percent.",
            new GaugeNeed(100, 140).percent()),
        // By definition a yard is 0.9144 m (1959), and 36 inches are a yard.
        said("what-a-pattern-asks", "One inch is %s mm.", 914.4 / 36),
        said(
            "seam-that-stretches",
            "A zigzag 2.5 mm wide with stitches 2 mm long can straighten by %s percent before its"
                + " thread is taut.",
            Math.rint(100 * (Math.hypot(2.5, 2) / 2 - 1))),
        // The size number is the blade in hundredths of a millimetre; common practice.
        new Said(
            "needles-for-knits",
            "A needle of Nm 75 is %s mm thick at its blade; its older number is %s."
                .formatted(
                    Show.fixed(75 / 100.0, 2),
                    Show.upTo(inTable("needle-sizes", "75", "older"), 0))),
        said(
            "needles-for-knits",
            "A needle of Nm 90 bears the older number %s.",
            inTable("needle-sizes", "90", "older")),
        said(
            "overlocker-and-allowance",
            "A seam sewn at 6 mm in place of 10 mm adds %s mm to the girth; two side seams add %s"
                + " mm.",
            AllowanceChange.girth(10, 6, 1),
            AllowanceChange.girth(10, 6, 2)),
        said(
            "overlocker-and-allowance",
            "A round crew neckline turns by about %s, so 4 mm less allowance makes it about %s mm"
                + " smaller.",
            crew,
            CurvedEdge.change(4, crew)),
        said(
            "ease-and-fit",
            "A garment of 850 mm on a body of 940 mm has an ease of %s mm, %s percent, and"
                + " stretches its cloth by %s percent.",
            Ease.mm(940, 850),
            Ease.percent(940, 850),
            Ease.wornStrain(940, 850)),
        said(
            "which-way-round",
            "A heel of %s mm through a hem of 240 mm asks for %s percent; with a margin of %s"
                + " points for sport, %s percent.",
            heel,
            leg,
            sport,
            leg + sport),
        said(
            "which-way-round",
            "A thigh of %s mm in a leg of 560 mm stretches the cloth by %s percent.",
            thigh,
            Ease.wornStrain(thigh, 560)),
        said(
            "hems-that-stretch",
            "A hem of 920 mm over a hip of 1020 mm asks for %s percent, and with a margin of %s"
                + " points for %s percent.",
            hem,
            everyday,
            hem + everyday),
        said(
            "bands-that-lie-flat",
            "A band 15 mm wide on a seam line of 60 mm radius lies flat at a ratio of %s.",
            half.flatRatio(Math.PI)),
        said(
            "bands-that-lie-flat",
            "A neckband on 520 mm, 20 mm wide, of a rib that stretches 80 percent, at 0.78, is %s"
                + " mm long and stretches by %s percent when sewn.",
            neck.lengthMm(),
            neck.strain()),
        said(
            "details-that-keep-the-stretch",
            "Two motifs of 20 mm in 100 mm, tied off one by one, lock %s mm and leave %s of 60"
                + " percent; in one go they lock %s mm and leave %s percent.",
            each,
            LockedSpan.left(60, each, 100),
            go,
            LockedSpan.left(60, go, 100)),
        said(
            "garment-from-scraps",
            "A hand of 220 mm over the thumb through an edge of 160 mm asks for %s percent, and"
                + " with a margin of %s points for %s percent.",
            hand,
            everyday,
            hand + everyday),
        said(
            "garment-from-scraps",
            "A scrap of %s percent or more is clear of a need of %s percent. One less than %s"
                + " points beyond its need is too close to call.",
            clearOf(hand + everyday),
            hand + everyday,
            readingsApart()));
  }

  /** A ratio has two places, everything else one. */
  private static Said said(String pack, String says, double... numbers) {
    Object[] shown = new Object[numbers.length];
    for (int i = 0; i < numbers.length; i++) {
      shown[i] = Show.upTo(numbers[i], Math.abs(numbers[i]) < 1 ? 2 : 1);
    }
    return new Said(pack, says.formatted(shown));
  }

  /** How far one person's readings may lie apart, as the packs' own check has it. */
  private static double readingsApart() {
    return Packs.named("do-we-measure-alike").success().stream()
        .filter(each -> each.kind() == Success.Kind.READINGS_AGREE_WITHIN)
        .mapToDouble(Success::value)
        .findFirst()
        .orElseThrow();
  }

  /** The next round five above a need and what two readings of one hand may differ by. */
  static double clearOf(double need) {
    return 5 * Math.ceil((need + readingsApart()) / 5);
  }

  static Stream<String> says(String pack) {
    return figures().filter(each -> each.pack().equals(pack)).map(Said::says);
  }

  @ParameterizedTest
  @MethodSource("figures")
  void itReadsAsItIsWorkedOut(Said said) {
    assertThat(Packs.named(said.pack()).teaching().figures())
        .extracting(LessonPack.Figure::says)
        .contains(said.says());
  }
}
