package walebook.act.classroom;

import java.util.Set;
import java.util.UUID;
import walebook.book.Book;
import walebook.compare.Outcome;
import walebook.record.MarkedValue;

/** What the tutor set aside for an outcome. */
final class SetAside {
  private SetAside() {}

  /** The pieces left out; none for an outcome that carries no marks. */
  static Set<UUID> of(Book book, Outcome outcome) {
    MarkedValue marked = outcome.marked();
    return marked == null ? Set.of() : book.marks().setAside(marked);
  }
}
