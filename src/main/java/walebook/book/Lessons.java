package walebook.book;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.record.Lesson;
import walebook.record.PlannedPiece;
import walebook.record.TaughtPack;

/** Packs as they were taught, lessons of a class, and what each student is asked to sew. */
public interface Lessons {
  /** The pack with this content, or null when the book has not met it. */
  @Nullable TaughtPack packByHash(String contentHash);

  @Nullable TaughtPack pack(UUID packId);

  /** Keeps a pack with its pictures by file name; once kept it is never changed. */
  void keepPack(TaughtPack pack, Map<String, byte[]> pictures);

  Map<String, byte[]> picturesOf(UUID packId);

  void add(Lesson lesson);

  @Nullable Lesson find(UUID lessonId);

  /** A class's lessons, first to last. */
  List<Lesson> of(UUID classId);

  void plan(List<PlannedPiece> pieces);

  /** Changes a planned piece: another cloth, dropped by a new plan. */
  void replan(PlannedPiece piece);

  /** A lesson's planned pieces by student and place, those dropped left out. */
  List<PlannedPiece> planOf(UUID lessonId);

  /** One student's planned pieces in the class, by lesson and place, those dropped left out. */
  List<PlannedPiece> planOf(UUID classId, UUID studentId);

  /** A planned piece by its key, those dropped too: its label may be out. */
  @Nullable PlannedPiece planned(UUID plannedId);

  @Nullable PlannedPiece plannedByCode(String code);

  /** True when a planned or sewn piece has this code. */
  boolean isCodeTaken(String code);
}
