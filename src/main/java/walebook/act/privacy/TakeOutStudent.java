package walebook.act.privacy;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import walebook.book.Book;
import walebook.book.StaleRow;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.Mention;
import walebook.record.Student;

/**
 * Makes a student anonymous, or erases them, in rows, history, bin and free pages of the file. It
 * cannot be undone. Copies of the book that were made before keep what they hold: {@link
 * CopiesOfName} finds those in the book's own folder of copies.
 */
public final class TakeOutStudent {
  /** What stands where an erased student's name was. */
  private static final String STAND_IN = "E";

  private final Book book;

  public TakeOutStudent(Book book) {
    this.book = book;
  }

  /** How far to go. */
  public enum How {
    /** The code takes the place of the name everywhere; everything else stays. */
    ANONYMOUS,
    /** Sheets, girths, notes about them, drafts and places on lists go; pieces stay, nameless. */
    ERASE_KEEP_PIECES,
    /** Their pieces and plans go, too. */
    ERASE_ALL
  }

  /**
   * What would go, to be shown before.
   *
   * @param rows how many rows there are of theirs, by table
   * @param mentions typed text with the name or a part of it; only whole names are replaced
   */
  public record Look(Student student, Map<String, Integer> rows, List<Mention> mentions) {
    public Look {
      rows = Map.copyOf(rows);
      mentions = List.copyOf(mentions);
    }
  }

  /** Looks what there is of a student, changing nothing. */
  public Look look(Student student) {
    return new Look(
        student, book.privacy().rowsOf(student.id()), book.privacy().mentions(student.id()));
  }

  /** Does it, and overwrites what was freed; the answer is what stands in the name's place. */
  public Answer<String> take(Student student, How how) {
    try {
      String standIn = how == How.ANONYMOUS ? student.alias() : free();
      switch (how) {
        case ANONYMOUS -> book.privacy().rename(student.id(), standIn, standIn);
        case ERASE_KEEP_PIECES -> book.privacy().erase(student.id(), false, standIn, standIn);
        case ERASE_ALL -> book.privacy().erase(student.id(), true, standIn, standIn);
      }
      book.privacy().scrub();
      return Answer.good(standIn);
    } catch (StaleRow e) {
      return Answer.bad(
          Problem.refuse("choice.unknown", Place.field("student"), student.alias(), ""));
    }
  }

  private String free() {
    Set<String> taken =
        book.students().all().stream().map(Student::alias).collect(Collectors.toSet());
    int number = 1;
    while (taken.contains(STAND_IN + number)) {
      number++;
    }
    return STAND_IN + number;
  }
}
