package walebook.desk.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.jspecify.annotations.Nullable;
import walebook.act.decide.AnswerGarment;
import walebook.act.decide.KeepGarment;
import walebook.act.decide.PlanTestPiece;
import walebook.act.decide.TypedGarment;
import walebook.desk.common.FormFields;
import walebook.desk.common.Notice;
import walebook.desk.common.Session;
import walebook.garment.Advice;
import walebook.garment.GarmentAnswers;
import walebook.garment.Girth;
import walebook.garment.OpeningEdge;
import walebook.problem.Answer;
import walebook.quantity.Unit;
import walebook.record.GarmentSheet;
import walebook.record.PlannedPiece;
import walebook.record.SchoolClass;
import walebook.record.Student;

/** One garment sheet: its form, and the answers that follow every change. */
public final class SheetViewModel {
  private static final Map<String, String> USUAL =
      Map.of(
          "garment-kind", "fitted-top",
          "grain-round", "course",
          "machine-kind", "sewing",
          "stitch", "304",
          "seams", "2",
          "shape", "crew",
          "trimmed", "no",
          "sleeve", "no",
          "keep-body", "no");

  private final Session session;
  private final Unit lengths;
  private final KeepGarment keep;
  private final AnswerGarment answer;
  private final PlanTestPiece plan;
  private final FormFields fields;
  private final ReadOnlyObjectWrapper<@Nullable GarmentAnswers> answers =
      new ReadOnlyObjectWrapper<>(this, "answers");
  private final ReadOnlyObjectWrapper<Notice> notice =
      new ReadOnlyObjectWrapper<>(this, "notice", Notice.NONE);
  private @Nullable GarmentSheet saved;
  private int asked;
  private boolean working;

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
    this.fields = new FormFields(this::changed, names());
  }

  private static String[] names() {
    List<String> names =
        new ArrayList<>(
            List.of(
                "sheet-name",
                "garment-kind",
                "cloth",
                "grain-round",
                "gauge-from",
                "gauge-to",
                "allowance",
                "machine-kind",
                "stitch",
                "dial-width",
                "dial-length",
                "sewn",
                "trimmed",
                "sleeve",
                "seams",
                "shape",
                "keep-body",
                "remark"));
    for (Girth girth : Girth.values()) {
      names.add("finished-" + girth.key());
      names.add("body-" + girth.key());
    }
    for (OpeningEdge edge : OpeningEdge.values()) {
      names.add("opening-" + edge.key());
      KeepGarment.links().forEach(link -> names.add(edge.key() + "-" + link.key()));
    }
    return names.toArray(String[]::new);
  }

  public FormFields fields() {
    return fields;
  }

  /** What the sheet comes to as it stands; null while it cannot be read. */
  public ReadOnlyObjectProperty<@Nullable GarmentAnswers> answersProperty() {
    return answers.getReadOnlyProperty();
  }

  public ReadOnlyObjectProperty<Notice> noticeProperty() {
    return notice.getReadOnlyProperty();
  }

  /** True once the book has it. */
  boolean isSaved() {
    return saved != null;
  }

  /** Starts a new sheet with what is usual filled in. */
  public void begin() {
    saved = null;
    fields.put(USUAL);
  }

  /** Opens a saved sheet. */
  public void open(GarmentSheet sheet) {
    saved = sheet;
    session.run(
        progress -> session.book().garments().bodyOf(sheet.id()),
        body -> {
          Map<String, String> typed = TypedGarment.of(sheet, body, lengths);
          typed.put("keep-body", body.isEmpty() ? "no" : "yes");
          fields.put(typed);
        });
  }

  /** Saves it; the body's girths only where they are to be kept. */
  public void save() {
    Answer<GarmentSheet> read = read();
    fields.show(read.problems());
    if (!read.isGood()) {
      return;
    }
    boolean fresh = saved == null;
    Map<String, Double> body = keepsBody() ? body() : Map.of();
    session.run(
        progress -> keep.save(read.value(), fresh, body),
        sheet -> {
          saved = sheet;
          notice.set(new Notice(session.words().say("desk.decide.saved", sheet.name()), null));
          session.changed();
        });
  }

  /** Puts a missing test piece on the plan of whose sheet it is. */
  public void plan(Advice.PieceWanted wanted) {
    SchoolClass of = session.schoolClassProperty().get();
    UUID student = student();
    Answer<GarmentSheet> read = unnamed();
    if (of == null || student == null || !read.isGood()) {
      notice.set(new Notice(session.words().say("desk.decide.plan.who"), null));
      return;
    }
    session.run(progress -> plan.plan(read.value(), wanted, of.id(), student), this::planned);
  }

  private void planned(Answer<PlannedPiece> answer) {
    String says =
        answer.isGood()
            ? session.words().say("desk.decide.plan.done", answer.value().code())
            : session.words().say(answer.problems().get(0));
    notice.set(new Notice(says, null));
    if (answer.isGood()) {
      session.changed();
    }
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

  private Map<String, Double> body() {
    return KeepGarment.body(fields.typed(), lengths);
  }

  private Answer<GarmentSheet> read() {
    return keep.read(saved, student(), fields.typed(), lengths);
  }

  /** A name is needed to save, not to be answered. */
  private Answer<GarmentSheet> unnamed() {
    Map<String, String> typed = fields.typed();
    typed.merge("sheet-name", "–", (now, dash) -> now.isBlank() ? dash : now);
    return keep.read(saved, student(), typed, lengths);
  }

  /** While one answer is being worked out, changes wait; the last one is answered after it. */
  private void changed() {
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
      answers.set(null);
      return;
    }
    working = true;
    Map<String, Double> body = body();
    session.run(
        progress -> answer.answer(read.value(), body),
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
