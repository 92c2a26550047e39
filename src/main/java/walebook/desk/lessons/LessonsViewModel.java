package walebook.desk.lessons;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import walebook.act.lesson.ReadLessons;
import walebook.act.lesson.ReadTaught;
import walebook.desk.common.Session;
import walebook.desk.common.Wish;
import walebook.lesson.LessonPack;
import walebook.lesson.ReadPack;
import walebook.record.Cloth;
import walebook.record.Lesson;
import walebook.record.SchoolClass;

/** The packs, the lessons of the class, and which of them is read, taken up or planned. */
public final class LessonsViewModel {
  static final String PLACE = "lessons";

  private final Session session;
  private @Nullable Lesson kitLesson;
  private boolean roomRead;
  private final ReadLessons read;
  private final ObservableList<LessonPack> packs = FXCollections.observableArrayList();
  private final ObservableList<ReadLessons.Taken> taken = FXCollections.observableArrayList();
  private final ObservableList<Cloth> cloths = FXCollections.observableArrayList();
  private final ReadOnlyBooleanWrapper loaded = new ReadOnlyBooleanWrapper(this, "loaded");
  private final ReadOnlyObjectWrapper<Part> part =
      new ReadOnlyObjectWrapper<>(this, "part", Part.LIST);
  private final ReadOnlyObjectWrapper<@Nullable LessonPack> pack =
      new ReadOnlyObjectWrapper<>(this, "pack");
  private final ReadOnlyObjectWrapper<ReadLessons.@Nullable ClassPlan> plan =
      new ReadOnlyObjectWrapper<>(this, "plan");

  /** What the place shows. */
  public enum Part {
    LIST,
    READ,
    TAKE_UP,
    KIT,
    PLAN
  }

  private record Room(List<ReadLessons.Taken> taken, List<Cloth> cloths) {}

  public LessonsViewModel(Session session) {
    this.session = session;
    this.read = new ReadLessons(session.book());
    session.changesProperty().addListener((from, old, now) -> again());
    session.namesHiddenProperty().addListener((from, old, now) -> again());
    session
        .schoolClassProperty()
        .addListener(
            (from, old, now) -> {
              back();
              again();
            });
    session.wishProperty().addListener((from, old, now) -> grant(now));
    session.run(
        progress -> ReadLessons.packs(),
        found -> {
          packs.setAll(found);
          allRead();
        });
    again();
    grant(session.wishProperty().get());
  }

  public Session session() {
    return session;
  }

  public ObservableList<LessonPack> packs() {
    return packs;
  }

  public ObservableList<ReadLessons.Taken> taken() {
    return taken;
  }

  /** The cloths that can stand for a plan's: those in use. */
  public ObservableList<Cloth> cloths() {
    return cloths;
  }

  public ReadOnlyBooleanProperty loadedProperty() {
    return loaded.getReadOnlyProperty();
  }

  public ReadOnlyObjectProperty<Part> partProperty() {
    return part.getReadOnlyProperty();
  }

  /** The pack that is read or taken up, or null. */
  public ReadOnlyObjectProperty<@Nullable LessonPack> packProperty() {
    return pack.getReadOnlyProperty();
  }

  /** The plan that is shown, or null. */
  public ReadOnlyObjectProperty<ReadLessons.@Nullable ClassPlan> planProperty() {
    return plan.getReadOnlyProperty();
  }

  public void read(LessonPack chosen) {
    pack.set(chosen);
    part.set(Part.READ);
  }

  /** Begins to take up the pack that is read. */
  public void takeUp() {
    if (pack.get() != null && session.schoolClassProperty().get() != null) {
      part.set(Part.TAKE_UP);
    }
  }

  /** Begins to work out the kit of the pack that is read. */
  public void kit() {
    if (pack.get() != null) {
      kitLesson = null;
      part.set(Part.KIT);
    }
  }

  /** Begins to work out the kit of the pack as a lesson took it up. */
  void kit(Lesson lesson) {
    session.run(
        progress -> new ReadTaught(session.book(), new ReadPack()).pack(lesson.packId()),
        found -> {
          if (found.isGood()) {
            pack.set(found.value());
            kitLesson = lesson;
            part.set(Part.KIT);
          }
        });
  }

  /** The lesson whose kit is worked out; null for a pack that is not taken up. */
  @Nullable Lesson kitLesson() {
    return kitLesson;
  }

  /** Shows a lesson's plan. */
  public void plan(UUID lessonId) {
    boolean hidden = session.namesHiddenProperty().get();
    session.run(
        progress -> Optional.ofNullable(read.plan(lessonId, hidden)),
        found -> {
          plan.set(found.orElse(null));
          part.set(found.isPresent() ? Part.PLAN : Part.LIST);
        });
  }

  /** Back to what was shown before. */
  public void back() {
    if (part.get() == Part.KIT && kitLesson != null) {
      part.set(Part.PLAN);
      return;
    }
    boolean inner = part.get() == Part.TAKE_UP || part.get() == Part.KIT;
    part.set(inner ? Part.READ : Part.LIST);
  }

  /** Asks the term record for a class. */
  void startClass() {
    session.wish(Wish.show("term"));
  }

  /** Leads to where the lesson's record cards are typed in. */
  void typeIn(UUID lessonId) {
    session.wish(new Wish("typing", Wish.What.OPEN, lessonId));
  }

  void taken(Lesson lesson) {
    session.changed();
    plan(lesson.id());
  }

  private void again() {
    SchoolClass of = session.schoolClassProperty().get();
    session.run(
        progress ->
            new Room(
                of == null ? List.of() : read.taken(of.id()),
                session.book().cloths().all().stream().filter(each -> !each.retired()).toList()),
        found -> {
          taken.setAll(found.taken());
          cloths.setAll(found.cloths());
          roomRead = true;
          allRead();
        });
    ReadLessons.ClassPlan shown = plan.get();
    if (shown != null && part.get() == Part.PLAN) {
      plan(shown.lesson().id());
    }
  }

  /** Packs are read beside the class's lessons, and either may come first. */
  private void allRead() {
    loaded.set(roomRead && !packs.isEmpty());
  }

  private void grant(@Nullable Wish wish) {
    if (wish == null || !wish.place().equals(PLACE)) {
      return;
    }
    UUID id = wish.id();
    if (wish.what() == Wish.What.OPEN && id != null) {
      plan(id);
    }
  }
}
