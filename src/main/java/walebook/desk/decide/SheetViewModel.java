package walebook.desk.decide;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.jspecify.annotations.Nullable;
import walebook.act.decide.AnswerGarment;
import walebook.act.decide.KeepGarment;
import walebook.act.decide.KeepGarmentDraft;
import walebook.act.decide.PlanTestPiece;
import walebook.act.decide.TypedGarment;
import walebook.act.decide.UnansweredGirths;
import walebook.desk.common.FormFields;
import walebook.desk.common.Notice;
import walebook.desk.common.Session;
import walebook.garment.Advice;
import walebook.garment.GarmentAnswers;
import walebook.problem.Answer;
import walebook.problem.Problem;
import walebook.quantity.Unit;
import walebook.record.GarmentSheet;
import walebook.record.Lesson;
import walebook.record.PieceCode;
import walebook.record.PlannedPiece;
import walebook.record.SchoolClass;
import walebook.record.Student;

/** One garment sheet: its form, and the answers that follow every change. */
public final class SheetViewModel {
  private static final Map<String, String> USUAL =
      Map.ofEntries(
          Map.entry("garment-kind", "fitted-top"),
          Map.entry("grain-round", "course"),
          Map.entry("machine-kind", "sewing"),
          Map.entry("stitch", "304"),
          Map.entry("seams", "2"),
          Map.entry("upper-arm-seams", "1"),
          Map.entry("sleeve-hem-seams", "1"),
          Map.entry("shape", "crew"),
          Map.entry("trimmed", "no"),
          Map.entry("sleeve", "no"),
          Map.entry("keep-body", "no"));

  private final Session session;
  private final Unit lengths;
  private final KeepGarment keep;
  private final AnswerGarment answer;
  private final PlanTestPiece plan;
  private final FormFields fields;
  private final SheetDraft drafts;
  private final ReadOnlyIntegerWrapper edits = new ReadOnlyIntegerWrapper(this, "edits");
  private final ReadOnlyIntegerWrapper refusals = new ReadOnlyIntegerWrapper(this, "refusals");
  private final ReadOnlyObjectWrapper<@Nullable GarmentAnswers> answers =
      new ReadOnlyObjectWrapper<>(this, "answers");
  private final ReadOnlyObjectWrapper<Notice> notice =
      new ReadOnlyObjectWrapper<>(this, "notice", Notice.NONE);
  private final ReadOnlyStringWrapper mend = new ReadOnlyStringWrapper(this, "mend", "");
  private final ReadOnlyStringWrapper othersBody =
      new ReadOnlyStringWrapper(this, "othersBody", "");
  private final Map<String, String> confirmed = new HashMap<>();
  private @Nullable GarmentSheet saved;
  private int kept;
  private int asked;
  private boolean working;
  private boolean bodyHidden;

  /**
   * A sheet that is not begun yet.
   *
   * @param lengths what a length without a unit means
   */
  public SheetViewModel(Session session, Unit lengths) {
    this.session = session;
    this.lengths = lengths;
    this.keep = new KeepGarment(session.book(), session.tables(), session.clock());
    this.answer = new AnswerGarment(session.book(), session.tables());
    this.plan = new PlanTestPiece(session.book(), session.clock(), session.chance());
    this.fields = new FormFields(this::changed, KeepGarment.fields().toArray(String[]::new));
    this.drafts = new SheetDraft(session);
  }

  public FormFields fields() {
    return fields;
  }

  /** What the sheet comes to as it stands; null while it cannot be read. */
  public ReadOnlyObjectProperty<@Nullable GarmentAnswers> answersProperty() {
    return answers.getReadOnlyProperty();
  }

  /** Which fields cannot be right yet; empty while nothing is wrong or nothing is read. */
  public ReadOnlyStringProperty mendProperty() {
    return mend.getReadOnlyProperty();
  }

  /** True where the girths of the body are another student's, and neither shown nor typed. */
  boolean isBodyHidden() {
    return bodyHidden;
  }

  /** Whose girths are not shown, in a sentence; empty where they are. */
  public ReadOnlyStringProperty othersBodyProperty() {
    return othersBody.getReadOnlyProperty();
  }

  public ReadOnlyObjectProperty<Notice> noticeProperty() {
    return notice.getReadOnlyProperty();
  }

  /** Shows a line at the foot. */
  void tell(Notice says) {
    notice.set(says);
  }

