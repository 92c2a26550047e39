package walebook.compare.assessed;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import walebook.record.CheckedBy;
import walebook.record.Criterion;
import walebook.record.Marking;
import walebook.record.PieceCheck;
import walebook.record.Stamp;
import walebook.record.Student;
import walebook.record.Tier;
import walebook.words.Words;

/** Students against criteria: what must hold whatever was tagged and marked. */
class CoverageTest {
  private static final Stamp FRESH = Stamp.fresh(Instant.EPOCH);
  private static final LocalDate DAY = LocalDate.of(2026, 10, 5);

  private final Random random = new Random(41);

  private record Case(List<Criterion> criteria, List<Student> students, List<AssessedPiece> all) {
    Coverage coverage() {
      return Coverage.of(criteria, students, all);
    }
  }

  private Case made() {
    UUID inClass = UUID.randomUUID();
    List<Criterion> criteria = new ArrayList<>();
    for (int i = 1; i <= random.nextInt(6); i++) {
      criteria.add(
          new Criterion(UUID.randomUUID(), inClass, "1." + i, "says", i, randomLook(), FRESH));
    }
    List<Student> students = new ArrayList<>();
    for (int i = 1; i <= random.nextInt(5); i++) {
      students.add(new Student(UUID.randomUUID(), "N" + i, "S" + i, Tier.STANDARD, FRESH));
    }
    List<AssessedPiece> pieces = new ArrayList<>();
    for (int i = 0; i < random.nextInt(20) && !students.isEmpty(); i++) {
      Set<UUID> tags = new HashSet<>();
      criteria.stream().filter(each -> random.nextBoolean()).forEach(each -> tags.add(each.id()));
      UUID student = students.get(random.nextInt(students.size())).id();
      pieces.add(piece(student, tags, random.nextInt(4) == 0 ? null : check(randomMarks())));
    }
    return new Case(criteria, students, pieces);
  }

  private Set<Marking> randomLook() {
    Set<Marking> looksAt = new HashSet<>();
    for (Marking each : Marking.values()) {
      if (random.nextInt(3) > 0) {
        looksAt.add(each);
      }
    }
    return looksAt.isEmpty() ? Criterion.ALL : looksAt;
  }

  private Map<Marking, Integer> randomMarks() {
    Map<Marking, Integer> marks = new EnumMap<>(Marking.class);
    for (Marking each : Marking.values()) {
      if (random.nextInt(6) > 0) {
        marks.put(each, random.nextInt(4));
      }
    }
    return marks;
  }

  private static AssessedPiece piece(UUID student, Set<UUID> tags, @Nullable PieceCheck tutor) {
    return new AssessedPiece(UUID.randomUUID(), "", student, null, DAY, tags, null, tutor, 0);
  }

  private static PieceCheck check(Map<Marking, Integer> marks) {
    return new PieceCheck(
        UUID.randomUUID(), UUID.randomUUID(), CheckedBy.TUTOR, marks, null, DAY, FRESH);
  }

  private static Map<Marking, Integer> all(int mark) {
    Map<Marking, Integer> marks = new EnumMap<>(Marking.class);
    for (Marking each : Marking.values()) {
      marks.put(each, mark);
    }
    return marks;
  }

  @Test
  void whatIsCoveredAndWhatIsMissingAreAllThereIs() {
    for (int round = 0; round < 2000; round++) {
      Case made = made();
      Coverage found = made.coverage();
      assertThat(found.covered() + found.missing().size())
          .isEqualTo(made.students().size() * made.criteria().size());
      for (Coverage.Row row : found.rows()) {
        assertThat(row.cells()).hasSize(made.criteria().size());
        for (Coverage.Cell cell : row.cells()) {
          assertThat(cell.passed()).isBetween(0, cell.evidence());
          assertThat(cell.passed() > 0).isEqualTo(cell.standing().isCovered());
          assertThat(cell.evidence() == 0).isEqualTo(cell.standing() == Standing.NOTHING);
        }
      }
    }
  }

  @Test
  void evidenceIsEachTagOnceAndTheOrderOfPiecesIsOfNoAccount() {
    for (int round = 0; round < 1000; round++) {
      Case made = made();
      int evidence =
          made.coverage().rows().stream()
              .flatMap(row -> row.cells().stream())
              .mapToInt(Coverage.Cell::evidence)
              .sum();
      assertThat(evidence)
          .isEqualTo(made.all().stream().mapToInt(each -> each.criteria().size()).sum());
      List<AssessedPiece> shuffled = new ArrayList<>(made.all());
      Collections.shuffle(shuffled, random);
      assertThat(Coverage.of(made.criteria(), made.students(), shuffled))
          .isEqualTo(made.coverage());
    }
  }

