package walebook.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import walebook.act.classroom.SettingWords;
import walebook.record.Grain;
import walebook.words.Words;

/**
 * The findings of made classes, word for word as they were read and approved. A change here is to
 * be read as critically as a new text: does any sentence say more than its numbers?
 */
class FindingsExamplesTest {
  private static final List<Factor> CLOTH_AND_WIDTH = List.of(Factor.CLOTH, Factor.WIDTH);

  static Stream<Arguments> classes() {
    FairQuestion edges = FairQuestion.of(Outcome.EDGE_CHANGE, List.of(Factor.WIDTH));
    FairQuestion held = FairQuestion.of(Outcome.HELD, List.of(Factor.WIDTH));
    FairQuestion seams = FairQuestion.of(Outcome.SEAM_SHARE, List.of(Factor.WIDTH));
    FairQuestion times = FairQuestion.of(Outcome.TIME, List.of(Factor.WIDTH));
    FairQuestion grades = FairQuestion.of(Outcome.GRADE, List.of(Factor.WIDTH)).mattering(1.0);
    return Stream.of(
        Arguments.of("nothing", new MadeClass(), edges),
        Arguments.of("one-piece", new MadeClass().edge("Ada", 2, 3.5), edges),
        Arguments.of("one-student", oneStudent(), edges.mattering(2.0)),
        Arguments.of("one-level", oneLevel(), edges),
        Arguments.of("all-same", allSame(), edges.mattering(2.0)),
        Arguments.of("nobody-failed", nobodyFailed(), held),
        Arguments.of("everyone-failed", everyoneFailed(), held),
        Arguments.of("few-rates", fewRates(), held),
        Arguments.of("disconnected", disconnected(), edges),
        Arguments.of("machines-apart", machines(), edges.withinMachines(true)),
        Arguments.of("confounded", confounded(), edges.mattering(1.0)),
        Arguments.of("bounds", bounds(), seams.mattering(10.0)),
        Arguments.of("one-held", oneHeld(), seams),
        Arguments.of("held-above-its-cloth", oneHeld().held("Cy", 3, 160), seams),
        Arguments.of("looks-real-and-is-not", noise(), edges.mattering(3.0)),
        Arguments.of("small-for-sure", smallForSure(), edges.mattering(2.0)),
        Arguments.of("nobody-twice", nobodyTwice(), edges),
        Arguments.of("one-odd-piece", oneOddPiece(), edges),
        Arguments.of("left-out", leftOut(), edges),
        Arguments.of("rates-differ", ratesDiffer(), held),
        Arguments.of("quicker", quicker(), times.mattering(1.0)),
        Arguments.of("two-cloths", twoCloths(), edges.by(CLOTH_AND_WIDTH)),
        Arguments.of("cloths-mixed", twoCloths(), edges),
        Arguments.of("cloths-alone", twoCloths(), edges.by(List.of(Factor.CLOTH))),
        Arguments.of("one-cloth-apart", oneClothApart(), edges.by(CLOTH_AND_WIDTH)),
        Arguments.of("each-its-own-cloth", ownCloths(), edges.by(CLOTH_AND_WIDTH)),
        Arguments.of("grains", grains(), edges.by(List.of(Factor.GRAIN, Factor.WIDTH))),
        Arguments.of("looks", looks(), grades),
        Arguments.of("looks-alone", looksAlone(), grades),
        Arguments.of("one-slow-piece", oneSlowPiece(), times.mattering(1.0)));
  }

  /** Wide adds 2 on either cloth; the rib gives 6 more than the jersey whatever is sewn. */
  private static MadeClass twoCloths() {
    Random random = new Random(12);
    MadeClass made = new MadeClass();
    for (String cloth : List.of("Plain jersey", "Soft rib")) {
      made.onCloth(cloth);
      for (int student = 0; student < 6; student++) {
        double base = 2 + (cloth.equals("Soft rib") ? 6 : 0) + 0.4 * student;
        made.edge("S" + student, 1, round(base + 0.5 * random.nextGaussian()));
        made.edge("S" + student, 3, round(base + 2 + 0.5 * random.nextGaussian()));
      }
    }
    return made;
  }

  private static MadeClass oneClothApart() {
    return new MadeClass()
        .onCloth("Plain jersey")
        .edge("Ada", 1, 1.0, 2.0)
        .edge("Ada", 3, 3.0)
        .onCloth("Soft rib")
        .edge("Ada", 1, 4.0, 5.0)
        .edge("Bo", 3, 6.0);
  }

