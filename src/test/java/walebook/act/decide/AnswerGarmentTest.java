package walebook.act.decide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.lesson.KitReckoned;
import walebook.act.lesson.ReadLessons;
import walebook.act.lesson.ReadLimits;
import walebook.act.lesson.ReplanLesson;
import walebook.act.lesson.TakenUp;
import walebook.book.Classroom;
import walebook.book.Ids;
import walebook.book.SewnOtherwise;
import walebook.garment.Advice;
import walebook.garment.Check;
import walebook.garment.GarmentAnswers;
import walebook.garment.GrainRound;
import walebook.garment.Link;
import walebook.garment.LinkKind;
import walebook.garment.OpeningEdge;
import walebook.lesson.Packs;
import walebook.problem.Answer;
import walebook.record.GarmentEdge;
import walebook.record.GarmentGirth;
import walebook.record.GarmentOpening;
import walebook.record.GarmentSewing;
import walebook.record.GarmentSheet;
import walebook.record.Grain;
import walebook.record.Lesson;
import walebook.record.MachineKind;
import walebook.record.PatternAsks;
import walebook.record.PlannedPiece;
import walebook.record.PullReading;
import walebook.record.SeamEnd;
import walebook.record.StitchChoice;
import walebook.record.TaughtPack;
import walebook.record.TestPiece;
import walebook.tables.SharedTables;
import walebook.working.Message;
import walebook.working.Step;
import walebook.working.Verdict;

/** A fitted top from real test pieces: girths, stretch and expected percentages worked by hand. */
class AnswerGarmentTest {
  private static final Map<String, Double> BODY =
      Map.of("chest", 900.0, "waist", 720.0, "upper-arm", 290.0, "head", 571.0, "hand", 210.0);

  @TempDir Path folder;

  private final SharedTables tables = SharedTables.read();

  private static GarmentSheet sheet(
      Classroom room, Grain round, @Nullable Double width, List<GarmentEdge> neck) {
    return new GarmentSheet(
        Ids.next(),
        room.first.id(),
        "Grey top",
        "fitted-top",
        room.cloth.id(),
        round,
        "day",
        new PatternAsks(100.0, 130.0, 15.0),
        new GarmentSewing(
            new StitchChoice(MachineKind.SEWING, "304", width, 2.5), 15.0, false, false),
        List.of(new GarmentGirth("chest", 800, 2)),
        List.of(new GarmentOpening("neckline", "head", 500.0, 0, "crew", null, null, neck)),
        "",
        Classroom.FRESH);
  }

  private static void read(Classroom room, Grain grain, double stretchedMm) {
    for (int i = 0; i < 3; i++) {
      room.book.clothLog().add(room.reading(grain, stretchedMm));
    }
  }

  private static void sew(Classroom room, UUID student, double width, SeamEnd end, double mm) {
    room.book
        .pieces()
        .add(room.piece(student, width, List.of(new PullReading(1, end, mm)), List.of(), null));
  }

  private GarmentAnswers answer(Classroom room, GarmentSheet sheet) {
    return new AnswerGarment(room.book, tables).answer(sheet, BODY);
  }

  private static Check check(GarmentAnswers answers, Check.Kind kind) {
    return answers.checks().stream().filter(each -> each.kind() == kind).findFirst().orElseThrow();
  }

  private static Link seam(GarmentAnswers answers) {
    return Objects.requireNonNull(check(answers, Check.Kind.OPENING).question()).links().stream()
        .filter(each -> each.kind() == LinkKind.SEAM)
        .findFirst()
        .orElseThrow();
  }

  /** A crew neck of 520 mm with a band, crossed by two seams, on a pattern of 15 mm. */
  private static GarmentSheet banded(Classroom room, @Nullable Double sewnMm, boolean trimmed) {
    GarmentSheet bare = sheet(room, Grain.COURSE, 2.5, List.of());
    return new GarmentSheet(
        bare.id(),
        bare.studentId(),
        bare.name(),
        bare.kind(),
        bare.clothId(),
        bare.grainRound(),
        bare.wear(),
        bare.pattern(),
        new GarmentSewing(bare.sewing().stitch(), sewnMm, trimmed, false),
        bare.girths(),
        List.of(
            new GarmentOpening("neckline", "head", 520.0, 2, "crew", 0.75, 20.0, List.of()),
            new GarmentOpening("sleeve-hem", "hand", 220.0, 1, "straight", 0.9, 30.0, List.of())),
        "",
        Classroom.FRESH);
  }

  private static List<String> numbers(Check check) {
    return check.working().steps().stream().map(Step::numbers).toList();
  }

  private static Check of(GarmentAnswers answers, Check.Kind kind, String edge) {
    return answers.checks().stream()
        .filter(each -> each.kind() == kind)
        .filter(each -> each.about().args().contains(Message.name("garment.edge." + edge)))
        .findFirst()
        .orElseThrow();
  }

