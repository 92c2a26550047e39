package walebook.desk.pieces;

import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.act.piece.PieceEntry;
import walebook.act.piece.PieceField;
import walebook.act.piece.PieceRoom;
import walebook.act.piece.ReadyPhoto;
import walebook.record.Student;
import walebook.record.TestPiece;

/**
 * What a log form begins with.
 *
 * @param entry the texts in its fields
 * @param before a piece sewn again as it stood before the change; null for others
 * @param title what is being logged, in words
 * @param readings how many pulls are asked for
 * @param resumed whether the texts come from a draft
 * @param note what is to be known at the beginning, in words; empty when nothing is
 * @param inHand the field that the change to be made is in; null when none is known beforehand
 * @param chain the attempts before it
 * @param photos chosen before and not saved yet
 * @param mending the saved piece that is being mended; null for a new one
 */
record FormStart(
    PieceEntry entry,
    @Nullable PieceEntry before,
    PieceRoom room,
    String title,
    int readings,
    boolean resumed,
    String note,
    @Nullable PieceField inHand,
    List<TestPiece> chain,
    List<ReadyPhoto> photos,
    @Nullable TestPiece mending) {
  FormStart {
    chain = List.copyOf(chain);
    photos = List.copyOf(photos);
  }

  /** The same with other texts in its fields, and a note on how they came there. */
  FormStart typed(PieceEntry next, String says) {
    return new FormStart(
        next, before, room, title, readings, resumed, says, inHand, chain, photos, mending);
  }

  /** True for a new piece of which nothing was typed before. */
  boolean isFresh() {
    return mending == null && before == null && !resumed;
  }

  /** Said large on the form: on a shared screen the next one is somebody else. */
  String whose(boolean namesHidden) {
    Student student = room.student(entry.studentId());
    return student == null ? "" : (namesHidden ? student.alias() : student.name()) + " · ";
  }

  /** The same with photos chosen before. */
  FormStart with(List<ReadyPhoto> chosen) {
    return new FormStart(
        entry, before, room, title, readings, resumed, note, inHand, chain, chosen, mending);
  }

  /** A new piece, from the plan or of one's own. */
  static FormStart fresh(
      PieceEntry entry, PieceRoom room, String title, int readings, boolean resumed, String note) {
    return new FormStart(
        entry, null, room, title, readings, resumed, note, null, List.of(), List.of(), null);
  }
}
