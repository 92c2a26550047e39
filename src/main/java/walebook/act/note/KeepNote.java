package walebook.act.note;

import java.time.Clock;
import java.util.Map;
import walebook.act.Form;
import walebook.book.Book;
import walebook.book.Ids;
import walebook.book.StaleRow;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.Unit;
import walebook.record.Note;
import walebook.record.Stamp;

/** Adds notes and changes their words. Fields: note-body, note-from. */
public final class KeepNote {
  /** The words of the note. */
  public static final String BODY = "note-body";

  /** Who writes it. */
  public static final String FROM = "note-from";

  /** The code of what is said when a note is not what it was any more. */
  public static final String STALE = "note.changed";

  private final Book book;
  private final Clock clock;

  public KeepNote(Book book, Clock clock) {
    this.book = book;
    this.clock = clock;
  }

  /** Adds a note about a thing. */
  public Answer<Note> add(NotePlace place, Map<String, String> typed) {
    Form form = new Form(typed, Unit.MM);
    String body = form.needed(BODY);
    if (form.isRefused()) {
      return Answer.bad(form.problems());
    }
    Note note =
        new Note(
            Ids.next(),
            place.about(),
            place.id(),
            form.text(FROM),
            body,
            Stamp.fresh(clock.instant()));
    book.notes().add(note);
    return Answer.good(note);
  }

  /**
   * Changes the words of a note; its author and day stay.
   *
   * @param before the note as it was opened
   */
  public Answer<Note> change(Note before, Map<String, String> typed) {
    Form form = new Form(typed, Unit.MM);
    String body = form.needed(BODY);
    if (form.isRefused()) {
      return Answer.bad(form.problems());
    }
    Note changed =
        new Note(
            before.id(),
            before.about(),
            before.aboutId(),
            before.author(),
            body,
            before.stamp().next(clock.instant()));
    try {
      book.notes().update(changed);
    } catch (StaleRow e) {
      return Answer.bad(Problem.refuse(STALE, Place.field(BODY), "", ""));
    }
    return Answer.good(changed);
  }
}
