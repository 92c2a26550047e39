package walebook.desk.pieces;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.function.Consumer;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import org.jspecify.annotations.Nullable;
import walebook.act.piece.DraftPhotos;
import walebook.act.piece.FindCauses;
import walebook.act.piece.PieceEntry;
import walebook.act.piece.PieceField;
import walebook.act.piece.PieceSoFar;
import walebook.act.piece.ReadPiece;
import walebook.act.piece.ReadyPhoto;
import walebook.desk.common.Session;
import walebook.problem.Answer;
import walebook.problem.Problem;
import walebook.quantity.Unit;
import walebook.record.TestPiece;
import walebook.seam.NextTry;

/** The log form: fields, the verdict that follows the typing, saving, and the draft. */
public final class LogFormViewModel {
  private final Session session;
  private final LogFields fields;
  private final FaultsViewModel faults;
  private final PhotosViewModel photos;
  private final FormKept kept;
  private final Consumer<TestPiece> saved;
  private final CautionsOnce cautions;
  private final ReadOnlyStringWrapper caution = new ReadOnlyStringWrapper(this, "caution", "");
  private final ReadOnlyStringWrapper title = new ReadOnlyStringWrapper(this, "title", "");
  private final ReadOnlyStringWrapper change = new ReadOnlyStringWrapper(this, "change", "");
  private final ReadOnlyStringWrapper whole = new ReadOnlyStringWrapper(this, "whole", "");
  private final ReadOnlyStringWrapper note = new ReadOnlyStringWrapper(this, "note", "");
  private final ReadOnlyBooleanWrapper asking = new ReadOnlyBooleanWrapper(this, "asking");
  private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper(this, "busy");
  private final ReadOnlyIntegerWrapper edits = new ReadOnlyIntegerWrapper(this, "edits");
  private final ReadOnlyObjectWrapper<@Nullable Meaning> meaning =
      new ReadOnlyObjectWrapper<>(this, "meaning");
  private final ReadOnlyObjectWrapper<@Nullable PieceField> attention =
      new ReadOnlyObjectWrapper<>(this, "attention");
  private final ReadOnlyStringWrapper settingsSays =
      new ReadOnlyStringWrapper(this, "settingsSays", "");
  private final BooleanProperty settingsOpen =
      new SimpleBooleanProperty(this, "settingsOpen", true);
  private final BooleanProperty moreOpen = new SimpleBooleanProperty(this, "moreOpen");
  private final ReadOnlyObjectWrapper<List<CauseCard>> causes =
      new ReadOnlyObjectWrapper<>(this, "causes", List.of());
  private @Nullable NextTry afterSaving;
  private @Nullable FormStart start;
  private List<Problem> askedAbout = List.of();
  private boolean filling;
  private SavedForms.@Nullable Saved lastSaved;

  /**
   * A form that is empty until one of the begin methods was called.
   *
   * @param saved told of each piece once it is on the disk
   */
  public LogFormViewModel(Session session, Unit lengthUnit, Consumer<TestPiece> saved) {
    this.session = session;
    this.saved = saved;
    this.fields = new LogFields(session.words(), lengthUnit);
    this.faults =
        new FaultsViewModel(session.tables().faults(), field(PieceField.FAULTS).textProperty());
    this.photos = new PhotosViewModel(session, this::edited);
    this.kept = new FormKept(session, photos);
    this.cautions = new CautionsOnce(session);
    fields.onEdit(this::edited);
  }

  public LogField field(PieceField field) {
    return fields.at(field);
  }

  public FaultsViewModel faults() {
    return faults;
  }

  public PhotosViewModel photos() {
    return photos;
  }

  /** What is being logged. */
  public ReadOnlyStringProperty titleProperty() {
    return title.getReadOnlyProperty();
  }

  /** What differs from the piece that is sewn again; empty for others. */
  public ReadOnlyStringProperty changeProperty() {
    return change.getReadOnlyProperty();
  }

  /** Problems of the piece as a whole, as one text. */
  public ReadOnlyStringProperty wholeProperty() {
    return whole.getReadOnlyProperty();
  }

  /** A remark on the form's beginning, such as that a draft came back. */
  public ReadOnlyStringProperty noteProperty() {
    return note.getReadOnlyProperty();
  }

  /** What to take care of: once a lesson, and with each change that is made at the needle. */
  public ReadOnlyStringProperty cautionProperty() {
    return caution.getReadOnlyProperty();
  }

