package walebook.desk.classroom;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Classroom;
import walebook.compare.FairComparison;
import walebook.compare.Outcome;
import walebook.desk.Sessions;
import walebook.desk.common.Session;
import walebook.desk.common.Wish;
import walebook.record.PullReading;
import walebook.record.SeamEnd;

class FairViewModelTest {
  @TempDir Path folder;

  private static void pieces(Classroom room, double width, double endMm) {
    for (int i = 0; i < 4; i++) {
      room.book
          .pieces()
          .add(
              room.piece(
                  i % 2 == 0 ? room.first.id() : room.second.id(),
                  width,
                  List.of(new PullReading(1, SeamEnd.GAVE, endMm + i)),
                  List.of(),
                  null));
    }
  }

  private static FairComparison found(FairViewModel model) {
    return requireNonNull(model.shownProperty().get()).found().comparison();
  }

  @Test
  void rawAndAdjustedStandBesideHowManyAndWhatMattersIsTakenIn() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      pieces(room, 1.5, 130);
      pieces(room, 2.5, 160);
      Session session = Sessions.of(room);
      FairViewModel model = new FairViewModel(session, new Narrowing(session));
      assertThat(model.shownProperty().get()).isNull();
      model.shown(true);
      model.outcomeProperty().set(Outcome.SEAM_STRETCH);
      // Mean of 30, 31, 32, 33 %; both students sewed both widths, so adjusting changes nothing.
      assertThat(requireNonNull(found(model).rows().get(0).raw()).mean()).isEqualTo(31.5);
      assertThat(found(model).rows().get(0).students()).isEqualTo(2);
      model.matters().text().set("none");
      assertThat(model.matters().problem().get()).isNotNull();
      assertThat(found(model).question().matters()).isNull();
      model.matters().text().set("5");
      assertThat(model.matters().problem().get()).isNull();
      assertThat(found(model).question().matters()).isEqualTo(5);
      FairTables tables = new FairTables(model.words(), model.settings());
      assertThat(tables.cells(found(model)).get(1)).contains("4", "2", "31.5");
    }
  }

  @Test
  void theBestPieceOpensInItsPlace() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      pieces(room, 1.5, 130);
      pieces(room, 2.5, 160);
      Session session = Sessions.of(room);
      FairViewModel model = new FairViewModel(session, new Narrowing(session));
      model.outcomeProperty().set(Outcome.SEAM_STRETCH);
      model.shown(true);
      var best = requireNonNull(model.shownProperty().get()).found().standouts().best().get(0);
      assertThat(best.value()).isEqualTo(63);
      model.openPiece(best.pieceId());
      assertThat(session.wishProperty().get())
          .isEqualTo(new Wish("pieces", Wish.What.OPEN, best.pieceId()));
    }
  }
}
