package walebook.seam;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import walebook.Seeded;
import walebook.tables.SharedTables;

/**
 * The order of causes. Every case is common practice, as the fault catalogues of class leaflets and
 * machine manuals agree on: give before strength, needle before timing, pressure before handling.
 */
class LikelyCausesTest {
  private static final List<Fault> FAULTS = SharedTables.read().faults();
  private static final List<Integer> SIZES =
      SharedTables.read().needleSizes().stream().map(NeedleSize::nm).toList();

  private static Fault fault(String key) {
    return FAULTS.stream().filter(each -> each.key().equals(key)).findFirst().orElseThrow();
  }

  /** Traits written {@code length=1.5 needle-point=universal}. */
  private static PieceAtHand piece(String traits, String set) {
    Map<Trait, Known> known = new EnumMap<>(Trait.class);
    for (String[] each : pairs(traits)) {
      Trait trait =
          Arrays.stream(Trait.values())
              .filter(one -> one.key().equals(each[0]))
              .findFirst()
              .orElseThrow();
      known.put(
          trait,
          each[1].matches("[0-9.]+")
              ? Known.number(Double.parseDouble(each[1]), each[1])
              : Known.word(each[1], each[1]));
    }
    Map<Factor, String> now = new EnumMap<>(Factor.class);
    for (String[] each : pairs(set)) {
      Factor factor =
          Arrays.stream(Factor.values())
              .filter(one -> one.key().equals(each[0]))
              .findFirst()
              .orElseThrow();
      now.put(factor, each[1]);
    }
    return new PieceAtHand(
        known, now, Set.of(), List.of("301", "304", "514"), SIZES, null, Map.of(), Set.of());
  }

  private static List<String[]> pairs(String text) {
    return Arrays.stream(text.split(" ", -1))
        .filter(each -> !each.isEmpty())
        .map(each -> each.split("=", -1))
        .toList();
  }

  @ParameterizedTest(name = "{0} with {1}: {2}")
  @CsvSource({
    // Common practice: a straight stitch has no give, so it is looked at before all else.
    "popped-stitches, stitch-gives=no length=2.5 tension=normal, a stitch without give",
    "popped-stitches, stitch=304 stitch-gives=yes width=1 length=2.5, zigzag too narrow",
    "popped-stitches, stitch-gives=yes width=5 length=3.5, stitch too long",
    "popped-stitches, stitch-gives=yes width=5 length=1.5 tension=higher, tension too tight",
    "popped-stitches, stitch-gives=yes width=5 length=1.5 thread=cotton, weak or cotton thread",
    // Common practice: elastane asks for a stretch needle; the needle comes before the timing.
    "skipped-stitches, elastane=8 needle-point=universal, blunt needle or wrong point",
    "skipped-stitches, elastane=8 needle-point=jersey, elastane grips the needle",
    "skipped-stitches, elastane=0 needle-point=stretch pressure=lower, too little pressure",
    // Common practice: pressure and stitch density wave a seam; seen unpressed it was no iron.
    "wavy-seam, pressure=higher length=2.5, presser foot presses too hard",
    "wavy-seam, pressure=lower length=1 seen=sewn, stitch too dense",
    "wavy-seam, pressure=lower length=2.5 seen=pressed, iron dragged along it",
    "wavy-seam, feed=1 pressure=normal length=2.5, 'no differential feed, or too little'",
    "frilled-edge, feed=0.8 length=2, differential feed under 1",
    "puckering, tension=higher, tension too tight",
    "puckering, tension=lower feed=1 seen=washed layers=1, thread shrank in the wash",
    "tunnelling, stitch=304 tension=normal width=4 layers=1 stabiliser=some, zigzag too wide on a"
        + " single layer",
    "needle-holes, needle-point=universal, wrong point cuts the yarn",
    "needle-holes, needle-point=jersey needle-size=100, needle too thick",
    "grinning, tension=lower, needle tension too slack",
    "grinning, tension=normal stitch=504, narrow three-thread overlock",
    "hem-snaps, stitch-gives=no, straight hem",
    "elastane-damage, elastane=18 needle-point=jersey, needle cut it",
    "thread-nest, place=start, tails not held"
  })
  void theSettingsDecideWhatComesFirst(String fault, String traits, String first) {
    LikelyCause leading = LikelyCauses.of(fault(fault), piece(traits, "")).get(0);
    assertThat(leading.cause().says()).contains(first);
    assertThat(leading.standing()).isEqualTo(Standing.FITS);
    assertThat(leading.reasons()).isNotEmpty();
  }

