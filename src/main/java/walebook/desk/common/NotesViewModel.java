package walebook.desk.common;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import walebook.act.note.KeepNote;
import walebook.act.note.NotePlace;
import walebook.act.note.ReadNotes;
import walebook.problem.Answer;
import walebook.record.Note;

/** The notes about one thing: those that are there, and the one that is being written. */
public final class NotesViewModel {
  /** The field that says which note is being changed; empty while one is added. */
  static final String CHANGING = "note-id";

  /** The field that holds what was being added while another note is changed. */
  static final String WAITING = "note-waiting";

  private final Session session;
  private final KeepNote act;
  private final ReadNotes read;
  private final FormFields fields =
      new FormFields(this::typed, KeepNote.BODY, KeepNote.FROM, CHANGING, WAITING);
  private final KeptForm form;
  private final ObservableList<ReadNotes.Line> notes = FXCollections.observableArrayList();
  private final ReadOnlyObjectWrapper<@Nullable NotePlace> place =
      new ReadOnlyObjectWrapper<>(this, "place");
  private final ReadOnlyObjectWrapper<Notice> notice =
      new ReadOnlyObjectWrapper<>(this, "notice", Notice.NONE);
  private final ReadOnlyIntegerWrapper attention = new ReadOnlyIntegerWrapper(this, "attention");

  public NotesViewModel(Session session) {
    this.session = session;
    this.act = new KeepNote(session.book(), session.clock());
    this.read = new ReadNotes(session.book(), session.words());
    this.form = new KeptForm(session, "note", fields);
    session
        .changesProperty()
        .addListener(
            (from, old, now) -> {
              // What was said may not be so any more, as when it is taken back.
              notice.set(Notice.NONE);
              again();
            });
    session.namesHiddenProperty().addListener((from, old, now) -> again());
    session.studentProperty().addListener((from, old, now) -> begin());
  }

  /** Those that are there, the oldest first. */
  public ObservableList<ReadNotes.Line> notes() {
    return notes;
  }

  /** What they are about, or null while nothing is shown. */
  public ReadOnlyObjectProperty<@Nullable NotePlace> placeProperty() {
    return place.getReadOnlyProperty();
  }

  public FormFields fields() {
    return fields;
  }

  /** True while one that is there is being changed. */
  public BooleanBinding changing() {
    return Bindings.createBooleanBinding(
        () -> !fields.text(CHANGING).isEmpty(), fields.field(CHANGING).text());
  }

  /** True while nobody said who sits at the screen, so that the note has to say it. */
  public BooleanBinding asksWho() {
    return session.studentProperty().isNull();
  }

  public ReadOnlyObjectProperty<Notice> noticeProperty() {
    return notice.getReadOnlyProperty();
  }

  /** Moves when the hands should go to the text. */
  public ReadOnlyIntegerProperty attentionProperty() {
    return attention.getReadOnlyProperty();
  }

  /** Counts what was typed, so that it is kept as a draft. */
  public ReadOnlyIntegerProperty editsProperty() {
    return form.editsProperty();
  }

  /** The day a note was written, where the book is used. */
  String day(Note note) {
    return DayWords.of(note.stamp().created().atZone(session.clock().getZone()).toLocalDate());
  }

  /** Shows the notes about a thing; what was being written about another waits as a draft. */
  public void open(Note.About about, UUID id) {
    NotePlace next = new NotePlace(about, id);
    if (next.equals(place.get())) {
      return;
    }
    place.set(next);
    notes.clear();
    notice.set(Notice.NONE);
    begin();
    again();
  }

  /** Shows none; what was being written waits as a draft. */
  public void close() {
    form.keep();
    place.set(null);
    notes.clear();
    notice.set(Notice.NONE);
  }

  /** Each has a draft of their own, so that nobody signs another's words. */
  private void begin() {
    NotePlace at = place.get();
    if (at != null) {
      UUID who = session.by().studentId();
      form.begin(at.owner() + "/" + (who == null ? "" : who), untouched(""));
    }
  }

