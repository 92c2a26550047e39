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
            this::lookForReadings, Stream.concat(Stream.of(ON), slots).toArray(String[]::new));
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
    long seed = session.chance().nextLong();
    session.run(
        progress -> act.takeUp(pack, of.id(), day, cloths, seed),
        answer -> {
          fields.show(answer.problems());
          if (answer.isGood()) {
            taken.accept(answer.value());
          }
        });
  }
}
