package walebook.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import walebook.act.Form;
import walebook.act.assess.CheckPiece;
import walebook.act.assess.GiveFeedback;
import walebook.act.assess.KeepCriteria;
import walebook.act.assess.LookOver;
import walebook.act.assess.ReadMarkings;
import walebook.act.assess.TagEvidence;
import walebook.book.Book;
import walebook.compare.assessed.AssessedClass;
import walebook.problem.Place;
import walebook.quantity.ReadNumber;
import walebook.quantity.Unit;
import walebook.record.CheckedBy;
import walebook.record.Criterion;
import walebook.record.Keyed;
import walebook.record.Lesson;
import walebook.record.SchoolClass;
import walebook.record.Student;
import walebook.record.TestPiece;

/** For the assessor: criteria, what speaks for them, checks, feedback, what is missing. */
final class AssessJobs {
  private static final Option PIECE = Option.of("piece", "CODE", "command.option.assess-piece");
  private static final Option NEEDED_PIECE =
      Option.needed("piece", "CODE", "command.option.assess-piece");
  private static final Option ON = Option.of("on", "DATE", "command.option.assess-on");
  private static final List<Option> MARKS =
      List.of(
          Option.of("choice-mark", "0-3", "command.option.choice-mark"),
          Option.of("technique-mark", "0-3", "command.option.technique-mark"),
          Option.of("performance-mark", "0-3", "command.option.performance-mark"),
          Option.of("finish-mark", "0-3", "command.option.finish-mark"),
          Option.of("reasoning-mark", "0-3", "command.option.reasoning-mark"),
          Option.of("help-given", "HOW", "command.option.help-given"),
          Option.of("checked-on", "DATE", "command.option.checked-on"));

  private AssessJobs() {}

  static List<Job> all() {
    return List.of(
        Job.shows(
            "assess criteria",
            "command.assess.criteria",
            AtBook.open(AssessJobs::criteria),
            Job.BOOK,
            Job.CLASS,
            Option.many("add", "LINE", "command.option.criterion-add"),
            Option.of("list", "FILE", "command.option.criteria-list"),
            Option.of("change", "CODE", "command.option.criterion-change"),
            Option.of("code", "CODE", "command.option.criterion-code"),
            Option.of("says", "WORDS", "command.option.criterion-says"),
            Option.of("marks", "KEYS", "command.option.criterion-marks"),
            Option.of("move", "CODE", "command.option.criterion-move"),
            Option.of("to", "NUMBER", "command.option.criterion-to"),
            Option.many("remove", "CODE", "command.option.criterion-remove")),
        Job.shows(
                "assess tag",
                "command.assess.tag",
                AtBook.open(AssessJobs::tag),
                Job.BOOK,
                Job.CLASS,
                PIECE,
                Job.LESSON,
                Option.flag("off", "command.option.tag-off"))
            .operand("CRITERION", "command.operand.criterion"),
        check(),
        Job.shows(
            "assess feedback",
            "command.assess.feedback",
            AtBook.open(AssessJobs::feedback),
            Job.BOOK,
            NEEDED_PIECE,
            Option.of("says", "WORDS", "command.option.feedback-says"),
            ON,
            Option.flag("keep", "command.option.feedback-keep"),
            Option.of("drop", "WORDS", "command.option.feedback-drop")),
        Job.shows(
            "assess missing",
            "command.assess.missing",
            AtBook.open(AssessJobs::missing),
            Job.BOOK,
            Job.CLASS,
            Job.STUDENT,
            ON),
        Job.shows(
            "assess marks",
            "command.assess.marks",
            AtBook.open(
                (typed, terminal, book) -> {
                  ShowAssessed.marks(typed, terminal, chosen(typed, book), book);
                  return Exit.DONE;
                }),
            Job.BOOK,
            Job.CLASS,
            Job.LESSON,
            Job.STUDENT));
  }

  private static Job check() {
    List<Option> options = new ArrayList<>(List.of(Job.BOOK, NEEDED_PIECE));
    options.add(Option.needed("by", "WHO", "command.option.checked-by"));
    options.addAll(MARKS);
    return Job.shows(
        "assess check",
        "command.assess.check",
        AtBook.open(AssessJobs::check),
        options.toArray(Option[]::new));
  }

  private static Exit criteria(Typed typed, Terminal terminal, Book book) {
    SchoolClass in = Pick.schoolClass(typed, book);
    KeepCriteria keep = new KeepCriteria(book, terminal.clock());
    book.inOneStep(
        () -> {
          String lines = lines(typed);
          if (!lines.isBlank()) {
            Refused.unless(keep.addList(in.id(), lines, typed.text("marks", "")));
          }
          change(typed, keep, book, in);
          typed
              .all("remove")
              .forEach(code -> keep.remove(criterion(code, "remove", book, in).id()));
          return lines;
        });
    ShowAssessed.criteria(typed, terminal, AssessedClass.of(book, in.id()), book, in.id());
    return Exit.DONE;
  }

  private static String lines(Typed typed) {
    List<String> lines = new ArrayList<>(typed.all("add"));
    String list = typed.text("list");
    if (list != null) {
      Path file = AtBook.path("list", list);
      try {
        lines.add(Files.readString(file, StandardCharsets.UTF_8));
      } catch (IOException e) {
        throw Refused.field("list", "in.unreadable", String.valueOf(e.getMessage()), "");
      }
    }
    return String.join("\n", lines);
  }

