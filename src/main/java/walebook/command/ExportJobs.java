package walebook.command;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import walebook.act.classroom.ExportTerm;
import walebook.book.Book;
import walebook.record.Lesson;
import walebook.record.SchoolClass;
import walebook.record.Student;
import walebook.sheet.ExportProgress;
import walebook.sheet.NameInText;
import walebook.sheet.TermChoice;
import walebook.sheet.TermFormat;
import walebook.sheet.TermPreview;
import walebook.tables.SharedTables;

/** A class's term as a workbook. */
final class ExportJobs {
  static final String ENDING = ".xlsx";
  private static final Option LESSONS =
      Option.many("lesson", "NUMBER", "command.option.export-lesson");
  private static final Option STUDENTS =
      Option.many("student", "NAME", "command.option.export-student");
  private static final Option COLUMNS =
      Option.many("column", "KEY", "command.option.export-column");

  private ExportJobs() {}

  static List<Job> all() {
    return List.of(
        Job.shows(
            "export",
            "command.export",
            AtBook.open(ExportJobs::export),
            Job.BOOK,
            Job.CLASS,
            Option.needed("to", "FILE", "command.option.export-file"),
            LESSONS,
            STUDENTS,
            COLUMNS,
            Option.flag("student-sheets", "command.option.student-sheets"),
            Option.flag("names", "command.option.with-names"),
            Option.flag("codes", "command.option.codes"),
            Option.flag("replace", "command.option.replace")),
        Job.shows(
            "export-preview",
            "command.export-preview",
            AtBook.open(ExportJobs::preview),
            Job.BOOK,
            Job.CLASS,
            LESSONS,
            STUDENTS,
            COLUMNS,
            Option.flag("student-sheets", "command.option.student-sheets"),
            Option.flag("names", "command.option.with-names")));
  }

  private static Exit export(Typed typed, Terminal terminal, Book book) {
    SchoolClass of = Pick.schoolClass(typed, book);
    TermChoice choice = choice(typed, book, of);
    Path file = file(typed);
    ExportTerm act = act(terminal, book);
    TermPreview preview = Refused.unless(act.preview(of.id(), choice));
    Path written =
        Refused.unless(
            act.export(file, of.id(), choice, typed.has("replace"), ExportProgress.UNHEARD));
    int pieces = preview.pieces();
    ObjectNode json = Json.object();
    json.put("file", written.toString());
    json.put("class", of.name());
    json.put("names", choice.names());
    json.put("students", preview.people().size());
    json.put("pieces", pieces);
    terminal
        .out()
        .println(
            typed.has("json")
                ? Json.write(json)
                : terminal.say(said(written), written, preview.people().size(), pieces));
    return Exit.DONE;
  }

  private static String said(Path written) {
    TermFormat format = TermFormat.find(written.toString());
    return switch (format == null ? TermFormat.WORKBOOK : format) {
      case WORKBOOK -> "command.say.exported";
      case CSV -> "command.say.exported-csv";
      case TABLES -> "command.say.exported-tables";
      case JSON -> "command.say.exported-json";
    };
  }

  private static Exit preview(Typed typed, Terminal terminal, Book book) {
    SchoolClass of = Pick.schoolClass(typed, book);
    TermPreview preview =
        Refused.unless(act(terminal, book).preview(of.id(), choice(typed, book, of)));
    if (typed.has("json")) {
      terminal.out().println(Json.write(json(of, preview)));
      return Exit.DONE;
    }
    Table table =
        new Table(
            List.of(
                terminal.say("command.column.in-file"),
                terminal.say("command.column.rows"),
                terminal.say("command.column.kinds-of-file")));
    for (TermPreview.Sheet each : preview.sheets()) {
      table.row(
          List.of(
              each.name(), String.valueOf(each.rows()), String.join(" ", files(each.formats()))));
    }
    for (TermPreview.Besides each : preview.besides()) {
      table.row(List.of(each.says(), "", String.join(" ", files(each.formats()))));
    }
    terminal.out().println(table);
    terminal
        .out()
        .println(
            terminal.say(
                preview.names() ? "command.say.export-names" : "command.say.export-codes",
                String.join(", ", preview.people())));
    sayNames(preview, terminal);
    if (preview.setAside() > 0) {
      terminal.out().println(terminal.say("command.say.export-aside", preview.setAside()));
    }
    return Exit.DONE;
  }

