package walebook.sheet;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import walebook.compare.ClassProgress;
import walebook.compare.TalliedComparison;
import walebook.compare.assessed.AssessedClass;
import walebook.compare.assessed.Coverage;
import walebook.record.BookInfo;
import walebook.record.PhotoInfo;
import walebook.record.SchoolClass;
import walebook.record.Student;
import walebook.record.Term;
import walebook.record.TestPiece;
import walebook.record.Tutor;

/**
 * Everything that goes into the workbook of one class, read from the book in one step; the pieces
 * themselves are read again bit by bit while they are written.
 *
 * @param tutor null when the class has none or names are not wanted
 * @param choice what was chosen
 * @param students those chosen of everyone who ever was in the class, in the order shown
 * @param piecesEach how many pieces each student has that go out; who has none is missing
 * @param pieces the pieces: by the day sewn, then by student as shown, then by code
 * @param assessed with those chosen pieces that anybody said something of
 * @param coverage by the chosen pieces
 * @param log what was measured, planned and noted beside the pieces
 * @param piecesOf the pieces of one student
 * @param photosOf the photos of a piece, small
 * @param everyName of students and tutors of the whole book, in the class or not
 * @param cover takes names out of free text when they are not wanted
 * @param written when the workbook was written
 */
public record TermFacts(
    BookInfo book,
    SchoolClass schoolClass,
    @Nullable Term term,
    @Nullable Tutor tutor,
    TermChoice choice,
    List<Student> students,
    Map<UUID, Integer> piecesEach,
    Iterable<TestPiece> pieces,
    PieceLookup lookup,
    TermFindings findings,
    ClassProgress progress,
    AssessedClass assessed,
    Coverage coverage,
    List<ClothLine> cloths,
    List<PlanLine> plan,
    TermLog log,
    TermExtras extras,
    Function<UUID, Iterable<TestPiece>> piecesOf,
    Function<UUID, List<PhotoInfo>> photosOf,
    Set<String> everyName,
    UnaryOperator<String> cover,
    LocalDateTime written) {
  public TermFacts {
    students = List.copyOf(students);
    piecesEach = Map.copyOf(piecesEach);
    cloths = List.copyOf(cloths);
    plan = List.copyOf(plan);
    everyName = Set.copyOf(everyName);
  }

  boolean names() {
    return choice.names();
  }

  TalliedComparison comparison() {
    return findings.comparison();
  }

  /** How many readings of the cloths that go out are set aside. */
  int readingsAside() {
    return cloths.stream().mapToInt(ClothLine::aside).sum();
  }

  /** How many pieces go out. */
  int pieceCount() {
    return findings.comparison().pieces();
  }

  /** A student as this workbook calls them. */
  String shown(Student student) {
    return names() ? student.name() : student.alias();
  }

  /** The columns that were chosen of those there are. */
  <T> List<Column<T>> chosen(List<Column<T>> columns) {
    return columns.stream().filter(each -> choice.hasColumn(each.key())).toList();
  }
}