  @ParameterizedTest(name = "{0} with {1} is hardly {2}")
  @CsvSource({
    // Common practice: what the settings exclude is not looked for first.
    "popped-stitches, stitch-gives=yes, a stitch without give",
    "skipped-stitches, elastane=0, elastane grips the needle",
    "skipped-stitches, needle-point=stretch elastane=12, elastane grips the needle",
    "wavy-seam, seen=sewn, iron dragged along it",
    "wavy-seam, pressure=lower, presser foot presses too hard",
    "puckering, seen=sewn, thread shrank in the wash",
    "grinning, stitch=514, narrow three-thread overlock",
    // A twin needle's two rows have no width that could be too narrow or too wide.
    "popped-stitches, stitch=301-twin tension=higher, zigzag too narrow",
    "tunnelling, stitch=301-twin, zigzag too wide on a single layer"
  })
  void whatIsRuledOutGoesLastAndSaysWhy(String fault, String traits, String last) {
    List<LikelyCause> causes = LikelyCauses.of(fault(fault), piece(traits, ""));
    LikelyCause out = causes.get(causes.size() - 1);
    assertThat(out.cause().says()).isEqualTo(last);
    assertThat(out.standing()).isEqualTo(Standing.RULED_OUT);
    assertThat(out.reasons())
        .isNotEmpty()
        .allMatch(each -> each.key().equals("seam.clue.rules-out"));
    assertThat(LikelyCauses.first(List.of(out))).isNull();
  }

  @Test
  void withNothingKnownTheTablesOrderStands() {
    for (Fault each : FAULTS) {
      assertThat(LikelyCauses.of(each, piece("", "")))
          .extracting(LikelyCause::cause)
          .containsExactlyElementsOf(each.causes());
    }
  }

  @ParameterizedTest(name = "{0}: {1} from {2} is {3}")
  @CsvSource({
    // The steps are the table's own; the limits are common practice for class machines.
    "wavy-seam, stitch too dense, length=1.5, 2",
    "popped-stitches, zigzag too narrow, width=1, 1.5",
    "popped-stitches, tension too tight, tension-top=normal, lower",
    "popped-stitches, a stitch without give, stitch=301, 304",
    "skipped-stitches, blunt needle, needle-point=jersey, stretch",
    "needle-holes, needle too thick, needle-size=90, 80",
    "thread-breaks, needle too small, needle-size=75, 80",
    "wavy-seam, no differential feed, differential-feed=1, 1.2",
    "wavy-seam, presser foot, pressure=higher, normal"
  })
  void theNextPieceGoesOneStep(String fault, String cause, String set, String to) {
    NextTry next = next(fault, cause, piece("", set));
    assertThat(next.to()).isEqualTo(to);
  }

  private static NextTry next(String fault, String cause, PieceAtHand piece) {
    return java.util.Objects.requireNonNull(
        LikelyCauses.of(fault(fault), piece).stream()
            .filter(each -> each.cause().says().startsWith(cause))
            .findFirst()
            .orElseThrow()
            .next());
  }

  /** One piece tries a change for all the causes it helps against. */
  @Test
  void noChangeIsOfferedTwice() {
    int goesOn = 0;
    int above = 0;
    for (Fault fault : FAULTS) {
      List<LikelyCause> causes = LikelyCauses.of(fault, piece("", "stitch=301 length=2.5"));
      List<String> offers = new ArrayList<>();
      for (LikelyCause each : causes) {
        boolean before =
            each.passedOver().stream().anyMatch(one -> one.key().equals("seam.next.above"));
        goesOn += before && each.next() != null ? 1 : 0;
        above += before && each.next() == null ? 1 : 0;
        if (each.next() != null) {
          offers.add(each.next().remedy().factor() + " " + each.next().remedy().says());
        }
      }
      assertThat(offers).as(fault.key()).doesNotHaveDuplicates();
    }
    assertThat(goesOn).isPositive();
    assertThat(above).isPositive();
  }

  @Test
  void aZigzagBeginsWithAWidthOfItsOwn() {
    NextTry next = next("popped-stitches", "a stitch without give", piece("", "stitch=301"));
    assertThat(next.to()).isEqualTo("304");
    assertThat(next.withWidth()).isEqualTo("1");
  }

