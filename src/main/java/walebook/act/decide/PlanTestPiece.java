package walebook.act.decide;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.act.piece.MyPlan;
import walebook.book.Book;
import walebook.book.Ids;
import walebook.garment.Advice;
import walebook.garment.LinkKind;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.GarmentEdge;
import walebook.record.GarmentSheet;
import walebook.record.Grain;
import walebook.record.Keyed;
import walebook.record.Lesson;
import walebook.record.Method;
import walebook.record.PieceAsked;
import walebook.record.PieceCode;
import walebook.record.PlannedPiece;
import walebook.record.Stamp;
import walebook.record.StitchChoice;

/** Puts the test piece that a garment lacks on its student's plan, with the lesson in hand. */
public final class PlanTestPiece {
  private static final int LAYERS = 2;

  /** The weakest of three is the honest one. */
  private static final int PULLS = 3;

  private final Book book;
  private final Clock clock;
  private final Random chance;

  /**
   * The act on one book.
   *
   * @param chance draws the code on the label
   */
  public PlanTestPiece(Book book, Clock clock, Random chance) {
    this.book = book;
    this.clock = clock;
    this.chance = chance;
  }

  /**
   * Plans a piece. The same piece is not planned twice while the first one waits to be sewn.
   *
   * @return the planned piece, or what stands in its way: no cloth chosen, no lesson yet
   */
  public Answer<PlannedPiece> plan(
      GarmentSheet sheet, Advice.PieceWanted wanted, UUID classId, UUID studentId) {
    UUID cloth = sheet.clothId();
    if (cloth == null) {
      return Answer.bad(Problem.refuse("field.needed", Place.field("cloth"), "", ""));
    }
    return book.inOneStep(
        () -> {
          List<Lesson> lessons = book.lessons().of(classId);
          if (lessons.isEmpty()) {
            return Answer.bad(Problem.refuse("plan.no-lesson", new Place.Whole(), "", ""));
          }
          PieceAsked asked = asked(sheet, wanted);
          PlannedPiece waiting = waiting(classId, studentId, cloth, asked);
          return Answer.good(
              waiting != null ? waiting : add(inHand(lessons).id(), studentId, cloth, asked));
        });
  }

  private Lesson inHand(List<Lesson> lessons) {
    return Objects.requireNonNull(Lesson.inHand(lessons, LocalDate.now(clock)));
  }

  private static PieceAsked asked(GarmentSheet sheet, Advice.PieceWanted wanted) {
    StitchChoice stitch = stitch(sheet, wanted);
    Method method =
        switch (wanted.link()) {
          case HEM -> Method.HEM;
          case BAND, ELASTIC -> Method.BAND;
          case CLOTH, SEAM, INTERFACING -> Method.SEAM;
        };
    return new PieceAsked(
        Keyed.of(Grain.class, wanted.round().key()),
        LAYERS,
        method,
        stitch.machineKind(),
        stitch.stitchType(),
        stitch.dialWidth(),
        stitch.dialLength(),
        null,
        "",
        wanted.link() == LinkKind.INTERFACING ? LinkKind.INTERFACING.key() : "",
        wanted.needPercent(),
        PULLS);
  }

  private static StitchChoice stitch(GarmentSheet sheet, Advice.PieceWanted wanted) {
    return sheet.openings().stream()
        .filter(each -> each.edge().equals(wanted.edge().key()))
        .flatMap(each -> each.edges().stream())
        .filter(each -> each.link().equals(wanted.link().key()))
        .map(GarmentEdge::stitch)
        .filter(Objects::nonNull)
        .findFirst()
        .orElse(sheet.sewing().stitch());
  }

  private @Nullable PlannedPiece waiting(
      UUID classId, UUID studentId, UUID cloth, PieceAsked asked) {
    return MyPlan.of(book, classId, studentId).lines().stream()
        .filter(each -> each.logged() == null)
        .map(MyPlan.Line::planned)
        .filter(each -> cloth.equals(each.clothId()) && each.asked().equals(asked))
        .findFirst()
        .orElse(null);
  }

  private PlannedPiece add(UUID lessonId, UUID studentId, UUID cloth, PieceAsked asked) {
    int place =
        1
            + book.lessons().planOf(lessonId).stream()
                .filter(each -> each.studentId().equals(studentId))
                .mapToInt(PlannedPiece::place)
                .max()
                .orElse(0);
    String code = PieceCode.draw(chance);
    while (book.lessons().isCodeTaken(code)) {
      code = PieceCode.draw(chance);
    }
    PlannedPiece piece =
        new PlannedPiece(
            Ids.next(),
            lessonId,
            studentId,
            code,
            place,
            false,
            false,
            PlannedPiece.FOR_GARMENT,
            cloth,
            asked,
            Stamp.fresh(clock.instant()));
    book.lessons().plan(List.of(piece));
    return piece;
  }
}
