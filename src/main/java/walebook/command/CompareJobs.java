package walebook.command;

import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import walebook.act.classroom.CompareClass;
import walebook.book.Book;
import walebook.compare.ClassProgress;
import walebook.compare.Comparison;
import walebook.record.Cloth;
import walebook.record.Lesson;
import walebook.record.SchoolClass;

/** What a class found, and who has logged what. */
final class CompareJobs {
  private CompareJobs() {}

  static List<Job> all() {
    return List.of(
        Job.shows(
            "compare",
            "command.compare",
            AtBook.open(CompareJobs::compare),
            Job.BOOK,
            Job.CLASS,
            Job.LESSON,
            FairJobs.CLOTH,
            FairJobs.BY,
            FairJobs.OUTCOME,
            FairJobs.MATTERS,
            Option.flag("within-machine", "command.option.within-machine"),
            Option.flag("tables", "command.option.tables"),
            Option.flag("p-values", "command.option.p-values"),
            FairJobs.ALIASES),
        Job.shows(
            "progress",
            "command.progress",
            AtBook.open(CompareJobs::progress),
            Job.BOOK,
            Job.CLASS,
            Option.flag("aliases", "command.option.aliases")));
  }

  private static Exit compare(Typed typed, Terminal terminal, Book book) {
    if (typed.text("outcome") != null) {
      return FairJobs.compare(typed, terminal, book);
    }
    SchoolClass in = Pick.schoolClass(typed, book);
    Lesson lesson = Pick.lesson(typed.text("lesson"), book, in);
    Cloth cloth = Pick.cloth(typed.text("cloth"), book);
    Comparison comparison =
        new CompareClass(book)
            .compare(
                new CompareClass.Question(
                    in.id(),
                    lesson == null ? null : lesson.id(),
                    cloth == null ? null : cloth.id(),
                    FairJobs.factors(typed.all("by")),
                    typed.has("aliases")));
    terminal
        .out()
        .println(
            typed.has("json")
                ? Json.write(ShowComparison.json(comparison))
                : ShowComparison.text(comparison, terminal.words()));
    return Exit.DONE;
  }

  private static Exit progress(Typed typed, Terminal terminal, Book book) {
    ClassProgress progress = ClassProgress.of(book, Pick.schoolClass(typed, book).id());
    boolean aliases = typed.has("aliases");
    List<String> header = new ArrayList<>(List.of(terminal.say("command.column.student")));
    for (int i = 1; i <= progress.lessons().size(); i++) {
      header.add(terminal.say("command.column.lesson-number", i));
    }
    header.add(terminal.say("command.column.own"));
    header.add(terminal.say("command.column.readings"));
    header.add(terminal.say("command.column.last"));
    Table table = new Table(header);
    ArrayNode json = Json.array();
    for (ClassProgress.Row row : progress.rows()) {
      String who = aliases ? row.student().alias() : row.student().name();
      List<String> cells = new ArrayList<>(List.of(who));
      ObjectNode node = json.addObject();
      node.put("student", who);
      ArrayNode lessons = node.putArray("lessons");
      for (ClassProgress.Done done : row.perLesson()) {
        cells.add(done.planned() == 0 ? "–" : done.logged() + "/" + done.planned());
        ObjectNode one = lessons.addObject();
        one.put("logged", done.logged());
        one.put("planned", done.planned());
      }
      cells.add(String.valueOf(row.own()));
      cells.add(String.valueOf(row.readings()));
      cells.add(row.last() == null ? "–" : row.last().toString());
      node.put("own", row.own());
      node.put("readings", row.readings());
      Json.date(node, "last", row.last());
      table.row(cells);
    }
    terminal.out().println(typed.has("json") ? Json.write(json) : table.toString());
    return Exit.DONE;
  }
}
