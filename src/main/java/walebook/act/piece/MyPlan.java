package walebook.act.piece;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.book.PieceFilter;
import walebook.record.Lesson;
import walebook.record.PlannedPiece;
import walebook.record.TestPiece;

/**
 * What a student is asked to sew in a class, and what of it is logged.
 *
 * @param lines in the order of sewing
 * @param own pieces logged without a plan, newest first
 */
public record MyPlan(List<Line> lines, List<TestPiece> own) {

  /** One planned piece and, once it is logged, what was sewn. */
  public record Line(PlannedPiece planned, @Nullable TestPiece logged) {}

  public MyPlan {
    lines = List.copyOf(lines);
    own = List.copyOf(own);
  }

  /** Reads a student's plan. */
  public static MyPlan of(Book book, UUID classId, UUID studentId) {
    List<TestPiece> pieces =
        book.pieces().list(PieceFilter.ALL.ofClass(classId).ofStudent(studentId));
    Map<UUID, TestPiece> byPlan =
        pieces.stream()
            .filter(each -> each.whose().plannedId() != null)
            .collect(Collectors.toMap(MyPlan::planned, Function.identity(), (a, b) -> a));
    List<Line> lines =
        book.lessons().planOf(classId, studentId).stream()
            .map(each -> new Line(each, byPlan.get(each.id())))
            .toList();
    List<TestPiece> own = pieces.stream().filter(each -> each.whose().plannedId() == null).toList();
    return new MyPlan(lines, own);
  }

  private static UUID planned(TestPiece piece) {
    return java.util.Objects.requireNonNull(piece.whose().plannedId());
  }

  /**
   * The first planned piece that is not logged, those of the lesson in hand before others.
   *
   * @return null when all are logged
   */
  public @Nullable PlannedPiece next(@Nullable Lesson inHand) {
    List<PlannedPiece> open =
        lines.stream().filter(each -> each.logged() == null).map(Line::planned).toList();
    return open.stream()
        .filter(each -> inHand != null && each.lessonId().equals(inHand.id()))
        .findFirst()
        .orElse(open.isEmpty() ? null : open.get(0));
  }

  /** How many of the plan are logged. */
  public int done() {
    return (int) lines.stream().filter(each -> each.logged() != null).count();
  }
}
