package walebook.sheet;

import java.util.List;
import walebook.record.ClothReading;

/**
 * What was measured, planned and noted beside the pieces.
 *
 * @param readings each by itself, of the chosen students and lessons
 * @param washes of the cloths that go out
 */
record TermLog(
    List<ClothReading> readings,
    List<WashLine> washes,
    List<ReadingPlanLine> planned,
    List<NoteLine> notes) {
  TermLog {
    readings = List.copyOf(readings);
    washes = List.copyOf(washes);
    planned = List.copyOf(planned);
    notes = List.copyOf(notes);
  }
}
