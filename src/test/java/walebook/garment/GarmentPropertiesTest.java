package walebook.garment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static walebook.Seeded.between;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import walebook.Seeded;
import walebook.working.Verdict;

class GarmentPropertiesTest {
  private static final List<Verdict> RISING =
      List.of(Verdict.NOT_MET, Verdict.TOO_CLOSE, Verdict.MET);

  @Test
  void scaleCancels() {
    Seeded.cases(
        1,
        random -> {
          double body = between(random, 300, 1500);
          double finished = body * between(random, 0.5, 1.3);
          double scale = between(random, 0.1, 10);
          assertThat(Ease.wornStrain(body * scale, finished * scale))
              .isCloseTo(Ease.wornStrain(body, finished), within(1e-9));
          assertThat(new BandPlan(body * scale, 0.8, 20 * scale, 6, 6).flatRatio(5))
              .isCloseTo(new BandPlan(body, 0.8, 20, 6, 6).flatRatio(5), within(1e-9));
        });
  }

  @Test
  void aLargerOpeningAndAStretchierLinkAreNeverWorse() {
    Seeded.cases(
        2000,
        random -> {
          double over = between(random, 200, 1200);
          double opening = over * between(random, 0.5, 1.2);
          double stretch = between(random, 0, 120);
          double u = between(random, 0, 3);
          Verdict before = verdict(opening, over, stretch, u);
          Verdict larger = verdict(opening * between(random, 1, 1.5), over, stretch, u);
          Verdict further = verdict(opening, over, stretch + between(random, 0, 50), u);
          assertThat(RISING.indexOf(larger)).isGreaterThanOrEqualTo(RISING.indexOf(before));
          assertThat(RISING.indexOf(further)).isGreaterThanOrEqualTo(RISING.indexOf(before));
        });
  }

  private static Verdict verdict(double opening, double over, double stretch, double u) {
    Link cloth = Link.gave(LinkKind.CLOTH, stretch, u, 3, 1);
    return Opening.of(new OpeningQuestion(opening, over, 10, List.of(cloth))).verdict();
  }

  @Test
  void oneMoreLinkIsNeverBetter() {
    Seeded.cases(
        3000,
        random -> {
          List<Link> links = new ArrayList<>();
          links.add(link(random, LinkKind.CLOTH));
          links.add(link(random, LinkKind.SEAM));
          Verdict two = Opening.of(new OpeningQuestion(500, 600, 10, links)).verdict();
          links.add(link(random, LinkKind.HEM));
          Verdict three = Opening.of(new OpeningQuestion(500, 600, 10, links)).verdict();
          if (three == Verdict.MET) {
            assertThat(two).isEqualTo(Verdict.MET);
          }
          if (two == Verdict.NOT_MET) {
            assertThat(three).isEqualTo(Verdict.NOT_MET);
          }
        });
  }

  private static Link link(Random random, LinkKind kind) {
    double percent = between(random, 0, 100);
    return switch (random.nextInt(4)) {
      case 0 -> Link.unknown(kind);
      case 1 -> Link.model(kind, percent);
      case 2 -> Link.held(kind, percent, 0.5, 1, 1);
      default -> Link.gave(kind, percent, 0.5, 1, 1);
    };
  }

  @Test
  void theLeastOpeningPassesAndAnyLessDoesNot() {
    Seeded.cases(
        4000,
        random -> {
          double stretch = between(random, 12, 120);
          Link cloth = Link.gave(LinkKind.CLOTH, stretch, 0, 3, 1);
          OpeningQuestion question = new OpeningQuestion(100, 600, 10, List.of(cloth));
          double least = question.leastOpening(stretch);
          assertThat(verdict(least + 0.001, 600, stretch, 0)).isEqualTo(Verdict.MET);
          assertThat(verdict(least - 0.001, 600, stretch, 0)).isEqualTo(Verdict.NOT_MET);
        });
  }

  @Test
  void marksAddUpToTheBandAndRise() {
    Seeded.cases(
        5000,
        random -> {
          List<Segment> segments = new ArrayList<>();
          double opening = 0;
          int count = 1 + random.nextInt(8);
          for (int i = 0; i < count; i++) {
            Segment segment = new Segment(between(random, 20, 200), between(random, 0.5, 3));
            segments.add(segment);
            opening += segment.lengthMm();
          }
          double band = opening * between(random, 0.85, 1);
          List<BandMark> marks = SegmentMarks.of(segments, band);
          assertThat(marks.get(count).bandMm()).isCloseTo(band, within(1e-6));
          assertThat(marks.get(count).openingMm()).isCloseTo(opening, within(1e-6));
          for (int i = 1; i <= count; i++) {
            assertThat(marks.get(i).bandMm()).isGreaterThan(marks.get(i - 1).bandMm());
          }
          List<BandMark> quarters = QuarterMarks.of(opening, band, 4);
          assertThat(4 * quarters.get(1).bandMm()).isCloseTo(band, within(1e-6));
        });
  }

  @Test
  void turningTheClothSwapsTheTwoAnswers() {
    Seeded.cases(
        6000,
        random -> {
          GrainStretch one = new GrainStretch(between(random, 0, 100), 0.5);
          GrainStretch two = new GrainStretch(between(random, 0, 100), 0.5);
          WhichWay.Asked asked =
              new WhichWay.Asked(900, between(random, 700, 950), new GaugeNeed(100, 130), 60);
          ClothStretch cloth = new ClothStretch(one, two);
          ClothStretch turned = new ClothStretch(two, one);
          for (GrainRound grain : GrainRound.values()) {
            assertThat(WhichWay.passes(asked, cloth.of(grain)))
                .isEqualTo(WhichWay.passes(asked, turned.of(grain.other())));
          }
        });
  }

  @Test
  void draftedGirthIsStretchedAsWanted() {
    Seeded.cases(
        7000,
        random -> {
          double body = between(random, 200, 1500);
          double strain = between(random, 0, 100);
          double cut = NegativeEase.of(body, strain).value().value();
          assertThat(Ease.wornStrain(body, cut)).isCloseTo(strain, within(1e-9));
          assertThat(-Ease.percent(body, cut))
              .isCloseTo(NegativeEase.reduction(strain), within(1e-9));
        });
  }
}
