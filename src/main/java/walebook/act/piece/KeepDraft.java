package walebook.act.piece;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.record.Draft;
import walebook.record.Keyed;

/**
 * Keeps what stands in a log form, so that a crash or a power cut loses nothing typed. One draft a
 * student and planned piece, piece sewn again, or piece of their own.
 */
public final class KeepDraft {
  private static final String FORM = "piece";
  private static final String MARK = "#";
  private static final String OWN = "own";
  private static final String AGAIN = "again-";
  private static final String MEND = "mend-piece";

  private final Book book;
  private final DraftPhotos photos;

  public KeepDraft(Book book) {
    this.book = book;
    this.photos = new DraftPhotos(book);
  }

  public void keep(PieceEntry entry) {
    book.drafts().keep(new Draft(FORM, owner(entry), written(entry)));
  }

  /** Keeps it unless another one is waiting in the same place. */
  public void keepIfFree(PieceEntry entry, List<ReadyPhoto> with) {
    if (draft(owner(entry)) == null) {
      keep(entry);
      photos.keep(entry, with);
    }
  }

  /** Drops a draft that holds just this, and nothing typed since. */
  public void dropIfSame(PieceEntry entry, List<ReadyPhoto> with) {
    if (entry.equals(draft(owner(entry))) && DraftPhotos.same(with, photos.find(entry))) {
      drop(entry);
    }
  }

  /** Keeps what stands in the form over a piece that is in the book already. */
  public void keepMending(PieceEntry entry) {
    book.drafts().keep(new Draft(MEND, entry.pieceId().toString(), written(entry)));
  }

  /** What was typed over a saved piece and not saved, or null. */
  public @Nullable PieceEntry findMending(UUID pieceId) {
    Draft draft = book.drafts().find(MEND, pieceId.toString());
    return draft == null ? null : entry(draft.typed());
  }

  public void dropMending(PieceEntry entry) {
    book.drafts().drop(MEND, entry.pieceId().toString());
    photos.drop(entry);
  }

  private static Map<String, String> written(PieceEntry entry) {
    Map<String, String> typed = new HashMap<>();
    entry.typed().forEach((field, text) -> typed.put(field.key(), text));
    mark(typed, "piece", entry.pieceId());
    mark(typed, "class", entry.classId());
    mark(typed, "student", entry.studentId());
    mark(typed, "lesson", entry.lessonId());
    mark(typed, "planned", entry.plannedId());
    mark(typed, "parent", entry.parentId());
    if (entry.code() != null) {
      typed.put(MARK + "code", entry.code());
    }
    return typed;
  }

  /**
   * The draft of a student's piece, or null. One whose piece was saved after all is dropped: the
   * end of the process came between the save and the dropping.
   */
  public @Nullable PieceEntry find(UUID studentId, @Nullable UUID plannedId) {
    return draft(studentId + "/" + (plannedId == null ? OWN : plannedId));
  }

  /** The draft of a second attempt at a student's piece, or null. */
  public @Nullable PieceEntry findAgain(UUID studentId, UUID parentId) {
    return draft(studentId + "/" + AGAIN + parentId);
  }

  private @Nullable PieceEntry draft(String owner) {
    Draft draft = book.drafts().find(FORM, owner);
    if (draft == null) {
      return null;
    }
    PieceEntry entry = entry(draft.typed());
    if (entry == null || book.pieces().find(entry.pieceId()) != null) {
      book.drafts().drop(FORM, owner);
      if (entry != null) {
        photos.drop(entry);
      }
      return null;
    }
    return entry;
  }

  public void drop(PieceEntry entry) {
    book.drafts().drop(FORM, owner(entry));
    photos.drop(entry);
  }

  private static String owner(PieceEntry entry) {
    if (entry.plannedId() != null) {
      return entry.studentId() + "/" + entry.plannedId();
    }
    return entry.studentId() + "/" + (entry.parentId() == null ? OWN : AGAIN + entry.parentId());
  }

  private static void mark(Map<String, String> typed, String name, @Nullable UUID id) {
    if (id != null) {
      typed.put(MARK + name, id.toString());
    }
  }

  private static @Nullable PieceEntry entry(Map<String, String> typed) {
    UUID piece = id(typed, "piece");
    UUID inClass = id(typed, "class");
    UUID student = id(typed, "student");
    if (piece == null || inClass == null || student == null) {
      return null;
    }
    Map<PieceField, String> fields = new EnumMap<>(PieceField.class);
    typed.forEach(
        (name, text) -> {
          PieceField field = Keyed.find(PieceField.class, name);
          if (field != null) {
            fields.put(field, text);
          }
        });
    return new PieceEntry(
        piece,
        inClass,
        student,
        id(typed, "lesson"),
        id(typed, "planned"),
        typed.get(MARK + "code"),
        id(typed, "parent"),
        fields);
  }

  private static @Nullable UUID id(Map<String, String> typed, String name) {
    String text = typed.get(MARK + name);
    return text == null ? null : UUID.fromString(text);
  }
}
