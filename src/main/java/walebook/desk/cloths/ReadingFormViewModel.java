package walebook.desk.cloths;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.jspecify.annotations.Nullable;
import walebook.act.cloth.LogClothReading;
import walebook.act.cloth.StartReading;
import walebook.cloth.Growth;
import walebook.cloth.Recovery;
import walebook.cloth.Stretch;
import walebook.compare.ClothStretch;
import walebook.desk.common.Notice;
import walebook.desk.common.Session;
import walebook.drawing.GaugeReading;
import walebook.problem.Answer;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.record.ClothReading;
import walebook.record.Grain;
import walebook.record.Keyed;
import walebook.record.SchoolClass;
import walebook.record.Student;
import walebook.working.Working;

/** The form of one reading: what is typed, and at each key what it means. */
public final class ReadingFormViewModel extends ClothForm {
  private final LogClothReading act;
  private final StartReading start;
  private final ReadOnlyObjectWrapper<Meaning> meaning =
      new ReadOnlyObjectWrapper<>(this, "meaning", Meaning.NOTHING);
  private final ReadOnlyObjectWrapper<StartReading.@Nullable Asked> asked =
      new ReadOnlyObjectWrapper<>(this, "asked");

  /** A reading on the disk, and how its plan stands after it; null for what no plan asked. */
  private record Saved(Answer<ClothReading> answer, StartReading.@Nullable Asked plan) {}

  /**
   * What the form means as it stands.
   *
   * @param workings stretch, growth, recovery, as far as the lengths allow
   */
  public record Meaning(GaugeReading gauge, Unit unit, List<Working> workings) {
    static final Meaning NOTHING =
        new Meaning(
            new GaugeReading(null, null, GaugeReading.How.STRETCHED, null, null, null),
            Unit.MM,
            List.of());

    public Meaning {
      workings = List.copyOf(workings);
    }
  }

  public ReadingFormViewModel(Session session) {
    super(
        session,
        "reading",
        "grain",
        "gauge",
        "stretched",
        "released",
        "rest",
        "fold",
        "edge",
        "pull",
        "load",
        "hold",
        "cycle",
        "measured-on",
        "remark");
    this.act = new LogClothReading(session.book(), session.clock());
    this.start = new StartReading(session.book());
  }

  public ReadOnlyObjectProperty<Meaning> meaningProperty() {
    return meaning.getReadOnlyProperty();
  }

  /** What a plan asks for with this reading and what of it is done, or null. */
  public ReadOnlyObjectProperty<StartReading.@Nullable Asked> askedProperty() {
    return asked.getReadOnlyProperty();
  }

  boolean isNamesHidden() {
    return session.namesHiddenProperty().get();
  }

  /** Starts on a reading that a plan asks for, filled in as its lesson measures. */
  public void begin(StartReading.Asked plan, Unit lengthUnit) {
    begin(plan.cloth().id(), lengthUnit, plan.line().planned().id(), plan.typed());
    asked.set(plan);
  }

  /** Starts on a cloth with what is usual filled in, or with what was typed and not saved. */
  public void begin(UUID cloth, Unit lengthUnit) {
    begin(cloth, lengthUnit, cloth, Map.of());
  }

  private void begin(UUID cloth, Unit lengthUnit, UUID draft, Map<String, String> asLesson) {
    take(cloth, lengthUnit);
    asked.set(null);
    Map<String, String> usual = new HashMap<>();
    usual.put("grain", "course");
    usual.put("gauge", Show.upTo(100 / unit().inBase(), 2));
    usual.put("fold", "folded");
    usual.put("edge", "inside");
    usual.put("pull", "firm");
    usual.put("cycle", "1");
    usual.put("measured-on", LocalDate.now(session.clock()).toString());
    usual.putAll(asLesson);
    kept.begin(draft.toString(), usual);
  }

  public void save() {
    UUID of = clothId();
    if (of == null) {
      return;
    }
    StartReading.Asked plan = asked.get();
    LogClothReading.Whose whose = plan == null ? whose(of) : plan.whose();
    Map<String, String> typed = fields.typed();
    boolean confirmed = fields.isConfirmed();
    String owner = kept.owner();
    session.run(
        progress -> {
          LogClothReading.Whose in = plan == null ? withLesson(whose, typed) : whose;
          Answer<ClothReading> answer = act.save(in, typed, confirmed);
          return new Saved(
              answer,
              plan == null || !answer.isGood() ? null : start.of(plan.line().planned().id()));
        },
        saved -> answered(owner, saved));
  }

  private LogClothReading.Whose whose(UUID cloth) {
    SchoolClass schoolClass = session.schoolClassProperty().get();
    Student student = session.studentProperty().get();
    return new LogClothReading.Whose(
        cloth,
        schoolClass == null ? null : schoolClass.id(),
        null,
        student == null ? null : student.id());
  }

  /** A reading that the student's plan asks for counts for it, wherever it was begun. */
  private LogClothReading.Whose withLesson(LogClothReading.Whose whose, Map<String, String> typed) {
    Grain grain = Keyed.find(Grain.class, typed.getOrDefault("grain", ""));
    UUID classId = whose.classId();
    UUID student = whose.studentId();
    if (grain == null || classId == null || student == null) {
      return whose;
    }
    UUID lesson = StartReading.lessonOf(session.book(), classId, student, whose.clothId(), grain);
    return new LogClothReading.Whose(whose.clothId(), classId, lesson, student);
  }

  private void answered(String owner, Saved saved) {
    Answer<ClothReading> answer = saved.answer();
    if (!isStill(owner, answer)) {
      return;
    }
    fields.show(answer);
    if (answer.isGood()) {
      asked.set(saved.plan());
      Map<String, String> next = new HashMap<>(fields.typed());
      next.put("stretched", "");
      next.put("released", "");
      next.put("remark", "");
      kept.done(next);
      String stretch = Show.percent(answer.value().stretchPercent());
      boolean counts = saved.plan() == null && answer.value().lessonId() != null;
      notice.set(
          new Notice(
              counts
                  ? session.words().say("desk.cloths.reading.counts", stretch)
                  : session.words().say("desk.cloths.reading.saved", stretch),
              null));
      session.changed();
    }
  }

  @Override
  void changed() {
    Double gauge = length("gauge");
    Double stretched = length("stretched");
    Double released = length("released");
    List<Working> workings = new ArrayList<>();
    double readTo = ClothStretch.READ_TO_MM;
    if (gauge != null && stretched != null) {
      add(workings, Stretch.of(gauge, stretched, readTo));
    }
    if (gauge != null && stretched != null && released != null) {
      add(workings, Growth.of(gauge, stretched, released, readTo));
      add(workings, Recovery.of(gauge, stretched, released, readTo));
    }
    GaugeReading picture =
        new GaugeReading(gauge, stretched, GaugeReading.How.STRETCHED, released, null, null);
    meaning.set(new Meaning(picture, unit(), workings));
  }

  private static void add(List<Working> workings, Answer<Working> answer) {
    if (answer.isGood()) {
      workings.add(answer.value());
    }
  }
}
