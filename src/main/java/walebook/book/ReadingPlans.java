package walebook.book;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.record.PlannedReading;
import walebook.record.ReadingLine;

/** What each student is asked to measure, as {@link Lessons} has what they are to sew. */
public interface ReadingPlans {
  void plan(List<PlannedReading> readings);

  /** Changes a planned reading: another cloth, dropped by a new plan. */
  void replan(PlannedReading reading);

  /** A lesson's by student and place with what is measured, those dropped left out. */
  List<ReadingLine> of(UUID lessonId);

  /** A class's by lesson, student and place, those dropped left out. */
  List<ReadingLine> ofClass(UUID classId);

  /** One student's in the class, by lesson and place, those dropped left out. */
  List<ReadingLine> of(UUID classId, UUID studentId);

  /** A planned reading by its key, those dropped too. */
  @Nullable PlannedReading find(UUID plannedId);
}
