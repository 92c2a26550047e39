package walebook.sheet;

import java.time.LocalDateTime;
import java.util.List;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import walebook.compare.ClassProgress;
import walebook.compare.Comparison;
import walebook.record.BookInfo;
import walebook.record.SchoolClass;
import walebook.record.Student;
import walebook.record.Term;
import walebook.record.TestPiece;
import walebook.record.Tutor;

/**
 * Everything that goes into the workbook of one class, read from the book in one step.
 *
 * @param tutor null when the class has none or names are not wanted
 * @param names whether students' names go out; otherwise their aliases do
 * @param students everyone who ever was in the class
 * @param pieces by the day sewn, then by student as shown, then by code
 * @param cover takes names out of free text when they are not wanted
 * @param written when the workbook was written
 */
public record TermFacts(
    BookInfo book,
    SchoolClass schoolClass,
    @Nullable Term term,
    @Nullable Tutor tutor,
    boolean names,
    List<Student> students,
    List<TestPiece> pieces,
    PieceLookup lookup,
    Comparison comparison,
    ClassProgress progress,
    List<ClothLine> cloths,
    UnaryOperator<String> cover,
    LocalDateTime written) {
  public TermFacts {
    students = List.copyOf(students);
    pieces = List.copyOf(pieces);
    cloths = List.copyOf(cloths);
  }

  /** A student as this workbook calls them. */
  String shown(Student student) {
    return names ? student.name() : student.alias();
  }
}
