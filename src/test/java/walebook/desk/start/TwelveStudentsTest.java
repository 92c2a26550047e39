package walebook.desk.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import walebook.act.lesson.KitCloth;
import walebook.act.lesson.KitTyped;
import walebook.act.lesson.TakeUpLesson;
import walebook.act.lesson.WorkOutKit;
import walebook.act.print.Naming;
import walebook.act.print.PrintCards;
import walebook.act.print.PrintFile;
import walebook.act.print.PrintHandOut;
import walebook.act.print.PrintKit;
import walebook.act.print.PrintLabels;
import walebook.act.print.PrintPlan;
import walebook.act.print.PrintScope;
import walebook.act.print.PrintWallGrid;
import walebook.book.Book;
import walebook.book.Classroom;
import walebook.book.Ids;
import walebook.book.PieceFilter;
import walebook.desk.Sessions;
import walebook.desk.common.Session;
import walebook.desk.common.Wish;
import walebook.kit.CutPiece;
import walebook.kit.CuttingPlan;
import walebook.kit.Kit;
import walebook.kit.KitLine;
import walebook.kit.Placed;
import walebook.lesson.LessonPack;
import walebook.lesson.Packs;
import walebook.paper.LabelGrid;
import walebook.paper.PaperProgress;
import walebook.paper.PaperSize;
import walebook.paper.ReadPdf;
import walebook.quantity.Unit;
import walebook.record.Cloth;
import walebook.record.Edge;
import walebook.record.Grain;
import walebook.record.Lesson;
import walebook.record.PieceCode;
import walebook.record.PlannedPiece;
import walebook.record.Student;
import walebook.record.TestPiece;
import walebook.record.Tier;
import walebook.tables.SharedTables;
import walebook.words.Words;

/** One lesson for twelve: planned, its kit worked out, printed, taught, typed in and compared. */
@ExtendWith(ApplicationExtension.class)
@SuppressWarnings("NullAway.Init")
class TwelveStudentsTest {
  private static final Words WORDS = Words.english();
  private static final SharedTables TABLES = SharedTables.read();
  private static final LessonPack SEAM = Packs.seam();
  private static final List<String> NAMES =
      List.of(
          "Çelik Anchor",
          "Dov Breaker",
          "Eydís Chain",
          "Fadwa Dock",
          "Gwil Estuary",
          "Hồng Ferry",
          "Ιφιγένεια Groyne",
          "Jan-Åke Haven",
          "Кира Inlet",
          "Łucja Jetty");

  /** Lengths that differ by less are the same, mm. */
  private static final double TINY = 1e-6;

  @TempDir static Path folder;

  private Classroom room;
  private Lesson lesson;
  private OpenedWindow window;
  private Session session;
  private final Cloth rib =
      new Cloth(
          Ids.next(),
          "Striped rib",
          "rib-1x1",
          "95 % cotton, 5 % elastane",
          5.0,
          220.0,
          900.0,
          0.8,
          Edge.UNKNOWN,
          "",
          false,
          Classroom.FRESH);

  @Start
  void start(Stage stage) {
    room = Classroom.in(folder.resolve("class.walebook"));
    room.book.cloths().add(rib);
    for (int i = 0; i < NAMES.size(); i++) {
      Student student =
          new Student(Ids.next(), NAMES.get(i), "S" + (i + 11), Tier.STANDARD, Classroom.FRESH);
      room.book.students().add(student);
      room.book.enrolments().join(room.schoolClass.id(), student.id(), room.term.startsOn());
    }
    lesson =
        new TakeUpLesson(room.book, Classroom.CLOCK)
            .takeUp(
                SEAM,
                room.schoolClass.id(),
                LocalDate.of(2026, 10, 5),
                Map.of("a", room.cloth.id(), "b", rib.id()),
                20261005)
            .value();
    for (double stretchedMm : new double[] {178, 182, 180}) {
      room.book
          .clothLog()
          .add(room.reading(room.cloth, lesson.id(), room.first.id(), Grain.COURSE, stretchedMm));
      room.book
          .clothLog()
          .add(room.reading(rib, lesson.id(), room.first.id(), Grain.COURSE, stretchedMm + 15));
    }
    session = Sessions.of(room);
    window = new OpenedWindow(stage, session);
  }

