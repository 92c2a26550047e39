package walebook.command;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import walebook.act.note.KeepNote;
import walebook.act.note.NotePlace;
import walebook.act.note.ReadNotes;
import walebook.book.Book;
import walebook.record.By;
import walebook.record.Cloth;
import walebook.record.Lesson;
import walebook.record.Note;
import walebook.record.SchoolClass;
import walebook.record.Student;

/** Notes about a piece, a cloth, a lesson or a student. */
final class NoteJobs {
  private static final String KINDS = "piece, cloth, lesson, student";
  private static final Option PIECE = Option.of("piece", "CODE", "command.note.piece");
  private static final Option CLOTH = Option.of("cloth", "NAME", "command.field.cloth");

  private NoteJobs() {}

  static List<Job> all() {
    return List.of(
        Job.shows(
            "note add",
            "command.note.add",
            AtBook.open(NoteJobs::add),
            Job.BOOK,
            PIECE,
            CLOTH,
            Job.CLASS,
            Job.LESSON,
            Job.STUDENT,
            Option.needed("says", "WORDS", "command.note.says"),
            Option.of("by", "NAME", "command.note.by")),
        Job.shows(
            "note list",
            "command.note.list",
            AtBook.open(NoteJobs::list),
            Job.BOOK,
            PIECE,
            CLOTH,
            Job.CLASS,
            Job.LESSON,
            Job.STUDENT,
            FairJobs.ALIASES));
  }

  private static NotePlace place(Typed typed, Book book) {
    List<String> given =
        Stream.of("piece", "cloth", "lesson", "student")
            .filter(each -> typed.text(each) != null)
            .toList();
    if (given.isEmpty()) {
      throw Refused.field("about", "note.about-nothing", "", KINDS);
    }
    if (given.size() > 1) {
      throw Refused.field("about", "choice.both", given.get(0), given.get(1));
    }
    return switch (given.get(0)) {
      case "piece" ->
          new NotePlace(
              Note.About.PIECE, PieceJobs.byCode(book, "code", typed.text("piece", "")).id());
      case "cloth" -> cloth(typed.text("cloth", ""), book);
      case "lesson" -> {
        Lesson lesson = Pick.neededLesson(typed, book);
        yield new NotePlace(Note.About.LESSON, lesson.id());
      }
      default -> student(typed, book);
    };
  }

  private static NotePlace cloth(String typed, Book book) {
    Cloth cloth = Pick.cloth(typed, book);
    if (cloth == null) {
      throw Refused.field("cloth", "field.needed", "", "");
    }
    return new NotePlace(Note.About.CLOTH, cloth.id());
  }

  private static NotePlace student(Typed typed, Book book) {
    SchoolClass in = Pick.schoolClass(typed, book);
    Student student = Pick.student(typed.text("student"), book, in);
    if (student == null) {
      throw Refused.field("student", "field.needed", "", "");
    }
    return new NotePlace(Note.About.STUDENT, student.id());
  }

  private static Exit add(Typed typed, Terminal terminal, Book book) {
    NotePlace place = place(typed, book);
    String by = typed.text("by", "");
    book.history().madeBy(By.named(by));
    Note note =
        Refused.unless(
            new KeepNote(book, terminal.clock())
                .add(place, Map.of(KeepNote.BODY, typed.text("says", ""), KeepNote.FROM, by)));
    terminal
        .out()
        .println(
            typed.has("json")
                ? Json.write(json(new ReadNotes.Line(note, note.author(), note.body())))
                : terminal.say("command.say.note", note.id()));
    return Exit.DONE;
  }

  private static Exit list(Typed typed, Terminal terminal, Book book) {
    List<ReadNotes.Line> notes =
        new ReadNotes(book, terminal.words()).about(place(typed, book), typed.has("aliases"));
    if (typed.has("json")) {
      ArrayNode json = Json.array();
      notes.forEach(each -> json.add(json(each)));
      terminal.out().println(Json.write(json));
      return Exit.DONE;
    }
    if (notes.isEmpty()) {
      terminal.out().println(terminal.say("command.say.no-notes"));
    }
    for (ReadNotes.Line each : notes) {
      Note note = each.note();
      terminal
          .out()
          .println(
              terminal.say(
                  "command.say.note-head",
                  note.stamp().created().atZone(terminal.clock().getZone()).toLocalDate(),
                  each.from(),
                  note.id()));
      each.says().lines().forEach(line -> terminal.out().println("  " + line));
    }
    return Exit.DONE;
  }

  private static ObjectNode json(ReadNotes.Line line) {
    ObjectNode json = Json.object();
    json.put("key", line.note().id().toString());
    json.put("by", line.from());
    json.put("says", line.says());
    json.put("writtenAt", line.note().stamp().created().toString());
    return json;
  }
}
