package walebook.desk.common;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** Asks for a file; an interface, since tests have no chooser. */
public interface PickFile {

  /** What kind of file is meant. */
  enum Kind {
    BOOK,
    WORKBOOK,
    /** A workbook or text in columns, to be read. */
    TABLE,
    PAPER,
    PHOTO,
    /** A zip, or the pack.yaml of a folder. */
    PACK,
    /** A picture in dots. */
    PICTURE,
    /** A picture in lines. */
    DRAWING,
    /** A folder to write into; opened, never saved. */
    FOLDER
  }

  /** A file that exists, or null when nothing was chosen. */
  @Nullable Path open(Kind kind);

  /**
   * Where to save, or null when nothing was chosen.
   *
   * @param name suggested
   */
  @Nullable Path save(Kind kind, String name);
}
