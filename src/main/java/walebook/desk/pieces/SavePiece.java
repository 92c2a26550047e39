package walebook.desk.pieces;

import java.util.HashSet;
import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.act.piece.AddPhoto;
import walebook.act.piece.KeepDraft;
import walebook.act.piece.LogTestPiece;
import walebook.act.piece.MendTestPiece;
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
  private final @Nullable TestPiece mending;
  private final List<ReadyPhoto> photos;

  /**
   * Makes it.
   *
   * @param mending the piece in the book that is saved over, or null for a new one
   */
  SavePiece(Session session, PieceRoom room, @Nullable TestPiece mending, List<ReadyPhoto> photos) {
    this.session = session;
    this.room = room;
    this.mending = mending;
    this.photos = photos;
  }

  /**
   * Saves.
   *
   * @param confirmed what was asked about before; when nothing new comes up it is taken as a yes
   */
  Answer<TestPiece> save(PieceEntry entry, List<Problem> confirmed) {
    // In one step, so that undo takes back all that one Save did.
    return session.book().inOneStep(() -> saveWhole(entry, confirmed));
  }

  private Answer<TestPiece> saveWhole(PieceEntry entry, List<Problem> confirmed) {
    Answer<TestPiece> answer = save(entry, false, false);
    boolean onlyAsks = answer.problems().stream().noneMatch(Problem::refuses);
    if (!answer.isGood() && onlyAsks && new HashSet<>(confirmed).containsAll(answer.problems())) {
      boolean over = confirmed.stream().anyMatch(each -> each.code().equals(MendTestPiece.STALE));
      answer = save(entry, true, over);
    }
    if (answer.isGood()) {
      AddPhoto photo = new AddPhoto(session.book(), session.clock());
      photos.forEach(each -> photo.save(entry.pieceId(), each));
      drop(entry);
    }
    return answer;
  }

  private Answer<TestPiece> save(PieceEntry entry, boolean confirmed, boolean over) {
    TestPiece before = mending;
    return before == null
        ? new LogTestPiece(session.book(), session.clock(), session.chance())
            .save(entry, room, confirmed)
        : new MendTestPiece(session.book(), session.clock())
            .save(before, entry, room, confirmed, over);
  }

  private void drop(PieceEntry entry) {
    KeepDraft drafts = new KeepDraft(session.book());
    if (mending == null) {
      drafts.drop(entry);
    } else {
      drafts.dropMending(entry);
    }
  }
}
