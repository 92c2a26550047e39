package walebook.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import walebook.act.lesson.AddPack;
import walebook.act.lesson.ExportPack;
import walebook.act.lesson.OpenPack;
import walebook.act.lesson.ReadPacks;
import walebook.act.lesson.RemoveFromShelf;
import walebook.book.Book;
import walebook.lesson.LessonPack;
import walebook.lesson.ReadPack;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;

/** Lesson packs: those of the program and of a book, a check, and the ways in and out of a book. */
final class PackJobs {
  private static final Option CONTENT = Option.of("content", "LETTERS", "command.option.content");

  private PackJobs() {}

  static List<Job> all() {
    return List.of(
        Job.shows(
            "pack list",
            "command.pack.list",
            PackJobs::list,
            Option.of("book", "FILE", "command.option.book")),
        Job.shows("pack check", "command.pack.check", PackJobs::check)
            .operand("FOLDER|ZIP", "command.operand.pack-at"),
        Job.shows("pack add", "command.pack.add", AtBook.open(PackJobs::add), Job.BOOK)
            .operand("FOLDER|ZIP", "command.operand.pack-at"),
        Job.shows(
                "pack export",
                "command.pack.export",
                PackJobs::export,
                Option.of("book", "FILE", "command.option.pack-book"),
                CONTENT,
                Option.needed("to", "FILE", "command.option.zip"),
                Option.flag("replace", "command.option.replace"))
            .operand("NAME", "command.operand.pack-name"),
        Job.shows(
                "pack remove",
                "command.pack.remove",
                AtBook.open(PackJobs::remove),
                Job.BOOK,
                CONTENT)
            .operand("NAME", "command.operand.pack-name"));
  }

  private static Exit list(Typed typed, Terminal terminal) {
    if (typed.text("book") != null) {
      return AtBook.open(
              (again, to, book) -> list(again, to, new ReadPacks(book, new ReadPack()).all()))
          .run(typed, terminal);
    }
    return list(typed, terminal, ReadPacks.ofProgram());
  }

  private static Exit list(Typed typed, Terminal terminal, ReadPacks.Packs packs) {
    Table table =
        new Table(
            List.of(
                terminal.say("command.column.pack"),
                terminal.say("command.column.version"),
                terminal.say("command.column.content"),
                terminal.say("command.column.where"),
                terminal.say("command.column.minutes"),
                terminal.say("command.column.title")));
    ArrayNode json = Json.array();
    for (ReadPacks.Found each : packs.found()) {
      LessonPack.About about = each.pack().about();
      table.row(
          List.of(
              about.name(),
              about.version(),
              each.content(),
              terminal.say(each.ofProgram() ? "command.say.in-program" : "command.say.in-book"),
              String.valueOf(about.minutes()),
              about.title()));
      ObjectNode node = json.addObject();
      put(node, each.pack());
      node.put("inBook", !each.ofProgram());
    }
    terminal.out().println(typed.has("json") ? Json.write(json) : table.toString());
    for (ReadPacks.Unread each : packs.unread()) {
      each.problems().forEach(problem -> terminal.err().println(terminal.words().say(problem)));
    }
    return Exit.DONE;
  }

  private static Exit check(Typed typed, Terminal terminal) {
    LessonPack pack = read(typed, terminal);
    return done(typed, terminal, pack, "command.say.pack-good");
  }

  private static Exit add(Typed typed, Terminal terminal, Book book) {
    LessonPack pack = read(typed, terminal);
    AddPack.Came came = new AddPack(book, terminal.clock()).add(pack);
    return done(
        typed,
        terminal,
        pack,
        switch (came) {
          case NEW -> "command.say.pack-added";
          case OTHER_VERSION -> "command.say.pack-added-other";
          case KNOWN -> "command.say.pack-known";
        });
  }

  private static Exit export(Typed typed, Terminal terminal) {
    if (typed.text("book") != null) {
      return AtBook.open(
              (again, to, book) -> export(again, to, new ReadPacks(book, new ReadPack()).all()))
          .run(typed, terminal);
    }
    return export(typed, terminal, ReadPacks.ofProgram());
  }

  private static Exit export(Typed typed, Terminal terminal, ReadPacks.Packs packs) {
    List<ReadPacks.Found> all = packs.found();
    LessonPack pack = pick(typed, all).pack();
    Path file = AtBook.path("to", typed.text("to", ""));
    boolean replace = typed.has("replace");
    if (Files.isRegularFile(file) && !replace) {
      String name = String.valueOf(file.getFileName());
      Place place = new Place.Path(file.toString());
      throw new Refused(
          Exit.REFUSED, List.of(Problem.refuse("sheet.exists", place, name, "--replace")));
    }
    Path written = Refused.unless(ExportPack.zip(pack, file, replace));
    ObjectNode json = Json.object();
    put(json, pack);
    json.put("file", written.toString());
    terminal
        .out()
        .println(
            typed.has("json")
                ? Json.write(json)
                : terminal.say("command.say.pack-exported", written));
    return Exit.DONE;
  }

  private static Exit remove(Typed typed, Terminal terminal, Book book) {
    List<ReadPacks.Found> shelved =
        new ReadPacks(book, new ReadPack())
            .all().found().stream().filter(each -> !each.ofProgram()).toList();
    ReadPacks.Found found = pick(typed, shelved);
    if (found.shelfId() != null) {
      new RemoveFromShelf(book).remove(found.shelfId());
    }
    return done(typed, terminal, found.pack(), "command.say.pack-removed");
  }

  /** The pack of a name; of several, the book's newest, or the one whose content begins so. */
  private static ReadPacks.Found pick(Typed typed, List<ReadPacks.Found> all) {
    String name = typed.operand(0);
    String content = typed.text("content", "");
    List<ReadPacks.Found> named =
        all.stream()
            .filter(each -> each.pack().about().name().equals(name))
            .filter(each -> each.pack().files().contentHash().startsWith(content))
            .toList();
    return named.stream()
        .filter(each -> !each.ofProgram())
        .findFirst()
        .or(() -> named.stream().findFirst())
        .orElseThrow(
            () ->
                Refused.field(
                    "NAME",
                    "pack.no-pack",
                    (name + " " + content).strip(),
                    String.join(
                        ", ",
                        all.stream().map(each -> each.pack().about().name()).distinct().toList())));
  }

  private static LessonPack read(Typed typed, Terminal terminal) {
    Answer<LessonPack> read =
        OpenPack.at(AtBook.path("FOLDER|ZIP", typed.operand(0)), new ReadPack());
    LessonPack pack = Refused.unless(read);
    read.problems().forEach(each -> terminal.err().println(terminal.words().say(each)));
    return pack;
  }

  private static Exit done(Typed typed, Terminal terminal, LessonPack pack, String says) {
    ObjectNode json = Json.object();
    put(json, pack);
    terminal
        .out()
        .println(
            typed.has("json")
                ? Json.write(json)
                : terminal.say(says, pack.about().title(), pack.about().version()));
    return Exit.DONE;
  }

  private static void put(ObjectNode node, LessonPack pack) {
    node.put("name", pack.about().name());
    node.put("version", pack.about().version());
    node.put("title", pack.about().title());
    node.put("minutes", pack.about().minutes());
    node.put("contentHash", pack.files().contentHash());
  }
}
