package walebook.compare.alike;

import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.record.ClothReading;
import walebook.record.CutEdge;
import walebook.record.Fold;
import walebook.record.Grain;
import walebook.record.Pull;

/**
 * What must be the same for readings to be of the same thing: a stretch depends on all of it.
 *
 * @param lessonId null for readings outside a lesson
 * @param loadG hung weight where pulled by a load
 */
public record Conditions(
    @Nullable UUID lessonId,
    UUID clothId,
    Grain grain,
    @Nullable Fold fold,
    CutEdge edge,
    @Nullable Pull pull,
    @Nullable Double loadG) {

  static Conditions of(ClothReading reading) {
    return new Conditions(
        reading.lessonId(),
        reading.clothId(),
        reading.grain(),
        reading.how().fold(),
        reading.edge(),
        reading.how().pull(),
        reading.how().loadG());
  }
}
