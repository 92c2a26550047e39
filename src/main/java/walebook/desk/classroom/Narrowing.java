package walebook.desk.classroom;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import walebook.act.classroom.CompareFair;
import walebook.desk.common.Session;
import walebook.record.Cloth;
import walebook.record.Lesson;
import walebook.record.SchoolClass;

/** Which lesson and cloth the parts of the place look at; it stays from one part to the next. */
public final class Narrowing {
  private final Session session;
  private final Choice anyLesson;
  private final Choice anyCloth;
  private final ObservableList<Choice> lessons = FXCollections.observableArrayList();
  private final ObservableList<Choice> cloths = FXCollections.observableArrayList();
  private final ObjectProperty<Choice> lesson;
  private final ObjectProperty<Choice> cloth;

  private record Read(List<Lesson> lessons, List<Cloth> cloths) {}

  public Narrowing(Session session) {
    this.session = session;
    anyLesson = new Choice(null, session.words().say("desk.class.any-lesson"));
    anyCloth = new Choice(null, session.words().say("desk.class.any-cloth"));
    lesson = new SimpleObjectProperty<>(this, "lesson", anyLesson);
    cloth = new SimpleObjectProperty<>(this, "cloth", anyCloth);
    lessons.add(anyLesson);
    cloths.add(anyCloth);
    session.schoolClassProperty().addListener((from, old, now) -> read());
    session.changesProperty().addListener((from, old, now) -> read());
    read();
  }

  ObservableList<Choice> lessons() {
    return lessons;
  }

  ObservableList<Choice> cloths() {
    return cloths;
  }

  ObjectProperty<Choice> lessonProperty() {
    return lesson;
  }

  ObjectProperty<Choice> clothProperty() {
    return cloth;
  }

  CompareFair.Which which(SchoolClass of, boolean hidden) {
    return new CompareFair.Which(List.of(of.id()), lessonId(), clothId(), hidden);
  }

  @Nullable UUID lessonId() {
    return id(lesson);
  }

  @Nullable UUID clothId() {
    return id(cloth);
  }

  // A box that is being filled again holds nothing for a moment.
  private static @Nullable UUID id(ObjectProperty<Choice> of) {
    Choice now = of.get();
    return now == null ? null : now.id();
  }

  private void read() {
    SchoolClass of = session.schoolClassProperty().get();
    session.run(
        progress ->
            new Read(
                of == null ? List.of() : session.book().lessons().of(of.id()),
                session.book().cloths().all()),
        this::show);
  }

  private void show(Read read) {
    List<Choice> some = new ArrayList<>(List.of(anyLesson));
    read.lessons().forEach(each -> some.add(new Choice(each.id(), each.title())));
    fill(lessons, some, lesson, anyLesson);
    List<Choice> others = new ArrayList<>(List.of(anyCloth));
    read.cloths().forEach(each -> others.add(new Choice(each.id(), each.name())));
    fill(cloths, others, cloth, anyCloth);
  }

  private static void fill(
      ObservableList<Choice> shown, List<Choice> now, ObjectProperty<Choice> chosen, Choice any) {
    if (shown.equals(now)) {
      return;
    }
    Choice was = chosen.get();
    shown.setAll(now);
    chosen.set(now.contains(was) ? was : any);
  }
}