  /**
   * By hand, from the formulas alone: sewn at 7 where the pattern has 15, d = 8. The neck turns by
   * θ = 6 and two seams cross it: 520 − 6 × 8 + 2 × 2 × 8 = 504. b = 0.75 × 504 = 378, cut 378 + 2
   * × 7 = 392 and 2 × 20 + 2 × 7 = 54 wide; flat at 1 − 20 × 6 ÷ 504 = 0.7619. A tube that one seam
   * crosses: 220 + 2 × 1 × 8 = 236, b = 0.9 × 236 = 212.4, cut 226.4.
   */
  @Test
  void aBandIsSewnToTheOpeningAsItComesOut() {
    try (Classroom room = Classroom.in(folder.resolve("band.walebook"))) {
      read(room, Grain.COURSE, 160);
      GarmentAnswers answers = answer(room, banded(room, 7.0, false));
      assertThat(numbers(of(answers, Check.Kind.OPENING, "neckline")))
          .contains("520 mm → 504 mm", "100 × (571 − 504) ÷ 504 = 13.3 %");
      assertThat(numbers(of(answers, Check.Kind.BAND, "neckline")))
          .containsSequence(
              "520 mm → 504 mm",
              "0.75 × 504 = 378 mm",
              "378 + 2 × 7 = 392 mm",
              "2 × 20 + 2 × 7 = 54 mm",
              "100 × (504 − 378) ÷ 378 = 33.3 %");
      assertThat(numbers(of(answers, Check.Kind.BAND_FLAT, "neckline")))
          .containsSequence(
              "520 mm → 504 mm", "504 − 20 × 6 = 384 mm", "1 − 20 × 6 ÷ 504 = 0.7619");
      // 100 × (571 − 378) ÷ 378; the cloth's own 60 %: 378 × 1.6 = 604.8.
      assertThat(numbers(of(answers, Check.Kind.BAND_OVER, "neckline")))
          .contains(
              "100 × (571 − 378) ÷ 378 = 51.1 %", "378 × (1 + 60 ÷ 100) = 604.8 mm, P = 571 mm");
      assertThat(numbers(of(answers, Check.Kind.BAND, "sleeve-hem")))
          .containsSequence("220 mm → 236 mm", "0.9 × 236 = 212.4 mm", "212.4 + 2 × 7 = 226.4 mm");
    }
  }

  /** Trimmed, all is sewn on the pattern's line: 0.75 × 520 = 390, and 7 mm is still sewn. */
  @Test
  void aTrimmedEdgeKeepsThePatternsOpeningForItsBand() {
    try (Classroom room = Classroom.in(folder.resolve("band-trimmed.walebook"))) {
      read(room, Grain.COURSE, 160);
      GarmentAnswers trimmed = answer(room, banded(room, 7.0, true));
      assertThat(numbers(of(trimmed, Check.Kind.BAND, "neckline")))
          .startsWith("0.75 × 520 = 390 mm", "390 + 2 × 7 = 404 mm", "2 × 20 + 2 × 7 = 54 mm");
      // Without a word on it the pattern's own 15 mm is sewn: 390 + 30 and 40 + 30.
      GarmentAnswers asDrawn = answer(room, banded(room, null, false));
      assertThat(numbers(of(asDrawn, Check.Kind.BAND, "neckline")))
          .startsWith("0.75 × 520 = 390 mm", "390 + 2 × 15 = 420 mm", "2 × 20 + 2 × 15 = 70 mm");
    }
  }

  private static final List<GarmentEdge> SEAM = List.of(new GarmentEdge("seam", null, null));

