package walebook.act.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Classroom;
import walebook.book.Ids;
import walebook.desk.MeasuredClass;
import walebook.kit.Kit;
import walebook.kit.KitLine;
import walebook.kit.ScrapAnswer;
import walebook.lesson.LessonPack;
import walebook.lesson.Material;
import walebook.lesson.Packs;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.Unit;
import walebook.record.ClothWash;
import walebook.record.Grain;
import walebook.record.Lesson;
import walebook.record.Student;
import walebook.record.Tier;
import walebook.tables.SharedTables;
import walebook.words.Words;
import walebook.working.Message;

class WorkOutKitTest {
  private static final SharedTables TABLES = SharedTables.read();
  private static final LessonPack SEAM = Packs.seam();

  @TempDir Path folder;

  private static KitTyped typed(String students, List<String> widths, List<String> prices) {
    return new KitTyped(students, "10", "", widths, List.of("a=-5/-3"), prices);
  }

  private static Answer<Kit> kit(KitTyped typed) {
    return WorkOutKit.of(SEAM, Map.of(), typed, TABLES, Unit.MM, 1);
  }

  /** 12 students with 8 strips and a tenth more are 106 strips: 1.7 m as in ClothToBuyTest. */
  @Test
  void aClassOfTwelve() {
    Kit kit =
        kit(typed(
                "12", List.of("a=150 cm", "b=90cm"), List.of("a=8.50", "thread=0,02", "labels=1")))
            .value();
    assertThat(kit.cloths()).hasSize(2);
    KitLine jersey = kit.lines().get(0);
    assertThat(jersey.kind()).isEqualTo(KitLine.Kind.CLOTH);
    assertThat(jersey.forClass()).isCloseTo(1.7, within(1e-9));
    assertThat(jersey.cost()).isCloseTo(14.45, within(1e-9));
    KitLine needle =
        kit.lines().stream()
            .filter(each -> each.what().args().contains("Stretch needle, Nm 75, new"))
            .findFirst()
            .orElseThrow();
    assertThat(needle.forClass()).isEqualTo(12);
    assertThat(needle.cost()).isNull();
    KitLine thread = thread(kit);
    assertThat(thread.what().args())
        .contains("Polyester all-purpose thread in a colour that shows");
    assertThat(thread.perStudent()).isEqualTo(20);
    assertThat(thread.forClass()).isCloseTo(20 * 12 * 1.1, within(1e-9));
    assertThat(Objects.requireNonNull(kit.thread()).value()).isBetween(3.0, 6.0);
    assertThat(kit.cost()).isCloseTo(14.45 + 0.02 * 20 * 13.2 + 60, within(1e-6));
    assertThat(kit.unpriced()).isEqualTo(kit.lines().size() - 3);
    Words words = Words.english();
    kit.lines().forEach(line -> assertThat(words.say(line.what())).doesNotContain("[", "{"));
    kit.remarks().forEach(line -> assertThat(words.say(line)).doesNotContain("[", "{"));
    assertThat(kit(typed("12", List.of("a=150 cm", "b=90cm"), List.of())).value().cloths())
        .isEqualTo(kit.cloths());
  }

  private static KitLine thread(Kit kit) {
    List<KitLine> all =
        kit.lines().stream().filter(each -> each.kind() == KitLine.Kind.THREAD).toList();
    assertThat(all).hasSize(1);
    return all.get(0);
  }

  @Test
  void everyPackNamesItsThreadOnce() {
    for (LessonPack pack : ReadLessons.packs()) {
      Kit kit =
          WorkOutKit.of(pack, Map.of(), typed("12", List.of(), List.of()), TABLES, Unit.MM, 1)
              .value();
      boolean isNamed = pack.needs().perStudent().stream().anyMatch(each -> each.threadM() != null);
      if (isNamed || kit.thread() != null) {
        assertThat(thread(kit).unit()).isEqualTo(Unit.METRE);
      }
      assertThat(pack.needs().perStudent())
          .as(pack.about().name())
          .noneMatch(each -> each.what().endsWith(", m"));
    }
  }

