package walebook.desk.classroom;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Classroom;
import walebook.compare.odd.OddReading;
import walebook.desk.Sessions;
import walebook.desk.common.Session;
import walebook.desk.common.Wish;
import walebook.record.Mark;
import walebook.record.MarkedValue;
import walebook.record.SeamEnd;
import walebook.record.TestPiece;

class OddViewModelTest {
  @TempDir Path folder;

  /** A gauge of 100 mm read 510 mm: 410 % is beyond any limit. */
  private static TestPiece odd(Classroom room) {
    TestPiece piece = room.piece(SeamEnd.GAVE, 510);
    room.book.pieces().add(piece);
    return piece;
  }

  private static OddViewModel model(Session session) {
    OddViewModel model = new OddViewModel(session, new Narrowing(session));
    model.shown(true);
    return model;
  }

  private static OddReading seam(OddViewModel model) {
    return model.rows().stream()
        .filter(each -> each.value() == MarkedValue.SEAM_STRETCH)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void nothingIsAskedUntilThePartIsLookedAt() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      odd(room);
      Session session = Sessions.of(room);
      OddViewModel model = new OddViewModel(session, new Narrowing(session));
      assertThat(model.loadedProperty().get()).isFalse();
      model.shown(true);
      assertThat(model.rows()).isNotEmpty();
    }
  }

  @Test
  void anOddPieceOpensInItsPlace() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      TestPiece piece = odd(room);
      Session session = Sessions.of(room);
      OddViewModel model = model(session);
      model.open(seam(model));
      model.see();
      assertThat(session.wishProperty().get())
          .isEqualTo(new Wish("pieces", Wish.What.OPEN, piece.id()));
    }
  }

  @Test
  void settingAsideNeedsAReasonAndIsTakenBack() {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      odd(room);
      OddViewModel model = model(Sessions.of(room));
      model.open(seam(model));
      model.setAside();
      assertThat(model.form().field("reason").problem().get()).isNotNull();
      model.form().field("reason").text().set("clamp slipped");
      model.setAside();
      assertThat(requireNonNull(seam(model).mark()).mark()).isEqualTo(Mark.SET_ASIDE);
      requireNonNull(model.noticeProperty().get().undo()).run();
      assertThat(seam(model).mark()).isNull();
    }
  }

  @Test
  void aMistypedValueIsPutRightAndIsOddNoMore() {
    try (Classroom room = Classroom.in(folder.resolve("d.walebook"))) {
      TestPiece piece = odd(room);
      OddViewModel model = model(Sessions.of(room));
      model.open(seam(model));
      model.form().field("end-length").text().set("long");
      model.mistyped();
      assertThat(model.form().field("end-length").problem().get()).isNotNull();
      model.form().field("end-length").text().set("151");
      model.mistyped();
      TestPiece now = requireNonNull(room.book.pieces().find(piece.id()));
      assertThat(requireNonNull(now.measure().counting()).endMm()).isEqualTo(151);
      assertThat(model.openProperty().get()).isNull();
    }
  }

  @Test
  void aKeptValueStaysInTheListAsKept() {
    try (Classroom room = Classroom.in(folder.resolve("e.walebook"))) {
      odd(room);
      OddViewModel model = model(Sessions.of(room));
      model.open(seam(model));
      model.keep();
      assertThat(requireNonNull(seam(model).mark()).mark()).isEqualTo(Mark.KEPT);
    }
  }
}
