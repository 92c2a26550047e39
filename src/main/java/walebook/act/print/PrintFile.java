package walebook.act.print;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import walebook.paper.Made;
import walebook.paper.Pages;
import walebook.paper.PaperProgress;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.sheet.WholeFile;
import walebook.words.Words;

/**
 * Where pages go.
 *
 * @param replace whether a file that is there may be replaced
 * @param progress told how far it is; may stop it by throwing
 */
public record PrintFile(Path path, boolean replace, PaperProgress progress) {
  public static final String ENDING = ".pdf";

  /** Makes the pages. */
  @FunctionalInterface
  interface Work {
    Made on(Pages pages) throws IOException;
  }

  /**
   * Writes the file; it appears whole or not at all.
   *
   * @return the file, with a remark where a letter could not be printed; or what is in the way
   * @throws java.util.concurrent.CancellationException from the progress; no file is left then
   */
  Answer<Printed> write(Words words, Work work) {
    Problem problem = inTheWay();
    if (problem != null) {
      return Answer.bad(problem);
    }
    List<Made> made = new ArrayList<>();
    try {
      WholeFile.write(path, out -> made.add(work.on(pages(words, out))));
    } catch (AccessDeniedException e) {
      return Answer.bad(refuse("print.in-use", String.valueOf(e.getMessage()), ""));
    } catch (IOException e) {
      return Answer.bad(refuse("print.not-written", String.valueOf(e.getMessage()), ""));
    }
    Made last = made.get(0);
    List<Problem> remarks =
        last.lacking().isEmpty()
            ? List.of()
            : List.of(Problem.ask("print.letters", place(), String.join(" ", last.lacking()), ""));
    return new Answer.Good<>(new Printed(path, last.pages()), remarks);
  }

  private Pages pages(Words words, OutputStream out) {
    return new Pages(words, out, progress);
  }

  /** What keeps the file from being written, as far as can be told before; or null. */
  public @Nullable Problem inTheWay() {
    Path folder = path.toAbsolutePath().getParent();
    if (!path.toString().toLowerCase(Locale.ROOT).endsWith(ENDING)) {
      return refuse("print.no-pdf-name", path.toString(), ENDING);
    }
    if (Files.isDirectory(path)) {
      return refuse("print.is-folder", path.toString(), "");
    }
    if (folder == null || !Files.isDirectory(folder)) {
      return refuse("sheet.no-folder", String.valueOf(folder), "");
    }
    if (Files.exists(path) && !replace) {
      return refuse("sheet.exists", path.toString(), "--replace");
    }
    if (!Files.isWritable(folder) || (Files.exists(path) && !Files.isWritable(path))) {
      return refuse("sheet.not-writable", folder.toString(), "");
    }
    return null;
  }

  private Problem refuse(String code, String found, String wanted) {
    return Problem.refuse(code, place(), found, wanted);
  }

  private Place place() {
    return new Place.Path(path.toString());
  }
}
