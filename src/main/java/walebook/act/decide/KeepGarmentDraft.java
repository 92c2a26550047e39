package walebook.act.decide;

import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.record.Draft;
import walebook.record.GarmentSheet;

/**
 * Keeps what stands in the form of a garment sheet, so that a crash or a power cut loses nothing
 * typed. One draft a saved sheet, and one a student for the sheet that is not saved yet. Girths of
 * the body are kept only where the sheet is to keep them.
 */
public final class KeepGarmentDraft {
  private static final String FORM = "garment";
  private static final String VERSION = "#version";
  private static final String CLASS = "class";
  private static final String BODY = "body-";

  private final Book book;

  public KeepGarmentDraft(Book book) {
    this.book = book;
  }

  /**
   * Keeps what is typed in the place of what was kept before.
   *
   * @param saved the sheet as the book has it; null for one that is not saved yet
   * @param student whose a new one is; null for the class's
   */
  public void keep(
      @Nullable GarmentSheet saved, @Nullable UUID student, Map<String, String> typed) {
    Map<String, String> kept = new HashMap<>(typed);
    if (!"yes".equals(typed.get("keep-body"))) {
      kept.keySet().removeIf(field -> field.startsWith(BODY));
    }
    if (saved != null) {
      kept.put(VERSION, Long.toString(saved.stamp().version()));
    }
    book.drafts().keep(new Draft(FORM, owner(saved, student), kept));
  }

  /** What was typed, or null; a draft of an earlier state than the book's is dropped. */
  public @Nullable Map<String, String> find(@Nullable GarmentSheet saved, @Nullable UUID student) {
    Draft draft = book.drafts().find(FORM, owner(saved, student));
    if (draft == null) {
      return null;
    }
    if (saved != null
        && !Long.toString(saved.stamp().version()).equals(draft.typed().get(VERSION))) {
      drop(saved, student);
      return null;
    }
    Map<String, String> typed = new HashMap<>(draft.typed());
    typed.remove(VERSION);
    return typed;
  }

  /** Lets it go, once it is saved or thrown away on purpose. */
  public void drop(@Nullable GarmentSheet saved, @Nullable UUID student) {
    book.drafts().drop(FORM, owner(saved, student));
  }

  private static String owner(@Nullable GarmentSheet saved, @Nullable UUID student) {
    return saved != null ? "sheet/" + saved.id() : "new/" + (student == null ? CLASS : student);
  }
}
