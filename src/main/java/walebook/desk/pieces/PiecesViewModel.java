package walebook.desk.pieces;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Consumer;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import org.jspecify.annotations.Nullable;
import walebook.act.piece.MyPlan;
import walebook.desk.common.Latest;
import walebook.desk.common.NotesViewModel;
import walebook.desk.common.Notice;
import walebook.desk.common.Session;
import walebook.desk.common.ToBin;
import walebook.desk.common.Wish;
import walebook.quantity.Unit;
import walebook.record.Lesson;
import walebook.record.Note;
import walebook.record.PieceCode;
import walebook.record.PlannedPiece;
import walebook.record.SchoolClass;
import walebook.record.Student;
import walebook.record.TestPiece;
import walebook.seam.NextTry;

/** The place of test pieces: which of list, form and one piece is shown, and what leads on. */
public final class PiecesViewModel {
  /** The key of this place. */
  public static final String PLACE = "pieces";

  /** What is shown. */
  public enum Mode {
    LIST,
    FORM,
    PIECE
  }

  private final Session session;
  private final Latest lookingForNext;
  private final PieceListViewModel list;
  private final ReadOnlyBooleanWrapper clothMissing =
      new ReadOnlyBooleanWrapper(this, "clothMissing");
  private final LogFormViewModel form;
  private final OnePieceViewModel piece;
  private final LookOverViewModel lookOver;
  private final NotesViewModel notes;
  private final SavedForms savedForms = new SavedForms();
  private final ReadOnlyObjectWrapper<Mode> mode =
      new ReadOnlyObjectWrapper<>(this, "mode", Mode.LIST);
  private final ObjectProperty<Notice> notice =
      new SimpleObjectProperty<>(this, "notice", Notice.NONE);
  private final ReadOnlyObjectWrapper<@Nullable PlannedPiece> next =
      new ReadOnlyObjectWrapper<>(this, "next");

  /**
   * Makes the place.
   *
   * @param lengthUnit of the book
   */
  public PiecesViewModel(Session session, Unit lengthUnit) {
    this.session = session;
    this.lookingForNext = new Latest(session);
    this.list = new PieceListViewModel(session);
    this.form = new LogFormViewModel(session, lengthUnit, this::saved);
    this.piece = new OnePieceViewModel(session);
    this.lookOver = new LookOverViewModel(session);
    this.notes = new NotesViewModel(session);
    piece
        .pieceProperty()
        .addListener(
            (from, old, now) -> {
              if (now == null) {
                lookOver.close();
                notes.close();
              } else {
                lookOver.open(now.id());
                notes.open(Note.About.PIECE, now.id());
              }
            });
    lookOver
        .saysProperty()
        .addListener(
            (from, old, now) -> {
              if (!now.isEmpty()) {
                say(now);
              }
            });
    session.wishProperty().addListener((from, old, now) -> take(now));
    session.studentProperty().addListener((from, old, now) -> lookForNext());
    session
        .changesProperty()
        .addListener(
            (from, old, now) -> {
              // What was said may not be so any more, as when it is taken back.
              notice.set(Notice.NONE);
              lookForNext();
              followSteps();
            });
    take(session.wishProperty().get());
    lookForNext();
  }

  public PieceListViewModel list() {
    return list;
  }

  public LogFormViewModel form() {
    return form;
  }

  public OnePieceViewModel piece() {
    return piece;
  }

  /** Looking over the piece that is shown. */
  public LookOverViewModel lookOver() {
    return lookOver;
  }

  /** The notes about the piece that is shown. */
  public NotesViewModel notes() {
    return notes;
  }

  public ReadOnlyObjectProperty<Mode> modeProperty() {
    return mode.getReadOnlyProperty();
  }

  public ObjectProperty<Notice> noticeProperty() {
    return notice;
  }

  /** The student's next planned piece, or null when there is none or nobody said who they are. */
  public ReadOnlyObjectProperty<@Nullable PlannedPiece> nextProperty() {
    return next.getReadOnlyProperty();
  }

  /** Logs the next planned piece, or asks who is there. */
  public void logNext() {
    PlannedPiece planned = next.get();
    if (planned == null) {
      logOwn();
    } else {
      log(planned.id());
    }
  }

  /** Logs a piece without a plan, or asks who is there. */
  public void logOwn() {
    whoever((inClass, student) -> begin(load -> load.own(inClass.id(), student.id())));
  }

  /** Logs a second attempt with one change. */
  public void again(UUID pieceId) {
    begin(load -> load.again(pieceId));
  }

  /** Logs a second attempt with its one change filled in. */
  public void again(UUID pieceId, NextTry next) {
    begin(load -> load.again(pieceId, next));
  }

  /** Opens the form over a saved piece, to correct it. */
  public void mend(UUID pieceId) {
    begin(load -> load.mend(pieceId));
  }

  /** Puts a piece in the bin, with all that hangs on it. */
  public void bin(UUID pieceId) {
    new ToBin(session).put("test_piece", pieceId, notice::set, () -> mode.set(Mode.LIST));
  }

  /** Shows one piece. */
  public void open(UUID pieceId) {
    form.keepDraft();
    piece.open(pieceId);
    mode.set(Mode.PIECE);
  }

  /** Shows one piece to be looked over. */
  public void lookOver(UUID pieceId) {
    lookOver.await(pieceId);
    open(pieceId);
  }

  /** Goes back to the list; what is typed in the form waits as a draft. */
  public void toList() {
    form.keepDraft();
    notice.set(Notice.NONE);
    mode.set(Mode.LIST);
  }

  /** True while the form has no cloth to choose, since the room has none yet. */
  ReadOnlyBooleanProperty clothMissingProperty() {
    return clothMissing.getReadOnlyProperty();
  }

