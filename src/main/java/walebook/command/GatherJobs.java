package walebook.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import walebook.act.gather.DecideConflicts;
import walebook.act.gather.GatherBooks;
import walebook.act.gather.GiveStarterBooks;
import walebook.act.gather.SayConflict;
import walebook.act.gather.SayGathered;
import walebook.book.Book;
import walebook.book.gather.Choice;
import walebook.book.gather.Conflict;
import walebook.book.gather.FromBook;
import walebook.book.gather.GatherProgress;
import walebook.book.open.SqliteFiles;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.By;
import walebook.tables.SharedTables;

/** Gathering students' books, and giving them out. */
final class GatherJobs {
  private GatherJobs() {}

  static List<Job> all() {
    return List.of(
        Job.shows(
            "gather books",
            "command.gather",
            AtBook.open(GatherJobs::gather),
            Job.BOOK,
            Option.many("from", "FILE", "command.operand.gather-file"),
            Option.flag("dry-run", "command.option.gather-dry-run")),
        Job.shows(
            "gather conflicts",
            "command.gather.conflicts",
            AtBook.open(GatherJobs::conflicts),
            Job.BOOK),
        Job.shows(
            "gather decide",
            "command.gather.decide",
            AtBook.open(GatherJobs::decide),
            Job.BOOK,
            Option.needed("conflict", "KEY", "command.option.gather-conflict"),
            Option.needed("keep", "SIDE", "command.option.gather-choice")),
        Job.shows(
            "book starter",
            "command.book.starter",
            AtBook.open(GatherJobs::starter),
            Job.BOOK,
            Job.CLASS,
            Option.needed("out", "FOLDER", "command.option.starter-out"),
            Option.flag("names", "command.option.starter-names"),
            Option.flag("replace", "command.option.replace")));
  }

  private static Exit gather(Typed typed, Terminal terminal, Book book) {
    boolean really = !typed.has("dry-run");
    List<Path> files = new ArrayList<>();
    typed.all("from").forEach(each -> files.add(AtBook.path("from", each)));
    if (files.isEmpty()) {
      throw Refused.field("from", "text.empty", "", "");
    }
    GatherBooks.Gathered gathered;
    try {
      gathered =
          new GatherBooks(book, new SqliteFiles(), terminal.clock())
              .gather(files, really, By.NOBODY, GatherProgress.UNHEARD);
    } catch (IOException e) {
      throw new Refused(
          Exit.REFUSED,
          List.of(
              Problem.refuse(
                  "book.unreadable",
                  new Place.Path(files.get(0).toString()),
                  String.valueOf(e.getMessage()),
                  "")));
    }
    if (typed.has("json")) {
      terminal.out().println(Json.write(json(gathered, terminal)));
    } else {
      gathered.books().stream()
          .filter(each -> each.problem() == null)
          .forEach(each -> terminal.out().println(says(each, terminal)));
      if (gathered.backup() != null) {
        terminal.out().println(terminal.say("command.say.gather-backup", gathered.backup()));
      }
      if (!really) {
        terminal.out().println(terminal.say("command.say.gather-dry"));
      }
    }
    List<Problem> problems = new ArrayList<>();
    for (FromBook each : gathered.books()) {
      Problem problem = each.problem();
      if (problem != null) {
        problems.add(problem);
      }
    }
    RunCommand.complain(terminal, typed.has("json"), problems, false);
    return problems.isEmpty() ? Exit.DONE : Exit.REFUSED;
  }

  private static String says(FromBook from, Terminal terminal) {
    String counts = new SayGathered(terminal.words()).counts(from);
    String said = terminal.say("command.say.gathered", from.file(), from.name(), counts);
    return from.gone() == 0
        ? said
        : said + " " + terminal.say("command.say.gathered-gone", from.gone());
  }

