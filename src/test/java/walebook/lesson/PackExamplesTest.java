package walebook.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import walebook.cloth.LengthChange;
import walebook.cloth.Recovery;
import walebook.garment.AllowanceChange;
import walebook.garment.BandFit;
import walebook.garment.BandPlan;
import walebook.garment.ComfortBand;
import walebook.garment.CurvedEdge;
import walebook.garment.Ease;
import walebook.garment.GaugeNeed;
import walebook.garment.LengthLost;
import walebook.garment.LockedSpan;
import walebook.garment.StretchUsed;
import walebook.quantity.Show;
import walebook.statistics.OneWay;
import walebook.statistics.Sample;
import walebook.tables.SharedTables;

/**
 * What the lessons work out on the board, worked out again by the program's calculations. Where a
 * calculation is no more than an ISO formula, the formula stands in the test.
 */
class PackExamplesTest {
  private static final SharedTables TABLES = SharedTables.read();

  private static void board(String pack, String how, double value, int decimals, String unit) {
    String line = "| " + how + " | " + Show.upTo(value, decimals) + unit;
    assertThat(Packs.words(Packs.named(pack))).contains(line);
  }

  private static void says(String pack, String... sentences) {
    assertThat(Packs.words(Packs.named(pack))).contains(sentences);
  }

  /** Repeatability and reproducibility by ISO 5725-2, 7.4; the limit 2.8 s by ISO 5725-6, 4.1. */
  @Test
  void doWeMeasureAlike() {
    String pack = "do-we-measure-alike";
    List<Sample> people =
        List.of(
            new Sample("1", List.of(48.0, 50.0, 52.0)),
            new Sample("2", List.of(54.0, 56.0, 58.0)),
            new Sample("3", List.of(52.0, 53.0, 54.0)));
    OneWay found = OneWay.of(people);
    double within = found.ssWithin() / found.dfWithin();
    double between = (found.ssBetween() / found.dfBetween() - within) / 3;
    double repeatability = Math.sqrt(within);
    double reproducibility = Math.sqrt(within + between);
    says(
        pack,
        "**%s** points".formatted(Show.fixed(repeatability, 3)),
        "2.8 × 1.732 = **%s**".formatted(Show.fixed(2.8 * repeatability, 2)),
        "**%s** points".formatted(Show.fixed(reproducibility, 3)),
        "2.8 × 3.317 = **%s**".formatted(Show.fixed(2.8 * reproducibility, 2)));
    for (Sample each : people) {
      String line = "| %s | %s |".formatted(Show.upTo(each.summary().mean(), 1), spread(each));
      assertThat(Packs.words(Packs.named(pack))).contains(line);
    }
  }

  private static String spread(Sample sample) {
    double most = sample.values().stream().mapToDouble(each -> each).max().orElseThrow();
    double least = sample.values().stream().mapToDouble(each -> each).min().orElseThrow();
    return Show.upTo(most - least, 1) + " points";
  }

  @Test
  void whatAPatternAsks() {
    String pack = "what-a-pattern-asks";
    board(pack, "100 × (140 − 100) ÷ 100", new GaugeNeed(100, 140).percent(), 1, " % |");
    board(pack, "100 × (125 − 100) ÷ 100", new GaugeNeed(100, 125).percent(), 1, " % |");
    board(pack, "100 × (120 − 80) ÷ 80", new GaugeNeed(80, 120).percent(), 1, " % |");
    double recovery = Recovery.ofExtension(100, 150, 108);
    board(pack, "100 × (150 − 108) ÷ (150 − 100)", recovery, 1, " % |");
    board(pack, "46, 48, 50", new Sample("a", List.of(46.0, 48.0, 50.0)).summary().mean(), 1, " |");
    board(pack, "38, 41, 43", new Sample("b", List.of(38.0, 41.0, 43.0)).summary().mean(), 1, " |");
    board(pack, "33, 34, 36", new Sample("c", List.of(33.0, 34.0, 36.0)).summary().mean(), 1, " |");
    assertThat(new GaugeNeed(4, 5).percent()).isEqualTo(25);
    says(pack, "4 inches that must reach 5 are 25 %");
  }