  /** True when only a second Save stands between the piece and the book. */
  public ReadOnlyBooleanProperty askingProperty() {
    return asking.getReadOnlyProperty();
  }

  public ReadOnlyBooleanProperty busyProperty() {
    return busy.getReadOnlyProperty();
  }

  /** Moves at each edit, so that a view can wait for a pause in the typing. */
  public ReadOnlyIntegerProperty editsProperty() {
    return edits.getReadOnlyProperty();
  }

  /** What the numbers typed so far mean; null before a form has begun. */
  public ReadOnlyObjectProperty<@Nullable Meaning> meaningProperty() {
    return meaning.getReadOnlyProperty();
  }

  /** Cloth and machine as one sentence. */
  public ReadOnlyStringProperty settingsSaysProperty() {
    return settingsSays.getReadOnlyProperty();
  }

  /** Whether cloth and machine are open to be changed; a planned piece begins with them shut. */
  public BooleanProperty settingsOpenProperty() {
    return settingsOpen;
  }

  /** Whether the lesser settings are unfolded. */
  public BooleanProperty moreOpenProperty() {
    return moreOpen;
  }

  /** The likely causes of the faults chosen so far, the fault chosen last at the end. */
  ReadOnlyObjectProperty<List<CauseCard>> causesProperty() {
    return causes.getReadOnlyProperty();
  }

  /** The field to begin with where the start names one, or null. */
  @Nullable PieceField inHand() {
    return start == null ? null : start.inHand();
  }

  /** The field that wants attention after a refused save, or null. */
  public ReadOnlyObjectProperty<@Nullable PieceField> attentionProperty() {
    return attention.getReadOnlyProperty();
  }

  /** Fills the form with what was saved and taken back since; it counts as typed just now. */
  void again(SavedForms.Saved before, String note) {
    begin(before.start().typed(before.start().entry(), note));
    photos.put(before.photos(), List.of());
    edits.set(1);
  }

  /** The form that was saved last, once. */
  SavedForms.@Nullable Saved takeSaved() {
    SavedForms.Saved now = lastSaved;
    lastSaved = null;
    return now;
  }

  /** Fills the form. Called on the window's thread. */
  void begin(FormStart next) {
    start = next;
    filling = true;
    fields.offer(
        new FieldChoices(session.words(), next.room(), session.namesHiddenProperty().get()));
    fields.put(next.entry());
    photos.put(next.photos(), next.photos());
    filling = false;
    edits.set(0);
    kept.begin();
    settingsOpen.set(next.entry().plannedId() == null || next.mending() != null);
    askedAbout = List.of();
    asking.set(false);
    whole.set("");
    attention.set(null);
    cautions.begin(next);
    title.set(next.whose(session.namesHiddenProperty().get()) + next.title());
    note.set(next.note());
    afterSaving = null;
    moreOpen.set(next.inHand() != null && next.inHand().group() == PieceField.Group.MORE);
    follow(next);
  }

  /** Saves the piece; a second call confirms what was only asked about. */
  public void save() {
    FormStart now = start;
    if (now == null || busy.get()) {
      return;
    }
    // Where it could not be saved anyhow, what is missing is said and nothing asked.
    if (now.isFresh() && edits.get() == 0 && fields.hasNeeded() && !asking.get()) {
      asking.set(true);
      whole.set(session.words().say("desk.pieces.nothing-typed"));
      return;
    }
    NextTry next = afterSaving;
    if (photos.isReading(() -> saveThen(next))) {
      return;
    }
    busy.set(true);
    PieceEntry entry = fields.typed(now.entry());
    SavedForms.Saved form = new SavedForms.Saved(now.typed(entry, ""), photos.photos());
    SavePiece act = new SavePiece(session, now.room(), now.mending(), form.photos());
    List<Problem> confirmed = askedAbout;
    session
        .background()
        .run(
            progress -> act.save(entry, confirmed),
            answer -> answered(answer, now, form),
            this::savingFailed);
  }

  /** Saves the piece and asks for another attempt with one change once it is on the disk. */
  void saveThen(@Nullable NextTry next) {
    afterSaving = next;
    save();
  }

  /** The change to go on with after the save; told once. */
  @Nullable NextTry takeNext() {
    NextTry next = afterSaving;
    afterSaving = null;
    return next;
  }

  /** Keeps what is typed, so that it is there again after a crash. */
  public void keepDraft() {
    FormStart now = start;
    if (now != null && !busy.get()) {
      kept.keep(now, fields.typed(now.entry()), edits.get());
    }
  }

