package walebook.act.assess;

import java.util.Map;
import java.util.UUID;
import walebook.book.Book;
import walebook.record.Draft;

/** Keeps what is typed for the assessor and not yet saved, for a class or a piece. */
public final class KeepAssessDraft {
  private static final String FORM = "assess";

  private final Book book;

  public KeepAssessDraft(Book book) {
    this.book = book;
  }

  /** Keeps it in the place of the last; what is empty all over is dropped. */
  public void keep(UUID about, Map<String, String> typed) {
    if (typed.values().stream().allMatch(String::isBlank)) {
      drop(about);
    } else {
      book.drafts().keep(new Draft(FORM, about.toString(), typed));
    }
  }

  /** What was typed and not saved; empty when nothing was. */
  public Map<String, String> find(UUID about) {
    Draft draft = book.drafts().find(FORM, about.toString());
    return draft == null ? Map.of() : draft.typed();
  }

  /** Lets it go. */
  public void drop(UUID about) {
    book.drafts().drop(FORM, about.toString());
  }
}