  /** The sheet as the book has it; null while it is not saved. */
  @Nullable GarmentSheet saved() {
    return saved;
  }

  /** Moves at each change, so that a view can wait for a pause in the typing. */
  public ReadOnlyIntegerProperty editsProperty() {
    return edits.getReadOnlyProperty();
  }

  /** Moves each time it could not be saved, so that a view goes to the first field in the way. */
  ReadOnlyIntegerProperty refusalsProperty() {
    return refusals.getReadOnlyProperty();
  }

  /** Starts a new sheet with what is usual filled in, or with what was typed before a crash. */
  public void begin() {
    saved = null;
    put(USUAL);
    drafts.find(null, this::resume);
  }

  /** The same sheet for another choice: never saved and never kept as a draft. */
  SheetViewModel copy() {
    SheetViewModel copy = new SheetViewModel(session, lengths);
    copy.confirmed.putAll(confirmed);
    copy.put(fields.typed());
    return copy;
  }

  /** Fills the form; that is no change by a person. */
  void put(Map<String, String> typed) {
    fields.put(bodyHidden ? OthersBody.without(typed) : typed);
    unchanged();
  }

  private void unchanged() {
    kept = 0;
    edits.set(0);
  }

  private void resume(KeepGarmentDraft.Found draft) {
    if (edits.get() == 0) {
      Map<String, String> both = fields.typed();
      both.putAll(draft.typed());
      put(both);
      String says =
          session.words().say(draft.older() ? "desk.decide.resumed-over" : "desk.decide.resumed");
      notice.set(new Notice(says, null));
    }
  }

  /** Keeps what is typed, so that it is there again after a crash. */
  public void keepDraft() {
    if (edits.get() != kept) {
      kept = edits.get();
      drafts.keep(saved, fields.typed(), Map.copyOf(confirmed));
    }
  }

  /** The same at once, before the book is closed: there is no later. */
  void rest() {
    if (edits.get() != kept) {
      kept = edits.get();
      drafts.keepNow(saved, fields.typed(), confirmed);
    }
  }

  /** Throws away what is typed: back to the sheet as it was saved, or to an empty one. */
  public void discard() {
    Map<String, String> typed = fields.typed();
    GarmentSheet sheet = saved;
    drafts.drop(sheet);
    Notice undo =
        new Notice(
            session.words().say("desk.decide.discarded"),
            () -> {
              put(typed);
              edits.set(1);
              notice.set(Notice.NONE);
            });
    if (sheet == null) {
      put(USUAL);
      notice.set(undo);
    } else {
      load(sheet, shown -> notice.set(undo));
    }
  }

  /** Opens a saved sheet as the book holds it now, with what was typed and not saved. */
  public void open(GarmentSheet sheet) {
    saved = sheet;
    bodyHidden = OthersBody.of(session, sheet);
    load(sheet, shown -> drafts.find(shown, this::resume));
  }

  /** What was read of a saved sheet; the sentence is empty where its girths may be seen. */
  private record Loaded(GarmentSheet sheet, Map<String, Double> body, String others) {}

  private void load(GarmentSheet sheet, Consumer<GarmentSheet> then) {
    boolean hidden = bodyHidden;
    session.run(
        progress -> {
          Map<String, Double> body = session.book().garments().bodyOf(sheet.id());
          return hidden
              ? new Loaded(now(sheet), Map.of(), OthersBody.says(session, sheet, !body.isEmpty()))
              : new Loaded(now(sheet), body, "");
        },
        loaded -> {
          Map<String, String> typed = TypedGarment.of(loaded.sheet(), loaded.body(), lengths);
          typed.put("keep-body", loaded.body().isEmpty() ? "no" : "yes");
          othersBody.set(loaded.others());
          confirmed.clear();
          confirmed.putAll(typed);
          put(typed);
          saved = loaded.sheet();
          then.accept(loaded.sheet());
        });
  }

  private GarmentSheet now(GarmentSheet sheet) {
    return Objects.requireNonNullElse(session.book().garments().find(sheet.id()), sheet);
  }