  @AfterEach
  void close() {
    window.close();
    room.close();
  }

  @Test
  void aLessonForTwelveFromItsPlanToWhatTheClassFound(FxRobot robot) throws IOException {
    List<PlannedPiece> plan = room.book.lessons().planOf(lesson.id());
    isFair(plan);
    Kit kit = kit();
    printed(plan, kit);
    taught(robot);
    typedIn(robot, plan);
    compared(robot);
  }

  /** Twelve with a control and four of twelve settings each: every setting four times. */
  private static void isFair(List<PlannedPiece> plan) {
    Map<UUID, List<PlannedPiece>> each =
        plan.stream().collect(Collectors.groupingBy(PlannedPiece::studentId));
    assertThat(each).hasSize(12);
    assertThat(each.values())
        .allSatisfy(
            mine -> {
              assertThat(mine).hasSize(5);
              assertThat(mine).filteredOn(PlannedPiece::control).hasSize(1);
              assertThat(mine).extracting(PlannedPiece::cell).doesNotHaveDuplicates();
            });
    Map<String, Long> often =
        plan.stream()
            .filter(one -> !one.control())
            .collect(Collectors.groupingBy(PlannedPiece::cell, Collectors.counting()));
    // 12 students × 4 pieces ÷ 12 settings.
    assertThat(often).hasSize(12);
    assertThat(often.values()).allMatch(count -> count == 4);
  }

  private Kit kit() {
    Map<String, KitCloth> cloths =
        Map.of(
            "a", new KitCloth(room.cloth.name(), 1500.0, null, null, 0.6),
            "b", new KitCloth(rib.name(), 900.0, null, null, 0.8));
    KitTyped typed = new KitTyped("12", "10", "", List.of(), List.of("a=-5/-3"), List.of("a=8.50"));
    Kit kit = WorkOutKit.of(SEAM, cloths, typed, TABLES, Unit.MM, 1).value();
    assertThat(kit.cloths()).hasSize(2);
    List<KitLine> bought =
        kit.lines().stream().filter(each -> each.kind() == KitLine.Kind.CLOTH).toList();
    assertThat(bought).hasSize(2);
    // 106 strips of 200 mm × 100 mm on 1,500 mm: 7 beside each other, 16 rows, and 3 % for the
    // wash.
    assertThat(Objects.requireNonNull(bought.get(0).forClass())).isCloseTo(1.7, within(0.1));
    assertThat(kit.lines())
        .filteredOn(each -> each.kind() == KitLine.Kind.THREAD)
        .isNotEmpty()
        .allMatch(each -> Objects.requireNonNull(each.forClass()) > 0);
    assertThat(kit.cloths()).allSatisfy(each -> isLaid(each.plan()));
    return kit;
  }

  /** Every piece on the cloth, and no two over each other. */
  private static void isLaid(CuttingPlan plan) {
    List<Placed> laid = plan.placed();
    assertThat(laid).hasSize(plan.pieces().stream().mapToInt(CutPiece::count).sum());
    assertThat(laid)
        .allMatch(each -> each.xMm() >= 0 && each.xMm() + each.acrossMm() <= plan.acrossMm() + TINY)
        .allMatch(each -> each.yMm() >= 0 && each.yMm() + each.alongMm() <= plan.alongMm() + TINY);
    for (int i = 0; i < laid.size(); i++) {
      Placed one = laid.get(i);
      assertThat(laid.subList(i + 1, laid.size())).noneMatch(other -> overlap(one, other));
    }
  }

  private static boolean overlap(Placed one, Placed other) {
    return one.xMm() + one.acrossMm() > other.xMm() + TINY
        && other.xMm() + other.acrossMm() > one.xMm() + TINY
        && one.yMm() + one.alongMm() > other.yMm() + TINY
        && other.yMm() + other.alongMm() > one.yMm() + TINY;
  }

  private PrintFile file(String name) {
    return new PrintFile(folder.resolve(name + ".pdf"), false, PaperProgress.UNHEARD);
  }

  private ReadPdf read(String name) throws IOException {
    return ReadPdf.of(folder.resolve(name + ".pdf"));
  }

