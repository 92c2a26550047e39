package walebook.tables;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import walebook.cloth.FabricKind;
import walebook.problem.Problem;
import walebook.record.FaultPlace;
import walebook.record.FaultWhen;
import walebook.record.Keyed;
import walebook.record.MachineKind;
import walebook.record.NeedlePoint;
import walebook.record.Step;
import walebook.seam.Cause;
import walebook.seam.Clue;
import walebook.seam.Factor;
import walebook.seam.Fault;
import walebook.seam.Remedy;
import walebook.seam.StitchType;
import walebook.seam.Trait;

/** The fault catalogue against the other tables: a word that nothing else knows would never fit. */
class FaultTableTest {
  private static final SharedTables TABLES = SharedTables.read();

  private static Set<String> keys(Keyed[] all) {
    return Stream.of(all).map(Keyed::key).collect(Collectors.toSet());
  }

  private static Map<Trait, Set<String>> known() {
    Set<String> yesNo = Set.of("yes", "no");
    return Map.ofEntries(
        Map.entry(Trait.STITCH_GIVES, yesNo),
        Map.entry(Trait.STRETCHIEST, yesNo),
        Map.entry(
            Trait.STITCH,
            TABLES.stitchTypes().stream().map(StitchType::key).collect(Collectors.toSet())),
        Map.entry(Trait.NEEDLE_POINT, keys(NeedlePoint.values())),
        Map.entry(Trait.THREAD, Set.of("cotton", "polyester", "textured")),
        Map.entry(Trait.TENSION, keys(Step.values())),
        Map.entry(Trait.PRESSURE, keys(Step.values())),
        Map.entry(Trait.STABILISER, Set.of("some", "none")),
        Map.entry(Trait.MACHINE, keys(MachineKind.values())),
        Map.entry(
            Trait.STRUCTURE,
            TABLES.fabricKinds().stream().map(FabricKind::structure).collect(Collectors.toSet())),
        Map.entry(Trait.SEEN, keys(FaultWhen.values())),
        Map.entry(Trait.PLACE, keys(FaultPlace.values())));
  }

  @Test
  void everyWordOfAClueIsOneThatAPieceCanHave() {
    Map<Trait, Set<String>> known = known();
    List<String> unknown = new ArrayList<>();
    for (Fault fault : TABLES.faults()) {
      for (Cause cause : fault.causes()) {
        for (Clue clue : cause.clues()) {
          if (clue instanceof Clue.Words words) {
            Set<String> all = known.getOrDefault(clue.trait(), Set.of());
            Stream.concat(words.fits().stream(), words.rulesOut().stream())
                .filter(word -> !word.equals("*") && !all.contains(word))
                .forEach(word -> unknown.add(fault.key() + ": " + clue.trait() + "=" + word));
          } else {
            assertThat(known).as(fault.key()).doesNotContainKey(clue.trait());
          }
        }
      }
    }
    assertThat(unknown).isEmpty();
  }

  @Test
  void everyFaultIsFirstSeenAtATimeThatAPieceCanHave() {
    assertThat(TABLES.faults())
        .allSatisfy(
            each -> assertThat(each.firstSeen()).as(each.key()).isIn(keys(FaultWhen.values())));
  }

  @Test
  void anUnknownTimeIsTold() {
    String row = "a,b,c,\"slack {; 1}\",\"lower {tension-top,down,1 step}\",count,worn,guide\n";
    assertThat(
            FaultTable.FAULTS
                .read(
                    new StringReader(
                        "key,name,looks_like,causes,remedies,measure,seen,source\n" + row))
                .problems())
        .extracting(Problem::code)
        .containsExactly("table.word");
  }

  @Test
  void everyRemedyIsReachedByACause() {
    for (Fault fault : TABLES.faults()) {
      Set<Remedy> reached = new HashSet<>();
      fault.causes().forEach(cause -> reached.addAll(cause.remedies()));
      assertThat(reached).as(fault.key()).containsAll(fault.remedies());
    }
  }

  @Test
  void everyStepIsOneThatItsFactorCanTake() {
    Set<String> wrong = new TreeSet<>();
    Set<String> points = keys(NeedlePoint.values());
    Set<String> stitches =
        TABLES.stitchTypes().stream().map(StitchType::key).collect(Collectors.toSet());
    for (Fault fault : TABLES.faults()) {
      for (Remedy each : fault.remedies()) {
        boolean moves = each.direction() != Remedy.Direction.CHANGE;
        boolean right =
            switch (each.factor()) {
              case WIDTH, LENGTH ->
                  moves ? each.step().matches("[0-9.]+ mm") : each.step().isEmpty();
              case DIFFERENTIAL_FEED -> moves && each.size() != null;
              case TENSION_TOP, PRESSURE -> moves && each.step().equals("1 step");
              case NEEDLE_SIZE -> moves && each.step().equals("one size");
              case NEEDLE_POINT -> points.contains(each.step());
              case STITCH ->
                  each.stitches().stream().allMatch(to -> stitches.contains(to.stitch()));
              case THREAD, STABILISER -> !each.step().isEmpty();
              default -> true;
            };
        if (!right) {
          wrong.add(fault.key() + ": " + each);
        }
      }
    }
    assertThat(wrong).isEmpty();
  }

  @Test
  void everyFactorIsUsedSomewhere() {
    Set<Factor> used = new HashSet<>();
    TABLES.faults().forEach(fault -> fault.remedies().forEach(each -> used.add(each.factor())));
    assertThat(used).containsExactlyInAnyOrder(Factor.values());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "tension too tight",
        "tension too tight {tension=higher/lower}",
        "tension too tight {tension=higher/lower; 2}",
        "tension too tight {tension=higher/lower; 0}",
        "tension too tight {tension=higher/lower; one}"
      })
  void aCauseWithoutItsRemediesIsTold(String cause) {
    assertThat(codes(cause)).contains("table.cause");
  }

  @ParameterizedTest
  @ValueSource(strings = {"luck=good/bad", "tension>higher", "length<=short", "length"})
  void aClueThatNothingCanMeetIsTold(String clue) {
    assertThat(codes("tension too tight {" + clue + "; 1}")).contains("table.clue");
  }

  @Test
  void aSizeThatFitsAndIsRuledOutAtOnceIsTold() {
    assertThat(codes("stitch too long {length>=2/3; 1}")).contains("table.range");
  }

  private static List<String> codes(String cause) {
    return FaultTable.FAULTS
        .read(
            new StringReader(
                "key,name,looks_like,causes,remedies,measure,seen,source\n"
                    + "a,b,c,\""
                    + cause
                    + "\",\"lower {tension-top,down,1 step}\",count,sewn,guide\n"))
        .problems()
        .stream()
        .map(Problem::code)
        .toList();
  }
}
