package walebook.act.lesson;

import java.nio.file.Files;
import java.nio.file.Path;
import walebook.lesson.LessonPack;
import walebook.lesson.PackFolder;
import walebook.lesson.ReadPack;
import walebook.lesson.ReadZip;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;

/** Reads and checks a pack outside the program, whether in a folder or in a zip. */
public final class OpenPack {
  private static final String INSIDE = "pack.yaml";

  private OpenPack() {}

  /**
   * The pack, or all that is wrong with it.
   *
   * @param at its folder, the pack.yaml in it, or a zip
   */
  public static Answer<LessonPack> at(Path at, ReadPack read) {
    Path whole = at.toAbsolutePath().normalize();
    Path folder = whole.getParent();
    if (!Files.exists(whole)) {
      return Answer.bad(
          Problem.refuse("pack.nothing-there", new Place.Path(at.toString()), "", ""));
    }
    if (Files.isDirectory(whole)) {
      return read.read(new PackFolder(whole));
    } else if (folder != null && whole.endsWith(INSIDE)) {
      return read.read(new PackFolder(folder));
    }
    return ReadZip.of(whole).flatMap(read::read);
  }
}