  /** Goes where cloths are added; the form waits as a draft, and finds them when it is begun. */
  void toCloths() {
    toList();
    session.wish(Wish.show("cloths"));
  }

  /** Keeps what is typed; called before the book is closed. */
  public void rest() {
    form.rest();
    lookOver.rest();
    notes.rest();
  }

  /** Throws the form away and goes back to the list. */
  public void discard() {
    form.discard(() -> mode.set(Mode.LIST));
  }

  private interface ForStudent {
    void act(SchoolClass inClass, Student student);
  }

  private interface Loads {
    @Nullable FormStart from(LoadForm load);
  }

  private void take(@Nullable Wish wish) {
    if (wish == null || !wish.place().equals(PLACE)) {
      return;
    }
    UUID id = wish.id();
    switch (wish.what()) {
      case SHOW -> {}
      case OPEN -> with(id, this::open);
      case LOG_PLANNED -> with(id, this::log);
      case LOG_OWN -> logOwn();
      case AGAIN -> with(id, this::again);
      case LOOK_OVER -> with(id, this::lookOver);
    }
  }

  private static void with(@Nullable UUID id, Consumer<UUID> act) {
    if (id != null) {
      act.accept(id);
    }
  }

  private void log(UUID plannedId) {
    whoever(
        (inClass, student) -> begin(load -> load.planned(inClass.id(), student.id(), plannedId)));
  }

  private void whoever(ForStudent act) {
    SchoolClass inClass = session.schoolClassProperty().get();
    Student student = session.studentProperty().get();
    if (inClass == null || student == null) {
      session.wish(Wish.show("today"));
    } else {
      act.act(inClass, student);
    }
  }

  private void begin(Loads how) {
    form.keepDraft();
    session.run(
        progress -> Optional.ofNullable(how.from(new LoadForm(session))),
        start -> {
          if (start.isPresent()) {
            clothMissing.set(start.get().room().cloths().isEmpty());
            form.begin(start.get());
            mode.set(Mode.FORM);
          } else {
            say(session.words().say("desk.pieces.gone"));
          }
        });
  }

  private record Shown(boolean there, Set<UUID> gone, boolean follows) {}

  /** Undo may have taken away the piece that is shown, or redo brought back the one being typed. */
  private void followSteps() {
    UUID id = shown();
    UUID parent = mode.get() == Mode.FORM ? form.parentId() : null;
    Map<UUID, SavedForms.Saved> typed = savedForms.all();
    if (id == null && parent == null && typed.isEmpty()) {
      return;
    }
    session.run(
        progress ->
            new Shown(
                id != null && session.book().pieces().find(id) != null,
                SavedForms.follow(session.book(), typed),
                parent == null || session.book().pieces().find(parent) != null),
        now -> {
          if (mode.get() == Mode.FORM && parent != null && parent.equals(form.parentId())) {
            form.follows(now.follows());
          }
          if (id == null || !id.equals(shown())) {
            return;
          }
          if (mode.get() == Mode.PIECE && !now.there()) {
            takenBack(id, now.gone().contains(id));
          } else if (mode.get() == Mode.FORM && now.there()) {
            doneAgain(id);
          }
        });
  }

  private @Nullable UUID shown() {
    return switch (mode.get()) {
      case LIST -> null;
      case FORM -> savedForms.behind(form.pieceId());
      case PIECE -> piece.shownId();
    };
  }

  private void takenBack(UUID id, boolean typedHere) {
    SavedForms.Saved before = typedHere ? savedForms.find(id) : null;
    if (before == null) {
      mode.set(Mode.LIST);
      say(session.words().say("desk.pieces.taken-back-gone"));
      return;
    }
    String says = session.words().say("desk.pieces.taken-back");
    form.again(before, says);
    mode.set(Mode.FORM);
    say(says);
  }

  /** The piece is in the book again; what was typed over it since waits as its mending. */
  private void doneAgain(UUID id) {
    SavedForms.Saved before = savedForms.find(id);
    form.handOver(
        id,
        before == null ? List.of() : before.photos(),
        typedSince -> {
          if (typedSince) {
            mend(id);
          } else {
            piece.open(id);
            mode.set(Mode.PIECE);
            say(session.words().say("desk.pieces.done-again"));
          }
        });
  }

  private void saved(TestPiece logged) {
    SavedForms.Saved typed = form.takeSaved();
    if (typed != null) {
      savedForms.keep(typed);
    }
    boolean goesOn = form.pieceId() != null;
    session.changed();
    if (goesOn) {
      // Another form was begun while this one was being saved.
      say(session.words().say("desk.pieces.saved", PieceCode.spoken(logged.code())));
      return;
    }
    NextTry next = form.takeNext();
    if (next != null) {
      again(logged.id(), next);
      return;
    }
    piece.open(logged.id());
    mode.set(Mode.PIECE);
    say(session.words().say("desk.pieces.saved", PieceCode.spoken(logged.code())));
  }

  private void lookForNext() {
    SchoolClass inClass = session.schoolClassProperty().get();
    Student student = session.studentProperty().get();
    if (inClass == null || student == null) {
      lookingForNext.drop();
      next.set(null);
      return;
    }
    lookingForNext.read(
        progress -> Optional.ofNullable(next(inClass.id(), student.id())),
        found -> next.set(found.orElse(null)));
  }

  private @Nullable PlannedPiece next(UUID classId, UUID studentId) {
    Lesson inHand =
        Lesson.inHand(session.book().lessons().of(classId), LocalDate.now(session.clock()));
    return MyPlan.of(session.book(), classId, studentId).next(inHand);
  }

  private void say(String sentence) {
    notice.set(new Notice(sentence, null));
  }
}
