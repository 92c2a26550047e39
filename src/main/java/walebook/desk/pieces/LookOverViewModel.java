package walebook.desk.pieces;

import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import org.jspecify.annotations.Nullable;
import walebook.act.assess.CheckPiece;
import walebook.act.assess.GiveFeedback;
import walebook.act.assess.KeepAssessDraft;
import walebook.act.assess.LookOver;
import walebook.act.assess.TagEvidence;
import walebook.desk.common.FormFields;
import walebook.desk.common.Session;
import walebook.record.CheckedBy;
import walebook.record.Criterion;
import walebook.record.Marking;

/** Looking a piece over: the student's check beside the tutor's, what it speaks for, feedback. */
public final class LookOverViewModel {
  private final Session session;
  private final CheckPiece check;
  private final GiveFeedback give;
  private final TagEvidence tag;
  private final KeepAssessDraft drafts;
  private final ReadOnlyObjectWrapper<@Nullable LookOver> shown =
      new ReadOnlyObjectWrapper<>(this, "shown");
  private final ReadOnlyIntegerWrapper edits = new ReadOnlyIntegerWrapper(this, "edits");
  private int typed;
  private int kept;
  private boolean filling;
  private final ReadOnlyStringWrapper says = new ReadOnlyStringWrapper(this, "says", "");
  private final ObjectProperty<Boolean> keeping =
      new SimpleObjectProperty<>(this, "keeping", false);
  private final FormFields self = new FormFields(this::edited, fields());
  private final FormFields tutor = new FormFields(this::edited, fields());
  private final FormFields said = new FormFields(this::edited, GiveFeedback.SAYS, GiveFeedback.DAY);

  private final ReadOnlyIntegerWrapper attention = new ReadOnlyIntegerWrapper(this, "attention");
  private final ReadOnlyBooleanWrapper locked = new ReadOnlyBooleanWrapper(this, "locked");
  private @Nullable UUID awaited;
  private @Nullable UUID opened;

  private record Read(Optional<LookOver> found, Map<String, String> draft) {}

  public LookOverViewModel(Session session) {
    this.session = session;
    this.check = new CheckPiece(session.book(), session.clock());
    this.give = new GiveFeedback(session.book(), session.clock());
    this.tag = new TagEvidence(session.book());
    this.drafts = new KeepAssessDraft(session.book());
    session.changesProperty().addListener((from, old, now) -> again());
    locked.bind(session.studentProperty().isNotNull());
  }

  private static String[] fields() {
    return Stream.concat(
            Arrays.stream(Marking.values()).map(CheckPiece::field), Stream.of(CheckPiece.HELP))
        .toArray(String[]::new);
  }

  /** What is saved of the piece, or null while none is shown. */
  public ReadOnlyObjectProperty<@Nullable LookOver> shownProperty() {
    return shown.getReadOnlyProperty();
  }

  /** Counts what was typed, so that it is kept as a draft. */
  public ReadOnlyIntegerProperty editsProperty() {
    return edits.getReadOnlyProperty();
  }

  /** Moves when the hands should go to the tutor's check of the piece that is shown. */
  public ReadOnlyIntegerProperty attentionProperty() {
    return attention.getReadOnlyProperty();
  }

  /**
   * True while a student is at the screen: what is the tutor's can be read, not written. It keeps
   * slips out; there is no password.
   */
  public ReadOnlyBooleanProperty lockedProperty() {
    return locked.getReadOnlyProperty();
  }

  /** Says that the tutor is at the screen now; nobody of the class is picked any more. */
  public void tutorIsHere() {
    session.tutorIsHere();
    attention.set(attention.get() + 1);
  }

  private boolean isLocked(CheckedBy by) {
    return by == CheckedBy.TUTOR && locked.get();
  }

  /** Asks for {@link #attentionProperty} once this piece is shown. */
  public void await(UUID pieceId) {
    awaited = pieceId;
  }

  private void attend(@Nullable LookOver found) {
    if (found != null && found.pieceId().equals(awaited)) {
      awaited = null;
      attention.set(attention.get() + 1);
    }
  }

  /** What came of the last thing that was done; empty before. */
  public ReadOnlyStringProperty saysProperty() {
    return says.getReadOnlyProperty();
  }

  /** Whether the comment is to be kept in the bank as well. */
  public ObjectProperty<Boolean> keepingProperty() {
    return keeping;
  }

  /** The fields of one of the two checks. */
  public FormFields check(CheckedBy by) {
    return by == CheckedBy.SELF ? self : tutor;
  }

  /** The comment that is being written. */
  public FormFields said() {
    return said;
  }

  /**
   * Shows a piece; what was typed for the one before waits as a draft. Nothing is shown until it is
   * read, so that nothing is written to the one before.
   */
  public void open(UUID pieceId) {
    LookOver now = shown.get();
    if (now != null && now.pieceId().equals(pieceId)) {
      again();
      return;
    }
    close();
    opened = pieceId;
    session.run(
        progress ->
            new Read(
                Optional.ofNullable(LookOver.of(session.book(), pieceId)), drafts.find(pieceId)),
        read -> {
          if (pieceId.equals(opened)) {
            begin(read);
          }
        });
  }

  /** Shows none; what was typed waits as a draft. */
  public void close() {
    keepDraft();
    opened = null;
    shown.set(null);
    says.set("");
    keeping.set(false);
  }

  private void begin(Read read) {
    LookOver found = read.found().orElse(null);
    shown.set(found);
    filling = true;
    for (CheckedBy by : CheckedBy.values()) {
      Map<String, String> typed = new HashMap<>(saved(found, by));
      read.draft()
          .forEach(
              (name, text) -> {
                if (name.startsWith(by.key() + "/")) {
                  typed.put(name.substring(by.key().length() + 1), text);
                }
              });
      check(by).put(typed);
    }
    said.put(read.draft());
    filling = false;
    attend(found);
  }

