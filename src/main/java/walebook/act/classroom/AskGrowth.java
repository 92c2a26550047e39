package walebook.act.classroom;

import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import walebook.book.Book;
import walebook.book.PieceFilter;
import walebook.compare.known.Growth;
import walebook.record.SchoolClass;
import walebook.record.Term;

/** Asks how one student grew over classes and terms. */
public final class AskGrowth {
  private final Book book;

  public AskGrowth(Book book) {
    this.book = book;
  }

  /** Reads the student's pieces and sorts them into tries, term by term. */
  public Growth ask(UUID studentId) {
    Map<UUID, String> terms = new HashMap<>();
    for (SchoolClass each : book.classes().all()) {
      Term term = book.terms().find(each.termId());
      terms.put(each.id(), term == null ? each.name() : term.name());
    }
    return Growth.of(
        book.pieces().list(PieceFilter.ALL.ofStudent(studentId)),
        classId -> terms.getOrDefault(classId, ""));
  }
}
