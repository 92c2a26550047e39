package walebook.act;

import java.util.Map;
import walebook.book.Book;
import walebook.record.Draft;

/** Keeps what is typed in one kind of form and not yet saved, one draft for each owner. */
public final class KeepTyped {
  private final Book book;
  private final String form;

  /**
   * Keeps drafts of a form.
   *
   * @param form which one, such as {@code wash}
   */
  public KeepTyped(Book book, String form) {
    this.book = book;
    this.form = form;
  }

  /** Keeps it in the place of the last; what is empty all over is dropped. */
  public void keep(String owner, Map<String, String> typed) {
    if (typed.values().stream().allMatch(String::isBlank)) {
      drop(owner);
    } else {
      book.drafts().keep(new Draft(form, owner, typed));
    }
  }

  /** What was typed and not saved; empty when nothing was. */
  public Map<String, String> find(String owner) {
    Draft draft = book.drafts().find(form, owner);
    return draft == null ? Map.of() : draft.typed();
  }

  /** Lets it go. */
  public void drop(String owner) {
    book.drafts().drop(form, owner);
  }
}
