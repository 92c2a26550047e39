package walebook.command;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import walebook.act.piece.JudgePiece;
import walebook.act.piece.LoadPieceRoom;
import walebook.act.piece.PieceField;
import walebook.act.piece.PieceRoom;
import walebook.book.Book;
import walebook.book.PieceFilter;
import walebook.compare.Names;
import walebook.quantity.Show;
import walebook.record.Cloth;
import walebook.record.Lesson;
import walebook.record.PieceCode;
import walebook.record.SchoolClass;
import walebook.record.Student;
import walebook.record.TestPiece;
import walebook.seam.PieceVerdict;
import walebook.tables.SharedTables;

/** Logging, listing and showing test pieces. */
final class PieceJobs {
  private PieceJobs() {}

  static List<Job> all() {
    List<Option> log = new ArrayList<>();
    log.add(Job.BOOK);
    log.add(Job.CLASS);
    log.add(Job.STUDENT);
    log.add(Job.LESSON);
    log.add(Option.of("planned", "CODE", "command.option.planned"));
    log.add(Option.of("again", "CODE", "command.option.again"));
    log.add(Option.of("from", "-", "command.option.from"));
    log.add(Job.SURE);
    for (PieceField each : PieceField.values()) {
      log.add(Option.of(each.key(), each.kind().name(), "command.field." + each.key()));
    }
    return List.of(
        Job.shows(
            "piece log",
            "command.piece.log",
            AtBook.open(LogPieces::run),
            log.toArray(new Option[0])),
        Job.shows(
            "piece list",
            "command.piece.list",
            AtBook.open(PieceJobs::list),
            Job.BOOK,
            Job.CLASS,
            Job.LESSON,
            Job.STUDENT,
            Option.of("cloth", "NAME", "command.field.cloth"),
            Option.of("search", "WORDS", "command.option.search"),
            Option.of("limit", "NUMBER", "command.option.limit")),
        Job.shows("piece show", "command.piece.show", AtBook.open(PieceJobs::show), Job.BOOK)
            .operand("CODE", "command.operand.code"),
        Job.shows("piece find", "command.piece.find", AtBook.open(FindPiece::run), Job.BOOK)
            .operand("CODE", "command.operand.code-or-key"));
  }

  private static Exit list(Typed typed, Terminal terminal, Book book) {
    List<TestPiece> pieces = book.pieces().list(filter(typed, book));
    Names names = Names.of(book, false);
    if (typed.has("json")) {
      ArrayNode all = Json.array();
      pieces.forEach(each -> all.add(PieceJson.of(each, names)));
      terminal.out().println(Json.write(all));
      return Exit.DONE;
    }
    Table table =
        new Table(
            List.of(
                terminal.say("command.column.code"),
                terminal.say("command.column.sewn-on"),
                terminal.say("command.column.student"),
                terminal.say("command.column.cloth"),
                terminal.say("command.column.stitch"),
                terminal.say("command.column.width"),
                terminal.say("command.column.length"),
                terminal.say("command.column.end"),
                terminal.say("command.column.seam-stretch"),
                terminal.say("command.column.edge-change"),
                terminal.say("command.column.grade")));
    pieces.forEach(each -> table.row(row(each, names)));
    terminal.out().println(table);
    return Exit.DONE;
  }

  private static PieceFilter filter(Typed typed, Book book) {
    PieceFilter filter = PieceFilter.ALL.with(typed.text("search", ""));
    boolean ofClass =
        typed.text("class") != null
            || typed.text("lesson") != null
            || typed.text("student") != null;
    if (ofClass) {
      SchoolClass in = Pick.schoolClass(typed, book);
      Student student = Pick.student(typed.text("student"), book, in);
      Lesson lesson = Pick.lesson(typed.text("lesson"), book, in);
      filter =
          filter
              .ofClass(in.id())
              .ofStudent(student == null ? null : student.id())
              .ofLesson(lesson == null ? null : lesson.id());
    }
    Cloth cloth = Pick.cloth(typed.text("cloth"), book);
    String limit = typed.text("limit", "1000000");
    if (!limit.matches("[0-9]{1,7}")) {
      throw Refused.field("limit", "number.not-whole", limit, "50");
    }
    return filter.onCloth(cloth == null ? null : cloth.id()).page(Integer.parseInt(limit), 0);
  }

  private static List<String> row(TestPiece piece, Names names) {
    var pull = piece.measure().counting();
    return List.of(
        PieceCode.spoken(piece.code()),
        piece.whose().sewnOn().toString(),
        names.of(piece.whose().studentId()),
        names.of(piece.cloth().clothId()),
        piece.setting().stitchName(),
        number(piece.setting().dialWidth(), 2),
        number(piece.setting().dialLength(), 2),
        pull == null ? "" : pull.end().key(),
        number(piece.measure().seamStretchPercent(), 1),
        number(piece.measure().edgeChangePercent(), 1),
        piece.seen().grade() == null ? "" : String.valueOf(piece.seen().grade()));
  }

  static String number(@Nullable Double value, int decimals) {
    return value == null ? "" : Show.fixed(value, decimals);
  }

  private static Exit show(Typed typed, Terminal terminal, Book book) {
    TestPiece piece = byCode(book, "code", typed.operand(0));
    PieceRoom room = LoadPieceRoom.of(book, SharedTables.read(), piece.whose().classId());
    PieceVerdict verdict = JudgePiece.of(piece, room);
    Names names = Names.of(book, false);
    List<TestPiece> chain = book.pieces().chainOf(piece.id());
    if (typed.has("json")) {
      ObjectNode json = PieceJson.of(piece, names);
      json.set("working", WorkingJson.of(verdict.working(), terminal.words()));
      ArrayNode codes = json.putArray("chain");
      chain.forEach(each -> codes.add(each.code()));
      terminal.out().println(Json.write(json));
      return Exit.DONE;
    }
    Table card = new Table(List.of(terminal.say("command.column.field"), piece.code()));
    PieceJson.of(piece, names)
        .properties()
        .forEach(
            each -> {
              if (!each.getValue().isNull()) {
                card.row(List.of(each.getKey(), PieceJson.text(each.getValue())));
              }
            });
    terminal.out().println(card);
    terminal.out().println();
    terminal.out().println(WorkingText.of(verdict.working(), terminal.words()));
    return Exit.DONE;
  }

  static TestPiece byCode(Book book, String field, String typed) {
    String code = PieceCode.read(typed);
    TestPiece piece = code == null ? null : book.pieces().byCode(code);
    if (piece == null) {
      throw Refused.field(field, code == null ? "code.not-a-code" : "code.unknown", typed, "");
    }
    return piece;
  }
}
