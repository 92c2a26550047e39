package walebook.desk.pieces;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import walebook.act.piece.FindCauses;
import walebook.act.piece.LoadPieceRoom;
import walebook.act.piece.PieceField;
import walebook.act.piece.PieceRoom;
import walebook.book.Book;
import walebook.desk.common.DayWords;
import walebook.desk.common.Session;
import walebook.desk.pieces.WholePiece.Attempt;
import walebook.record.Keyed;
import walebook.record.Lesson;
import walebook.record.Parent;
import walebook.record.PieceCode;
import walebook.record.PlannedPiece;
import walebook.record.TestPiece;
import walebook.seam.StitchType;
import walebook.tables.SharedTables;
import walebook.words.Words;

/** Reads one piece whole from the book; never on the window's thread. */
final class LoadPiece {
  private final Session session;
  private final boolean namesHidden;
  private final Book book;
  private final Words words;
  private final SharedTables tables;
  private final List<StitchType> stitches;
  private final PieceWords say;

  LoadPiece(Session session, boolean namesHidden) {
    this.session = session;
    this.namesHidden = namesHidden;
    this.book = session.book();
    this.words = session.words();
    this.tables = session.tables();
    this.stitches = tables.stitchTypes();
    this.say = new PieceWords(session, namesHidden);
  }

  /** The piece, or null when the book has none with this key. */
  @Nullable WholePiece of(UUID id) {
    TestPiece piece = book.pieces().find(id);
    if (piece == null) {
      return null;
    }
    StitchType type =
        stitches.stream()
            .filter(each -> each.key().equals(piece.setting().stitchType()))
            .findFirst()
            .orElse(null);
    PieceRoom room = LoadPieceRoom.of(book, tables, piece.whose().classId(), piece);
    PieceLines lines = new PieceLines(words, say);
    return new WholePiece(
        id,
        PieceCode.spoken(piece.code()),
        who(piece),
        lines.settings(piece, room.machine(piece.setting().machineId())),
        lines.measures(piece),
        lines.seen(piece),
        Meaning.of(piece.measure(), piece.setting(), type, say.judge(piece), say.unit()),
        causes(piece, room),
        chain(piece),
        book.photos().ofPiece(id),
        new TimelineLines(session, namesHidden).of(id));
  }

  private List<CauseCard> causes(TestPiece piece, PieceRoom room) {
    List<TestPiece> chain = book.pieces().chainOf(piece.id());
    return CauseCard.of(new FindCauses(room, tables).of(piece, chain), words, room);
  }

  private String who(TestPiece piece) {
    UUID lessonId = piece.whose().lessonId();
    Lesson lesson = lessonId == null ? null : book.lessons().find(lessonId);
    String student = say.name(piece.whose().studentId());
    String day = DayWords.of(piece.whose().sewnOn());
    String says =
        lesson == null
            ? words.say("desk.pieces.who", student, day)
            : words.say("desk.pieces.who-lesson", student, day, lesson.title());
    UUID plannedId = piece.whose().plannedId();
    PlannedPiece planned = plannedId == null ? null : book.lessons().planned(plannedId);
    boolean forGarment = planned != null && planned.isForGarment();
    return forGarment ? words.say("desk.pieces.for-garment", says) : says;
  }

  private List<Attempt> chain(TestPiece shown) {
    List<Attempt> chain = new ArrayList<>();
    for (TestPiece each : book.pieces().chainOf(shown.id())) {
      chain.add(
          new Attempt(
              each.id(),
              PieceCode.spoken(each.code()),
              each.parent() == null ? "" : changed(each.parent()),
              say.stitch(each.setting()),
              say.end(each),
              say.judge(each).verdict(),
              each.id().equals(shown.id())));
    }
    return chain;
  }

  private String changed(Parent parent) {
    String labels =
        Stream.concat(
                parent.keys().stream()
                    .map(key -> Keyed.find(PieceField.class, key))
                    .filter(field -> field != null)
                    .map(field -> words.say("desk.pieces.field." + field.key())),
                Stream.of(parent.byHand()).filter(each -> !each.isEmpty()))
            .collect(Collectors.joining(", "));
    return labels.isEmpty()
        ? words.say("desk.pieces.changed-nothing")
        : words.say("desk.pieces.changed", labels);
  }
}