  @Test
  void aOneWayClothLaidTheWrongWayIsFoundAndTurningMendsIt() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      read(room, Grain.COURSE, 160);
      read(room, Grain.WALE, 115);
      GarmentAnswers wrong = answer(room, sheet(room, Grain.WALE, 2.5, List.of()));
      // 100 mm must reach 130 mm: 30 % against 15 % wale-wise and 60 % course-wise.
      assertThat(check(wrong, Check.Kind.GAUGE).verdict()).isEqualTo(Verdict.NOT_MET);
      assertThat(wrong.advice().get(0).action()).isEqualTo(Advice.Action.TURN_PIECES);
      GarmentAnswers right = answer(room, sheet(room, Grain.COURSE, 2.5, List.of()));
      assertThat(check(right, Check.Kind.GAUGE).verdict()).isEqualTo(Verdict.MET);
      // 80 cm round a body of 90 cm is stretched by 12.5 %: 12.5 of 60 is 20.8 %.
      assertThat(check(right, Check.Kind.USED).working().value()).isCloseTo(20.83, within(0.01));
    }
  }

  @Test
  void thePieceThatGaveSoonestSpeaksAndTheirNumberIsSaid() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      read(room, Grain.COURSE, 160);
      sew(room, room.first.id(), 2.5, SeamEnd.GAVE, 140);
      sew(room, room.second.id(), 2.5, SeamEnd.GAVE, 118);
      sew(room, room.second.id(), 2.5, SeamEnd.HELD, 155);
      sew(room, room.first.id(), 5, SeamEnd.GAVE, 101);
      GarmentAnswers answers = answer(room, sheet(room, Grain.COURSE, 2.5, SEAM));
      Link seam = seam(answers);
      assertThat(seam.basis()).isEqualTo(Link.Basis.GAVE);
      assertThat(seam.percent()).isEqualTo(18);
      assertThat(seam.pieces()).isEqualTo(3);
      assertThat(seam.students()).isEqualTo(2);
      // 571 over 500 mm: 14.2 % and the everyday margin of 10 points; 18 % is not enough.
      Check neck = check(answers, Check.Kind.OPENING);
      assertThat(neck.verdict()).isEqualTo(Verdict.NOT_MET);
      assertThat(Objects.requireNonNull(neck.weakest()).kind()).isEqualTo(LinkKind.SEAM);
      assertThat(answers.advice())
          .extracting(Advice::action)
          .contains(Advice.Action.WIDEN_OPENING, Advice.Action.OTHER_LINK);
    }
  }

  /** Lesson packs write none where nothing lies under the seam: it is a plain seam. */
  @Test
  void aSeamWithNoneUnderItIsNotAnInterfacedOne() {
    try (Classroom room = Classroom.in(folder.resolve("n.walebook"))) {
      read(room, Grain.COURSE, 160);
      TestPiece piece =
          room.piece(
              room.first.id(),
              2.5,
              List.of(new PullReading(1, SeamEnd.GAVE, 118)),
              List.of(),
              null);
      room.book.pieces().add(SewnOtherwise.stabilised(piece, "none"));
      List<GarmentEdge> both =
          List.of(new GarmentEdge("seam", null, null), new GarmentEdge("interfacing", null, null));
      List<Link> links =
          Objects.requireNonNull(
                  check(answer(room, sheet(room, Grain.COURSE, 2.5, both)), Check.Kind.OPENING)
                      .question())
              .links();
      assertThat(links)
          .filteredOn(each -> each.kind() == LinkKind.SEAM)
          .allMatch(each -> each.basis() == Link.Basis.GAVE);
      assertThat(links)
          .filteredOn(each -> each.kind() == LinkKind.INTERFACING)
          .isNotEmpty()
          .allMatch(each -> each.basis() == Link.Basis.UNKNOWN);
    }
  }

  @Test
  void piecesThatOnlyHeldAreABound() {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      read(room, Grain.COURSE, 160);
      sew(room, room.first.id(), 2.5, SeamEnd.HELD, 150);
      sew(room, room.second.id(), 2.5, SeamEnd.HELD, 145);
      Link seam = seam(answer(room, sheet(room, Grain.COURSE, 2.5, SEAM)));
      assertThat(seam.basis()).isEqualTo(Link.Basis.HELD);
      assertThat(seam.percent()).isEqualTo(45);
    }
  }

  @Test
  void withoutAPieceGeometryStandsInAndThePieceIsAskedFor() {
    try (Classroom room = Classroom.in(folder.resolve("d.walebook"))) {
      read(room, Grain.COURSE, 160);
      GarmentAnswers answers = answer(room, sheet(room, Grain.COURSE, 2.5, SEAM));
      // Pythagoras: √(2.5² + 2.5²) ÷ 2.5 − 1 = 41.4 %.
      assertThat(seam(answers).basis()).isEqualTo(Link.Basis.MODEL);
      assertThat(seam(answers).percent()).isCloseTo(41.42, within(0.01));
      assertThat(answers.advice())
          .extracting(Advice::action)
          .contains(Advice.Action.SEW_TEST_PIECE);
      Link open = seam(answer(room, sheet(room, Grain.COURSE, null, SEAM)));
      assertThat(open.isKnown()).as("no width, no reckoning").isFalse();
      List<GarmentEdge> elastic = List.of(new GarmentEdge("elastic", null, 80.0));
      Check neck = check(answer(room, sheet(room, Grain.COURSE, 2.5, elastic)), Check.Kind.OPENING);
      assertThat(Objects.requireNonNull(neck.question()).links())
          .anyMatch(each -> each.kind() == LinkKind.ELASTIC && each.percent() == 80);
    }
  }

  @Test
  void nothingIsGuessedWithoutClothOrBody() {
    try (Classroom room = Classroom.in(folder.resolve("e.walebook"))) {
      GarmentSheet bare = sheet(room, Grain.COURSE, 2.5, SEAM);
      GarmentAnswers answers = new AnswerGarment(room.book, tables).answer(bare, Map.of());
      assertThat(answers.verdict()).isEqualTo(Verdict.NOT_KNOWN);
      assertThat(answers.advice()).extracting(Advice::action).contains(Advice.Action.MEASURE_CLOTH);
    }
  }

  /** It is the student's own, and no combination of the lesson that it stands with. */
  @Test
  void planningTheLessonAgainLeavesAGarmentsPieceAlone() {
    try (Classroom room = Classroom.in(folder.resolve("p.walebook"))) {
      read(room, Grain.COURSE, 160);
      Lesson lesson = TakenUp.seam(room);
      GarmentSheet sheet = sheet(room, Grain.COURSE, 2.5, SEAM);
      Advice.PieceWanted wanted =
          new Advice.PieceWanted(LinkKind.SEAM, OpeningEdge.NECKLINE, GrainRound.COURSE, 24);
      UUID of = room.schoolClass.id();
      PlannedPiece planned =
          new PlanTestPiece(room.book, Classroom.CLOCK, new Random(3))
              .plan(sheet, wanted, of, room.first.id())
              .value();
      int before = room.book.lessons().planOf(lesson.id()).size();
      ReplanLesson.Replanned again =
          new ReplanLesson(room.book, Classroom.CLOCK)
              .replan(lesson, ReadLimits.Typed.NOTHING, 2)
              .value();
      assertThat(again.back()).isEmpty();
      assertThat(again.added()).isEmpty();
      assertThat(room.book.lessons().planOf(lesson.id())).hasSize(before).contains(planned);
      KitReckoned dealt = KitReckoned.dealt(room.book, lesson, Packs.seam());
      assertThat(dealt.says().args().get(1)).isEqualTo(String.valueOf(before - 1));
      assertThat(new ReadLessons(room.book).taken(of).get(0).planned()).isEqualTo(before - 1);
    }
  }

  @Test
  void theMissingPieceIsPlannedOnceInTheLessonInHand() {
    try (Classroom room = Classroom.in(folder.resolve("f.walebook"))) {
      read(room, Grain.COURSE, 160);
      GarmentSheet sheet = sheet(room, Grain.COURSE, 2.5, SEAM);
      Advice.PieceWanted wanted =
          answer(room, sheet).advice().stream()
              .map(Advice::piece)
              .filter(Objects::nonNull)
              .findFirst()
              .orElseThrow();
      PlanTestPiece act = new PlanTestPiece(room.book, Classroom.CLOCK, new Random(3));
      UUID of = room.schoolClass.id();
      Answer<PlannedPiece> early = act.plan(sheet, wanted, of, room.first.id());
      assertThat(early.problems().get(0).code()).isEqualTo("plan.no-lesson");
      UUID today = lesson(room, LocalDate.of(2026, 10, 5));
      lesson(room, LocalDate.of(2026, 12, 7));
      PlannedPiece planned = act.plan(sheet, wanted, of, room.first.id()).value();
      assertThat(planned.lessonId()).isEqualTo(today);
      assertThat(planned.asked().grain()).isEqualTo(Grain.COURSE);
      assertThat(planned.asked().stitchType()).isEqualTo("304");
      assertThat(planned.clothId()).isEqualTo(room.cloth.id());
      assertThat(act.plan(sheet, wanted, of, room.first.id()).value().id()).isEqualTo(planned.id());
      assertThat(room.book.lessons().planOf(of, room.first.id())).containsExactly(planned);
    }
  }

  private static UUID lesson(Classroom room, LocalDate on) {
    TaughtPack pack =
        new TaughtPack(
            Ids.next(),
            "own",
            "1",
            "Own garments",
            on.toString().repeat(7).substring(0, 64),
            "",
            "",
            Classroom.FRESH);
    room.book.lessons().keepPack(pack, Map.of());
    Lesson lesson =
        new Lesson(
            Ids.next(), room.schoolClass.id(), pack.id(), "Own garments", on, Classroom.FRESH);
    room.book.lessons().add(lesson);
    return lesson.id();
  }

  @Test
  void aKindThatIsInNoTableIsRefusedByName() {
    try (Classroom room = Classroom.in(folder.resolve("g.walebook"))) {
      GarmentSheet good = sheet(room, Grain.COURSE, 2.5, SEAM);
      GarmentSheet odd =
          new GarmentSheet(
              good.id(),
              null,
              "x",
              "spacesuit",
              null,
              Grain.COURSE,
              "day",
              good.pattern(),
              good.sewing(),
              List.of(),
              List.of(),
              "",
              good.stamp());
      assertThatThrownBy(() -> answer(room, odd)).hasMessageContaining("spacesuit");
    }
  }
}
