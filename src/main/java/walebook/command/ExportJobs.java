package walebook.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import tools.jackson.databind.node.ObjectNode;
import walebook.act.classroom.ExportTerm;
import walebook.book.Book;
import walebook.book.PieceFilter;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.SchoolClass;
import walebook.sheet.ExportProgress;
import walebook.tables.SharedTables;

/** A class's term as a workbook. */
final class ExportJobs {
  static final String ENDING = ".xlsx";

  private ExportJobs() {}

  static List<Job> all() {
    return List.of(
        Job.shows(
            "export",
            "command.export",
            AtBook.open(ExportJobs::export),
            Job.BOOK,
            Job.CLASS,
            Option.needed("to", "FILE", "command.option.workbook"),
            Option.flag("codes", "command.option.codes"),
            Option.flag("replace", "command.option.replace")));
  }

  private static Exit export(Typed typed, Terminal terminal, Book book) {
    SchoolClass of = Pick.schoolClass(typed, book);
    boolean names = !typed.has("codes");
    Path file = file(typed);
    Path written =
        Refused.unless(
            new ExportTerm(book, terminal.words(), SharedTables.read(), terminal.clock())
                .export(file, of.id(), names, ExportProgress.UNHEARD));
    ObjectNode json = Json.object();
    json.put("file", written.toString());
    json.put("class", of.name());
    json.put("names", names);
    json.put("students", book.enrolments().studentsOf(of.id()).size());
    json.put("pieces", book.pieces().count(PieceFilter.ALL.ofClass(of.id())));
    terminal
        .out()
        .println(
            typed.has("json")
                ? Json.write(json)
                : terminal.say(
                    "command.say.exported",
                    written,
                    json.get("students").asInt(),
                    json.get("pieces").asInt()));
    return Exit.DONE;
  }

  /** The ending is asked for so that no book or other file is replaced by a slip. */
  private static Path file(Typed typed) {
    String name = typed.text("to", "");
    Path file = AtBook.path("to", name);
    if (!name.toLowerCase(Locale.ROOT).endsWith(ENDING)) {
      throw Refused.field("to", "sheet.no-workbook-name", name, ENDING);
    }
    if (Files.exists(file) && !typed.has("replace")) {
      throw new Refused(
          Exit.REFUSED,
          List.of(
              Problem.refuse("sheet.exists", new Place.Path(file.toString()), name, "--replace")));
    }
    return file;
  }
}
