package walebook.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.act.lesson.ReadScraps;
import walebook.drawing.CuttingPlanPicture;
import walebook.drawing.Palette;
import walebook.drawing.Picture;
import walebook.drawing.Svg;
import walebook.kit.Kit;
import walebook.kit.ScrapAnswer;
import walebook.quantity.Unit;

/** What a class needs for a lesson, and whether pieces come out of scraps. */
final class KitJobs {
  private static final Option PICTURES = Option.of("pictures", "FOLDER", "command.option.pictures");
  private static final Option MARGIN = AskKit.MARGIN;

  private KitJobs() {}

  static List<Job> all() {
    return List.of(
        Job.shows("kit list", "command.kit.list", KitJobs::list, listOptions())
            .mayFollow("PACK", "command.operand.kit-pack"),
        Job.shows(
            "kit scraps",
            "command.kit.scraps",
            KitJobs::scraps,
            Option.many("piece", "SIZE", "command.option.piece"),
            Option.many("scrap", "SIZE", "command.option.scrap"),
            MARGIN,
            PICTURES));
  }

  private static Option[] listOptions() {
    List<Option> options = new ArrayList<>(AskKit.OPTIONS);
    options.add(Job.LESSON);
    options.add(PICTURES);
    return options.toArray(new Option[0]);
  }

  /** Of a pack, or of a lesson that a class took up: one of the two. */
  private static Exit list(Typed typed, Terminal terminal) {
    boolean ofPack = !typed.operand(0).isEmpty();
    boolean ofLesson = typed.text("lesson") != null;
    if (ofPack == ofLesson) {
      throw Refused.field(ofPack ? "lesson" : "PACK", "kit.of-what", "", "");
    }
    if (ofPack) {
      return show(typed, terminal, AskKit.of(typed, terminal, Pick.pack(typed.operand(0))));
    }
    if (typed.text("book") == null) {
      throw Refused.field("book", "field.needed", "", "");
    }
    return AtBook.open(
            (again, to, book) ->
                show(again, to, AskKit.of(again, book, Pick.neededLesson(again, book))))
        .run(typed, terminal);
  }

  private static Exit show(Typed typed, Terminal terminal, AskKit.Worked worked) {
    Kit kit = worked.kit();
    Path folder = folder(typed);
    for (int i = 0; i < kit.cloths().size(); i++) {
      var cloth = kit.cloths().get(i);
      write(
          folder,
          "cutting-plan-" + (i + 1),
          new CuttingPlanPicture(cloth.name(), cloth.plan(), Unit.CM),
          terminal);
    }
    terminal
        .out()
        .println(
            typed.has("json")
                ? Json.write(ShowKit.json(kit, terminal.words()).put(AskKit.KEPT, worked.kept()))
                : ShowKit.text(kit, terminal.words()));
    AskKit.sayKept(typed, terminal, worked);
    return Exit.DONE;
  }

  private static Exit scraps(Typed typed, Terminal terminal) {
    ScrapAnswer answer =
        Refused.unless(
            ReadScraps.answer(
                typed.all("piece"), typed.all("scrap"), typed.text("margin", ""), Unit.MM, 1));
    Path folder = folder(typed);
    for (int i = 0; i < answer.scraps().size(); i++) {
      write(
          folder,
          "scrap-" + (i + 1),
          new CuttingPlanPicture(answer.scraps().get(i).name(), answer.plans().get(i), Unit.CM),
          terminal);
    }
    terminal
        .out()
        .println(
            typed.has("json")
                ? Json.write(ShowKit.json(answer, terminal.words()))
                : ShowKit.text(answer, terminal.words()));
    return Exit.DONE;
  }

  private static @Nullable Path folder(Typed typed) {
    String text = typed.text("pictures");
    if (text == null) {
      return null;
    }
    Path folder = AtBook.path("pictures", text);
    if (!Files.isDirectory(folder)) {
      throw Refused.field("pictures", "book.no-folder", text, "");
    }
    return folder;
  }

  private static void write(
      @Nullable Path folder, String name, CuttingPlanPicture drawing, Terminal terminal) {
    if (folder == null) {
      return;
    }
    Picture picture = drawing.at(drawing.ownWidth(), terminal.words());
    Path file = folder.resolve(name + ".svg");
    try {
      Files.writeString(file, Svg.of(picture, Palette.LIGHT, terminal.words()));
    } catch (IOException e) {
      throw Refused.field("pictures", "kit.not-written", file.toString(), "");
    }
  }
}