  private void printed(List<PlannedPiece> plan, Kit kit) throws IOException {
    Book book = room.book;
    PrintScope scope = new PrintScope(room.schoolClass.id(), lesson.id(), null, Naming.NAME);
    LabelGrid grid = LabelGrid.COMMON.get(0);
    new PrintLabels(book, WORDS, TABLES).print(scope, grid, 1, false, file("labels")).value();
    new PrintCards(book, WORDS, TABLES).print(scope, PaperSize.A4, file("cards")).value();
    new PrintWallGrid(book, WORDS, TABLES).print(scope, PaperSize.A4, file("grid")).value();
    new PrintPlan(book, WORDS, TABLES).print(scope, PaperSize.A4, file("plan")).value();
    new PrintHandOut(WORDS).print(book, lesson, PaperSize.A4, file("hand-out")).value();
    new PrintKit(WORDS).print(kit, SEAM, head(), Unit.CM, PaperSize.A4, file("kit")).value();
    Set<String> codes = plan.stream().map(PlannedPiece::code).collect(Collectors.toSet());
    try (ReadPdf labels = read("labels")) {
      String scanned =
          ReadPdf.code(
              labels.page(0), grid.left(0), grid.top(0), grid.widthMm(), grid.heightMm(), 1);
      assertThat(codes).contains(PieceCode.read(String.valueOf(scanned)));
    }
    for (String paper : List.of("labels", "cards", "grid", "plan")) {
      try (ReadPdf pdf = read(paper)) {
        String text = pdf.text().replaceAll("\\s+", " ");
        if (!paper.equals("plan")) {
          assertThat(codes).allMatch(code -> text.contains(PieceCode.spoken(code)), paper);
        }
        assertThat(NAMES).allMatch(name -> text.contains(name), paper);
        assertThat(pdf.fonts()).isNotEmpty().allMatch(font -> font.isEmbedded());
      }
    }
    try (ReadPdf handOut = read("hand-out");
        ReadPdf list = read("kit")) {
      assertThat(handOut.pages()).isEqualTo(1);
      assertThat(handOut.text()).contains("A seam that stretches", "Pull, and say how it ended");
      // The room's cloths by their names, not by the plan's letters.
      assertThat(handOut.text())
          .contains(room.cloth.name(), rib.name())
          .doesNotContainPattern("[Cc]loth [AB]\\b");
      assertThat(list.text()).contains("For 12 students", rib.name());
    }
  }

  private PrintKit.Head head() {
    return new PrintKit.Head(lesson.title(), room.schoolClass.name());
  }

  private static List<String> shown(FxRobot robot) {
    return robot
        .lookup((Node node) -> node instanceof Labeled || node instanceof Text)
        .queryAll()
        .stream()
        .map(node -> node instanceof Labeled labeled ? labeled.getText() : ((Text) node).getText())
        .filter(Objects::nonNull)
        .toList();
  }

  private void press(FxRobot robot, KeyCode... keys) {
    for (KeyCode key : keys) {
      robot.type(key);
      WaitForAsyncUtils.waitForFxEvents();
    }
  }

  private static void place(FxRobot robot, KeyCode digit) {
    robot.press(KeyCode.CONTROL).type(digit).release(KeyCode.CONTROL);
    WaitForAsyncUtils.waitForFxEvents();
  }

  private void taught(FxRobot robot) {
    place(robot, KeyCode.DIGIT5);
    robot.interact(() -> session.wish(new Wish("lessons", Wish.What.OPEN, lesson.id())));
    WaitForAsyncUtils.waitForFxEvents();
    robot.clickOn("Teach");
    WaitForAsyncUtils.waitForFxEvents();
    Window board = robot.listWindows().get(robot.listWindows().size() - 1);
    assertThat(stepsLedThrough(robot)).containsExactlyElementsOf(headings());
    press(robot, KeyCode.HOME, KeyCode.C);
    robot.targetWindow(board).write("150");
    press(robot, KeyCode.ENTER);
    // From 100 mm to 150 mm is half as much again, by definition.
    assertThat(shown(robot)).contains("step 1 of 9", "100 × (150 − 100) ÷ 100 = 50.0 %");
    press(robot, KeyCode.ESCAPE, KeyCode.ESCAPE);
    assertThat(board.isShowing()).isFalse();
  }

  private static List<String> headings() {
    return SEAM.teaching().steps().stream().map(each -> each.heading()).toList();
  }

