package walebook.desk.pieces;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.act.piece.KeepDraft;
import walebook.act.piece.LoadPieceRoom;
import walebook.act.piece.MyPlan;
import walebook.act.piece.PieceEntry;
import walebook.act.piece.PieceRoom;
import walebook.act.piece.StartPiece;
import walebook.book.Book;
import walebook.desk.common.Session;
import walebook.record.Lesson;
import walebook.record.PieceCode;
import walebook.record.PlannedPiece;
import walebook.record.TestPiece;
import walebook.words.Words;

/** Reads from the book what a log form begins with; never on the window's thread. */
final class LoadForm {
  private final Session session;
  private final Book book;
  private final Words words;

  LoadForm(Session session) {
    this.session = session;
    this.book = session.book();
    this.words = session.words();
  }

  /** The form of a planned piece, or null when the student's plan no longer holds it. */
  @Nullable FormStart planned(UUID classId, UUID studentId, UUID plannedId) {
    List<MyPlan.Line> lines = MyPlan.of(book, classId, studentId).lines();
    for (int i = 0; i < lines.size(); i++) {
      PlannedPiece planned = lines.get(i).planned();
      if (planned.id().equals(plannedId) && lines.get(i).logged() == null) {
        PieceRoom room = room(classId);
        PieceEntry draft = new KeepDraft(book).find(studentId, plannedId);
        String code = PieceCode.spoken(planned.code());
        return new FormStart(
            draft == null ? new StartPiece(book).fromPlan(planned, classId, room) : draft,
            null,
            room,
            words.say("desk.pieces.title-planned", code, i + 1, lines.size()),
            planned.asked().readings(),
            draft != null);
      }
    }
    return null;
  }

  /** The form of a piece without a plan. */
  FormStart own(UUID classId, UUID studentId) {
    PieceRoom room = room(classId);
    PieceEntry draft = new KeepDraft(book).find(studentId, null);
    PieceEntry entry =
        draft == null
            ? new StartPiece(book).fresh(classId, studentId, lessonNow(classId), room)
            : draft;
    return new FormStart(entry, null, room, words.say("desk.pieces.title-own"), 1, draft != null);
  }

  /** The form of a second attempt, or null when the piece is gone. */
  @Nullable FormStart again(UUID pieceId) {
    TestPiece parent = book.pieces().find(pieceId);
    if (parent == null) {
      return null;
    }
    PieceRoom room = room(parent.whose().classId());
    PieceEntry before = new StartPiece(book).again(parent, room);
    PieceEntry draft = new KeepDraft(book).findAgain(parent.whose().studentId(), pieceId);
    String title = words.say("desk.pieces.title-again", PieceCode.spoken(parent.code()));
    int readings = Math.max(1, parent.measure().pulls().size());
    return new FormStart(
        draft == null ? before : draft, before, room, title, readings, draft != null);
  }

  private PieceRoom room(UUID classId) {
    return LoadPieceRoom.of(book, session.tables(), classId);
  }

  private @Nullable UUID lessonNow(UUID classId) {
    LocalDate today = LocalDate.now(session.clock());
    List<Lesson> begun =
        book.lessons().of(classId).stream()
            .filter(each -> !each.taughtOn().isAfter(today))
            .toList();
    return begun.isEmpty() ? null : begun.get(begun.size() - 1).id();
  }
}