  private static MadeClass ownCloths() {
    MadeClass made = new MadeClass().onCloth("Plain jersey").edge("Ada", 1, 2.0, 2.5);
    return made.onCloth("Soft rib").edge("Ada", 3, 6.0).edge("Bo", 3, 6.5);
  }

  private static MadeClass grains() {
    MadeClass made = new MadeClass();
    for (String who : List.of("Ada", "Bo", "Cy")) {
      double hands = who.length();
      made.along(Grain.COURSE).edge(who, 1, hands, hands + 0.5).edge(who, 3, hands + 4);
      made.along(Grain.WALE).edge(who, 1, hands + 0.5, hands + 1).edge(who, 3, hands + 3.5);
    }
    return made;
  }

  private static MadeClass oneStudent() {
    return new MadeClass().edge("Ada", 1, 2.0, 2.5, 2.2).edge("Ada", 3, 6.0, 6.4).aside();
  }

  /** So few looks that the limits of their difference leave the scale. */
  private static MadeClass looks() {
    return new MadeClass()
        .grade("Ada", 1, 3, 5)
        .grade("Ada", 3, 5)
        .grade("Bo", 1, 2)
        .grade("Bo", 3, 5);
  }

  private static MadeClass looksAlone() {
    return new MadeClass().grade("Ada", 2, 5, 3).grade("Bo", 2, 5).grade("Cy", 2, 5);
  }

  private static MadeClass oneLevel() {
    return new MadeClass().edge("Ada", 2, 1.5, 2.5).edge("Bo", 2, 3.0).edge("Cy", 2, 2.0);
  }

  private static MadeClass allSame() {
    return new MadeClass().edge("Ada", 1, 2, 2).edge("Ada", 3, 2, 2).edge("Bo", 3, 2);
  }

  private static MadeClass nobodyFailed() {
    return new MadeClass().held("Ada", 1, 90, 92).held("Bo", 2, 95, 91).held("Cy", 3, 99);
  }

  private static MadeClass everyoneFailed() {
    return new MadeClass().gave("Ada", 1, 30, 32).gave("Bo", 2, 35, 31).gave("Cy", 3, 39);
  }

  private static MadeClass fewRates() {
    return new MadeClass()
        .held("Ada", 3, 90, 92)
        .held("Bo", 3, 95)
        .gave("Bo", 3, 60)
        .held("Ada", 1, 91)
        .held("Cy", 1, 94)
        .gave("Cy", 1, 41, 40, 44);
  }

  private static MadeClass disconnected() {
    return new MadeClass()
        .edge("Ada", 1, 1.0, 1.4)
        .edge("Ada", 2, 2.0)
        .edge("Bo", 3, 5.0, 5.6)
        .edge("Cy", 3, 5.5)
        .edge("Cy", 5, 6.0);
  }

  /** Ada sews on both machines, but no setting on both. */
  private static MadeClass machines() {
    MadeClass made = new MadeClass().on("4").edge("Ada", 1, 1.0, 1.5).edge("Ada", 2, 2.0, 2.5);
    made.edge("Bo", 1, 1.5).edge("Bo", 2, 3.0);
    return made.on("7").edge("Ada", 3, 4.0, 4.5).edge("Ada", 5, 5.0);
  }

  /** Beginners sewed narrow, the practised wide; wide is worse by 3 in everybody's hands. */
  private static MadeClass confounded() {
    Random random = new Random(5);
    MadeClass made = new MadeClass();
    for (int student = 0; student < 8; student++) {
      double hands = student < 4 ? 6 : 1;
      for (int i = 0; i < (student < 4 ? 4 : 2); i++) {
        made.edge("S" + student, 1, round(hands + 0.5 * random.nextGaussian()));
      }
      for (int i = 0; i < (student < 4 ? 2 : 4); i++) {
        made.edge("S" + student, 3, round(hands + 3 + 0.5 * random.nextGaussian()));
      }
    }
    return made;
  }

  private static MadeClass bounds() {
    return new MadeClass()
        .gave("Ada", 1, 40, 44, 47)
        .gave("Bo", 1, 50, 52, 41)
        .gave("Cy", 1, 46, 48, 43)
        .gave("Ada", 2, 70)
        .held("Bo", 2, 98, 97)
        .held("Cy", 3, 99, 96)
        .gave("Ada", 3, 92);
  }

  private static MadeClass oneHeld() {
    return new MadeClass().gave("Ada", 1, 40, 44).gave("Bo", 1, 50, 52).held("Bo", 3, 98);
  }

