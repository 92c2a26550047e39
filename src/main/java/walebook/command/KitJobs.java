package walebook.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import walebook.act.lesson.KitCloth;
import walebook.act.lesson.KitTyped;
import walebook.act.lesson.ReadScraps;
import walebook.act.lesson.WorkOutKit;
import walebook.book.Book;
import walebook.book.open.SqliteFiles;
import walebook.drawing.CuttingPlanPicture;
import walebook.drawing.Palette;
import walebook.drawing.Picture;
import walebook.drawing.Svg;
import walebook.kit.Kit;
import walebook.kit.ScrapAnswer;
import walebook.lesson.LessonPack;
import walebook.quantity.Unit;
import walebook.tables.SharedTables;

/** What a class needs for a lesson, and whether pieces come out of scraps. */
final class KitJobs {
  private static final Option PICTURES = Option.of("pictures", "FOLDER", "command.option.pictures");
  private static final Option MARGIN = Option.of("margin", "LENGTH", "command.option.margin");

  private KitJobs() {}

  static List<Job> all() {
    return List.of(
        Job.shows(
                "kit list",
                "command.kit.list",
                KitJobs::list,
                Option.of("book", "FILE", "command.option.kit-book"),
                Job.CLASS,
                Option.of("students", "NUMBER", "command.option.students"),
                Option.of("spare", "PERCENT", "command.option.spare"),
                MARGIN,
                Option.many("cloth", "SLOT=NAME", "command.option.cloth-of-slot"),
                Option.many("width", "SLOT=LENGTH", "command.option.cloth-width"),
                Option.many("wash", "SLOT=PERCENT", "command.option.wash"),
                Option.many("price", "WHAT=NUMBER", "command.option.price"),
                PICTURES)
            .operand("PACK", "command.operand.pack"),
        Job.shows(
            "kit scraps",
            "command.kit.scraps",
            KitJobs::scraps,
            Option.many("piece", "SIZE", "command.option.piece"),
            Option.many("scrap", "SIZE", "command.option.scrap"),
            MARGIN,
            PICTURES));
  }

  private static Exit list(Typed typed, Terminal terminal) {
    LessonPack pack = Pick.pack(typed.operand(0));
    Map<String, KitCloth> known = new HashMap<>();
    String students = typed.text("students", "");
    String file = typed.text("book");
    if (file != null) {
      try (Book book =
          Refused.unless(
              new SqliteFiles().open(AtBook.path("book", file), terminal.clock()), Exit.NO_BOOK)) {
        known.putAll(KitCloth.in(book, LessonJobs.cloths(typed, book, pack)));
        if (students.isEmpty()) {
          int there = book.enrolments().studentsOf(Pick.schoolClass(typed, book).id()).size();
          students = String.valueOf(there);
        }
      }
    } else if (!typed.all("cloth").isEmpty()) {
      throw Refused.field("book", "field.needed", "", "");
    }
    KitTyped asked =
        new KitTyped(
            students,
            typed.text("spare", "10"),
            typed.text("margin", ""),
            typed.all("width"),
            typed.all("wash"),
            typed.all("price"));
    Kit kit = Refused.unless(WorkOutKit.of(pack, known, asked, SharedTables.read(), Unit.MM, 1));
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
                ? Json.write(ShowKit.json(kit, terminal.words()))
                : ShowKit.text(kit, asked.spare(), terminal.words()));
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
