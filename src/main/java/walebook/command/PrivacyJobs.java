package walebook.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import walebook.act.privacy.CopiesOfName;
import walebook.act.privacy.TakeOutStudent;
import walebook.book.Book;
import walebook.record.Mention;
import walebook.record.Student;

/** Taking a student out of a book. Without --for-good it only says what would go. */
final class PrivacyJobs {
  private static final Option FOR_GOOD = Option.flag("for-good", "command.option.for-good");
  private static final Option COPIES = Option.flag("delete-copies", "command.option.delete-copies");

  private PrivacyJobs() {}

  static List<Job> all() {
    return List.of(
        Job.shows(
                "student anonymise",
                "command.student.anonymise",
                AtBook.open(
                    (typed, terminal, book) ->
                        take(typed, terminal, book, TakeOutStudent.How.ANONYMOUS)),
                Job.BOOK,
                Job.CLASS,
                FOR_GOOD,
                COPIES)
            .operand("NAME", "command.option.student"),
        Job.shows(
                "student erase",
                "command.student.erase",
                AtBook.open(
                    (typed, terminal, book) ->
                        take(
                            typed,
                            terminal,
                            book,
                            typed.has("with-pieces")
                                ? TakeOutStudent.How.ERASE_ALL
                                : TakeOutStudent.How.ERASE_KEEP_PIECES)),
                Job.BOOK,
                Job.CLASS,
                Option.flag("with-pieces", "command.option.with-pieces"),
                FOR_GOOD,
                COPIES)
            .operand("NAME", "command.option.student"));
  }

  private static Exit take(Typed typed, Terminal terminal, Book book, TakeOutStudent.How how) {
    Student student = Pick.student(typed.operand(0), book, Pick.schoolClass(typed, book));
    if (student == null) {
      throw Refused.field("student", "field.needed", "", "");
    }
    TakeOutStudent act = new TakeOutStudent(book);
    TakeOutStudent.Look look = act.look(student);
    try {
      List<Path> copies = CopiesOfName.in(book.file(), student.name());
      boolean sure = typed.has("for-good");
      String standIn = sure ? Refused.unless(act.take(student, how)) : "";
      if (sure && typed.has("delete-copies")) {
        CopiesOfName.delete(copies);
        copies = List.of();
      }
      if (typed.has("json")) {
        terminal.out().println(Json.write(json(look, copies, sure, standIn)));
      } else {
        say(terminal, look, copies, done(terminal, student, how, standIn));
      }
      return Exit.DONE;
    } catch (IOException e) {
      throw Refused.field("delete-copies", "privacy.copies", String.valueOf(e.getMessage()), "");
    }
  }

  /** What was done, or that nothing was: of who is gone with their pieces nothing has a name. */
  private static String done(
      Terminal terminal, Student student, TakeOutStudent.How how, String standIn) {
    if (standIn.isEmpty()) {
      return terminal.say("command.say.would-take-out", student.name());
    }
    return how == TakeOutStudent.How.ERASE_ALL
        ? terminal.say("command.say.erased-all", standIn)
        : terminal.say("command.say.taken-out", standIn);
  }

  private static void say(
      Terminal terminal, TakeOutStudent.Look look, List<Path> copies, String first) {
    terminal.out().println(first);
    for (Map.Entry<String, Integer> each : new TreeMap<>(look.rows()).entrySet()) {
      terminal
          .out()
          .println(
              terminal.say(
                  "command.say.row-count", each.getValue(), each.getKey().replace('_', ' ')));
    }
    for (Mention each : look.mentions()) {
      terminal
          .out()
          .println(
              terminal.say(
                  each.whole() ? "command.say.mention-whole" : "command.say.mention-part",
                  each.table().replace('_', ' '),
                  each.text()));
    }
    for (Path each : copies) {
      terminal.out().println(terminal.say("command.say.copy-holds", each));
    }
    terminal.out().println(terminal.say("command.say.copies-elsewhere"));
  }

  private static ObjectNode json(
      TakeOutStudent.Look look, List<Path> copies, boolean done, String standIn) {
    ObjectNode json = Json.object();
    json.put("done", done);
    json.put("standIn", done ? standIn : null);
    ObjectNode rows = json.putObject("rows");
    new TreeMap<>(look.rows()).forEach(rows::put);
    ArrayNode mentions = json.putArray("mentions");
    for (Mention each : look.mentions()) {
      ObjectNode node = mentions.addObject();
      node.put("table", each.table());
      node.put("id", each.id().toString());
      node.put("text", each.text());
      node.put("replaced", each.whole());
    }
    ArrayNode files = json.putArray("copies");
    copies.forEach(each -> files.add(each.toString()));
    return json;
  }
}
