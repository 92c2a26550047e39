package walebook.desk.lessons;

import java.time.Clock;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import walebook.act.lesson.ReadLimits;
import walebook.act.lesson.TakeUpLesson;
import walebook.desk.common.FormFields;
import walebook.desk.common.Session;
import walebook.lesson.LessonPack;
import walebook.lesson.PiecesPlan;
import walebook.lesson.Plan;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.Cloth;
import walebook.record.Lesson;
import walebook.record.SchoolClass;

/** The form that takes a pack up for the class: when, and which cloth stands for which. */
public final class TakeUpViewModel {
  private static final String ON = "lesson-on";
  private static final String CLOTH = "cloth-";

  /** How many combinations each takes on, one a line, as on the command line. */
  static final String SHARE = "share";

  /** Combinations nobody sews, one a line. */
  static final String LEAVE_OUT = "leave-out";

  /** Machines and cloths that are missing, one a line. */
  static final String WITHOUT = "without";

  static final String SEED = "seed";

  private final Session session;
  private final LessonPack pack;
  private final TakeUpLesson act;
  private final Consumer<Lesson> taken;
  private final FormFields fields;
  private final ReadOnlyStringWrapper unmeasured =
      new ReadOnlyStringWrapper(this, "unmeasured", "");

  /**
   * A form for a pack.
   *
   * @param taken told of the lesson once it is on the disk
   */
  public TakeUpViewModel(Session session, LessonPack pack, Consumer<Lesson> taken) {
    this.session = session;
    this.pack = pack;
    this.taken = taken;
    Clock clock = session.clock();
    this.act = new TakeUpLesson(session.book(), clock);
    Stream<String> slots = pack.plan().cloths().stream().map(each -> CLOTH + each.slot());
    fields =
        new FormFields(
            this::lookForReadings,
            Stream.concat(Stream.of(ON, SHARE, LEAVE_OUT, WITHOUT, SEED), slots)
                .toArray(String[]::new));
    fields.put(Map.of(ON, LocalDate.now(clock).toString()));
  }

  /** Names of the chosen cloths that nobody measured yet, while that matters; else empty. */
  public ReadOnlyStringProperty unmeasuredProperty() {
    return unmeasured.getReadOnlyProperty();
  }

  private void lookForReadings() {
    if (!(pack.plan() instanceof PiecesPlan)) {
      return;
    }
    Set<UUID> chosen = new LinkedHashSet<>();
    for (Plan.ClothSlot slot : pack.plan().cloths()) {
      String id = fields.text(CLOTH + slot.slot());
      if (!id.isEmpty()) {
        chosen.add(UUID.fromString(id));
      }
    }
    session.run(
        progress -> {
          List<String> names = new ArrayList<>();
          for (UUID id : chosen) {
            Cloth cloth = session.book().cloths().find(id);
            if (cloth != null && session.book().clothLog().readingsOf(id).isEmpty()) {
              names.add(cloth.name());
            }
          }
          return String.join(", ", names);
        },
        unmeasured::set);
  }

  public LessonPack pack() {
    return pack;
  }

  /** The day of the lesson. */
  public FormFields.Field on() {
    return fields.field(ON);
  }

  /** A field of what is seldom wanted, by its name. */
  public FormFields.Field more(String name) {
    return fields.field(name);
  }

  private List<String> lines(String name) {
    return fields.text(name).lines().map(String::strip).filter(each -> !each.isEmpty()).toList();
  }

  /** The cloth of the room for one of the plan; its text is the cloth's key. */
  public FormFields.Field cloth(Plan.ClothSlot slot) {
    return fields.field(CLOTH + slot.slot());
  }

  public void takeUp() {
    SchoolClass of = session.schoolClassProperty().get();
    if (of == null) {
      return;
    }
    LocalDate day;
    try {
      day = LocalDate.parse(fields.text(ON).strip());
    } catch (DateTimeParseException e) {
      fields.show(
          List.of(
              Problem.refuse("date.not-a-date", Place.field(ON), fields.text(ON), "2026-10-05")));
      return;
    }
    Map<String, UUID> cloths = new HashMap<>();
    for (Plan.ClothSlot slot : pack.plan().cloths()) {
      String id = fields.text(CLOTH + slot.slot());
      if (!id.isEmpty()) {
        cloths.put(slot.slot(), UUID.fromString(id));
      }
    }
    String seedText = fields.text(SEED).strip();
    if (!seedText.matches("(-?[0-9]{1,18})?")) {
      fields.show(List.of(Problem.refuse("number.not-whole", Place.field(SEED), seedText, "2026")));
      return;
    }
    long seed = seedText.isEmpty() ? session.chance().nextLong() : Long.parseLong(seedText);
    ReadLimits.Typed limits = new ReadLimits.Typed(lines(LEAVE_OUT), lines(WITHOUT), lines(SHARE));
    boolean sure = fields.isConfirmed();
    session.run(
        progress -> act.takeUp(pack, of.id(), day, cloths, limits, seed, sure),
        answer -> {
          fields.show(answer.problems());
          if (answer.isGood()) {
            taken.accept(answer.value());
          }
        });
  }
}