  @Test
  void theOverlockersAllowance() {
    String pack = "overlocker-and-allowance";
    board(pack, "10 − 6", AllowanceChange.eachEdge(10, 6), 1, " mm wider");
    board(pack, "2 × 4", AllowanceChange.girth(10, 6, 1), 1, " mm");
    says(
        pack,
        "**%s mm** wider".formatted(Show.upTo(AllowanceChange.girth(10, 6, 2), 1)),
        "**%s mm** wider".formatted(Show.upTo(AllowanceChange.girth(10, 6, 4), 1)),
        "2 × (15 − 6) = %s mm".formatted(Show.upTo(AllowanceChange.girth(15, 6, 1), 1)),
        "from 520 mm to %s mm".formatted(Show.upTo(CurvedEdge.neckline(520, 4, 6), 1)),
        "416 ÷ 496 = %s".formatted(Show.fixed(416 / CurvedEdge.neckline(520, 4, 6), 2)),
        "4 × 6.28 = %s mm".formatted(Show.upTo(CurvedEdge.change(4, 2 * Math.PI), 0)),
        "grown by %s %%".formatted(Show.upTo(LengthChange.percent(100, 104), 1)));
    assertThat(CurvedEdge.neckline(520, 4, 2 * Math.PI)).isCloseTo(495, within(0.5));
  }

  @Test
  void easeAndFit() {
    String pack = "ease-and-fit";
    for (int garment : List.of(850, 800)) {
      String strain = "100 × (940 − %d) ÷ %d".formatted(garment, garment);
      String percent = "100 × (−%d) ÷ 940".formatted(940 - garment);
      board(pack, strain, Ease.wornStrain(940, garment), 1, " % |");
      board(pack, garment + " − 940", Ease.mm(940, garment), 1, " mm |");
      board(pack, percent, Ease.percent(940, garment), 1, " % |");
    }
    used(Ease.wornStrain(940, 850), 50, "10.6 ÷ 50", "easy");
    used(Ease.wornStrain(940, 800), 35, "17.5 ÷ 35", "comfortable");
    used(Ease.wornStrain(940, 800), 25, "17.5 ÷ 25", "firm");
    double third = Ease.wornStrain(1000, 880);
    String answer = "(%s %%, and %s %%.)";
    says(
        pack,
        answer.formatted(Show.upTo(third, 1), Show.upTo(StretchUsed.share(third, 35), 0)),
        "The loss is %s %%".formatted(Show.upTo(LengthLost.percent(100, 95), 1)),
        "800 ÷ (1 − 0.05) = %s mm".formatted(Show.upTo(LengthLost.cut(800, 5), 0)));
  }

  private static void used(double strain, double stretch, String how, String band) {
    double share = StretchUsed.share(strain, stretch);
    board("ease-and-fit", how, share, 0, " % | " + band);
    assertThat(TABLES.garment().comfort())
        .filteredOn(each -> each.from() <= share && share < each.below())
        .extracting(ComfortBand::name)
        .containsExactly(band);
  }

  @Test
  void whichWayRound() {
    String pack = "which-way-round";
    double strain = Ease.wornStrain(613, 560);
    board(pack, "100 × (613 − 560) ÷ 560", strain, 2, " % |");
    board(pack, "9.46 ÷ 60", StretchUsed.share(strain, 60), 0, " %, easy |");
    board(pack, "9.46 ÷ 20", StretchUsed.share(strain, 20), 0, " %, comfortable |");
    double demand = Ease.wornStrain(310, 240);
    board(pack, "100 × (310 − 240) ÷ 240", demand, 1, " % |");
    board(pack, "29.2 + 5", demand + 5, 1, " % |");
    for (int length : List.of(140, 170, 155)) {
      says(pack, " %d mm |".formatted(length), " %d %% |".formatted(length - 100));
    }
  }

  @Test
  void hemsThatStretch() {
    String pack = "hems-that-stretch";
    double demand = Ease.wornStrain(1020, 920);
    board(pack, "100 × (1020 − 920) ÷ 920", demand, 1, " % |");
    board(pack, "10.9 + 10", demand + 10, 1, " % |");
    says(
        pack,
        "106 mm sewn, 103 mm pressed. It has grown by %s %%, and %s %% are left"
            .formatted(
                Show.upTo(LengthChange.percent(100, 106), 1),
                Show.upTo(LengthChange.percent(100, 103), 1)),
        "gave at 118 mm, thread below. %s %%"
            .formatted(Show.upTo(LengthChange.percent(100, 118), 1)));
  }

