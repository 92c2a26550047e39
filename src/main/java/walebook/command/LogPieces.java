package walebook.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import walebook.act.piece.LoadPieceRoom;
import walebook.act.piece.LogTestPiece;
import walebook.act.piece.PieceEntry;
import walebook.act.piece.PieceField;
import walebook.act.piece.PieceRoom;
import walebook.act.piece.StartPiece;
import walebook.book.Book;
import walebook.book.Ids;
import walebook.compare.Names;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.Keyed;
import walebook.record.Lesson;
import walebook.record.PieceCode;
import walebook.record.PlannedPiece;
import walebook.record.SchoolClass;
import walebook.record.Student;
import walebook.record.TestPiece;
import walebook.tables.SharedTables;

/** Logs one piece from options, or one for each line of standard input. */
final class LogPieces {
  private static final List<String> MARKS = List.of("student", "lesson", "planned", "again");

  private final Book book;
  private final Terminal terminal;
  private final SchoolClass schoolClass;
  private final PieceRoom room;
  private final boolean sure;

  private LogPieces(Typed typed, Terminal terminal, Book book) {
    this.book = book;
    this.terminal = terminal;
    this.schoolClass = Pick.schoolClass(typed, book);
    this.room = LoadPieceRoom.of(book, SharedTables.read(), schoolClass.id());
    this.sure = typed.has("sure");
  }

  static Exit run(Typed typed, Terminal terminal, Book book) {
    LogPieces log = new LogPieces(typed, terminal, book);
    Map<String, String> options = new LinkedHashMap<>();
    for (String mark : MARKS) {
      put(options, mark, typed.text(mark));
    }
    for (PieceField each : PieceField.values()) {
      put(options, each.key(), typed.text(each.key()));
    }
    String from = typed.text("from");
    if (from != null && !from.equals("-")) {
      throw Refused.field("from", "choice.unknown", from, "-");
    }
    if (from != null) {
      return log.lines(options);
    }
    TestPiece piece = Refused.unless(log.save(options));
    if (typed.has("json")) {
      terminal.out().println(Json.write(PieceJson.of(piece, Names.of(book, false))));
    } else {
      terminal.out().println(PieceCode.spoken(piece.code()));
    }
    return Exit.DONE;
  }

  private static void put(Map<String, String> into, String key, @Nullable String text) {
    if (text != null) {
      into.put(key, text);
    }
  }

  /** Each saved piece's code is written out before the next line is read. */
  private Exit lines(Map<String, String> usual) {
    Exit exit = Exit.DONE;
    int number = 0;
    try {
      for (String line = terminal.in().readLine(); line != null; line = terminal.in().readLine()) {
        number++;
        if (line.isBlank()) {
          continue;
        }
        Answer<TestPiece> saved = line(line, usual);
        if (saved.isGood()) {
          terminal.out().println(saved.value().code());
          terminal.out().flush();
        } else {
          RunCommand.complain(terminal, false, atLine(saved.problems(), number), true);
          exit = Exit.REFUSED;
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return exit;
  }

  private Answer<TestPiece> line(String line, Map<String, String> usual) {
    Answer<Map<String, String>> pairs = ReadPairs.of(line);
    if (!pairs.isGood()) {
      return Answer.bad(pairs.problems());
    }
    Map<String, String> all = new LinkedHashMap<>(usual);
    all.putAll(pairs.value());
    try {
      return save(all);
    } catch (Refused e) {
      return Answer.bad(e.problems());
    }
  }

  private static List<Problem> atLine(List<Problem> problems, int number) {
    List<Problem> placed = new ArrayList<>();
    for (Problem each : problems) {
      String field = each.place() instanceof Place.Field at ? at.name() : "";
      Place.Spot spot = new Place.Spot("-", number, 1, field);
      placed.add(new Problem(each.code(), spot, each.found(), each.wanted(), each.weight()));
    }
    return placed;
  }

  private Answer<TestPiece> save(Map<String, String> typed) {
    List<Problem> unknown = new ArrayList<>();
    Map<PieceField, String> fields = new EnumMap<>(PieceField.class);
    typed.forEach(
        (key, text) -> {
          PieceField field = Keyed.find(PieceField.class, key);
          if (field != null) {
            fields.put(field, text);
          } else if (!MARKS.contains(key)) {
            unknown.add(Problem.refuse("piece.no-field", Place.field(key), key, ""));
          }
        });
    if (!unknown.isEmpty()) {
      return Answer.bad(unknown);
    }
    PieceEntry entry = start(typed);
    for (Map.Entry<PieceField, String> each : fields.entrySet()) {
      entry = entry.with(each.getKey(), each.getValue());
    }
    return new LogTestPiece(book, terminal.clock(), terminal.chance()).save(entry, room, sure);
  }

  /** From the plan, from the piece before, or from nothing but what is typed. */
  private PieceEntry start(Map<String, String> typed) {
    String planned = typed.get("planned");
    if (planned != null) {
      return new StartPiece(book).fromPlan(planned(planned), schoolClass.id(), room);
    }
    String again = typed.get("again");
    if (again != null) {
      return new StartPiece(book).again(PieceJobs.byCode(book, "again", again), room);
    }
    Student student = Pick.student(typed.getOrDefault("student", ""), book, schoolClass);
    if (student == null) {
      throw Refused.field("student", "field.needed", "", "");
    }
    Lesson lesson = Pick.lesson(typed.get("lesson"), book, schoolClass);
    return new PieceEntry(
        Ids.next(),
        schoolClass.id(),
        student.id(),
        lesson == null ? null : lesson.id(),
        null,
        null,
        null,
        Map.of());
  }

  private PlannedPiece planned(String typed) {
    String code = PieceCode.read(typed);
    PlannedPiece planned = code == null ? null : book.lessons().plannedByCode(code);
    if (planned == null) {
      throw Refused.field("planned", code == null ? "code.not-a-code" : "code.unknown", typed, "");
    }
    if (book.pieces().byCode(planned.code()) != null) {
      throw Refused.field("planned", "code.logged", typed, "");
    }
    return planned;
  }
}
