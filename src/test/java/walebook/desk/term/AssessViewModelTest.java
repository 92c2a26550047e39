package walebook.desk.term;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.assess.CheckPiece;
import walebook.act.assess.KeepCriteria;
import walebook.act.assess.TagEvidence;
import walebook.book.Classroom;
import walebook.compare.assessed.Coverage;
import walebook.desk.Sessions;
import walebook.desk.common.Session;
import walebook.desk.common.Wish;
import walebook.record.CheckedBy;
import walebook.record.Criterion;
import walebook.record.SeamEnd;
import walebook.record.TestPiece;

class AssessViewModelTest {
  @TempDir Path folder;

  private static List<Criterion> criteria(Classroom room) {
    return new KeepCriteria(room.book, Classroom.CLOCK)
        .addList(room.schoolClass.id(), "1.1 Chooses a stitch\n1.2 Works safely", "")
        .value();
  }

  @Test
  void withoutCriteriaItBeginsWithTheList() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      AssessViewModel model = new AssessViewModel(Sessions.of(room));
      assertThat(model.partProperty().get()).isEqualTo(AssessViewModel.Part.CRITERIA);
      assertThat(model.timeProperty().get()).isEmpty();
      assertThat(model.gaps()).isEmpty();
    }
  }

  @Test
  void listsWhatIsMissingAndOpensThePieceToCheck() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      TestPiece piece = room.piece(SeamEnd.GAVE, 140);
      room.book.pieces().add(piece);
      new TagEvidence(room.book).piece(criteria(room).get(0).id(), piece.id(), true);
      Session session = Sessions.of(room);
      AssessViewModel model = new AssessViewModel(session);
      assertThat(model.partProperty().get()).isEqualTo(AssessViewModel.Part.MISSING);
      assertThat(model.gaps()).hasSize(4);
      // From 5 October to 18 December it is 74 days.
      assertThat(model.timeProperty().get()).contains(": 4.", ": 74;");
      assertThat(model.warningProperty().get()).isFalse();
      model.open(model.gaps().get(0));
      assertThat(session.wishProperty().get())
          .isEqualTo(new Wish("pieces", Wish.What.LOOK_OVER, piece.id()));
      model.open(model.gaps().get(1));
      assertThat(model.noticeProperty().get().says()).contains("Ada Pier", "1.2");
      new CheckPiece(room.book, Classroom.CLOCK)
          .check(piece.id(), CheckedBy.TUTOR, Map.of("reasoning-mark", "2"))
          .value();
      session.changed();
      assertThat(model.gaps()).hasSize(3);
      assertThat(model.coverageProperty().get().covered()).isEqualTo(1);
    }
  }

  @Test
  void oneStudentAloneAndNamesHidden() {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      criteria(room);
      Session session = Sessions.of(room);
      AssessViewModel model = new AssessViewModel(session);
      model.only(room.second);
      assertThat(model.gaps()).extracting(Coverage.Gap::student).containsOnly(room.second);
      session.namesHiddenProperty().set(true);
      assertThat(model.called(room.second)).isEqualTo("S02");
      model.open(model.gaps().get(0));
      assertThat(model.noticeProperty().get().says()).contains("S02").doesNotContain("Quay");
      model.only(null);
      assertThat(model.gaps()).hasSize(4);
      session.schoolClassProperty().set(null);
      assertThat(model.gaps()).isEmpty();
    }
  }

  @Test
  void criteriaAreFollowedAsTheyChange() {
    try (Classroom room = Classroom.in(folder.resolve("d.walebook"))) {
      AssessViewModel model = new AssessViewModel(Sessions.of(room));
      model.criteria().list().field(KeepCriteria.LIST).text().set("1 One\n2 Two");
      model.criteria().addList();
      assertThat(Objects.requireNonNull(model.coverageProperty().get()).criteria()).hasSize(2);
      assertThat(model.noticeProperty().get().says()).contains("2");
    }
  }
}
