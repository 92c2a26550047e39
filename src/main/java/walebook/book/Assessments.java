package walebook.book;

import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.record.CheckedBy;
import walebook.record.Criterion;
import walebook.record.CriterionTag;
import walebook.record.Feedback;
import walebook.record.PieceCheck;
import walebook.record.RecordTally;

/** What courses ask for, and how pieces were looked over. */
public interface Assessments {
  /** What a class's course asks for, in its order. */
  List<Criterion> criteriaOf(UUID classId);

  /** Saves a new criterion, or one that was changed. */
  void keep(Criterion criterion);

  /** Takes a criterion away with its tags. */
  void remove(UUID criterionId);

  /** The tags of a class's criteria. */
  List<CriterionTag> tagsOf(UUID classId);

  /** Puts a tag on; nothing happens when it is there. */
  void tag(CriterionTag tag);

  /** Takes a tag off; nothing happens when it is not there. */
  void untag(CriterionTag tag);

  @Nullable PieceCheck check(UUID pieceId, CheckedBy by);

  /** Every check of a class's pieces. */
  List<PieceCheck> checksOf(UUID classId);

  /** Saves a new check, or one that was changed. */
  void keep(PieceCheck check);

  /** What was said of a piece, the oldest first. */
  List<Feedback> feedbackOn(UUID pieceId);

  /** What was said of a class's pieces, the oldest first. */
  List<Feedback> feedbackOf(UUID classId);

  /** How many pieces, checks and comments a class has, and when one was last changed. */
  RecordTally tallyOf(UUID classId);

  /** Pieces of a class of which anything was said. */
  Set<UUID> spokenOf(UUID classId);

  /** Saves what was said. */
  void add(Feedback feedback);

  /** The tutor's own comments, the newest first. */
  List<String> bank();

  /** Keeps a comment; nothing happens when the same is there. */
  void bank(String says);

  /** Takes a comment out of the bank. */
  void unbank(String says);
}
