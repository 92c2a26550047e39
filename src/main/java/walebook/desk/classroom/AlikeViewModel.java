package walebook.desk.classroom;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import walebook.act.classroom.AskAlike;
import walebook.compare.alike.AlikeFindings;
import walebook.compare.alike.AlikeStudy;
import walebook.compare.alike.MeasureAlike;
import walebook.compare.alike.Person;
import walebook.desk.common.Session;
import walebook.desk.common.Task;
import walebook.desk.common.Wish;
import walebook.drawing.ValueBar;
import walebook.quantity.Show;
import walebook.record.SchoolClass;
import walebook.statistics.Interval;
import walebook.words.Words;

/** Whether the class measures alike: each cloth and way of measuring by itself. */
public final class AlikeViewModel {
  private final Session session;
  private final Narrowing narrowing;
  private final Asking asking;
  private final ObservableList<Study> studies = FXCollections.observableArrayList();
  private final ReadOnlyBooleanWrapper loaded = new ReadOnlyBooleanWrapper(this, "loaded");
  private @Nullable Task reading;

  /**
   * One cloth measured one way.
   *
   * @param title cloth, grain and lesson
   * @param critical beyond which an h is odd, worded; empty when that can't be told
   */
  record Study(
      String title,
      List<String> says,
      List<String> practise,
      List<Reader> readers,
      String critical) {}

  /**
   * One who read.
   *
   * @param bar the bias with its interval, on one scale for all of a study
   * @param standing what stands out, in words; may be empty
   */
  record Reader(Person person, ValueBar bar, String standing) {}

  private record Read(MeasureAlike found, Map<UUID, String> names) {}

  public AlikeViewModel(Session session, Narrowing narrowing) {
    this.session = session;
    this.narrowing = narrowing;
    asking = new Asking(session, narrowing, this::ask);
  }

  /** Told when the part comes into sight or leaves it. */
  void shown(boolean on) {
    asking.shown(on);
  }

  Narrowing narrowing() {
    return narrowing;
  }

  ObservableList<Study> studies() {
    return studies;
  }

  ReadOnlyBooleanProperty loadedProperty() {
    return loaded.getReadOnlyProperty();
  }

  /** Asks the place of cloths to measure one. */
  void measureFirst() {
    session.wish(Wish.show("cloths"));
  }

  Words words() {
    return session.words();
  }

  /** A study as rows of cells, for the clipboard. */
  List<List<String>> table(Study study) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        Stream.of(
                "desk.class.col.student",
                "desk.class.col.readings",
                "desk.class.alike.mean",
                "desk.class.alike.bias",
                "desk.class.alike.low",
                "desk.class.alike.high",
                "desk.class.alike.h",
                "desk.class.alike.k",
                "desk.class.alike.critical-k")
            .map(words()::say)
            .toList());
    for (Reader each : study.readers()) {
      var member = each.person().member();
      Interval interval = member.biasInterval();
      rows.add(
          List.of(
              each.person().who(),
              String.valueOf(each.person().readings().size()),
              Show.fixed(member.summary().mean(), 1),
              Show.fixed(member.bias(), 1),
              interval == null ? "" : Show.fixed(interval.low(), 1),
              interval == null ? "" : Show.fixed(interval.high(), 1),
              two(member.h()),
              two(member.k()),
              two(member.criticalK())));
    }
    return rows;
  }

  static String two(@Nullable Double value) {
    return value == null ? "–" : Show.fixed(value, 2);
  }

  private void ask() {
    if (reading != null) {
      reading.cancel();
    }
    SchoolClass of = session.schoolClassProperty().get();
    if (of == null) {
      studies.clear();
      loaded.set(true);
      return;
    }
    UUID lesson = narrowing.lessonId();
    UUID cloth = narrowing.clothId();
    boolean hidden = session.namesHiddenProperty().get();
    reading =
        session.run(
            progress ->
                new Read(
                    new AskAlike(session.book()).ask(of.id(), lesson, cloth, hidden), names(of)),
            this::show);
  }

  private Map<UUID, String> names(SchoolClass of) {
    Map<UUID, String> names = new HashMap<>();
    session.book().cloths().all().forEach(each -> names.put(each.id(), each.name()));
    session.book().lessons().of(of.id()).forEach(each -> names.put(each.id(), each.title()));
    return names;
  }

  private void show(Read read) {
    studies.setAll(read.found().studies().stream().map(each -> study(each, read.names())).toList());
    loaded.set(true);
  }

  private Study study(AlikeStudy study, Map<UUID, String> names) {
    double most = 1;
    for (Person each : study.people()) {
      Interval interval = each.member().biasInterval();
      most = Math.max(most, Math.abs(each.member().bias()));
      if (interval != null) {
        most = Math.max(most, Math.max(Math.abs(interval.low()), Math.abs(interval.high())));
      }
    }
    double reach = most;
    return new Study(
        title(study, names),
        AlikeFindings.of(study).stream().map(words()::say).toList(),
        AlikeFindings.practise(study).stream().map(words()::say).toList(),
        study.people().stream().map(each -> reader(each, reach)).toList(),
        study.criticalH() == null
            ? ""
            : words().say("desk.class.alike.critical-h", two(study.criticalH())));
  }

  private Reader reader(Person person, double reach) {
    Interval interval = person.member().biasInterval();
    ValueBar bar =
        new ValueBar(
            person.member().bias(),
            interval == null ? null : Double.valueOf(interval.low()),
            interval == null ? null : Double.valueOf(interval.high()),
            -reach,
            reach,
            0.0);
    List<String> standing = new ArrayList<>();
    if (person.bias() == Person.Bias.ODD) {
      standing.add(words().say("desk.class.alike.h-odd"));
    } else if (person.bias() == Person.Bias.OFF) {
      standing.add(words().say("desk.class.alike.off"));
    }
    if (person.scatter() == Person.Scatter.ODD) {
      standing.add(words().say("desk.class.alike.k-odd"));
    }
    return new Reader(person, bar, String.join(", ", standing));
  }

  private String title(AlikeStudy study, Map<UUID, String> names) {
    List<String> parts = new ArrayList<>();
    parts.add(names.getOrDefault(study.conditions().clothId(), ""));
    parts.add(words().say("act.class.grain." + study.conditions().grain().key()));
    UUID lesson = study.conditions().lessonId();
    if (lesson != null && names.containsKey(lesson)) {
      parts.add(names.getOrDefault(lesson, ""));
    }
    return String.join(" · ", parts);
  }
}
