package walebook.act.bring;

import java.time.Clock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import walebook.act.bring.match.BringField;
import walebook.act.card.CardClashes;
import walebook.act.piece.LogTestPiece;
import walebook.act.piece.OneChange;
import walebook.act.piece.PieceEntry;
import walebook.act.piece.PieceField;
import walebook.act.piece.ReadPiece;
import walebook.book.Book;
import walebook.book.Ids;
import walebook.book.PieceFilter;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.By;
import walebook.record.Parent;
import walebook.record.PieceCode;
import walebook.record.PlannedPiece;
import walebook.record.TestPiece;

/**
 * Logs the pieces of a table row by row, each with the checks of the log form. A piece that tries
 * another again comes after it, wherever the two stand.
 */
final class PieceRows {
  private static final Set<String> SETTINGS =
      Arrays.stream(PieceField.values())
          .filter(field -> field.isSetting() && field != PieceField.OTHER_CHANGE)
          .map(PieceField::key)
          .collect(Collectors.toUnmodifiableSet());

  private final Book book;
  private final Clock clock;
  private final Random chance;
  private final PieceTable table;
  private final List<PieceRow> rows;
  private final List<Integer> numbers;
  private final Set<Likeness> there = new HashSet<>();
  private final Map<String, RowFate> byCode = new HashMap<>();
  private final List<RowFate> fates = new ArrayList<>();

  PieceRows(
      Book book,
      Clock clock,
      Random chance,
      PieceTable table,
      List<PieceRow> rows,
      List<Integer> numbers) {
    this.book = book;
    this.clock = clock;
    this.chance = chance;
    this.table = table;
    this.rows = rows;
    this.numbers = numbers;
    book.pieces()
        .list(PieceFilter.ALL.ofClass(table.plan().classId()))
        .forEach(each -> there.add(Likeness.of(each)));
  }

  List<RowFate> run(UUID step, By by) {
    Set<String> waiting = new HashSet<>();
    List<Integer> left = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      left.add(i);
      waiting.add(rows.get(i).code());
    }
    boolean goesOn = true;
    while (!left.isEmpty() && goesOn) {
      List<Integer> later = new ArrayList<>();
      for (int i : left) {
        String parent = rows.get(i).parentCode();
        if (!parent.isEmpty() && waiting.contains(parent) && !parent.equals(rows.get(i).code())) {
          later.add(i);
        } else {
          one(i, step, by);
          waiting.remove(rows.get(i).code());
        }
      }
      goesOn = later.size() < left.size();
      left = later;
    }
    left.forEach(i -> one(i, step, by));
    return fates;
  }

  private void one(int at, UUID step, By by) {
    PieceRow row = rows.get(at);
    String code = row.code();
    RowFate fate = fate(row, numbers.get(at), code, step, by);
    byCode.put(code, fate);
    fates.add(fate);
  }

  private RowFate fate(PieceRow row, int number, String code, UUID step, By by) {
    String about = code.isEmpty() ? row.cells().text(BringField.STUDENT) : PieceCode.spoken(code);
    Problem wrong = code.isEmpty() ? null : wrong(row, code);
    if (wrong != null) {
      return new RowFate(number, RowFate.Fate.REFUSED, about, List.of(wrong));
    }
    if (!code.isEmpty() && book.pieces().byCode(code) != null) {
      return new RowFate(number, RowFate.Fate.THERE, about, List.of());
    }
    UUID student = row.student();
    TestPiece parent = parent(row);
    PlannedPiece planned = code.isEmpty() ? null : book.lessons().plannedByCode(code);
    Problem clash = clash(row, student, planned);
    // Whose it is may be missing; everything else that is wrong is still said at once.
    UUID whose = student == null ? Ids.next() : student;
    PieceEntry entry =
        planned(
            row.entry(
                Ids.next(),
                whose,
                parent == null ? null : parent.id(),
                planned == null ? null : planned.lessonId()),
            planned);
    Answer<TestPiece> read = read(row, entry, code, parent);
    List<Problem> problems = problems(row, entry, read);
    if (clash != null) {
      problems.add(clash);
    }
    if (!read.isGood() || problems.stream().anyMatch(Problem::refuses)) {
      return new RowFate(number, RowFate.Fate.REFUSED, about, problems);
    }
    if (code.isEmpty() && there.contains(Likeness.of(read.value()))) {
      return new RowFate(number, RowFate.Fate.THERE, about, List.of());
    }
    if (!problems.isEmpty() && !table.plan().sure()) {
      return new RowFate(number, RowFate.Fate.ASKED, about, problems);
    }
    book.pieces().add(read.value());
    book.history().underStep(step, by);
    return new RowFate(number, RowFate.Fate.NEW, about, List.of());
  }

  private @Nullable Problem wrong(PieceRow row, String code) {
    Place place = row.cells().place(BringField.CODE);
    if (!PieceCode.isCode(code)) {
      return Problem.refuse("code.not-a-code", place, code, "");
    }
    return byCode.containsKey(code)
        ? Problem.refuse("bring.code-twice", place, PieceCode.spoken(code), "")
        : null;
  }

  private @Nullable Problem clash(
      PieceRow row, @Nullable UUID student, @Nullable PlannedPiece planned) {
    if (planned != null && !planned.studentId().equals(student)) {
      return Problem.refuse(
          "bring.planned-for-another",
          row.cells().place(BringField.CODE),
          PieceCode.spoken(planned.code()),
          "");
    }
    String parent = row.parentCode();
    return !parent.isEmpty() && book.pieces().byCode(parent) == null
        ? Problem.refuse("bring.no-parent", row.cells().place(BringField.AGAIN_OF), parent, "")
        : null;
  }

  private @Nullable TestPiece parent(PieceRow row) {
    String code = row.parentCode();
    return code.isEmpty() ? null : book.pieces().byCode(code);
  }

  private static PieceEntry planned(PieceEntry entry, @Nullable PlannedPiece planned) {
    return planned == null
        ? entry
        : new PieceEntry(
            entry.pieceId(),
            entry.classId(),
            entry.studentId(),
            planned.lessonId(),
            planned.id(),
            planned.code(),
            entry.parentId(),
            entry.typed());
  }

  private Answer<TestPiece> read(
      PieceRow row, PieceEntry entry, String code, @Nullable TestPiece parent) {
    Parent link = null;
    if (parent != null) {
      String changed = row.changed();
      link =
          changed.isEmpty()
              ? OneChange.between(parent, entry, table.room()).parent()
              : table.changed().read(parent.id(), changed, SETTINGS);
    }
    return ReadPiece.read(
        entry,
        table.room(),
        table.today(),
        clock.instant(),
        code.isEmpty() ? LogTestPiece.freeCode(book, chance) : code,
        link);
  }

  /** The row's own problems, then the form's, each moved to the cell that it is about. */
  private static List<Problem> problems(PieceRow row, PieceEntry entry, Answer<TestPiece> read) {
    List<Problem> all = new ArrayList<>(row.problems());
    List<Problem> form = new ArrayList<>(CardClashes.within(entry));
    form.addAll(read.problems());
    for (Problem each : form) {
      Place place =
          each.place() instanceof Place.Field field
              ? row.cells().place(field.name())
              : each.place();
      Problem moved = new Problem(each.code(), place, each.found(), each.wanted(), each.weight());
      // A cell that could not be read is not also missing.
      boolean said = all.stream().anyMatch(other -> other.place().equals(place));
      if (!said) {
        all.add(moved);
      }
    }
    return all;
  }
}
