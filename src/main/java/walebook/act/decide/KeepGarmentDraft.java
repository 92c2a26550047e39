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
 * typed. One draft for each who changes a saved sheet, and one a student for the sheet that is not
 * saved yet. Of a saved sheet only what differs from it is kept, so that it can be laid over what
 * somebody else saves meanwhile. Girths of the body are kept only where the sheet is to keep them.
 */
public final class KeepGarmentDraft {
  private static final String FORM = "garment";
  private static final String VERSION = "#version";
  private static final String CLASS = "class";
  private static final String BODY = "body-";

  private final Book book;

  /**
   * What was typed and not saved.
   *
   * @param typed by field; of a saved sheet only what differs
   * @param older whether the sheet was saved by somebody else after it was typed
   */
  public record Found(Map<String, String> typed, boolean older) {}

  public KeepGarmentDraft(Book book) {
    this.book = book;
  }

  /**
   * Keeps what is typed in the place of what was kept before; nothing new is no draft.
   *
   * @param saved the sheet as the book has it; null for one that is not saved yet
   * @param student who types; null for whoever comes without a name, as the tutor does
   * @param before what the form showed of the saved sheet
   */
  public void keep(
      @Nullable GarmentSheet saved,
      @Nullable UUID student,
      Map<String, String> typed,
      Map<String, String> before) {
    Map<String, String> kept = new HashMap<>(typed);
    if (!"yes".equals(typed.get("keep-body"))) {
      kept.keySet().removeIf(field -> field.startsWith(BODY));
    }
    if (saved != null) {
      kept.entrySet().removeIf(is -> is.getValue().equals(before.getOrDefault(is.getKey(), "")));
      if (kept.isEmpty()) {
        drop(saved, student);
        return;
      }
      kept.put(VERSION, Long.toString(saved.stamp().version()));
    }
    book.drafts().keep(new Draft(FORM, owner(saved, student), kept));
  }

  /** What was typed, or null. */
  public @Nullable Found find(@Nullable GarmentSheet saved, @Nullable UUID student) {
    Draft draft = book.drafts().find(FORM, owner(saved, student));
    if (draft == null) {
      return null;
    }
    Map<String, String> typed = new HashMap<>(draft.typed());
    String version = typed.remove(VERSION);
    boolean older = saved != null && !Long.toString(saved.stamp().version()).equals(version);
    return new Found(typed, older);
  }

  /** Lets it go, once it is saved or thrown away on purpose. */
  public void drop(@Nullable GarmentSheet saved, @Nullable UUID student) {
    book.drafts().drop(FORM, owner(saved, student));
  }

  /** Another's draft of a sheet stands beside its owner's. */
  private static String owner(@Nullable GarmentSheet saved, @Nullable UUID student) {
    if (saved == null) {
      return "new/" + (student == null ? CLASS : student);
    }
    boolean own = student == null || student.equals(saved.studentId());
    return "sheet/" + saved.id() + (own ? "" : "/" + student);
  }
}