  @Test
  void whatIsAtItsEndOrAlreadySoIsPassedOver() {
    LikelyCause pressure = LikelyCauses.of(fault("feed-marks"), piece("", "pressure=lower")).get(0);
    assertThat(pressure.next()).isNull();
    assertThat(pressure.passedOver()).extracting(m -> m.key()).contains("seam.next.at-the-end");
    NextTry needle = next("skipped-stitches", "blunt needle", piece("", "needle-point=stretch"));
    assertThat(needle.remedy().factor()).isEqualTo(Factor.NEEDLE_NEW);
  }

  @Test
  void whatTheChainTriedIsNotTriedAgain() {
    PieceAtHand before = piece("", "length=2");
    PieceAtHand tried =
        new PieceAtHand(
            Map.of(),
            before.set(),
            Set.of(),
            List.of(),
            SIZES,
            null,
            Map.of(Factor.LENGTH, Set.of("2", "2.5")),
            Set.of("guide the cloth without pulling"));
    List<LikelyCause> causes = LikelyCauses.of(fault("wavy-seam"), tried);
    for (LikelyCause each : causes) {
      if (each.cause().says().equals("stitch too dense")
          || each.cause().says().startsWith("cloth pulled")) {
        assertThat(each.next()).isNull();
        assertThat(each.passedOver()).extracting(m -> m.key()).containsExactly("seam.next.tried");
      }
    }
  }

  /**
   * Property: whatever is known, the order is the same each time, and nothing is lost or doubled.
   */
  @Test
  void theOrderIsDeterministicAndComplete() {
    Seeded.cases(
        7_100,
        random -> {
          Fault fault = FAULTS.get(random.nextInt(FAULTS.size()));
          PieceAtHand piece = anyPiece(random);
          List<LikelyCause> once = LikelyCauses.of(fault, piece);
          assertThat(LikelyCauses.of(fault, piece)).isEqualTo(once);
          assertThat(once)
              .extracting(LikelyCause::cause)
              .containsExactlyInAnyOrderElementsOf(fault.causes());
          assertThat(once).extracting(LikelyCause::standing).isSortedAccordingTo(Enum::compareTo);
          assertThat(once).allMatch(each -> !each.reasons().isEmpty());
        });
  }

  /**
   * Property: a next piece moves its one factor the way its remedy says, and never where it was.
   */
  @Test
  void everyNextPieceMovesItsOneFactor() {
    Seeded.cases(
        8_200,
        random -> {
          Fault fault = FAULTS.get(random.nextInt(FAULTS.size()));
          PieceAtHand piece = anyPiece(random);
          for (LikelyCause each : LikelyCauses.of(fault, piece)) {
            NextTry next = each.next();
            if (next != null && !next.to().isEmpty()) {
              assertThat(next.to()).isNotEqualTo(next.from());
              boolean sized = next.from().matches("[0-9.]+") && next.to().matches("[0-9.]+");
              if (sized && next.remedy().factor() != Factor.STITCH) {
                boolean up = next.remedy().direction() == Remedy.Direction.UP;
                assertThat(Double.parseDouble(next.to()) > Double.parseDouble(next.from()))
                    .isEqualTo(up);
              }
            }
          }
        });
  }

  private static PieceAtHand anyPiece(Random random) {
    Map<Trait, Known> traits = new HashMap<>();
    List<String> words = new ArrayList<>(List.of("yes", "no", "lower", "normal", "higher", "some"));
    words.addAll(List.of("universal", "stretch", "sewn", "washed", "single-jersey", "none"));
    for (Trait each : Trait.values()) {
      if (random.nextBoolean()) {
        traits.put(
            each,
            random.nextBoolean()
                ? Known.number(Math.round(random.nextDouble() * 50) / 10.0, "so")
                : Known.word(words.get(random.nextInt(words.size())), "so"));
      }
    }
    Map<Factor, String> set = new EnumMap<>(Factor.class);
    set.put(Factor.STITCH, List.of("301", "304", "504").get(random.nextInt(3)));
    set.put(Factor.LENGTH, String.valueOf((5 + random.nextInt(40)) / 10.0));
    set.put(Factor.WIDTH, String.valueOf((5 + random.nextInt(60)) / 10.0));
    set.put(Factor.NEEDLE_SIZE, String.valueOf(SIZES.get(random.nextInt(SIZES.size()))));
    set.put(Factor.NEEDLE_POINT, List.of("jersey", "stretch").get(random.nextInt(2)));
    set.put(Factor.PRESSURE, List.of("lower", "normal", "higher").get(random.nextInt(3)));
    return new PieceAtHand(
        traits,
        set,
        Set.of(),
        List.of("301", "304", "504", "514"),
        SIZES,
        null,
        Map.of(),
        Set.of());
  }
}