  @Test
  void onePieceMoreNeverUncoversAnything() {
    for (int round = 0; round < 1000; round++) {
      Case made = made();
      if (made.students().isEmpty()) {
        continue;
      }
      List<AssessedPiece> more = new ArrayList<>(made.all());
      Set<UUID> tags = new HashSet<>();
      made.criteria().forEach(each -> tags.add(each.id()));
      more.add(piece(made.students().get(0).id(), tags, check(randomMarks())));
      Coverage after = Coverage.of(made.criteria(), made.students(), more);
      assertThat(after.covered()).isGreaterThanOrEqualTo(made.coverage().covered());
      assertThat(after.missing().size()).isLessThanOrEqualTo(made.coverage().missing().size());
    }
  }

  @Test
  void aFailedPieceWellExplainedPassesInReasoning() {
    Map<Marking, Integer> failed = all(0);
    failed.put(Marking.REASONING, Marking.PASS);
    assertThat(Standing.of(check(failed))).isEqualTo(Standing.REASONED);
    assertThat(Standing.REASONED.isCovered()).isTrue();
    failed.put(Marking.REASONING, Marking.PASS - 1);
    assertThat(Standing.of(check(failed))).isEqualTo(Standing.BELOW);
    assertThat(Standing.of(check(all(Marking.PASS)))).isEqualTo(Standing.MET);
    assertThat(Standing.of(check(Map.of(Marking.CHOICE, 3)))).isEqualTo(Standing.UNCHECKED);
    assertThat(Standing.of(check(Map.of(Marking.CHOICE, 1)))).isEqualTo(Standing.BELOW);
    assertThat(Standing.of(null)).isEqualTo(Standing.UNCHECKED);
  }

  @Test
  void onlyTheMarksThatCountForACriterionCoverIt() {
    PieceCheck weakFinish =
        check(Map.of(Marking.CHOICE, 3, Marking.FINISH, 1, Marking.REASONING, 2));
    assertThat(Standing.of(weakFinish, Set.of(Marking.CHOICE))).isEqualTo(Standing.MET);
    assertThat(Standing.of(weakFinish, Set.of(Marking.REASONING))).isEqualTo(Standing.MET);
    assertThat(Standing.of(weakFinish, Set.of(Marking.FINISH))).isEqualTo(Standing.BELOW);
    assertThat(Standing.of(weakFinish, Set.of(Marking.TECHNIQUE))).isEqualTo(Standing.UNCHECKED);
    assertThat(Standing.of(weakFinish, Set.of(Marking.FINISH, Marking.REASONING)))
        .isEqualTo(Standing.REASONED);
    assertThat(Standing.of(weakFinish, Set.of(Marking.CHOICE, Marking.FINISH)))
        .isEqualTo(Standing.BELOW);
    assertThat(Standing.of(weakFinish, Criterion.ALL)).isEqualTo(Standing.REASONED);
    Student student = new Student(UUID.randomUUID(), "N", "S1", Tier.STANDARD, FRESH);
    List<Criterion> criteria = new ArrayList<>();
    Set<UUID> tags = new HashSet<>();
    for (Set<Marking> looksAt : List.of(Set.of(Marking.CHOICE), Set.of(Marking.FINISH))) {
      Criterion each = new Criterion(UUID.randomUUID(), student.id(), "1", "x", 1, looksAt, FRESH);
      criteria.add(each);
      tags.add(each.id());
    }
    Coverage found =
        Coverage.of(criteria, List.of(student), List.of(piece(student.id(), tags, weakFinish)));
    assertThat(found.rows().get(0).cells())
        .extracting(Coverage.Cell::standing)
        .containsExactly(Standing.MET, Standing.BELOW);
  }

  @Test
  void warnsFromFourteenDaysBeforeTheEnd() {
    LocalDate end = LocalDate.of(2026, 12, 18);
    List<LocalDate> lessons = List.of(DAY, LocalDate.of(2026, 12, 7), LocalDate.of(2026, 12, 14));
    assertThat(TimeLeft.of(end, lessons, LocalDate.of(2026, 12, 3)))
        .isEqualTo(new TimeLeft(TimeLeft.When.EARLY, 15, 2));
    assertThat(TimeLeft.of(end, lessons, LocalDate.of(2026, 12, 4)))
        .isEqualTo(new TimeLeft(TimeLeft.When.SOON, 14, 2));
    assertThat(TimeLeft.of(end, lessons, LocalDate.of(2026, 12, 14)).lessons()).isEqualTo(1);
    assertThat(TimeLeft.of(end, lessons, end)).isEqualTo(new TimeLeft(TimeLeft.When.SOON, 0, 0));
    assertThat(TimeLeft.of(end, lessons, end.plusDays(1)))
        .isEqualTo(new TimeLeft(TimeLeft.When.OVER, -1, 0));
    assertThat(TimeLeft.of(null, lessons, end).when()).isEqualTo(TimeLeft.When.UNKNOWN);
    Words words = Words.english();
    for (LocalDate day = end.minusDays(20); !day.isAfter(end.plusDays(3)); day = day.plusDays(1)) {
      TimeLeft left = TimeLeft.of(end, lessons, day);
      assertThat(words.say(left.says(7))).contains("7").doesNotContain("[", "{", "-");
      assertThat(left.isWarning()).isEqualTo(!day.isBefore(LocalDate.of(2026, 12, 4)));
    }
  }
}
