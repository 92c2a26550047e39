package walebook.command;

import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import walebook.act.classroom.AskOdd;
import walebook.act.classroom.CompareFair;
import walebook.act.classroom.MarkReading;
import walebook.book.Book;
import walebook.book.PieceFilter;
import walebook.compare.odd.OddFindings;
import walebook.compare.odd.OddReading;
import walebook.problem.Answer;
import walebook.quantity.Show;
import walebook.record.By;
import walebook.record.Cloth;
import walebook.record.Keyed;
import walebook.record.Lesson;
import walebook.record.MarkedValue;
import walebook.record.PieceCode;
import walebook.record.SchoolClass;
import walebook.record.TestPiece;
import walebook.words.Words;

/** Odd values: what they are, and what the tutor makes of them. */
final class OddJobs {
  private static final Option VALUE = Option.needed("value", "VALUE", "command.option.value");
  private static final Option BY = Option.of("by", "NAME", "command.option.marked-by");

  private OddJobs() {}

  static List<Job> all() {
    return List.of(
        Job.shows(
            "odd list",
            "command.odd.list",
            AtBook.open(OddJobs::list),
            Job.BOOK,
            Job.CLASS,
            Job.LESSON,
            FairJobs.CLOTH,
            FairJobs.ALIASES),
        Job.shows(
                "odd mark",
                "command.odd.mark",
                AtBook.open(OddJobs::mark),
                Job.BOOK,
                VALUE,
                Option.flag("kept", "command.option.kept"),
                Option.of("mistyped", "FIELD", "command.option.mistyped"),
                Option.of("right", "VALUE", "command.option.right"),
                Option.of("set-aside", "REASON", "command.option.set-aside"),
                BY,
                Job.SURE)
            .operand("CODE", "command.operand.piece-or-reading"),
        Job.shows("odd undo", "command.odd.undo", AtBook.open(OddJobs::undo), Job.BOOK, BY)
            .operand("STEP", "command.operand.step"));
  }

  private static Exit list(Typed typed, Terminal terminal, Book book) {
    SchoolClass in = Pick.schoolClass(typed, book);
    Lesson lesson = Pick.lesson(typed.text("lesson"), book, in);
    Cloth cloth = Pick.cloth(typed.text("cloth"), book);
    List<OddReading> found =
        new AskOdd(book)
            .ask(
                new CompareFair.Which(
                    List.of(in.id()),
                    lesson == null ? null : lesson.id(),
                    cloth == null ? null : cloth.id(),
                    typed.has("aliases")));
    terminal
        .out()
        .println(typed.has("json") ? Json.write(json(found)) : text(found, in, book, terminal));
    return Exit.DONE;
  }

  private static String text(List<OddReading> found, SchoolClass in, Book book, Terminal terminal) {
    boolean any =
        !found.isEmpty()
            || book.pieces().count(PieceFilter.ALL.ofClass(in.id())) > 0
            || book.clothLog().allReadings().stream()
                .anyMatch(each -> in.id().equals(each.classId()));
    return any ? text(found, terminal.words()) : terminal.say("command.say.nothing-to-be-odd");
  }

  private static String text(List<OddReading> found, Words words) {
    if (found.isEmpty()) {
      return words.say("command.say.nothing-odd");
    }
    Table table =
        new Table(
            List.of(
                words.say("command.column.code"),
                words.say("command.column.cloth"),
                words.say("command.column.student"),
                words.say("command.column.what"),
                words.say("command.column.value"),
                words.say("command.column.middle"),
                words.say("command.column.mark"),
                words.say("command.column.why")));
    for (OddReading each : found) {
      table.row(
          List.of(
              each.code().isEmpty() ? each.targetId().toString() : PieceCode.spoken(each.code()),
              cloth(each, words),
              each.who(),
              words.say("compare.value." + each.value().key()),
              Show.fixed(each.number(), 1),
              each.median() == null ? "–" : Show.fixed(each.median(), 1),
              each.mark() == null ? "–" : each.mark().mark().key(),
              words.say(OddFindings.of(each).get(0))));
    }
    return table
        + System.lineSeparator()
        + System.lineSeparator()
        + words.say("command.say.odd-among");
  }

