package walebook.command;

import java.util.List;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import walebook.act.classroom.StartClass;
import walebook.book.Book;
import walebook.record.Lesson;
import walebook.record.Machine;
import walebook.record.SchoolClass;
import walebook.record.Student;

/** Starting and showing classes. */
final class ClassJobs {
  private ClassJobs() {}

  static List<Job> all() {
    return List.of(
        Job.shows(
            "class start",
            "command.class.start",
            AtBook.open(ClassJobs::start),
            Job.BOOK,
            Option.needed("name", "NAME", "command.option.class-name"),
            Option.of("meets", "WORDS", "command.option.meets"),
            Option.of("term", "NAME", "command.option.term"),
            Option.of("starts", "DATE", "command.option.starts"),
            Option.of("ends", "DATE", "command.option.ends"),
            Option.of("tutor", "NAME", "command.option.tutor"),
            Option.many("student", "NAME", "command.option.new-student")),
        Job.shows(
            "class show",
            "command.class.show",
            AtBook.open((typed, terminal, book) -> show(typed, terminal, book, null)),
            Job.BOOK,
            Job.CLASS));
  }

  private static Exit start(Typed typed, Terminal terminal, Book book) {
    SchoolClass begun =
        Refused.unless(
            new StartClass(book, terminal.clock())
                .start(
                    new StartClass.Typed(
                        typed.text("name", ""),
                        typed.text("meets", ""),
                        typed.text("term", ""),
                        typed.text("starts", ""),
                        typed.text("ends", ""),
                        typed.text("tutor", ""),
                        String.join("\n", typed.all("student")))));
    return show(typed, terminal, book, begun);
  }

  private static Exit show(
      Typed typed,
      Terminal terminal,
      Book book,
      @org.jspecify.annotations.Nullable SchoolClass begun) {
    SchoolClass shown = begun == null ? Pick.schoolClass(typed, book) : begun;
    List<Student> students = book.enrolments().studentsOf(shown.id());
    List<Machine> machines = book.machines().all();
    List<Lesson> lessons = book.lessons().of(shown.id());
    if (typed.has("json")) {
      terminal.out().println(Json.write(json(shown, students, machines, lessons)));
      return Exit.DONE;
    }
    terminal.out().println(terminal.say("command.say.class", shown.name(), shown.meets()));
    terminal.out().println();
    Table roster =
        new Table(
            List.of(
                terminal.say("command.column.student"),
                terminal.say("command.column.alias"),
                terminal.say("command.column.tier")));
    students.forEach(each -> roster.row(List.of(each.name(), each.alias(), each.tier().key())));
    terminal.out().println(roster);
    terminal.out().println();
    Table room =
        new Table(
            List.of(
                terminal.say("command.column.number"),
                terminal.say("command.column.machine"),
                terminal.say("command.column.kind"),
                terminal.say("command.column.stitches")));
    machines.forEach(
        each ->
            room.row(
                List.of(
                    String.valueOf(each.number()),
                    each.name(),
                    each.kind().key(),
                    String.join(" ", each.stitches()))));
    terminal.out().println(room);
    terminal.out().println();
    Table taught =
        new Table(
            List.of(
                terminal.say("command.column.number"),
                terminal.say("command.column.date"),
                terminal.say("command.column.lesson")));
    int number = 1;
    for (Lesson each : lessons) {
      taught.row(List.of(String.valueOf(number++), each.taughtOn().toString(), each.title()));
    }
    terminal.out().println(taught);
    return Exit.DONE;
  }

  private static ObjectNode json(
      SchoolClass shown, List<Student> students, List<Machine> machines, List<Lesson> lessons) {
    ObjectNode json = Json.object();
    json.put("name", shown.name());
    json.put("meets", shown.meets());
    ArrayNode roster = json.putArray("students");
    for (Student each : students) {
      ObjectNode node = roster.addObject();
      node.put("name", each.name());
      node.put("alias", each.alias());
      Json.key(node, "tier", each.tier());
    }
    ArrayNode room = json.putArray("machines");
    for (Machine each : machines) {
      ObjectNode node = room.addObject();
      node.put("number", each.number());
      node.put("name", each.name());
      Json.key(node, "kind", each.kind());
      ArrayNode stitches = node.putArray("stitches");
      each.stitches().forEach(stitches::add);
    }
    ArrayNode taught = json.putArray("lessons");
    int number = 1;
    for (Lesson each : lessons) {
      ObjectNode node = taught.addObject();
      node.put("number", number++);
      Json.date(node, "date", each.taughtOn());
      node.put("title", each.title());
    }
    return json;
  }
}