  private static Map<String, String> saved(@Nullable LookOver of, CheckedBy by) {
    return of == null ? Map.of() : CheckPiece.typed(by == CheckedBy.SELF ? of.self() : of.tutor());
  }

  /** Reads what is saved anew; what is typed and not saved stays. */
  private void again() {
    LookOver now = shown.get();
    if (now != null) {
      session.run(
          progress -> Optional.ofNullable(LookOver.of(session.book(), now.pieceId())),
          this::follow);
    }
  }

  private void follow(Optional<LookOver> read) {
    LookOver before = shown.get();
    LookOver found = read.orElse(null);
    if (before == null || (found != null && !found.pieceId().equals(before.pieceId()))) {
      return;
    }
    Map<CheckedBy, Boolean> touched = new HashMap<>();
    for (CheckedBy by : CheckedBy.values()) {
      touched.put(by, isUnsaved(by));
    }
    shown.set(found);
    filling = true;
    for (CheckedBy by : CheckedBy.values()) {
      if (!Boolean.TRUE.equals(touched.get(by))) {
        check(by).put(saved(found, by));
      }
    }
    filling = false;
    attend(found);
  }

  /** True when something stands in a check that is not saved. */
  public boolean isUnsaved(CheckedBy by) {
    Map<String, String> saved = saved(shown.get(), by);
    return check(by).typed().entrySet().stream()
        .anyMatch(each -> !each.getValue().equals(saved.getOrDefault(each.getKey(), "")));
  }

  /** Saves a check. */
  public void save(CheckedBy by) {
    LookOver now = shown.get();
    if (now == null || isLocked(by)) {
      return;
    }
    Map<String, String> typed = check(by).typed();
    session.run(
        progress -> check.check(now.pieceId(), by, typed),
        answer -> {
          if (isOther(now)) {
            return;
          }
          check(by).show(answer.problems());
          if (answer.isGood()) {
            finished();
            say(
                by == CheckedBy.SELF
                    ? "desk.pieces.look.self-saved"
                    : "desk.pieces.look.tutor-saved");
          }
        });
  }

  /** Saves what was said, in the bank too when asked. */
  public void give() {
    LookOver now = shown.get();
    if (now == null || isLocked(CheckedBy.TUTOR)) {
      return;
    }
    String text = said.text(GiveFeedback.SAYS);
    String day = said.text(GiveFeedback.DAY);
    boolean bank = keeping.get();
    session.run(
        progress -> give.give(now.pieceId(), text, day, bank),
        answer -> {
          if (isOther(now)) {
            return;
          }
          said.show(answer.problems());
          if (answer.isGood()) {
            said.put(Map.of());
            keeping.set(false);
            finished();
            say("desk.pieces.look.said");
          }
        });
  }

  /** What was saved for a piece that is not shown any more says nothing on the one that is. */
  private boolean isOther(LookOver than) {
    LookOver now = shown.get();
    boolean other = now == null || !now.pieceId().equals(than.pieceId());
    if (other) {
      session.changed();
    }
    return other;
  }

  private void finished() {
    keepNow();
    session.changed();
  }

  /** Puts a comment of the bank into the field, behind what stands there. */
  public void take(String comment) {
    String before = said.text(GiveFeedback.SAYS).strip();
    said.field(GiveFeedback.SAYS).text().set(before.isEmpty() ? comment : before + " " + comment);
  }

  /** Takes a comment out of the bank; undo brings it back. */
  public void unbank(String comment) {
    if (isLocked(CheckedBy.TUTOR)) {
      return;
    }
    session.run(
        progress -> {
          give.unbank(comment);
          return comment;
        },
        gone -> {
          session.changed();
          say("desk.pieces.look.unbanked");
        });
  }

  /** Says whether the piece speaks for a criterion. */
  public void tag(Criterion criterion, boolean speaks) {
    LookOver now = shown.get();
    if (now != null && !isLocked(CheckedBy.TUTOR) && now.own().contains(criterion.id()) != speaks) {
      session.run(
          progress -> {
            tag.piece(criterion.id(), now.pieceId(), speaks);
            return criterion;
          },
          done -> session.changed());
    }
  }

  /** Keeps what was typed since it was last kept and is not saved. */
  public void keepDraft() {
    if (typed != kept) {
      keepNow();
    }
  }

  private void keepNow() {
    LookOver now = shown.get();
    if (now != null) {
      kept = typed;
      Map<String, String> unsaved = unsaved();
      session.run(
          progress -> {
            drafts.keep(now.pieceId(), unsaved);
            return unsaved;
          },
          done -> {});
    }
  }

  /** Keeps it at once; called before the book is closed. */
  public void rest() {
    LookOver now = shown.get();
    if (now != null && typed != kept) {
      kept = typed;
      drafts.keep(now.pieceId(), unsaved());
    }
  }

  private Map<String, String> unsaved() {
    Map<String, String> unsaved = new LinkedHashMap<>(said.typed());
    for (CheckedBy by : CheckedBy.values()) {
      if (isUnsaved(by)) {
        check(by).typed().forEach((name, text) -> unsaved.put(by.key() + "/" + name, text));
      }
    }
    return unsaved;
  }

  private void edited() {
    typed += filling ? 0 : 1;
    edits.set(edits.get() + 1);
  }

  private void say(String key) {
    // Said anew each time, also when the same thing was done before.
    says.set("");
    says.set(session.words().say(key));
  }
}