  private static ObjectNode json(SchoolClass of, TermPreview preview) {
    ObjectNode json = Json.object();
    json.put("class", of.name());
    json.put("names", preview.names());
    json.put("setAside", preview.setAside());
    ArrayNode sheets = json.putArray("sheets");
    for (TermPreview.Sheet each : preview.sheets()) {
      ObjectNode sheet = sheets.addObject().put("name", each.name()).put("rows", each.rows());
      files(each.formats()).forEach(sheet.putArray("files")::add);
    }
    ArrayNode besides = json.putArray("besides");
    for (TermPreview.Besides each : preview.besides()) {
      ObjectNode sheet = besides.addObject().put("says", each.says());
      files(each.formats()).forEach(sheet.putArray("files")::add);
    }
    ArrayNode people = json.putArray("people");
    preview.people().forEach(people::add);
    if (preview.tutor() != null) {
      json.put("tutor", preview.tutor());
    }
    ArrayNode inText = json.putArray("inText");
    for (NameInText each : preview.inText()) {
      ObjectNode name = inText.addObject().put("name", each.name()).put("whole", each.whole());
      ArrayNode places = name.putArray("places");
      each.places()
          .forEach(in -> places.addObject().put("sheet", in.sheet()).put("cells", in.cells()));
    }
    ArrayNode columns = json.putArray("columns");
    preview.columns().forEach(columns::add);
    return json;
  }

  /** The endings of the files that hold a sheet. */
  private static List<String> files(Set<TermFormat> formats) {
    return formats.stream().sorted().map(TermFormat::ending).toList();
  }

  private static void sayNames(TermPreview preview, Terminal terminal) {
    if (preview.tutor() != null) {
      terminal.out().println(terminal.say("command.say.export-tutor", preview.tutor()));
    }
    String whole = named(preview, true, terminal);
    String parts = named(preview, false, terminal);
    if (!whole.isEmpty()) {
      terminal
          .out()
          .println(
              terminal.say(
                  preview.names() ? "command.say.export-in-text" : "command.say.export-covered",
                  whole));
    }
    if (!parts.isEmpty()) {
      terminal.out().println(terminal.say("command.say.export-parts", parts));
    }
    if (whole.isEmpty() && parts.isEmpty()) {
      terminal.out().println(terminal.say("command.say.export-no-names"));
    }
  }

  private static String named(TermPreview preview, boolean whole, Terminal terminal) {
    return preview.inText().stream()
        .filter(each -> each.whole() == whole)
        .map(
            each ->
                terminal.say(
                    "command.say.export-named",
                    each.name(),
                    each.places().stream()
                        .map(in -> in.sheet() + " " + in.cells())
                        .collect(Collectors.joining(", "))))
        .collect(Collectors.joining("; "));
  }

  private static ExportTerm act(Terminal terminal, Book book) {
    return new ExportTerm(book, terminal.words(), SharedTables.read(), terminal.clock());
  }

  /** Codes unless names are asked for, as in the window. */
  private static TermChoice choice(Typed typed, Book book, SchoolClass of) {
    if (typed.has("names") && typed.has("codes")) {
      throw Refused.field("names", "choice.both", "--names", "--codes");
    }
    Set<UUID> lessons = new HashSet<>();
    for (String each : typed.all("lesson")) {
      Lesson found = Pick.lesson(each, book, of);
      if (found != null) {
        lessons.add(found.id());
      }
    }
    Set<UUID> students = new HashSet<>();
    for (String each : typed.all("student")) {
      Student found = Pick.student(each, book, of);
      if (found != null) {
        students.add(found.id());
      }
    }
    Set<String> columns = new LinkedHashSet<>(typed.all("column"));
    Set<String> known = ExportTerm.columnKeys();
    for (String each : columns) {
      if (!known.contains(each)) {
        throw Refused.field("column", "choice.unknown", each, String.join(", ", known));
      }
    }
    return TermChoice.CODES
        .withNames(typed.has("names"))
        .ofLessons(lessons)
        .ofStudents(students)
        .inColumns(columns)
        .withStudentSheets(typed.has("student-sheets"));
  }

  /** The ending is asked for so that no book or other file is replaced by a slip. */
  private static Path file(Typed typed) {
    String name = typed.text("to", "");
    Path file = AtBook.path("to", name);
    if (TermFormat.find(name) == null) {
      throw Refused.field("to", "sheet.no-workbook-name", name, ".xlsx, .csv, .zip, .json");
    }
    return file;
  }
}
