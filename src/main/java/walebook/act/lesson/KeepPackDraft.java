package walebook.act.lesson;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.lesson.LessonPack;
import walebook.lesson.PackPicture;
import walebook.record.Draft;

/**
 * Keeps a pack that is being written, so that a crash or a power cut loses nothing typed. Its
 * pictures stay with the pack it was copied from, which the book keeps or the program brings.
 */
public final class KeepPackDraft {
  private static final String FORM = "pack";
  private static final String BASE = "#base";
  private static final String OF_PROGRAM = "program/";

  private final Book book;

  public KeepPackDraft(Book book) {
    this.book = book;
  }

  /**
   * A pack in the making.
   *
   * @param owner tells drafts apart
   * @param base where its pictures are; empty when it has none
   * @param typed field by field
   */
  public record Kept(String owner, String base, Map<String, String> typed) {
    public Kept {
      typed = Map.copyOf(typed);
    }
  }

  /** Where a pack's pictures are found again. */
  public static String base(LessonPack pack, @Nullable UUID shelfId) {
    return shelfId == null ? OF_PROGRAM + pack.about().name() : shelfId.toString();
  }

  public void keep(Kept kept) {
    Map<String, String> typed = new HashMap<>(kept.typed());
    typed.put(BASE, kept.base());
    book.drafts().keep(new Draft(FORM, kept.owner(), typed));
  }

  /** Every pack in the making, the last touched first. */
  public List<Kept> all() {
    List<Kept> all = new ArrayList<>();
    for (Draft draft : book.drafts().of(FORM)) {
      Map<String, String> typed = new HashMap<>(draft.typed());
      String base = typed.remove(BASE);
      all.add(new Kept(draft.owner(), base == null ? "" : base, typed));
    }
    return all;
  }

  /** The pictures of a draft's pack; none when the pack is no longer to be had. */
  public List<PackPicture> pictures(String base) {
    if (base.startsWith(OF_PROGRAM)) {
      String name = base.substring(OF_PROGRAM.length());
      return ReadLessons.packs().stream()
          .filter(each -> each.about().name().equals(name))
          .findFirst()
          .map(each -> each.files().pictures())
          .orElse(List.of());
    }
    List<PackPicture> pictures = new ArrayList<>();
    if (!base.isEmpty()) {
      book.lessons()
          .picturesOf(UUID.fromString(base))
          .forEach((name, content) -> pictures.add(new PackPicture(name, content)));
    }
    return pictures;
  }

  public void drop(String owner) {
    book.drafts().drop(FORM, owner);
  }
}