  @Test
  void bandsThatLieFlat() {
    String pack = "bands-that-lie-flat";
    for (String ratio : List.of("0.65", "0.75", "0.85", "1.00")) {
      BandPlan band = new BandPlan(188, Double.parseDouble(ratio), 15, 10, 10);
      says(
          pack,
          "| %s × 188 | %s mm | %s mm |"
              .formatted(ratio, Show.fixed(band.lengthMm(), 0), Show.fixed(band.cutLengthMm(), 0)));
    }
    BandPlan half = new BandPlan(188, 0.75, 15, 10, 10);
    assertThat(half.flatRatio(Math.PI)).isCloseTo(0.75, within(0.005));
    says(
        pack,
        "2 × 15 + 2 × 10 = **%s mm**".formatted(Show.upTo(half.cutWidthMm(), 1)),
        "100 × (188 − 141) ÷ 141 = **%s %%**".formatted(Show.upTo(half.strain(), 0)));
    BandPlan crew = new BandPlan(520, 0.78, 20, 10, 10);
    board(pack, "1 − 20 × 6 ÷ 520", crew.flatRatio(6), 2, " |");
    board(pack, "0.78 × 520", crew.lengthMm(), 1, " mm |");
    board(pack, "405.6 + 2 × 10", crew.cutLengthMm(), 1, " mm |");
    board(pack, "100 × (520 − 405.6) ÷ 405.6", crew.strain(), 1, " % |");
    double head = Ease.wornStrain(560, crew.lengthMm());
    board(pack, "100 × (560 − 405.6) ÷ 405.6", head, 1, " % |");
    board(pack, "38.1 + 10", head + 10, 1, " %, and the rib has 80 %");
    assertThat(fit(crew.ratio() - crew.flatRatio(6))).isEqualTo("lies");
    assertThat(fit(0.65 - half.flatRatio(Math.PI))).isEqualTo("pulls");
    assertThat(fit(0)).isEqualTo("lies");
    assertThat(fit(0.85 - half.flatRatio(Math.PI))).isEqualTo("stands");
  }

  private static String fit(double overFlat) {
    return TABLES.garment().bandFits().stream()
        .filter(each -> each.from() <= overFlat && overFlat < each.below())
        .map(BandFit::key)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void detailsThatKeepTheStretch() {
    String pack = "details-that-keep-the-stretch";
    List<Double> motifs = List.of(20.0, 20.0);
    List<Double> gap = List.of(20.0);
    double go = LockedSpan.locked(motifs, gap, true);
    double each = LockedSpan.locked(motifs, gap, false);
    says(
        pack,
        "20 + 20 + 20 = %s mm".formatted(Show.upTo(go, 1)),
        "20 + 20 = %s mm".formatted(Show.upTo(each, 1)),
        "costs %s points"
            .formatted(
                Show.upTo(LockedSpan.left(60, each, 100) - LockedSpan.left(60, go, 100), 1)));
    board(pack, "60 × (1 − 60 ÷ 100)", LockedSpan.left(60, go, 100), 1, " % |");
    board(pack, "60 × (1 − 40 ÷ 100)", LockedSpan.left(60, each, 100), 1, " % |");
    says(pack, "held to 141 mm, at least 41 %", "held to 134 mm, at least 34 %");
  }

  @Test
  void theGarmentFromScraps() {
    String pack = "garment-from-scraps";
    double demand = Ease.wornStrain(220, 160);
    board(pack, "100 × (220 − 160) ÷ 160", demand, 1, " % |");
    board(pack, "160 + 2 × 10", 160 + 2 * 10, 1, " mm |");
    board(pack, "180 + 2 × 20", 180 + 2 * 20, 1, " mm |");
    double wider = Ease.wornStrain(220, 170);
    says(
        pack,
        "37.5 + 10 | **%s %%**".formatted(Show.upTo(demand + 10, 1)),
        "100 × (220 − 170) ÷ 170 = %s %%, with the margin %s %%"
            .formatted(Show.upTo(wider, 1), Show.upTo(wider + 10, 1)));
    PiecesPlan plan = (PiecesPlan) Packs.named(pack).plan();
    assertThat(plan.fixed().asked(1).needPercent()).isEqualTo(demand + 10);
    double clear = PackWorkedFiguresTest.clearOf(demand + 10);
    assertThat(plan.cloths().get(0).says())
        .contains("%s percent or more".formatted(Show.upTo(clear, 1)));
    says(
        pack,
        "47.5 + 5 = %s %%".formatted(Show.upTo(demand + 10 + 5, 1)),
        "**%s %%** or more".formatted(Show.upTo(clear, 1)),
        "only %s of a point more. That is **too close to call**"
            .formatted(Show.upTo(40 - (wider + 10), 1)),
        "of %s %% or more for this template"
            .formatted(Show.upTo(PackWorkedFiguresTest.clearOf(wider + 10), 1)));
    for (int length : List.of(130, 144, 155)) {
      says(pack, "gave at %d mm | %d %% |".formatted(length, length - 100));
    }
  }
}
