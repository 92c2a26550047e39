package walebook.command;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import walebook.act.lesson.ReadLessons;
import walebook.act.lesson.ReadLimits;
import walebook.act.lesson.ReplanLesson;
import walebook.act.lesson.TakeUpLesson;
import walebook.book.Book;
import walebook.lesson.LessonPack;
import walebook.lesson.Plan;
import walebook.record.Cloth;
import walebook.record.Lesson;
import walebook.record.SchoolClass;

/** Taking packs up for a class, and their plans. */
final class LessonJobs {
  private static final List<Option> LIMITS =
      List.of(
          Option.many("leave-out", "LEVELS", "command.option.leave-out"),
          Option.many("without", "WHAT", "command.option.without"),
          Option.many("share", "NUMBER", "command.option.share"),
          Option.of("seed", "NUMBER", "command.option.seed"));

  private LessonJobs() {}

  static List<Job> all() {
    return List.of(
        Job.shows(
                "lesson take-up",
                "command.lesson.take-up",
                AtBook.open(LessonJobs::takeUp),
                with(
                    Job.SURE,
                    Option.of("on", "DATE", "command.option.on"),
                    Option.many("cloth", "SLOT=NAME", "command.option.cloth-of-slot")))
            .operand("PACK", "command.operand.pack"),
        Job.shows(
            "lesson plan",
            "command.lesson.plan",
            AtBook.open(LessonJobs::plan),
            Job.BOOK,
            Job.CLASS,
            lesson()),
        Job.shows(
            "lesson replan",
            "command.lesson.replan",
            AtBook.open(LessonJobs::replan),
            with(lesson())));
  }

  private static Option lesson() {
    return Option.needed("lesson", "NUMBER", "command.option.lesson");
  }

  private static Option[] with(Option... more) {
    List<Option> all = new ArrayList<>(List.of(Job.BOOK, Job.CLASS));
    all.addAll(List.of(more));
    all.addAll(LIMITS);
    return all.toArray(new Option[0]);
  }

  private static ReadLimits.Typed limits(Typed typed) {
    return new ReadLimits.Typed(typed.all("leave-out"), typed.all("without"), typed.all("share"));
  }

  private static long seed(Typed typed, Terminal terminal) {
    String text = typed.text("seed");
    if (text == null) {
      return terminal.chance().nextLong();
    }
    if (!text.matches("-?[0-9]{1,18}")) {
      throw Refused.field("seed", "number.not-whole", text, "2026");
    }
    return Long.parseLong(text);
  }

  private static Exit takeUp(Typed typed, Terminal terminal, Book book) {
    SchoolClass in = Pick.schoolClass(typed, book);
    LessonPack pack = Pick.pack(typed.operand(0));
    String on = typed.text("on", LocalDate.now(terminal.clock()).toString());
    LocalDate day;
    try {
      day = LocalDate.parse(on);
    } catch (DateTimeParseException e) {
      throw Refused.field("on", "date.not-a-date", on, "2026-10-05");
    }
    Lesson lesson =
        Refused.unless(
            new TakeUpLesson(book, terminal.clock())
                .takeUp(
                    pack,
                    in.id(),
                    day,
                    cloths(typed, book, pack),
                    limits(typed),
                    seed(typed, terminal),
                    typed.has("sure")));
    return show(typed, terminal, book, lesson, 0, 0);
  }

  static Map<String, UUID> cloths(Typed typed, Book book, LessonPack pack) {
    List<String> slots = pack.plan().cloths().stream().map(Plan.ClothSlot::slot).toList();
    Map<String, UUID> cloths = new HashMap<>();
    for (String each : typed.all("cloth")) {
      int end = each.indexOf('=');
      if (end < 1) {
        throw Refused.field("cloth", "kit.key-and-value", each, "a=Grey jersey");
      }
      String slot = each.substring(0, end).strip();
      if (!slots.contains(slot)) {
        throw Refused.field("cloth", "choice.unknown", slot, String.join(", ", slots));
      }
      Cloth cloth = Pick.cloth(each.substring(end + 1), book);
      if (cloth != null) {
        cloths.put(slot, cloth.id());
      }
    }
    return cloths;
  }

  private static Exit plan(Typed typed, Terminal terminal, Book book) {
    return show(typed, terminal, book, Pick.neededLesson(typed, book), 0, 0);
  }

  private static Exit replan(Typed typed, Terminal terminal, Book book) {
    ReplanLesson.Replanned done =
        Refused.unless(
            new ReplanLesson(book, terminal.clock())
                .replan(Pick.neededLesson(typed, book), limits(typed), seed(typed, terminal)));
    if (!typed.has("json")) {
      terminal.out().println(says(terminal, done));
      terminal.out().println();
    }
    return show(typed, terminal, book, done.lesson(), done.handedOut(), done.takenBack());
  }

  private static String says(Terminal terminal, ReplanLesson.Replanned done) {
    return done.isMeasured()
        ? terminal.say("command.say.replanned-readings", done.handedOut(), done.takenBack())
        : terminal.say("command.say.replanned", done.handedOut(), done.takenBack());
  }

  private static Exit show(
      Typed typed, Terminal terminal, Book book, Lesson lesson, int added, int back) {
    ReadLessons.ClassPlan plan = new ReadLessons(book).plan(lesson.id(), false);
    if (plan == null) {
      throw new IllegalStateException("a lesson that is there has a plan: " + lesson.id());
    }
    terminal
        .out()
        .println(
            typed.has("json")
                ? Json.write(ShowPlan.json(plan, terminal.words(), added, back))
                : ShowPlan.text(plan, terminal.words()));
    return Exit.DONE;
  }
}