  /** Adds what is written, or saves the change. */
  public void save() {
    NotePlace at = place.get();
    if (at == null) {
      return;
    }
    Map<String, String> typed = new HashMap<>(fields.typed());
    String by = session.by().name();
    if (!by.isEmpty()) {
      typed.put(KeepNote.FROM, by);
    }
    Note before = changed();
    String owner = form.owner();
    session.run(
        progress -> before == null ? act.add(at, typed) : act.change(before, typed),
        answer -> answered(at, owner, before, answer));
  }

  private void answered(NotePlace at, String owner, @Nullable Note before, Answer<Note> answer) {
    if (!at.equals(place.get()) || !owner.equals(form.owner())) {
      if (answer.isGood()) {
        form.drop(owner);
      }
      session.changed();
      return;
    }
    fields.show(answer.problems());
    if (answer.isGood()) {
      form.done(untouched(fields.text(WAITING)));
      String key = before == null ? "desk.common.notes.added" : "desk.common.notes.saved";
      session.changed();
      notice.set(new Notice(session.words().say(key), null));
      attention.set(attention.get() + 1);
    } else if (answer.problems().get(0).code().equals(KeepNote.STALE)) {
      // Written on as a new one, so that what was typed has somewhere to go.
      fields.field(CHANGING).text().set("");
      fields.show(answer.problems());
      session.changed();
    }
  }

  /** Begins to change a note's words. */
  public void change(ReadNotes.Line line) {
    Note now = changed();
    String written = fields.text(KeepNote.BODY);
    if (now != null && !written.strip().equals(now.body())) {
      notice.set(new Notice(session.words().say("desk.common.notes.first"), null));
      attention.set(attention.get() + 1);
      return;
    }
    Map<String, String> filled = new HashMap<>(fields.typed());
    if (now == null) {
      filled.put(WAITING, written);
    }
    filled.put(KeepNote.BODY, line.note().body());
    filled.put(CHANGING, line.note().id().toString());
    notice.set(Notice.NONE);
    fields.put(filled);
    attention.set(attention.get() + 1);
  }

  /** Leaves a note as it was. */
  public void leave() {
    form.done(untouched(fields.text(WAITING)));
    attention.set(attention.get() + 1);
  }

  /** Puts a note in the bin. */
  public void bin(ReadNotes.Line line) {
    String id = line.note().id().toString();
    new ToBin(session)
        .put(
            "note",
            line.note().id(),
            notice::set,
            () -> {
              if (id.equals(fields.text(CHANGING))) {
                fields.field(CHANGING).text().set("");
              }
            });
  }

  /** Keeps what was typed since it was last kept. */
  public void keepDraft() {
    form.keep();
  }

  /** Keeps it at once; called before the book is closed. */
  public void rest() {
    form.rest();
  }

  /** The name last typed stays for the next note. */
  private Map<String, String> untouched(String body) {
    return Map.of(KeepNote.BODY, body, KeepNote.FROM, fields.text(KeepNote.FROM));
  }

  private @Nullable Note changed() {
    String id = fields.text(CHANGING);
    return notes.stream()
        .map(ReadNotes.Line::note)
        .filter(each -> each.id().toString().equals(id))
        .findFirst()
        .orElse(null);
  }

  private void typed() {
    form.changed();
  }

  private void again() {
    NotePlace at = place.get();
    if (at != null) {
      boolean hidden = session.namesHiddenProperty().get();
      session.run(
          progress -> read.about(at, hidden),
          (List<ReadNotes.Line> found) -> {
            if (at.equals(place.get())) {
              notes.setAll(found);
              if (changed() == null && !fields.text(CHANGING).isEmpty()) {
                fields.field(CHANGING).text().set("");
              }
            }
          });
    }
  }
}
