package walebook.act.card;

import java.util.Map;
import java.util.UUID;
import walebook.book.Book;
import walebook.record.Draft;

/** Keeps what is typed of a lesson's cards and not yet saved; one draft a lesson. */
public final class KeepCards {
  private static final String FORM = "cards";

  private final Book book;

  public KeepCards(Book book) {
    this.book = book;
  }

  /** Keeps the draft; one that holds nothing is let go. */
  public void keep(UUID lessonId, Map<String, String> typed) {
    if (typed.isEmpty()) {
      book.drafts().drop(FORM, lessonId.toString());
    } else {
      book.drafts().keep(new Draft(FORM, lessonId.toString(), typed));
    }
  }

  /** What was kept; empty when nothing was. */
  public Map<String, String> find(UUID lessonId) {
    Draft draft = book.drafts().find(FORM, lessonId.toString());
    return draft == null ? Map.of() : draft.typed();
  }
}
