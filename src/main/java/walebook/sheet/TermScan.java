package walebook.sheet;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import walebook.book.Book;
import walebook.book.PieceOrder;
import walebook.book.ResultFilter;
import walebook.compare.ClassProgress;
import walebook.compare.LineTally;
import walebook.compare.assessed.AssessedPiece;
import walebook.compare.assessed.Coverage;
import walebook.compare.assessed.LookOver;
import walebook.compare.odd.OddLots;
import walebook.compare.odd.SeenValues;
import walebook.record.DoneLine;
import walebook.record.MarkedValue;
import walebook.record.ResultLine;
import walebook.record.ValueMark;

/** One look at every piece of a class, of which none is kept but those that were looked over. */
final class TermScan {
  private final TermChoice choice;
  private final LookOver look;
  private final LineTally tally;
  private final LineTally others = new LineTally(Map.of());
  private final SeenValues values;
  private final ClassProgress.Logged logged;
  private final Coverage.Count coverage;
  private final List<AssessedPiece> lookedOver = new ArrayList<>();
  private final Set<UUID> planned = new HashSet<>();

  private TermScan(
      Book book, UUID classId, TermChoice choice, Map<MarkedValue, Set<UUID>> setAside) {
    this.choice = choice;
    look = LookOver.of(book, classId);
    coverage = new Coverage.Count(book.assessments().criteriaOf(classId));
    tally = new LineTally(setAside);
    values =
        new SeenValues(
            book.marks().all().stream().map(ValueMark::targetId).collect(Collectors.toSet()));
    logged = new ClassProgress.Logged(choice.lessonIds());
  }

  static TermScan of(
      Book book, UUID classId, TermChoice choice, Map<MarkedValue, Set<UUID>> setAside) {
    TermScan scan = new TermScan(book, classId, choice, setAside);
    book.results().each(ResultFilter.ALL.ofClass(classId).withFaults(), scan::add);
    return scan;
  }

  private void add(ResultLine line, DoneLine done) {
    logged.add(done);
    if (done.plannedId() != null) {
      planned.add(done.plannedId());
    }
    if (!chosen(done)) {
      others.add(line);
      return;
    }
    tally.add(line);
    values.add(line);
    AssessedPiece piece = look.at(done);
    if (piece != null) {
      coverage.add(piece);
      if (piece.isLookedOver()) {
        lookedOver.add(piece);
      }
    }
  }

  private boolean chosen(DoneLine piece) {
    return choice.hasLesson(piece.lessonId()) && choice.hasStudent(piece.studentId());
  }

  TermChoice choice() {
    return choice;
  }

  /** Of the chosen pieces. */
  LineTally tally() {
    return tally;
  }

  /** Of the chosen pieces and of the class's others. */
  List<LineTally> whole() {
    return List.of(tally, others);
  }

  /** What is logged in the chosen lessons, by anybody. */
  ClassProgress.Logged logged() {
    return logged;
  }

  /** Planned pieces that were sewn. */
  Set<UUID> planned() {
    return planned;
  }

  /** What the chosen pieces cover. */
  Coverage.Count coverage() {
    return coverage;
  }

  /** Those of the chosen pieces that anybody said something of. */
  List<AssessedPiece> lookedOver() {
    return lookedOver;
  }

  /** The cloths that the chosen pieces are of. */
  Set<UUID> cloths() {
    return tally.settings().stream()
        .map(each -> each.first().setTo().clothId())
        .collect(Collectors.toSet());
  }

  /** How many of the chosen pieces have an odd value that nobody has looked at yet. */
  int unseen(OddLots lots) {
    return values.unseen(lots);
  }

  /** The chosen pieces in the order they go out. */
  static PieceOrder order(Book book, ResultFilter of, TermChoice choice) {
    return book.pieces().inOrder(of, choice.studentIds(), choice.lessonIds(), !choice.names());
  }
}