  /** Headings in the order in which a clicker's next key brings them, until the last step. */
  private List<String> stepsLedThrough(FxRobot robot) {
    Set<String> seen = new LinkedHashSet<>();
    List<String> all = headings();
    // A long step turns its pages first: no step has as many as ten.
    for (int turns = 0; turns < 10 * all.size() && seen.size() < all.size(); turns++) {
      robot.lookup(".board-title").queryAllAs(Label.class).forEach(it -> seen.add(it.getText()));
      press(robot, KeyCode.PAGE_DOWN);
    }
    return List.copyOf(seen);
  }

  /** What a card says: wider and shorter goes further, and hands differ by a few millimetres. */
  private long stretchedMm(PlannedPiece piece) {
    double width = Objects.requireNonNullElse(piece.asked().dialWidth(), 0.0);
    double length = Objects.requireNonNullElse(piece.asked().dialLength(), 2.5);
    int hand = roster().indexOf(piece.studentId()) * 5 % 7 - 3;
    return Math.round(118 + 14 * width + 8 * (2.5 - length)) + hand;
  }

  private List<String> card(PlannedPiece piece) {
    String length = String.valueOf(stretchedMm(piece));
    return List.of("104", "102", "g", length, "n", "103", "4", "", "from card " + piece.place());
  }

  private void typedIn(FxRobot robot, List<PlannedPiece> plan) {
    robot.interact(() -> session.wish(new Wish("lessons", Wish.What.OPEN, lesson.id())));
    robot.clickOn("Type in cards");
    WaitForAsyncUtils.waitForFxEvents();
    for (PlannedPiece piece : inGridsOrder(plan)) {
      robot.interact(() -> card(piece).forEach(this::type));
      WaitForAsyncUtils.waitForFxEvents();
    }
    robot.press(KeyCode.CONTROL).type(KeyCode.S).release(KeyCode.CONTROL);
    WaitForAsyncUtils.waitForFxEvents();
    List<TestPiece> saved = room.book.pieces().list(PieceFilter.ALL);
    assertThat(saved).hasSize(60);
    Map<String, PlannedPiece> planned =
        plan.stream().collect(Collectors.toMap(PlannedPiece::code, each -> each));
    assertThat(saved)
        .allSatisfy(
            piece -> {
              PlannedPiece of = Objects.requireNonNull(planned.get(piece.code()));
              assertThat(piece.whose().studentId()).isEqualTo(of.studentId());
              assertThat(piece.whose().sewnOn()).isEqualTo(lesson.taughtOn());
              assertThat(Objects.requireNonNull(piece.measure().counting()).endMm())
                  .isEqualTo((double) stretchedMm(of));
              assertThat(piece.seen().remark()).isEqualTo("from card " + of.place());
            });
  }

  private List<UUID> roster() {
    return room.book.enrolments().studentsOf(room.schoolClass.id()).stream()
        .map(Student::id)
        .toList();
  }

  private List<PlannedPiece> inGridsOrder(List<PlannedPiece> plan) {
    List<UUID> roster = roster();
    return plan.stream()
        .sorted(
            Comparator.comparingInt((PlannedPiece each) -> roster.indexOf(each.studentId()))
                .thenComparingInt(PlannedPiece::place))
        .toList();
  }

  /** The keys as they come, then Enter to move on. */
  private void type(String text) {
    for (int i = 0; i < text.length(); i++) {
      String sign = text.substring(i, i + 1);
      Event.fireEvent(
          window.scene.getFocusOwner(),
          new KeyEvent(
              KeyEvent.KEY_TYPED, sign, sign, KeyCode.UNDEFINED, false, false, false, false));
    }
    Event.fireEvent(
        window.scene.getFocusOwner(),
        new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.ENTER, false, false, false, false));
  }

  private void compared(FxRobot robot) {
    place(robot, KeyCode.DIGIT6);
    robot.clickOn("Compare");
    WaitForAsyncUtils.waitForFxEvents();
    List<String> said = shown(robot);
    assertThat(said)
        .contains("Pieces counted here: 60 of 60 logged. Students: 12.")
        .anyMatch(each -> each.startsWith("Of 36 pairs of settings, surely different: "))
        .noneMatch(each -> each.startsWith("Of 36 pairs of settings, surely different: 0;"));
  }
}
