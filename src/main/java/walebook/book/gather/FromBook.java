package walebook.book.gather;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import walebook.problem.Problem;

/**
 * What came of one book, in records: a test piece with its pulls and faults counts once.
 *
 * @param name of the book; empty when it could not be read
 * @param problem why nothing was taken from it, or null
 * @param added not here before
 * @param pieces of those added, test pieces
 * @param photos of those added, photos
 * @param taken changed only there, taken over
 * @param kept changed only here, kept
 * @param same alike in both
 * @param conflicts for a person to decide
 * @param gone removed here on purpose, with what hangs on them; not taken again
 */
public record FromBook(
    Path file,
    String name,
    @Nullable Problem problem,
    int added,
    int pieces,
    int photos,
    int taken,
    int kept,
    int same,
    int conflicts,
    int gone) {

  /** A book that nothing was taken from. */
  public static FromBook refused(Path file, String name, Problem problem) {
    return new FromBook(file, name, problem, 0, 0, 0, 0, 0, 0, 0, 0);
  }
}
