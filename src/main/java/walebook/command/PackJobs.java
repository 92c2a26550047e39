package walebook.command;

import java.util.List;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import walebook.lesson.BuiltInPacks;
import walebook.lesson.LessonPack;
import walebook.lesson.PackFolder;
import walebook.lesson.PackSource;
import walebook.lesson.ReadPack;
import walebook.problem.Answer;

/** Lesson packs: those that come with the program, and a check of a folder. */
final class PackJobs {
  private PackJobs() {}

  static List<Job> all() {
    return List.of(
        Job.shows("pack list", "command.pack.list", PackJobs::list),
        Job.shows("pack check", "command.pack.check", PackJobs::check)
            .operand("FOLDER", "command.operand.folder"));
  }

  private static Exit list(Typed typed, Terminal terminal) {
    ReadPack read = new ReadPack();
    Table table =
        new Table(
            List.of(
                terminal.say("command.column.pack"),
                terminal.say("command.column.version"),
                terminal.say("command.column.minutes"),
                terminal.say("command.column.title")));
    ArrayNode json = Json.array();
    for (PackSource each : BuiltInPacks.all()) {
      LessonPack.About about = Refused.unless(read.read(each)).about();
      table.row(
          List.of(about.name(), about.version(), String.valueOf(about.minutes()), about.title()));
      put(json.addObject(), about);
    }
    terminal.out().println(typed.has("json") ? Json.write(json) : table.toString());
    return Exit.DONE;
  }

  private static void put(ObjectNode node, LessonPack.About about) {
    node.put("name", about.name());
    node.put("version", about.version());
    node.put("title", about.title());
    node.put("minutes", about.minutes());
  }

  private static Exit check(Typed typed, Terminal terminal) {
    PackSource folder = new PackFolder(AtBook.path("FOLDER", typed.operand(0)));
    Answer<LessonPack> read = new ReadPack().read(folder);
    LessonPack pack = Refused.unless(read);
    read.problems().forEach(each -> terminal.err().println(terminal.words().say(each)));
    if (typed.has("json")) {
      ObjectNode json = Json.object();
      put(json, pack.about());
      json.put("contentHash", pack.files().contentHash());
      terminal.out().println(Json.write(json));
    } else {
      terminal
          .out()
          .println(
              terminal.say("command.say.pack-good", pack.about().title(), pack.about().version()));
    }
    return Exit.DONE;
  }
}
