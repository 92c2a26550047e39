package walebook.desk.cloths;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.jspecify.annotations.Nullable;
import walebook.act.cloth.LogClothReading;
import walebook.cloth.Growth;
import walebook.cloth.Recovery;
import walebook.cloth.Stretch;
import walebook.compare.ClothStretch;
import walebook.desk.common.FormFields;
import walebook.desk.common.KeptForm;
import walebook.desk.common.Notice;
import walebook.desk.common.Session;
import walebook.drawing.GaugeReading;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.quantity.ReadNumber;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.record.ClothReading;
import walebook.record.SchoolClass;
import walebook.record.Student;
import walebook.working.Working;

/** The form of one reading: what is typed, and at each key what it means. */
public final class ReadingFormViewModel {
  private final Session session;
  private final LogClothReading act;
  private final FormFields fields;
  private final KeptForm kept;
  private final ReadOnlyBooleanWrapper asks = new ReadOnlyBooleanWrapper(this, "asks");
  private final ReadOnlyObjectWrapper<Meaning> meaning =
      new ReadOnlyObjectWrapper<>(this, "meaning", Meaning.NOTHING);
  private final ReadOnlyObjectWrapper<Notice> notice =
      new ReadOnlyObjectWrapper<>(this, "notice", Notice.NONE);
  private Unit unit = Unit.MM;
  private @Nullable UUID clothId;

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
    this.session = session;
    this.act = new LogClothReading(session.book(), session.clock());
    fields =
        new FormFields(
            this::changed,
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
    kept = new KeptForm(session, "reading", fields);
  }

  public FormFields fields() {
    return fields;
  }

  public ReadOnlyBooleanProperty asksProperty() {
    return asks.getReadOnlyProperty();
  }

  public ReadOnlyObjectProperty<Meaning> meaningProperty() {
    return meaning.getReadOnlyProperty();
  }

  public ReadOnlyObjectProperty<Notice> noticeProperty() {
    return notice.getReadOnlyProperty();
  }

  /** Counts what was typed, so that it is kept as a draft. */
  public ReadOnlyIntegerProperty editsProperty() {
    return kept.editsProperty();
  }

  /** Keeps what was typed since it was last kept. */
  public void keepDraft() {
    kept.keep();
  }

  /** Keeps it at once; called before the book is closed. */
  public void rest() {
    kept.rest();
  }

  /** Starts on a cloth with what is usual filled in, or with what was typed and not saved. */
  public void begin(UUID cloth, Unit lengthUnit) {
    clothId = cloth;
    unit = lengthUnit;
    notice.set(Notice.NONE);
    Map<String, String> usual = new HashMap<>();
    usual.put("grain", "course");
    usual.put("gauge", Show.upTo(100 / unit.inBase(), 2));
    usual.put("fold", "folded");
    usual.put("edge", "inside");
    usual.put("pull", "firm");
    usual.put("cycle", "1");
    usual.put("measured-on", LocalDate.now(session.clock()).toString());
    kept.begin(cloth.toString(), usual);
  }

  public void save() {
    UUID of = clothId;
    if (of == null) {
      return;
    }
    SchoolClass schoolClass = session.schoolClassProperty().get();
    Student student = session.studentProperty().get();
    LogClothReading.Whose whose =
        new LogClothReading.Whose(
            of,
            schoolClass == null ? null : schoolClass.id(),
            null,
            student == null ? null : student.id());
    Map<String, String> typed = fields.typed();
    boolean confirmed = fields.isConfirmed();
    session.run(progress -> act.save(whose, typed, confirmed), this::answered);
  }

  private void answered(Answer<ClothReading> answer) {
    fields.show(answer.problems());
    asks.set(!answer.isGood() && fields.isConfirmed());
    if (answer.isGood()) {
      Map<String, String> next = new HashMap<>(fields.typed());
      next.put("stretched", "");
      next.put("released", "");
      next.put("remark", "");
      kept.done(next);
      String stretch = Show.percent(answer.value().stretchPercent());
      notice.set(new Notice(session.words().say("desk.cloths.reading.saved", stretch), null));
      session.changed();
    }
  }

  private void changed() {
    kept.changed();
    asks.set(false);
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
    meaning.set(new Meaning(picture, unit, workings));
  }

  private @Nullable Double length(String field) {
    Answer<Double> read = ReadNumber.length(fields.text(field), unit, Place.field(field));
    return read.isGood() && read.value() > 0 ? read.value() : null;
  }

  private static void add(List<Working> workings, Answer<Working> answer) {
    if (answer.isGood()) {
      workings.add(answer.value());
    }
  }
}
