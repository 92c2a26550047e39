package walebook.desk.cloths;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.jspecify.annotations.Nullable;
import walebook.act.cloth.LogWash;
import walebook.cloth.CutLength;
import walebook.cloth.DimensionalChange;
import walebook.compare.ClothStretch;
import walebook.desk.common.Notice;
import walebook.desk.common.Session;
import walebook.drawing.WashPicture;
import walebook.problem.Answer;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.record.ClothWash;
import walebook.record.Grain;
import walebook.working.Working;

/** The form of a wash: a square marked both ways, what is typed and at each key what it means. */
public final class WashFormViewModel extends ClothForm {
  /** What a length is cut for, to show what the wash means. */
  static final double WANTED_MM = 1000;

  /** Further apart than the 350 mm that the standard asks for, and still on most cloths. */
  private static final double USUAL_MARKS_MM = 500;

  private final LogWash act;
  private final ReadOnlyObjectWrapper<Meaning> meaning =
      new ReadOnlyObjectWrapper<>(this, "meaning", Meaning.NOTHING);

  /**
   * What the form means as it stands.
   *
   * @param square the marked square as far as it is read
   * @param workings for each grain with both lengths the change, and what to cut
   * @param area change of area in percent; null until both grains are there
   */
  public record Meaning(
      WashPicture square, Map<Grain, List<Working>> workings, @Nullable Double area) {
    static final Meaning NOTHING =
        new Meaning(new WashPicture(null, null, null, null, Unit.MM), Map.of(), null);

    public Meaning {
      workings = Map.copyOf(workings);
    }
  }

  public WashFormViewModel(Session session) {
    super(
        session,
        "wash",
        "wale-before",
        "wale-after",
        "course-before",
        "course-after",
        "wash",
        "washed-on");
    this.act = new LogWash(session.book(), session.clock());
    // What was said may not be so any more, as when it is taken back.
    session.changesProperty().addListener((from, old, now) -> notice.set(Notice.NONE));
  }

  public ReadOnlyObjectProperty<Meaning> meaningProperty() {
    return meaning.getReadOnlyProperty();
  }

  /**
   * Starts on a cloth with what is usual filled in, or with what was typed and not saved.
   *
   * @param lastWash how it was washed last; empty when it never was
   */
  public void begin(UUID cloth, Unit lengthUnit, String lastWash) {
    take(cloth, lengthUnit);
    String marks = usualMarks();
    kept.begin(
        cloth.toString(),
        Map.of(
            "wale-before",
            marks,
            "course-before",
            marks,
            "wash",
            lastWash,
            "washed-on",
            LocalDate.now(session.clock()).toString()));
  }

  private String usualMarks() {
    double in = USUAL_MARKS_MM / unit().inBase();
    return unit() == Unit.INCH ? Show.upTo(Math.rint(in), 0) : Show.upTo(in, 2);
  }

  /** Saves the grains that were read. */
  public void save() {
    UUID of = clothId();
    if (of == null) {
      return;
    }
    Map<String, String> typed = new HashMap<>(fields.typed());
    for (Grain each : LogWash.SQUARE) {
      leaveOut(typed, each);
    }
    boolean confirmed = fields.isConfirmed();
    String owner = kept.owner();
    session.run(progress -> act.save(of, typed, confirmed), answer -> answered(owner, answer));
  }

  /** A grain that was only filled in beforehand was not marked, where the other one was. */
  private void leaveOut(Map<String, String> typed, Grain grain) {
    Grain other = grain == Grain.WALE ? Grain.COURSE : Grain.WALE;
    String before = LogWash.field(grain, false);
    if (fields.text(LogWash.field(grain, true)).isBlank()
        && !fields.text(LogWash.field(other, true)).isBlank()
        && fields.text(before).equals(usualMarks())) {
      typed.put(before, "");
    }
  }

  private void answered(String owner, Answer<List<ClothWash>> answer) {
    if (!isStill(owner, answer)) {
      return;
    }
    fields.show(answer);
    if (answer.isGood()) {
      Map<String, String> next = new HashMap<>(fields.typed());
      LogWash.SQUARE.forEach(each -> next.put(LogWash.field(each, true), ""));
      kept.done(next);
      List<String> changes = new ArrayList<>();
      for (ClothWash each : answer.value()) {
        changes.add(
            session
                .words()
                .say(
                    "desk.cloths.wash.one",
                    session.words().say("common.choice." + each.grain().key()),
                    Show.percent(each.changePercent())));
      }
      String says = session.words().say("desk.cloths.wash.saved", String.join(", ", changes));
      session.changed();
      notice.set(new Notice(says, null));
    }
  }

  @Override
  void changed() {
    Map<Grain, List<Working>> workings = new EnumMap<>(Grain.class);
    Map<Grain, Double> percents = new EnumMap<>(Grain.class);
    for (Grain each : LogWash.SQUARE) {
      Double before = length(LogWash.field(each, false));
      Double after = length(LogWash.field(each, true));
      if (before != null && after != null) {
        Answer<Working> change = DimensionalChange.of(before, after, ClothStretch.READ_TO_MM);
        double percent = Objects.requireNonNull(change.value().result()).value();
        workings.put(each, List.of(change.value(), CutLength.of(WANTED_MM, percent).value()));
        percents.put(each, percent);
      }
    }
    Double wale = percents.get(Grain.WALE);
    Double course = percents.get(Grain.COURSE);
    meaning.set(
        new Meaning(
            new WashPicture(
                length("wale-before"),
                length("wale-after"),
                length("course-before"),
                length("course-after"),
                unit()),
            workings,
            wale == null || course == null ? null : DimensionalChange.ofArea(wale, course)));
  }
}
