package walebook.lesson;

import org.jspecify.annotations.Nullable;
import walebook.record.Fold;
import walebook.record.How;
import walebook.record.Pull;

/**
 * How the lesson measures.
 *
 * @param gaugeMm between the marks, mm
 * @param readings how many times each piece is read
 * @param restSeconds from release to the reading after it
 * @param holdSeconds held stretched
 * @param loadG hung weight in g when pulled by a load
 */
public record MeasureAsked(
    double gaugeMm,
    int readings,
    double restSeconds,
    double holdSeconds,
    Fold fold,
    Pull pull,
    @Nullable Double loadG) {

  /** The same as a test piece or a reading records it. */
  public How how() {
    return new How(fold, pull, loadG, holdSeconds, restSeconds);
  }
}
