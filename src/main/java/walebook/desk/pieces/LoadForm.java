package walebook.desk.pieces;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.act.piece.DraftPhotos;
import walebook.act.piece.KeepDraft;
import walebook.act.piece.LoadPieceRoom;
import walebook.act.piece.MendTestPiece;
import walebook.act.piece.MyPlan;
import walebook.act.piece.OneChange;
import walebook.act.piece.PieceEntry;
import walebook.act.piece.PieceField;
import walebook.act.piece.PieceRoom;
import walebook.act.piece.ReadyPhoto;
import walebook.act.piece.SayNext;
import walebook.act.piece.SewNext;
import walebook.act.piece.StartPiece;
import walebook.book.Book;
import walebook.desk.common.Session;
import walebook.record.Lesson;
import walebook.record.PieceCode;
import walebook.record.PlannedPiece;
import walebook.record.TestPiece;
import walebook.seam.NextTry;
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
        return FormStart.fresh(
                draft == null ? new StartPiece(book).fromPlan(planned, classId, room) : draft,
                room,
                title(planned, words.say("desk.pieces.title-planned", code, i + 1, lines.size())),
                planned.asked().readings(),
                draft != null,
                resumed(draft))
            .with(photos(draft));
      }
    }
    return null;
  }

  private String title(PlannedPiece planned, String says) {
    return planned.isForGarment() ? words.say("desk.pieces.for-garment", says) : says;
  }

  /** The form of a piece without a plan. */
  FormStart own(UUID classId, UUID studentId) {
    PieceRoom room = room(classId);
    PieceEntry draft = new KeepDraft(book).find(studentId, null);
    PieceEntry entry =
        draft == null
            ? new StartPiece(book).fresh(classId, studentId, lessonNow(classId), room)
            : draft;
    return FormStart.fresh(
            entry, room, words.say("desk.pieces.title-own"), 1, draft != null, resumed(draft))
        .with(photos(draft));
  }

  /** The form of a second attempt, or null when the piece is gone. */
  @Nullable FormStart again(UUID pieceId) {
    return again(pieceId, null);
  }

  /**
   * The same with its one change filled in.
   *
   * @param next what to try; null when the student chooses. A draft that changes something already
   *     stays as it was typed, and the note says so
   */
  @Nullable FormStart again(UUID pieceId, @Nullable NextTry next) {
    TestPiece parent = book.pieces().find(pieceId);
    if (parent == null) {
      return null;
    }
    PieceRoom room = room(parent.whose().classId());
    PieceEntry before = new StartPiece(book).again(parent, room);
    PieceEntry draft = new KeepDraft(book).findAgain(parent.whose().studentId(), pieceId);
    String title = words.say("desk.pieces.title-again", PieceCode.spoken(parent.code()));
    int readings = Math.max(1, parent.measure().pulls().size());
    PieceEntry start = draft == null ? before : draft;
    boolean free = OneChange.fields(before, start, room).isEmpty();
    PieceField field = next == null || !free ? null : SewNext.field(next.remedy().factor());
    return new FormStart(
        next == null || !free ? start : SewNext.change(start, next, room),
        before,
        room,
        title,
        readings,
        draft != null,
        note(draft, next, free, room),
        field,
        book.pieces().chainOf(parent.id()),
        photos(draft),
        null);
  }

  /** The form over a saved piece, or null when the piece is gone. */
  @Nullable FormStart mend(UUID pieceId) {
    TestPiece piece = book.pieces().find(pieceId);
    if (piece == null) {
      return null;
    }
    UUID classId = piece.whose().classId();
    PieceRoom room = LoadPieceRoom.of(book, session.tables(), classId, piece);
    PieceEntry draft = new KeepDraft(book).findMending(pieceId);
    TestPiece parent = piece.parent() == null ? null : book.pieces().find(piece.parent().pieceId());
    return new FormStart(
        draft == null ? MendTestPiece.typed(piece, room) : draft,
        parent == null ? null : new StartPiece(book).again(parent, room),
        room,
        words.say("desk.pieces.title-mend", PieceCode.spoken(piece.code())),
        Math.max(1, piece.measure().pulls().size()),
        draft != null,
        resumed(draft),
        null,
        book.pieces().chainOf(pieceId),
        photos(draft),
        piece);
  }

  private String note(
      @Nullable PieceEntry draft, @Nullable NextTry next, boolean free, PieceRoom room) {
    if (next == null) {
      return resumed(draft);
    }
    String says = SayNext.says(words, next, room);
    if (!free) {
      return words.say("desk.pieces.resumed-instead", says);
    }
    return SewNext.typed(next).isEmpty()
        ? words.say("desk.pieces.next-open", says)
        : words.say("desk.pieces.next-filled", says);
  }

  private List<ReadyPhoto> photos(@Nullable PieceEntry draft) {
    return draft == null ? List.of() : new DraftPhotos(book).find(draft);
  }

  private String resumed(@Nullable PieceEntry draft) {
    return draft == null ? "" : words.say("desk.pieces.resumed");
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
