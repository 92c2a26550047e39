package walebook.act.piece;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.record.Draft;

/**
 * The photos of a piece that is not saved yet, made small already, among the drafts: the file on
 * the stick or the telephone may be gone after a crash. They stand apart from the texts, which are
 * written every second.
 */
public final class DraftPhotos {
  private static final String FORM = "piece-photos";
  private static final String NAME = "name";

  /** Signs that never part words: nobody's name is found, and covered, in a picture. */
  private static final HexFormat HEX = HexFormat.of();

  private static final String WIDE = "width-px";
  private static final String HIGH = "height-px";
  private static final String IMAGE = "image";
  private static final String SMALL = "thumbnail";

  private final Book book;

  public DraftPhotos(Book book) {
    this.book = book;
  }

  /** Keeps these in the place of those kept before; none are kept as nothing. */
  public void keep(PieceEntry of, List<ReadyPhoto> photos) {
    if (photos.isEmpty()) {
      drop(of);
      return;
    }
    Map<String, String> written = new HashMap<>();
    for (int i = 0; i < photos.size(); i++) {
      ReadyPhoto photo = photos.get(i);
      written.put(key(i, NAME), photo.name());
      written.put(key(i, WIDE), String.valueOf(photo.widthPx()));
      written.put(key(i, HIGH), String.valueOf(photo.heightPx()));
      written.put(key(i, IMAGE), HEX.formatHex(photo.image()));
      written.put(key(i, SMALL), HEX.formatHex(photo.thumbnail()));
    }
    book.drafts().keep(new Draft(FORM, owner(of), written));
  }

  /** Those kept, in the order they were chosen. */
  public List<ReadyPhoto> find(PieceEntry of) {
    Draft draft = book.drafts().find(FORM, owner(of));
    List<ReadyPhoto> found = new ArrayList<>();
    if (draft != null) {
      for (int i = 0; draft.typed().containsKey(key(i, NAME)); i++) {
        ReadyPhoto photo = photo(draft.typed(), i);
        if (photo != null) {
          found.add(photo);
        }
      }
    }
    return found;
  }

  public void drop(PieceEntry of) {
    book.drafts().drop(FORM, owner(of));
  }

  /** Whether two lists show the same pictures. */
  public static boolean same(List<ReadyPhoto> some, List<ReadyPhoto> others) {
    return some.size() == others.size() && without(some, others).isEmpty();
  }

  /** Those whose picture is none of the others'. */
  public static List<ReadyPhoto> without(List<ReadyPhoto> some, List<ReadyPhoto> others) {
    return some.stream()
        .filter(
            each -> others.stream().noneMatch(other -> Arrays.equals(each.image(), other.image())))
        .toList();
  }

  /** With the student's key in it, so that it goes when they are taken out of the book. */
  private static String owner(PieceEntry of) {
    return of.studentId() + "/" + of.pieceId();
  }

  private static String key(int at, String what) {
    return at + "/" + what;
  }

  /** A photo, or null where what stands there is none, as in a book that was rescued. */
  private static @Nullable ReadyPhoto photo(Map<String, String> written, int at) {
    try {
      return new ReadyPhoto(
          written.getOrDefault(key(at, NAME), ""),
          HEX.parseHex(written.getOrDefault(key(at, IMAGE), "?")),
          Integer.parseInt(written.getOrDefault(key(at, WIDE), "")),
          Integer.parseInt(written.getOrDefault(key(at, HIGH), "")),
          HEX.parseHex(written.getOrDefault(key(at, SMALL), "?")));
    } catch (IllegalArgumentException e) {
      return null;
    }
  }
}