  /** Saves it; the body's girths only where they are to be kept. */
  public void save() {
    Answer<GarmentSheet> read = read();
    fields.show(read.problems());
    if (!read.isGood()) {
      String at = SheetLabels.ofRefused(session.words(), read.problems());
      notice.set(new Notice(session.words().say("desk.decide.not-saved", at), null));
      refusals.set(refusals.get() + 1);
      return;
    }
    boolean fresh = saved == null;
    Map<String, String> typed = fields.typed();
    boolean hidden = bodyHidden;
    Map<String, Double> body = keepsBody() ? body() : Map.of();
    session.run(
        progress ->
            keep.save(read.value(), fresh, drafts.typist(), hidden ? keptOf(read.value()) : body),
        sheet -> {
          saved = sheet;
          confirmed.putAll(typed);
          unchanged();
          ask();
          notice.set(new Notice(session.words().say("desk.decide.saved", sheet.name()), null));
          session.changed();
        });
  }

  /** What another student keeps with a sheet stays as it is. */
  private Map<String, Double> keptOf(GarmentSheet sheet) {
    return session.book().garments().bodyOf(sheet.id());
  }

  /**
   * Puts a missing test piece on the plan of whose sheet it is.
   *
   * @param then told once it is there
   */
  public void plan(Advice.PieceWanted wanted, Runnable then) {
    SchoolClass of = session.schoolClassProperty().get();
    UUID student = student();
    Answer<GarmentSheet> read = unnamed();
    if (of == null || student == null || !read.isGood()) {
      notice.set(new Notice(session.words().say("desk.decide.plan.who"), null));
      return;
    }
    session.run(
        progress -> plan.plan(read.value(), wanted, of.id(), student).map(this::planned),
        answer -> {
          String says =
              answer.isGood() ? answer.value() : session.words().say(answer.problems().get(0));
          notice.set(new Notice(says, null));
          if (answer.isGood()) {
            then.run();
            session.changed();
          }
        });
  }

  private String planned(PlannedPiece piece) {
    Student student = session.book().students().find(piece.studentId());
    Lesson lesson = session.book().lessons().find(piece.lessonId());
    return session
        .words()
        .say(
            "desk.decide.plan.done",
            PieceCode.spoken(piece.code()),
            student == null ? "–" : student.name(),
            lesson == null ? "–" : lesson.title());
  }

  private @Nullable UUID student() {
    GarmentSheet sheet = saved;
    if (sheet != null && sheet.studentId() != null) {
      return sheet.studentId();
    }
    Student now = session.studentProperty().get();
    return now == null ? null : now.id();
  }

  private boolean keepsBody() {
    return fields.text("keep-body").equals("yes");
  }

  /** The body's girths as typed, in mm by key. */
  Map<String, Double> body() {
    return keep.body(fields.typed(), lengths);
  }

  /** The sheet as typed, or what must be mended first. */
  Answer<GarmentSheet> read() {
    return keep.read(saved, student(), fields.typed(), lengths);
  }

  /** A name is needed to save, not to be answered. */
  private Answer<GarmentSheet> unnamed() {
    Map<String, String> typed = fields.typed();
    typed.merge("sheet-name", "–", (now, dash) -> now.isBlank() ? dash : now);
    return keep.read(saved, student(), typed, lengths);
  }

  /** What is asked about and not confirmed by saving it as it stands. */
  UnansweredGirths unanswered(List<Problem> problems) {
    return UnansweredGirths.of(problems, field -> fields.text(field).equals(confirmed.get(field)));
  }

  private String mend(List<Problem> problems) {
    String labels = SheetLabels.ofRefused(session.words(), problems);
    return labels.isEmpty()
        ? session.words().say("desk.decide.mend")
        : session.words().say("desk.decide.mend-at", labels);
  }

  /** While one answer is being worked out, changes wait; the last one is answered after it. */
  private void changed() {
    edits.set(edits.get() + 1);
    ask();
  }

  private void ask() {
    asked++;
    if (!working) {
      work();
    }
  }

  private void work() {
    int mine = asked;
    Answer<GarmentSheet> read = unnamed();
    fields.show(read.problems());
    if (!read.isGood()) {
      mend.set(mend(read.problems()));
      answers.set(null);
      return;
    }
    mend.set("");
    working = true;
    UnansweredGirths open = unanswered(read.problems());
    GarmentSheet sheet = open.without(read.value());
    Map<String, Double> body = open.without(body());
    session.run(
        progress -> open.told(answer.answer(sheet, body)),
        found -> {
          working = false;
          if (mine == asked) {
            answers.set(found);
          } else {
            work();
          }
        });
  }
}