  /** Five settings that do nothing, and scatter enough for a best and a worst to be seen. */
  private static MadeClass noise() {
    Random random = new Random(8);
    MadeClass made = new MadeClass();
    for (int student = 0; student < 6; student++) {
      for (int width = 1; width <= 5; width++) {
        made.edge("S" + student, width, round(4 + 2 * random.nextGaussian()));
      }
    }
    return made;
  }

  private static MadeClass smallForSure() {
    Random random = new Random(9);
    MadeClass made = new MadeClass();
    for (int student = 0; student < 8; student++) {
      for (int i = 0; i < 3; i++) {
        made.edge("S" + student, 1, round(2 + student * 0.5 + 0.4 * random.nextGaussian()));
        made.edge("S" + student, 3, round(2.1 + student * 0.5 + 0.4 * random.nextGaussian()));
      }
    }
    return made;
  }

  private static MadeClass nobodyTwice() {
    return new MadeClass().edge("Ada", 1, 2.0).edge("Ada", 3, 4.0).edge("Bo", 5, 3.0);
  }

  /** Nine logged: six count, one set aside, two pulled only. */
  private static MadeClass leftOut() {
    return new MadeClass()
        .edge("Ada", 1, 2.0, 2.4)
        .edge("Ada", 3, 4.0, 4.2)
        .edge("Bo", 1, 3.0)
        .edge("Bo", 3, 5.2, 20.0)
        .aside()
        .gave("Bo", 3, 40, 42);
  }

  private static MadeClass ratesDiffer() {
    MadeClass made = new MadeClass();
    for (String who : List.of("Ada", "Bo", "Cy", "Di")) {
      made.held(who, 3, 90, 92).gave(who, 1, 40, 44);
    }
    return made;
  }

  /** The slow sewed wide and the quick narrow; wide takes 2 minutes less in everybody's hands. */
  private static MadeClass quicker() {
    Random random = new Random(6);
    MadeClass made = new MadeClass();
    for (int student = 0; student < 8; student++) {
      double hands = student < 4 ? 9 : 5;
      for (int i = 0; i < (student < 4 ? 1 : 3); i++) {
        made.minutes("S" + student, 1, round(hands + 0.6 * random.nextGaussian()));
      }
      for (int i = 0; i < (student < 4 ? 3 : 1); i++) {
        made.minutes("S" + student, 3, round(hands - 2 + 0.6 * random.nextGaussian()));
      }
    }
    return made;
  }

  /** Settings that take alike, and one piece that was sewn over a chat. */
  private static MadeClass oneSlowPiece() {
    return new MadeClass()
        .minutes("Ada", 1, 4.0, 4.5)
        .minutes("Ada", 3, 4.5, 4.0)
        .minutes("Bo", 1, 5.0)
        .minutes("Bo", 3, 25.0)
        .minutes("Cy", 1, 3.5)
        .minutes("Cy", 3, 4.0);
  }

  /** One piece far off that leads by its size, beside a smaller difference of many pieces. */
  private static MadeClass oneOddPiece() {
    return new MadeClass()
        .edge("Ada", 1, 1.0, 1.5, 2.0, 1.5)
        .edge("Ada", 2, 5.0, 5.5, 6.0, 5.5)
        .edge("Bo", 1, 2.0, 1.5, 1.0, 1.5)
        .edge("Bo", 2, 6.0, 5.5, 5.0, 5.5)
        .edge("Ada", 5, 40.0);
  }

  private static double round(double value) {
    return Math.rint(2 * value) / 2;
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("classes")
  void sayWhatWasApproved(String name, MadeClass made, FairQuestion question) throws IOException {
    MeasuringError measuring = MeasuringError.of(question.outcome(), null, null);
    FairComparison found = made.ask(question, measuring);
    Words words = Words.english();
    SettingWords settings = new SettingWords(words);
    StringBuilder text = new StringBuilder();
    FairFindings.of(found, levels -> settings.setting(found.factors(), levels))
        .forEach(each -> text.append(words.say(each)).append('\n'));
    assertThat(text.toString()).doesNotContain("NaN", "Infinity", "[compare", "{", "@");
    assertThat(text.toString()).isEqualTo(approved(name));
  }

  private static String approved(String name) throws IOException {
    String file = "findings/" + name + ".txt";
    try (InputStream in =
        Objects.requireNonNull(FindingsExamplesTest.class.getResourceAsStream(file), file)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