  /** On which cloth and, since a reading has no more to be known by, along which grain. */
  private static String cloth(OddReading odd, Words words) {
    List<String> about = odd.about();
    if (!odd.value().isOfCloth() || about.size() < 2) {
      return about.isEmpty() ? "" : about.get(0);
    }
    String grain = words.say("act.class.grain." + about.get(1));
    return words.say("command.say.cloth-grain", about.get(0), grain);
  }

  private static ArrayNode json(List<OddReading> found) {
    ArrayNode all = Json.array();
    for (OddReading each : found) {
      ObjectNode node = all.addObject();
      Json.key(node, "value", each.value());
      node.put("id", each.targetId().toString());
      node.put("code", each.code());
      node.put("student", each.who());
      ArrayNode about = node.putArray("about");
      each.about().forEach(about::add);
      node.put("number", each.number());
      node.put("median", each.median());
      node.put("among", each.among());
      node.put("z", each.z());
      ArrayNode reasons = node.putArray("reasons");
      each.reasons().forEach(r -> reasons.add(r.name().toLowerCase(Locale.ROOT).replace('_', '-')));
      node.put("lookedAt", each.isLookedAt());
      node.put("mark", each.mark() == null ? null : each.mark().mark().key());
      node.put("reason", each.mark() == null ? null : each.mark().reason());
    }
    return all;
  }

  private static Exit mark(Typed typed, Terminal terminal, Book book) {
    MarkedValue value = value(typed.text("value", ""));
    UUID target = target(typed.operand(0), value, book);
    By by = By.named(typed.text("by", ""));
    MarkReading act = new MarkReading(book, terminal.clock());
    String reason = typed.text("set-aside");
    String field = typed.text("mistyped");
    Answer<MarkReading.Marked> answer;
    if (reason != null) {
      answer = act.setAside(value, target, reason, by);
    } else if (field != null) {
      answer = act.mistyped(value, target, field, typed.text("right", ""), typed.has("sure"), by);
    } else if (typed.has("kept")) {
      answer = act.keep(value, target, by);
    } else {
      throw Refused.field("kept", "field.needed", "", "");
    }
    UUID step = Refused.unless(answer).stepId();
    said(typed, terminal, "command.say.marked", step);
    return Exit.DONE;
  }

  private static void said(Typed typed, Terminal terminal, String key, UUID step) {
    ObjectNode json = Json.object();
    json.put("step", step.toString());
    terminal.out().println(typed.has("json") ? Json.write(json) : terminal.say(key, step));
  }

  private static MarkedValue value(String key) {
    MarkedValue found = Keyed.find(MarkedValue.class, key);
    if (found == null) {
      String known = "seam-stretch, edge-change, grade, cloth-stretch";
      throw Refused.field("value", "choice.unknown", key, known);
    }
    return found;
  }

  /** A piece by its code, a reading by its key. */
  private static UUID target(String typed, MarkedValue value, Book book) {
    String code = typed.replace("-", "").toUpperCase(Locale.ROOT);
    TestPiece piece = value.isOfCloth() ? null : book.pieces().byCode(code);
    UUID id = piece == null ? id(typed) : piece.id();
    if (id == null) {
      throw Refused.field("code", "choice.unknown", typed, "");
    }
    return id;
  }

  private static @Nullable UUID id(String typed) {
    try {
      return UUID.fromString(typed);
    } catch (IllegalArgumentException e) {
      return null;
    }
  }

  private static Exit undo(Typed typed, Terminal terminal, Book book) {
    UUID step = id(typed.operand(0));
    if (step == null) {
      throw Refused.field("step", "undo.nothing", typed.operand(0), "");
    }
    By by = By.named(typed.text("by", ""));
    Refused.unless(new MarkReading(book, terminal.clock()).undo(step, by));
    said(typed, terminal, "command.say.undone", step);
    return Exit.DONE;
  }
}