  /**
   * Keeps what is typed and lets the form rest, before the book is closed. At once, on the calling
   * thread: there is no later.
   */
  public void rest() {
    FormStart now = start;
    start = null;
    if (now != null) {
      kept.keepAtOnce(now, fields.typed(now.entry()), edits.get());
    }
  }

  /** Throws away what is typed and lets go of its draft. */
  public void discard(Runnable then) {
    FormStart now = start;
    if (now == null) {
      then.run();
      return;
    }
    start = null;
    session.run(
        progress -> {
          new FormDraft(session.book(), now).drop();
          return now.entry().pieceId();
        },
        dropped -> then.run());
  }

  /**
   * Lets go of a form whose piece is in the book again; what differs from when it was filled waits
   * as the mending of that piece.
   *
   * @param pieceId the piece, which the form held under another key
   * @param had the photos that it was saved with
   * @param then told whether anything waits
   */
  void handOver(UUID pieceId, List<ReadyPhoto> had, Consumer<Boolean> then) {
    FormStart now = start;
    if (now == null) {
      return;
    }
    start = null;
    PieceEntry entry = fields.typed(now.entry());
    List<ReadyPhoto> added = DraftPhotos.without(photos.photos(), had);
    session.run(
        progress -> new FormDraft(session.book(), now).handOver(entry, pieceId, added), then);
  }

  /** The key of the piece being logged, or null. */
  public @Nullable UUID pieceId() {
    return start == null ? null : start.entry().pieceId();
  }

  /** The key of the piece that is sewn again, or null. */
  @Nullable UUID parentId() {
    return start == null ? null : start.entry().parentId();
  }

  /** Says whether the piece that is sewn again is in the book still; undo may have taken it. */
  void follows(boolean there) {
    String gone = session.words().say("desk.pieces.follows-gone");
    if (!there || note.get().equals(gone)) {
      note.set(there ? "" : gone);
      whole.set(note.get());
    }
  }

  private void edited() {
    FormStart now = start;
    if (filling || now == null) {
      return;
    }
    asking.set(false);
    whole.set("");
    afterSaving = null;
    follow(now);
    edits.set(edits.get() + 1);
  }

  private void follow(FormStart now) {
    boolean again = now.entry().parentId() != null;
    fields.ask(AskedNow.of(fields, now.room(), now.readings(), again));
    PieceEntry entry = fields.typed(now.entry());
    LocalDate today = LocalDate.now(session.clock());
    fields.found(
        ReadPiece.read(entry, now.room(), today, session.clock().instant(), "AAAAAA", null)
            .problems());
    caution.set(cautions.of(now, entry));
    settingsSays.set(SettingsSoFar.says(session.words(), fields));
    PieceSoFar soFar = PieceSoFar.of(entry, now.room(), today);
    meaning.set(Meaning.of(soFar, entry, now.room()));
    causes.set(
        CauseCard.of(
            new FindCauses(now.room(), session.tables())
                .of(soFar.cloth(), soFar.setting(), faults.seen(), now.chain()),
            session.words(),
            now.room()));
    PieceEntry before = now.before();
    if (before == null) {
      fields.each(each -> each.changed(""));
      change.set("");
    } else {
      change.set(ChangeSoFar.says(session.words(), fields, before, entry, now.room()));
    }
  }

  private void answered(Answer<TestPiece> answer, FormStart of, SavedForms.Saved form) {
    busy.set(false);
    // Another form may have been begun meanwhile, and is not the one that is answered.
    boolean other = !of.equals(start);
    if (answer.isGood()) {
      if (!other) {
        kept.typedSince(form, fields.typed(of.entry()));
        start = null;
        edits.set(0);
      }
      lastSaved = form;
      saved.accept(answer.value());
      return;
    }
    if (other) {
      kept.refused(form);
      return;
    }
    askedAbout = answer.problems();
    asking.set(askedAbout.stream().noneMatch(Problem::refuses));
    fields.found(askedAbout);
    fields.settleAll();
    whole.set(ChangeSoFar.wholeSays(session.words(), fields, askedAbout));
    attention.set(null);
    PieceField first = fields.firstInTheWay();
    if (first != null && first.isSetting()) {
      settingsOpen.set(true);
    }
    attention.set(first);
  }

  private void savingFailed(Throwable fault) {
    busy.set(false);
    session.unexpected(fault);
  }
}
