package walebook.desk.term;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.assess.KeepCriteria;
import walebook.book.Classroom;
import walebook.desk.PlannedClass;
import walebook.desk.Sessions;
import walebook.desk.common.Notice;
import walebook.desk.common.Session;
import walebook.record.Criterion;
import walebook.record.Marking;

class CriteriaViewModelTest {
  @TempDir Path folder;

  private static void type(CriteriaViewModel model, String code, String says) {
    model.card().field(KeepCriteria.CODE).text().set(code);
    model.card().field(KeepCriteria.SAYS).text().set(says);
  }

  @Test
  void addsChangesMovesAndRemoves() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      CriteriaViewModel model = new CriteriaViewModel(Sessions.of(room));
      type(model, "1", "One");
      model.save();
      type(model, "2", "Two");
      model.save();
      assertThat(model.criteria()).extracting(Criterion::code).containsExactly("1", "2");
      assertThat(model.card().text(KeepCriteria.CODE)).isEmpty();
      model.open(model.criteria().get(1));
      model.move(-1);
      assertThat(model.criteria()).extracting(Criterion::code).containsExactly("2", "1");
      type(model, "2a", "Two, better");
      model.save();
      assertThat(model.criteria().get(0).says()).isEqualTo("Two, better");
      model.open(model.criteria().get(0));
      model.remove();
      assertThat(model.openProperty().get()).isNull();
      assertThat(model.criteria()).extracting(Criterion::code).containsExactly("1");
    }
  }

  @Test
  void whatWasDoneIsSaidUntilTheNextChange() {
    try (Classroom room = Classroom.in(folder.resolve("n.walebook"))) {
      Session session = Sessions.of(room);
      AssessViewModel model = new AssessViewModel(session);
      model.criteria().list().field(KeepCriteria.LIST).text().set("1 One\n2 Two");
      model.criteria().addList();
      assertThat(model.noticeProperty().get().says()).contains("2");
      session.changed();
      assertThat(model.noticeProperty().get()).isEqualTo(Notice.NONE);
    }
  }

  @Test
  void theMarksThatCountAreTickedAndSaved() {
    try (Classroom room = Classroom.in(folder.resolve("m.walebook"))) {
      CriteriaViewModel model = new CriteriaViewModel(Sessions.of(room));
      assertThat(Marking.values()).allMatch(model::looksAt);
      type(model, "1", "One");
      for (Marking each : Marking.values()) {
        model.lookAt(each, false);
      }
      model.save();
      assertThat(
              Objects.requireNonNull(model.card().field(KeepCriteria.MARKS).problem().get()).code())
          .isEqualTo("criterion.no-marks");
      model.lookAt(Marking.FINISH, true);
      model.save();
      assertThat(model.criteria().get(0).looksAt()).containsExactly(Marking.FINISH);
      assertThat(Marking.values()).allMatch(model::looksAt);
      model.open(model.criteria().get(0));
      assertThat(model.looksAt(Marking.FINISH)).isTrue();
      assertThat(model.looksAt(Marking.CHOICE)).isFalse();
      model.lookAt(Marking.CHOICE, true);
      model.rest();
      CriteriaViewModel again = new CriteriaViewModel(Sessions.of(room));
      assertThat(again.looksAt(Marking.CHOICE)).isTrue();
      assertThat(again.looksAt(Marking.TECHNIQUE)).isFalse();
    }
  }

  @Test
  void whatIsWrongIsSaidAndStaysTyped() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      CriteriaViewModel model = new CriteriaViewModel(Sessions.of(room));
      model.list().field(KeepCriteria.LIST).text().set("1 One\n1 Again");
      model.addList();
      assertThat(
              Objects.requireNonNull(model.list().field(KeepCriteria.LIST).problem().get()).code())
          .isEqualTo("criterion.taken");
      assertThat(model.list().text(KeepCriteria.LIST)).contains("Again");
      model.save();
      assertThat(model.card().field(KeepCriteria.CODE).problem().get()).isNotNull();
      assertThat(model.criteria()).isEmpty();
    }
  }

  @Test
  void lessonsAreTaggedWithTheOpenOne() {
    try (PlannedClass planned = PlannedClass.in(folder.resolve("c.walebook"), 1)) {
      Session session = Sessions.of(planned.room.book, planned.room.schoolClass, null);
      CriteriaViewModel model = new CriteriaViewModel(session);
      type(model, "1", "One");
      model.save();
      model.open(model.criteria().get(0));
      assertThat(model.lessons()).contains(planned.lesson);
      model.tag(planned.lesson, true);
      assertThat(model.taggedProperty().get()).containsExactly(planned.lesson.id());
      assertThat(model.lessonsOf(model.criteria().get(0))).isEqualTo(1);
      model.tag(planned.lesson, false);
      assertThat(model.taggedProperty().get()).isEmpty();
    }
  }

  @Test
  void whileAStudentIsAtTheScreenNothingOfItChanges() {
    try (PlannedClass planned = PlannedClass.in(folder.resolve("f.walebook"), 1)) {
      Session session = Sessions.of(planned.room.book, planned.room.schoolClass, null);
      CriteriaViewModel model = new CriteriaViewModel(session);
      type(model, "1", "One");
      model.save();
      type(model, "2", "Two");
      model.save();
      session.studentProperty().set(planned.room.first);
      assertThat(model.lockedProperty().get()).isTrue();
      type(model, "3", "Three");
      model.save();
      model.list().field(KeepCriteria.LIST).text().set("4 Four");
      model.addList();
      model.open(model.criteria().get(1));
      model.tag(planned.lesson, true);
      model.move(-1);
      model.remove();
      assertThat(model.criteria()).extracting(Criterion::code).containsExactly("1", "2");
      assertThat(model.taggedProperty().get()).isEmpty();
      assertThat(model.list().text(KeepCriteria.LIST)).isEqualTo("4 Four");
      model.tutorIsHere();
      assertThat(session.studentProperty().get()).isNull();
      model.tag(planned.lesson, true);
      assertThat(model.taggedProperty().get()).containsExactly(planned.lesson.id());
    }
  }

  @Test
  void whatIsTypedIsThereAgainAndGoneOnceSaved() {
    try (Classroom room = Classroom.in(folder.resolve("d.walebook"))) {
      CriteriaViewModel model = new CriteriaViewModel(Sessions.of(room));
      type(model, "1", "One");
      model.save();
      model.open(model.criteria().get(0));
      type(model, "1", "One, half ty");
      model.list().field(KeepCriteria.LIST).text().set("2 T");
      model.rest();
      CriteriaViewModel again = new CriteriaViewModel(Sessions.of(room));
      assertThat(Objects.requireNonNull(again.openProperty().get()).code()).isEqualTo("1");
      assertThat(again.card().text(KeepCriteria.SAYS)).isEqualTo("One, half ty");
      assertThat(again.list().text(KeepCriteria.LIST)).isEqualTo("2 T");
      again.keepDraft();
      again.save();
      again.addList();
      assertThat(room.book.drafts().of("assess")).isEmpty();
    }
  }

  @Test
  void aChangeUndoneElsewhereIsFollowed() {
    try (Classroom room = Classroom.in(folder.resolve("e.walebook"))) {
      Session session = Sessions.of(room);
      CriteriaViewModel model = new CriteriaViewModel(session);
      type(model, "1", "One");
      model.save();
      model.open(model.criteria().get(0));
      new KeepCriteria(room.book, Classroom.CLOCK).remove(model.criteria().get(0).id());
      session.changed();
      assertThat(model.openProperty().get()).isNull();
      assertThat(model.criteria()).isEmpty();
    }
  }
}
