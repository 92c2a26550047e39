package walebook.desk.pieces;

import java.util.HashSet;
import java.util.List;
import walebook.act.piece.AddPhoto;
import walebook.act.piece.KeepDraft;
import walebook.act.piece.LogTestPiece;
import walebook.act.piece.PieceEntry;
import walebook.act.piece.PieceRoom;
import walebook.act.piece.ReadyPhoto;
import walebook.desk.common.Session;
import walebook.problem.Answer;
import walebook.problem.Problem;
import walebook.record.TestPiece;

/** Saves a piece with its photos and lets go of the draft; in the background. */
final class SavePiece {
  private final Session session;
  private final PieceRoom room;
  private final List<ReadyPhoto> photos;

  SavePiece(Session session, PieceRoom room, List<ReadyPhoto> photos) {
    this.session = session;
    this.room = room;
    this.photos = photos;
  }

  /**
   * Saves.
   *
   * @param confirmed what was asked about before; when nothing new comes up it is taken as a yes
   */
  Answer<TestPiece> save(PieceEntry entry, List<Problem> confirmed) {
    LogTestPiece act = new LogTestPiece(session.book(), session.clock(), session.chance());
    Answer<TestPiece> answer = act.save(entry, room, false);
    boolean onlyAsks = answer.problems().stream().noneMatch(Problem::refuses);
    if (!answer.isGood() && onlyAsks && new HashSet<>(confirmed).containsAll(answer.problems())) {
      answer = act.save(entry, room, true);
    }
    if (answer.isGood()) {
      AddPhoto photo = new AddPhoto(session.book(), session.clock());
      photos.forEach(each -> photo.save(entry.pieceId(), each));
      new KeepDraft(session.book()).drop(entry);
    }
    return answer;
  }
}
