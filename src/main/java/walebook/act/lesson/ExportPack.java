package walebook.act.lesson;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import walebook.lesson.LessonPack;
import walebook.lesson.WriteZip;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.sheet.WholeFile;

/** Writes a pack out of the program, as a zip or as a folder; whole or not at all. */
public final class ExportPack {
  /** What a zip's name ends in. */
  public static final String ENDING = ".zip";

  private ExportPack() {}

  /**
   * Writes a zip.
   *
   * @param replace true to write in the place of a file that is there
   */
  public static Answer<Path> zip(LessonPack pack, Path file, boolean replace) {
    Path whole = file.toAbsolutePath();
    Place place = new Place.Path(file.toString());
    String name = String.valueOf(whole.getFileName());
    Path folder = whole.getParent();
    if (!name.toLowerCase(Locale.ROOT).endsWith(ENDING)) {
      return Answer.bad(Problem.refuse("pack.no-zip-name", place, name, ENDING));
    } else if (folder == null || !Files.isDirectory(folder)) {
      return Answer.bad(Problem.refuse("pack.no-place", place, String.valueOf(folder), ""));
    } else if (Files.isDirectory(whole) || (Files.exists(whole) && !replace)) {
      return Answer.bad(Problem.refuse("pack.exists", place, name, ""));
    }
    try {
      WholeFile.write(whole, out -> WriteZip.write(pack.about().name(), pack.files(), out));
      return Answer.good(whole);
    } catch (IOException e) {
      return Answer.bad(notWritten(place, e));
    }
  }

  /**
   * Writes the pack's folder into another folder. A folder of its name that is there already is
   * left as it is, and the pack refused.
   */
  public static Answer<Path> folder(LessonPack pack, Path into) {
    Path whole = into.toAbsolutePath().resolve(pack.about().name());
    Place place = new Place.Path(whole.toString());
    if (!Files.isDirectory(into)) {
      return Answer.bad(Problem.refuse("pack.no-place", place, into.toString(), ""));
    } else if (Files.exists(whole)) {
      return Answer.bad(Problem.refuse("pack.exists", place, pack.about().name(), ""));
    }
    Path part = whole.resolveSibling("." + UUID.randomUUID() + ".part");
    try {
      Files.createDirectory(part);
      try {
        for (Map.Entry<String, byte[]> each : pack.files().byName().entrySet()) {
          Files.write(part.resolve(each.getKey()), each.getValue());
        }
        Files.move(part, whole);
        return Answer.good(whole);
      } finally {
        drop(part, pack);
      }
    } catch (IOException e) {
      return Answer.bad(notWritten(place, e));
    }
  }

  /** Takes away what a failed write left; nothing is there after a good one. */
  private static void drop(Path part, LessonPack pack) throws IOException {
    if (Files.isDirectory(part)) {
      for (String file : pack.files().byName().keySet()) {
        Files.deleteIfExists(part.resolve(file));
      }
      Files.deleteIfExists(part);
    }
  }

  private static Problem notWritten(Place place, IOException e) {
    String said = e instanceof AccessDeniedException ? "" : String.valueOf(e.getMessage());
    return Problem.refuse("pack.not-written", place, said, "");
  }
}