  @Test
  void moreThreadIsListedWhereTheSeamsTakeMoreThanThePackAllows() {
    List<Material> little =
        SEAM.needs().perStudent().stream()
            .map(each -> each.threadM() == null ? each : thread("Thread", 2.0))
            .toList();
    Kit kit = kit(little);
    double seams = Objects.requireNonNull(kit.thread()).value();
    assertThat(thread(kit).perStudent()).isCloseTo(seams, within(1e-9));
    assertThat(kit.remarks()).extracting(Message::key).contains("kit.remark.more-thread");
    Kit nothing = kit(List.of(thread("Thread", 30.0)));
    assertThat(nothing.cuts()).isEmpty();
    assertThat(nothing.remarks()).extracting(Message::key).contains("kit.remark.nothing-cut");
    List<Material> none =
        SEAM.needs().perStudent().stream().filter(each -> each.threadM() == null).toList();
    assertThat(thread(kit(none)).what().key()).isEqualTo("kit.line.thread");
    assertThat(thread(kit(none)).perStudent()).isCloseTo(seams, within(1e-9));
  }

  private static Material thread(String what, double metres) {
    return new Material(what, null, null, null, null, null, metres);
  }

  private static Kit kit(List<Material> materials) {
    LessonPack pack =
        new LessonPack(
            SEAM.about(),
            SEAM.teaching(),
            new LessonPack.Needs(materials, List.of()),
            SEAM.log(),
            SEAM.measure(),
            SEAM.plan(),
            SEAM.success(),
            SEAM.text(),
            SEAM.files());
    return WorkOutKit.of(pack, Map.of(), typed("12", List.of(), List.of()), TABLES, Unit.MM, 1)
        .value();
  }

  @Test
  void aClothWithoutAWidthIsListedInPieces() {
    Kit kit = kit(typed("3", List.of(), List.of())).value();
    assertThat(kit.cloths()).isEmpty();
    assertThat(kit.lines().get(0).kind()).isEqualTo(KitLine.Kind.PIECES);
    assertThat(kit.lines().get(0).forClass()).isEqualTo(27); // 3 × 8 × 1.1, rounded up
    assertThat(kit.lines().get(0).perStudent()).isEqualTo(8);
    assertThat(kit.remarks()).extracting(Message::key).contains("kit.remark.width-unknown");
  }

