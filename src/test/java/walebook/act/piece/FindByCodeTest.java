package walebook.act.piece;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Locale;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Book;
import walebook.desk.PlannedClass;
import walebook.record.PieceCode;
import walebook.record.PlannedPiece;
import walebook.record.Stamp;
import walebook.record.TestPiece;
import walebook.tables.SharedTables;

@SuppressWarnings("NullAway.Init")
class FindByCodeTest {
  @TempDir Path folder;

  private PlannedClass made;
  private FindByCode find;
  private TestPiece sewn;

  @BeforeEach
  void make() {
    made = PlannedClass.in(folder.resolve("a.walebook"), 1);
    find = new FindByCode(made.room.book);
    sewn = log(made.plan.get(0));
  }

  @AfterEach
  void close() {
    made.close();
  }

  private TestPiece log(PlannedPiece planned) {
    Book book = made.room.book;
    UUID classId = made.room.schoolClass.id();
    PieceRoom room = LoadPieceRoom.of(book, SharedTables.read(), classId);
    PieceEntry entry = new StartPiece(book).fromPlan(planned, classId, room);
    return new LogTestPiece(book, walebook.book.Classroom.CLOCK, new java.util.Random(1))
        .save(entry, room, true)
        .value();
  }

  private String problem(String typed) {
    return find.find(typed).problems().get(0).code();
  }

  @Test
  void aSewnPieceIsFoundHoweverItsCodeIsWritten() {
    String code = sewn.code();
    String spaced = " " + code.substring(0, 2) + " " + code.substring(2) + " ";
    for (String typed :
        new String[] {
          code, PieceCode.spoken(code), code.toLowerCase(Locale.ROOT), spaced, sewn.id().toString()
        }) {
      assertThat(find.find(typed).value()).isEqualTo(new FindByCode.Found.Sewn(sewn));
    }
  }

  @Test
  void theKeyOfThePlannedPieceLeadsToWhatWasSewnForIt() {
    assertThat(find.find(made.planned(0).toString().toUpperCase(Locale.ROOT)).value())
        .isEqualTo(new FindByCode.Found.Sewn(sewn));
  }

  @Test
  void aPieceThatIsOnlyPlannedIsFoundWithItsClass() {
    PlannedPiece planned = made.plan.get(1);
    FindByCode.Found wanted = new FindByCode.Found.Planned(planned, made.room.schoolClass.id());
    assertThat(find.find(planned.code()).value()).isEqualTo(wanted);
    assertThat(find.find(planned.id().toString()).value()).isEqualTo(wanted);
  }

  @Test
  void aWrongSignIsNoticedAndTheCodeMeantIsNamed() {
    String code = sewn.code();
    assertThat(find.find("0" + code.substring(1)).problems())
        .singleElement()
        .satisfies(
            each -> {
              assertThat(each.code()).isEqualTo("code.sign-wrong-near");
              assertThat(each.wanted()).contains(PieceCode.spoken(code));
            });
    assertThat(problem("0O1IB8")).isEqualTo("code.sign-wrong");
  }

  @Test
  void whatNoLabelSaysIsToldApart() {
    assertThat(problem("  ")).isEqualTo("code.empty");
    assertThat(problem("ACE")).isEqualTo("code.length");
    assertThat(problem("where is my blue piece")).isEqualTo("code.not-a-code");
    assertThat(problem(UUID.randomUUID().toString())).isEqualTo("code.unknown");
    assertThat(problem(PieceCode.draw(new java.util.Random(77)))).isEqualTo("code.unknown");
  }

  @Test
  void aPieceTakenBackByANewPlanSaysSo() {
    PlannedPiece old = made.plan.get(2);
    made.room
        .book
        .lessons()
        .replan(
            new PlannedPiece(
                old.id(),
                old.lessonId(),
                old.studentId(),
                old.code(),
                old.place(),
                old.control(),
                true,
                old.cell(),
                old.clothId(),
                old.asked(),
                next(old.stamp())));
    assertThat(problem(old.code())).isEqualTo("code.dropped");
  }

  private static Stamp next(Stamp stamp) {
    return stamp.next(walebook.book.Classroom.NOW);
  }
}