  private static ObjectNode json(GatherBooks.Gathered gathered, Terminal terminal) {
    ObjectNode json = Json.object();
    if (gathered.backup() != null) {
      json.put("backup", gathered.backup().toString());
    }
    ArrayNode books = json.putArray("books");
    for (FromBook each : gathered.books()) {
      ObjectNode one = books.addObject();
      one.put("file", each.file().toString());
      one.put("name", each.name());
      one.put("new", each.added());
      one.put("pieces", each.pieces());
      one.put("photos", each.photos());
      one.put("taken", each.taken());
      one.put("kept", each.kept());
      one.put("same", each.same());
      one.put("conflicts", each.conflicts());
      one.put("gone", each.gone());
      Problem problem = each.problem();
      if (problem != null) {
        one.put("problem", terminal.words().say(problem));
      }
    }
    return json;
  }

  private static Exit conflicts(Typed typed, Terminal terminal, Book book) {
    List<Conflict> open = new DecideConflicts(book).open();
    if (typed.has("json")) {
      ObjectNode json = Json.object();
      ArrayNode all = json.putArray("conflicts");
      for (Conflict each : open) {
        ObjectNode one = all.addObject();
        one.put("key", each.id().toString());
        one.put("why", each.why().key());
        one.put("kind", each.entity());
        one.put("title", each.title());
        one.put("file", each.fileName());
        ArrayNode fields = one.putArray("fields");
        for (Conflict.Field field : each.fields()) {
          fields
              .addObject()
              .put("field", field.name())
              .put("mine", Conflict.Field.raw(field.mine()))
              .put("theirs", Conflict.Field.raw(field.theirs()));
        }
      }
      terminal.out().println(Json.write(json));
      return Exit.DONE;
    }
    if (open.isEmpty()) {
      terminal.out().println(terminal.say("command.say.gather-none"));
    }
    SayConflict say = new SayConflict(terminal.words(), SharedTables.read());
    for (Conflict each : open) {
      terminal
          .out()
          .println(
              terminal.say(
                  "command.say.gather-conflict",
                  each.id(),
                  each.why().key(),
                  say.title(each),
                  each.fileName()));
      for (Conflict.Field field : each.fields()) {
        terminal
            .out()
            .println(
                terminal.say(
                    "command.say.gather-field",
                    say.name(each, field),
                    say.side(field.mine(), each, field),
                    say.side(field.theirs(), each, field)));
      }
    }
    return Exit.DONE;
  }

  private static Exit decide(Typed typed, Terminal terminal, Book book) {
    String side = typed.text("keep", "");
    Choice choice =
        Arrays.stream(Choice.values())
            .filter(each -> each.name().equalsIgnoreCase(side))
            .findFirst()
            .orElseThrow(() -> Refused.field("keep", "choice.unknown", side, "mine, theirs"));
    String key = typed.text("conflict", "");
    UUID id;
    try {
      id = UUID.fromString(key);
    } catch (IllegalArgumentException e) {
      throw Refused.field("conflict", "gather.no-conflict", key, "");
    }
    Conflict decided = Refused.unless(new DecideConflicts(book).decide(id, choice, By.NOBODY));
    String title = new SayConflict(terminal.words(), SharedTables.read()).title(decided);
    terminal.out().println(terminal.say("command.say.gather-decided", title));
    return Exit.DONE;
  }

  private static Exit starter(Typed typed, Terminal terminal, Book book) {
    Path folder = AtBook.path("out", typed.text("out", ""));
    List<Path> written =
        Refused.unless(
            new GiveStarterBooks(book, new SqliteFiles(), terminal.clock())
                .give(
                    Pick.schoolClass(typed, book),
                    folder,
                    typed.has("names"),
                    typed.has("replace")));
    if (typed.has("json")) {
      ObjectNode json = Json.object();
      ArrayNode files = json.putArray("files");
      written.forEach(each -> files.add(each.toString()));
      terminal.out().println(Json.write(json));
    } else {
      terminal.out().println(terminal.say("command.say.starter", written.size(), folder));
    }
    return Exit.DONE;
  }
}
