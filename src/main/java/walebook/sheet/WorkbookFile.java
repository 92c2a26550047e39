package walebook.sheet;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.words.Words;

/** Puts a class's record into a file of the kind its ending says, or says what is in the way. */
public final class WorkbookFile {
  private WorkbookFile() {}

  /**
   * Writes the record.
   *
   * @param replace true to put it in the place of a file that is there: ask before
   * @return the file; refused when its folder is missing or not writable, when the path is a folder
   *     or no plain file, when a file is there that may not be replaced, when it is open elsewhere,
   *     or when the disk fails
   * @throws java.util.concurrent.CancellationException from the progress; no file is left then
   */
  public static Answer<Path> write(
      TermFacts facts, Words words, Path file, boolean replace, ExportProgress progress) {
    Problem problem = inTheWay(file.toAbsolutePath());
    return problem == null
        ? whole(file, replace, out -> write(facts, words, TermFormat.of(file), out, progress))
        : Answer.bad(problem);
  }

  /** A file of any content, or why it could not be written. */
  static Answer<Path> whole(Path file, boolean replace, WholeFile.Content content) {
    try {
      if (replace) {
        WholeFile.write(file, content);
      } else {
        WholeFile.writeNew(file, content);
      }
      return Answer.good(file);
    } catch (FileAlreadyExistsException e) {
      return Answer.bad(exists(file));
    } catch (WholeFile.FullDisk e) {
      return refuse("sheet.disk-full", file, e);
    } catch (AccessDeniedException e) {
      return refuse("sheet.in-use", file, e);
    } catch (FileSystemException e) {
      return refuse(Files.exists(file) ? "sheet.in-use" : "sheet.not-written", file, e);
    } catch (IOException e) {
      return refuse("sheet.not-written", file, e);
    } catch (RuntimeException e) {
      return refuse("sheet.not-written", file, ofDisk(e));
    }
  }

  /** Libraries wrap what the disk said in exceptions of their own; all others are none of ours. */
  private static IOException ofDisk(RuntimeException wrapped) {
    for (Throwable each = wrapped.getCause(); each != null; each = each.getCause()) {
      if (each instanceof IOException disk) {
        return disk;
      }
    }
    throw wrapped;
  }

  /** That there is a file which may not be replaced. */
  public static Problem exists(Path file) {
    return Problem.refuse(
        "sheet.exists", place(file), String.valueOf(file.getFileName()), "--replace");
  }

  private static void write(
      TermFacts facts, Words words, TermFormat format, OutputStream out, ExportProgress progress)
      throws IOException {
    switch (format) {
      case WORKBOOK -> TermWorkbook.write(facts, words, out, progress);
      case TABLES -> TermTables.write(facts, words, out, progress);
      case JSON -> TermJson.write(facts, words, out, progress);
      case CSV -> {
        progress.at(0);
        Writer text = new OutputStreamWriter(out, StandardCharsets.UTF_8);
        CsvRows.write(
            text,
            facts.chosen(PieceColumns.all(facts.lookup(), words)),
            facts.pieces(),
            facts.cover(),
            words,
            done -> progress.at((double) done / Math.max(1, facts.pieceCount())));
        text.flush();
        progress.at(1);
      }
    }
  }

  /** What keeps a workbook from being written here, as far as can be told before; or null. */
  public static @Nullable Problem inTheWay(Path file) {
    Path folder = file.toAbsolutePath().getParent();
    if (Files.isDirectory(file)) {
      return Problem.refuse("sheet.is-folder", place(file), file.toString(), "");
    }
    if (Files.exists(file) && !Files.isRegularFile(file)) {
      return Problem.refuse("sheet.not-a-file", place(file), file.toString(), "");
    }
    if (folder == null || !Files.isDirectory(folder)) {
      return Problem.refuse("sheet.no-folder", place(file), String.valueOf(folder), "");
    }
    if (!Files.isWritable(folder) || (Files.exists(file) && !Files.isWritable(file))) {
      return Problem.refuse("sheet.not-writable", place(file), folder.toString(), "");
    }
    return lock(file, folder);
  }

  /** Spreadsheet programs lay a small file beside the one they have open. */
  private static @Nullable Problem lock(Path file, Path folder) {
    String name = String.valueOf(file.getFileName());
    for (String mark : new String[] {".~lock." + name + "#", "~$" + name}) {
      if (Files.exists(file) && Files.exists(folder.resolve(mark))) {
        return Problem.refuse("sheet.in-use", place(file), name, mark);
      }
    }
    return null;
  }

  private static Answer<Path> refuse(String code, Path file, IOException e) {
    return Answer.bad(Problem.refuse(code, place(file), String.valueOf(e.getMessage()), ""));
  }

  private static Place place(Path file) {
    return new Place.Path(file.toString());
  }
}