  private static void change(Typed typed, KeepCriteria keep, Book book, SchoolClass in) {
    String changed = typed.text("change");
    if (changed != null) {
      Criterion now = criterion(changed, "change", book, in);
      Refused.unless(
          keep.change(
              now,
              typed.text("code", now.code()),
              typed.text("says", now.says()),
              typed.text("marks", ReadMarkings.typed(now.looksAt()))));
    }
    String moved = typed.text("move");
    if (moved != null) {
      Criterion now = criterion(moved, "move", book, in);
      List<Criterion> all = book.assessments().criteriaOf(in.id());
      int to = Refused.unless(ReadNumber.whole(typed.text("to", ""), Place.field("to")));
      if (to < 1 || to > all.size()) {
        throw Refused.field("to", "number.outside", String.valueOf(to), "1 – " + all.size());
      }
      int at = all.stream().map(Criterion::id).toList().indexOf(now.id());
      keep.move(now, to - 1 - at);
    }
  }

  private static Criterion criterion(String code, String field, Book book, SchoolClass in) {
    List<Criterion> all = book.assessments().criteriaOf(in.id());
    return all.stream()
        .filter(each -> each.code().equalsIgnoreCase(code.strip()))
        .findFirst()
        .orElseThrow(
            () ->
                Refused.field(
                    field,
                    "choice.unknown",
                    code,
                    all.stream().map(Criterion::code).collect(Collectors.joining(", "))));
  }

  private static Exit tag(Typed typed, Terminal terminal, Book book) {
    String code = typed.text("piece");
    boolean on = !typed.has("off");
    TagEvidence tag = new TagEvidence(book);
    if (code != null) {
      TestPiece piece = PieceJobs.byCode(book, "piece", code);
      SchoolClass in = book.classes().find(piece.whose().classId());
      if (in == null) {
        throw Refused.field("class", "choice.unknown", "", "");
      }
      tag.piece(criterion(typed.operand(0), "CRITERION", book, in).id(), piece.id(), on);
      ShowAssessed.criteria(typed, terminal, AssessedClass.of(book, in.id()), book, in.id());
      return Exit.DONE;
    }
    SchoolClass in = Pick.schoolClass(typed, book);
    Lesson lesson = Pick.lesson(typed.text("lesson"), book, in);
    if (lesson == null) {
      throw Refused.field("piece", "field.needed", "", "");
    }
    tag.lesson(criterion(typed.operand(0), "CRITERION", book, in).id(), lesson.id(), on);
    ShowAssessed.criteria(typed, terminal, AssessedClass.of(book, in.id()), book, in.id());
    return Exit.DONE;
  }

  private static Exit check(Typed typed, Terminal terminal, Book book) {
    TestPiece piece = PieceJobs.byCode(book, "piece", typed.text("piece", ""));
    String who = typed.text("by", "").strip().toLowerCase(Locale.ROOT);
    CheckedBy by = Keyed.find(CheckedBy.class, who);
    if (by == null) {
      throw Refused.field("by", "choice.unknown", who, "self, tutor");
    }
    Map<String, String> given = new HashMap<>(kept(book, piece, by));
    given.putAll(typed.given(MARKS));
    Refused.unless(new CheckPiece(book, terminal.clock()).check(piece.id(), by, given));
    ShowAssessed.piece(typed, terminal, piece, LookOver.of(book, piece.id()));
    return Exit.DONE;
  }

  /** What is not named stays as it was. */
  private static Map<String, String> kept(Book book, TestPiece piece, CheckedBy by) {
    return CheckPiece.typed(book.assessments().check(piece.id(), by));
  }

  private static Exit feedback(Typed typed, Terminal terminal, Book book) {
    TestPiece piece = PieceJobs.byCode(book, "piece", typed.text("piece", ""));
    GiveFeedback give = new GiveFeedback(book, terminal.clock());
    String says = typed.text("says");
    if (says != null) {
      Refused.unless(give.give(piece.id(), says, typed.text("on", ""), typed.has("keep")));
    }
    String drop = typed.text("drop");
    if (drop != null) {
      give.unbank(drop.strip());
    }
    ShowAssessed.piece(typed, terminal, piece, LookOver.of(book, piece.id()));
    return Exit.DONE;
  }

  private static Exit missing(Typed typed, Terminal terminal, Book book) {
    String on = typed.text("on");
    ShowAssessed.missing(typed, terminal, chosen(typed, book), day(on, terminal));
    return Exit.DONE;
  }

  private static LocalDate day(@Nullable String on, Terminal terminal) {
    if (on == null) {
      return LocalDate.now(terminal.clock());
    }
    Form form = new Form(Map.of("on", on), Unit.MM);
    LocalDate day = form.date("on");
    if (day == null) {
      throw form.isRefused()
          ? new Refused(Exit.REFUSED, form.problems())
          : Refused.field("on", "field.needed", "", "2026-10-05");
    }
    return day;
  }

  private static AssessedClass chosen(Typed typed, Book book) {
    SchoolClass in = Pick.schoolClass(typed, book);
    Student student = Pick.student(typed.text("student"), book, in);
    Lesson lesson = Pick.lesson(typed.text("lesson"), book, in);
    return AssessedClass.of(book, in.id())
        .only(
            student == null ? Set.of() : Set.of(student.id()),
            lesson == null ? Set.of() : Set.of(lesson.id()));
  }
}