  @Test
  void theBookKnowsWidthAndWash() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      for (double after : new double[] {470, 480}) {
        room.book
            .clothLog()
            .add(
                new ClothWash(
                    Ids.next(),
                    room.cloth.id(),
                    Grain.WALE,
                    500,
                    after,
                    "40 °C",
                    LocalDate.of(2026, 9, 1),
                    Classroom.FRESH));
      }
      KitCloth cloth =
          KitCloth.in(room.book, Map.of("a", room.cloth.id())).getOrDefault("a", KitCloth.UNKNOWN);
      assertThat(cloth).isEqualTo(new KitCloth("Grey jersey", 1500.0, -5.0, null, 0.6));
      KitTyped bare = new KitTyped("12", "", "", List.of(), List.of(), List.of());
      Kit kit = WorkOutKit.of(SEAM, Map.of("a", cloth), bare, TABLES, Unit.MM, 1).value();
      // 96 strips, seven in a row: 14 rows of 10 cm, 140 ÷ 0.95 = 147.4 cm.
      assertThat(kit.cloths()).hasSize(1);
      assertThat(kit.cloths().get(0).buyMm()).isCloseTo(1500, within(1e-9));
      assertThat(kit.cloths().get(0).name()).isEqualTo("Grey jersey");
      assertThat(kit.remarks())
          .extracting(Message::key)
          .containsOnlyOnce("kit.remark.thickness"); // of the rib alone
    }
  }

  /**
   * Core sews two of twelve combinations and the control: three pieces where standard sews five.
   */
  @Test
  void whoSewsFewerPiecesNeedsLess() {
    List<Student> core = List.of(student(Tier.CORE), student(Tier.CORE));
    KitReckoned reckoned = KitReckoned.roster(SEAM.plan(), core);
    assertThat(reckoned.says()).isEqualTo(Message.of("kit.reckoned.roster", "2", "0", "0"));
    KitTyped typed = new KitTyped("2", "", "", List.of(), List.of(), List.of());
    Kit kit = WorkOutKit.of(SEAM, reckoned, Map.of(), typed, TABLES, Unit.MM, 1).value();
    // Cloth A is under the control and half of the combinations: 8 strips × (1 + 1) ÷ (1 + 2).
    assertThat(kit.lines().get(0).perStudent()).isCloseTo(8 * 2 / 3.0, within(1e-9));
    assertThat(kit.lines().get(0).forClass()).isEqualTo(11);
    // Cloth B is under the other half: 4 strips × 1 ÷ 2.
    assertThat(kit.lines().get(1).perStudent()).isCloseTo(2, within(1e-9));
    assertThat(thread(kit).perStudent()).isCloseTo(20 * 3 / 5.0, within(1e-9));
    Kit usual = WorkOutKit.of(SEAM, Map.of(), typed, TABLES, Unit.MM, 1).value();
    assertThat(Objects.requireNonNull(kit.thread()).value())
        .isLessThan(Objects.requireNonNull(usual.thread()).value());
    // A needle is a needle, however many pieces are sewn with it.
    assertThat(kit.lines())
        .filteredOn(each -> each.kind() == KitLine.Kind.COUNTED)
        .isEqualTo(
            usual.lines().stream().filter(each -> each.kind() == KitLine.Kind.COUNTED).toList());
    KitReckoned mixed =
        KitReckoned.roster(SEAM.plan(), List.of(student(Tier.CORE), student(Tier.STANDARD)));
    assertThat(
            WorkOutKit.of(SEAM, mixed, Map.of(), typed, TABLES, Unit.MM, 1)
                .value()
                .lines()
                .get(1)
                .perStudent())
        .isCloseTo(3, within(1e-9));
  }

  private static Student student(Tier tier) {
    return new Student(Ids.next(), "A", "S", tier, Classroom.FRESH);
  }

  /** The parts of a garment are cut by everybody, however few test pieces they sew. */
  @Test
  void whatIsMadeBesideThePlanIsNeededWhole() {
    LessonPack pack = Packs.named("garment-from-scraps");
    KitReckoned core = KitReckoned.roster(pack.plan(), List.of(student(Tier.CORE)));
    KitTyped typed = new KitTyped("1", "", "", List.of(), List.of(), List.of());
    Kit kit = WorkOutKit.of(pack, core, Map.of(), typed, TABLES, Unit.MM, 1).value();
    assertThat(kit.lines().get(0).perStudent()).isEqualTo(2);
    assertThat(kit.lines().get(1).perStudent()).isCloseTo(5 * 3 / 4.0, within(1e-9));
    assertThat(thread(kit).perStudent()).isEqualTo(30);
  }

  @Test
  void aStandardRosterNeedsWhatThePackLists() {
    for (LessonPack pack : ReadLessons.packs()) {
      KitTyped typed = new KitTyped("3", "", "", List.of(), List.of(), List.of());
      KitReckoned roster = KitReckoned.roster(pack.plan(), List.of(student(Tier.STANDARD)));
      Kit kit = WorkOutKit.of(pack, roster, Map.of(), typed, TABLES, Unit.MM, 1).value();
      assertThat(kit.lines())
          .as(pack.about().name())
          .isEqualTo(WorkOutKit.of(pack, Map.of(), typed, TABLES, Unit.MM, 1).value().lines());
    }
  }

  @Test
  void aLessonTakenUpNeedsWhatItsPlanDealt() {
    try (Classroom room = Classroom.in(folder.resolve("d.walebook"))) {
      LocalDate on = LocalDate.of(2026, 10, 5);
      Map<String, UUID> cloths = Map.of("a", room.cloth.id(), "b", room.cloth.id());
      ReadLimits.Typed shares = new ReadLimits.Typed(List.of(), List.of("cloth b"), List.of("2"));
      Lesson lesson =
          new TakeUpLesson(room.book, Classroom.CLOCK)
              .takeUp(SEAM, room.schoolClass.id(), on, cloths, shares, 1)
              .value();
      KitReckoned dealt = KitReckoned.dealt(room.book, lesson, SEAM);
      assertThat(dealt.says()).isEqualTo(Message.of("kit.reckoned.dealt", "2", "6"));
      KitTyped typed = KitTyped.usual(2);
      Kit kit = WorkOutKit.of(SEAM, dealt, Map.of(), typed, TABLES, Unit.MM, 1).value();
      // All three pieces of each are of cloth A: 8 strips × 3 ÷ 3; of cloth B nobody sews.
      assertThat(kit.cuts()).hasSize(1);
      assertThat(kit.lines().get(0).perStudent()).isCloseTo(8, within(1e-9));
      // 8 strips × 2 students and a tenth more; the pack lists 8 of A and 4 of B for 5 seams.
      assertThat(kit.remarks())
          .contains(Message.of("kit.remark.cut-for-sewn", "18", "6", "5", "12", "10.0 %"));
      Lesson measured = MeasuredClass.of(room, "do-we-measure-alike", on);
      LessonPack alike = Packs.named("do-we-measure-alike");
      KitReckoned readings = KitReckoned.dealt(room.book, measured, alike);
      assertThat(readings.says()).isEqualTo(Message.of("kit.reckoned.dealt-readings", "2", "6"));
      assertThat(
              WorkOutKit.of(alike, readings, Map.of(), typed, TABLES, Unit.MM, 1)
                  .value()
                  .lines()
                  .get(1)
                  .perStudent())
          .isEqualTo(1);
    }
  }

  /** What the list says of thread and what the seams take stand in one sentence. */
  @Test
  void twoFiguresOfThreadAreOneSentence() {
    Kit kit = kit(KitTyped.usual(12)).value();
    String says = Words.english().say(Objects.requireNonNull(kit.threadSays()));
    assertThat(says).contains("Of the 20 m of thread", "the rest is for trials");
    assertThat(kit.says()).contains(Objects.requireNonNull(kit.threadSays()));
    assertThat(kit.says().get(0).key()).isEqualTo("kit.reckoned.standard");
  }

  @Test
  void readingsNeedNoThread() {
    Kit kit =
        WorkOutKit.of(
                ReadLessons.packs().get(0),
                Map.of(),
                new KitTyped("5", "", "1 cm", List.of("a=1450"), List.of(), List.of()),
                TABLES,
                Unit.MM,
                1)
            .value();
    assertThat(kit.thread()).isNull();
    // Five squares of 30 cm, four in a row: two rows and 1 cm between them.
    assertThat(kit.cloths().get(0).plan().alongMm()).isCloseTo(610, within(1e-6));
  }

  @Test
  void everyMistakeIsSaidAtOnce() {
    KitTyped bad =
        new KitTyped(
            "none",
            "-1",
            "1 furlong",
            List.of("q=3", "a", "a=wide", "a=0", "strips=3"),
            List.of("a=-100"),
            List.of("b=-2", "zipper=3"));
    assertThat(codes(kit(bad)))
        .containsExactly(
            "number.not-a-number",
            "number.negative",
            "length.unit",
            "choice.unknown",
            "kit.key-and-value",
            "number.not-a-number",
            "number.not-positive",
            "choice.several",
            "wash.change",
            "number.negative",
            "choice.unknown");
    assertThat(codes(kit(typed("0", List.of(), List.of())))).containsExactly("kit.empty-class");
    assertThat(codes(kit(typed("999", List.of(), List.of())))).containsExactly("number.outside");
    Answer<Kit> narrow = kit(typed("12", List.of("a=15 cm"), List.of()));
    assertThat(codes(narrow)).containsExactly("kit.too-narrow");
    assertThat(narrow.problems().get(0).place()).isEqualTo(Place.field("width-a"));
  }

  private static List<String> codes(Answer<?> answer) {
    return answer.problems().stream().map(Problem::code).toList();
  }

  @Test
  void scrapsAreReadAsTheyAreTyped() {
    ScrapAnswer answer =
        ReadScraps.answer(
                List.of("Left cuff=2 of 20 cm x 100", "8cm×10 cm free"),
                List.of("Blue=30 cm x 25 cm", "2 of 100x80"),
                "5",
                Unit.MM,
                1)
            .value();
    assertThat(answer.outcome()).isEqualTo(ScrapAnswer.Outcome.COME_OUT);
    assertThat(answer.scraps()).extracting("name").containsExactly("Blue", "100x80", "100x80");
    assertThat(answer.plans().get(0).pieces())
        .extracting("name")
        .containsExactly("Left cuff", "8cm×10 cm");
    assertThat(answer.plans().get(0).pieces().get(1).turnable()).isTrue();
    assertThat(
            codes(
                ReadScraps.answer(
                    List.of("big", "0 of 1x1", "1x0", "1 mile x 2"),
                    List.of("30", "4x4 free", "999 of 1x1"),
                    "x",
                    Unit.MM,
                    1)))
        .containsExactly(
            "kit.piece-form",
            "kit.no-pieces",
            "number.not-positive",
            "length.unit",
            "kit.scrap-form",
            "kit.scrap-form",
            "number.outside",
            "number.not-a-number");
  }
}
