package walebook.sheet.in;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;

/** Reads tables from files of other programs; what kind a file is, its first bytes say. */
public final class ReadTables {
  private static final int OLD = 0xD0CF11E0;
  private static final int ZIP = 0x504B0304;

  private enum Form {
    WORKBOOK,
    OLD_WORKBOOK,
    TEXT
  }

  private ReadTables() {}

  /** The sheets of a file; refused when it is none that can be read. */
  public static Answer<InFile> open(Path file) {
    return form(file)
        .flatMap(
            form ->
                form == Form.WORKBOOK
                    ? new ReadWorkbook(file).open()
                    : new ReadSeparated(file).open());
  }

  /** One sheet; for a text file whatever sheet is named. */
  public static Answer<InGrid> read(Path file, String sheet) {
    return form(file)
        .flatMap(
            form ->
                form == Form.WORKBOOK
                    ? new ReadWorkbook(file).read(sheet)
                    : new ReadSeparated(file).read());
  }

  private static Answer<Form> form(Path file) {
    Place place = new Place.Path(file.toString());
    if (!Files.isRegularFile(file)) {
      return Answer.bad(Problem.refuse("in.no-file", place, "", ""));
    }
    try {
      long bytes = Files.size(file);
      if (bytes > InLimits.FILE_BYTES) {
        return Answer.bad(
            Problem.refuse(
                "in.too-large",
                place,
                String.valueOf(bytes >> 20),
                String.valueOf(InLimits.FILE_BYTES >> 20)));
      }
      if (bytes == 0) {
        return Answer.bad(Problem.refuse("in.empty-file", place, "", ""));
      }
      Form form = form(begin(file));
      return form == Form.OLD_WORKBOOK
          ? Answer.bad(Problem.refuse("in.old-or-locked", place, "", ""))
          : Answer.good(form);
    } catch (IOException e) {
      return Answer.bad(Problem.refuse("in.unreadable", place, ReadWorkbook.shortened(e), ""));
    }
  }

  private static int begin(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      int first = 0;
      for (byte each : in.readNBytes(4)) {
        first = first << 8 | (each & 0xFF);
      }
      return first;
    }
  }

  private static Form form(int first) {
    if (first == ZIP) {
      return Form.WORKBOOK;
    }
    return first == OLD ? Form.OLD_WORKBOOK : Form.TEXT;
  }
}
