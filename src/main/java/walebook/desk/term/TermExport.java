package walebook.desk.term;

import java.nio.file.Path;
import java.util.UUID;

/** Writes a term's record into a workbook. */
@FunctionalInterface
public interface TermExport {
  /**
   * Writes it.
   *
   * @param names false to write students' codes in the place of their names
   * @return the file that was written
   * @throws Exception when it could not be written; an {@link java.io.IOException} when the disk
   *     would not take it
   */
  Path export(Path file, UUID classId, boolean names) throws Exception;
}
