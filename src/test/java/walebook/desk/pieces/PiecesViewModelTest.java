package walebook.desk.pieces;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.piece.PieceField;
import walebook.desk.PlannedClass;
import walebook.desk.common.Session;
import walebook.desk.common.Wish;
import walebook.desk.common.Worker;
import walebook.quantity.Unit;

@SuppressWarnings("NullAway.Init")
class PiecesViewModelTest {
  @TempDir Path folder;

  private PlannedClass made;
  private Session session;
  private PiecesViewModel place;

  @BeforeEach
  void begin() {
    made = PlannedClass.in(folder.resolve("class.walebook"), 1);
    session = made.sitting(Worker.sameThread(), PlannedClass.OneFile.NONE);
    place = new PiecesViewModel(session, Unit.MM);
  }

  @AfterEach
  void close() {
    made.close();
  }

  @Test
  void aWishThatCameBeforeThePlaceWasBuiltIsTakenUp() {
    session.wish(new Wish("pieces", Wish.What.LOG_PLANNED, made.planned(2)));
    PiecesViewModel later = new PiecesViewModel(session, Unit.MM);
    assertThat(later.modeProperty().get()).isEqualTo(PiecesViewModel.Mode.FORM);
    assertThat(later.form().titleProperty().get()).contains("piece 3 of 4");
  }

  @Test
  void afterSavingThePieceIsShownAndTheNextOneOffered() {
    place.logNext();
    place.form().field(PieceField.END).textProperty().set("held");
    place.form().field(PieceField.END_LENGTH).textProperty().set("155");
    int before = session.changesProperty().get();
    place.form().save();
    assertThat(place.modeProperty().get()).isEqualTo(PiecesViewModel.Mode.PIECE);
    assertThat(session.changesProperty().get()).isEqualTo(before + 1);
    assertThat(place.noticeProperty().get().says()).startsWith("saved ");
    assertThat(Objects.requireNonNull(place.nextProperty().get()).id()).isEqualTo(made.planned(1));
    place.logNext();
    assertThat(place.form().titleProperty().get()).contains("piece 2 of 4");
  }

  @Test
  void aLoggedPieceIsNotLoggedTwice() {
    place.logNext();
    place.form().field(PieceField.END).textProperty().set("held");
    place.form().field(PieceField.END_LENGTH).textProperty().set("155");
    place.form().save();
    session.wish(new Wish("pieces", Wish.What.LOG_PLANNED, made.planned(0)));
    assertThat(place.modeProperty().get()).isEqualTo(PiecesViewModel.Mode.PIECE);
    assertThat(place.noticeProperty().get().says()).contains("logged already");
  }

  @Test
  void goingToTheListKeepsWhatIsTyped() {
    place.logNext();
    place.form().field(PieceField.REMARK).textProperty().set("half done");
    place.toList();
    place.logNext();
    assertThat(place.form().field(PieceField.REMARK).textProperty().get()).isEqualTo("half done");
    place.discard();
    assertThat(place.modeProperty().get()).isEqualTo(PiecesViewModel.Mode.LIST);
    place.logNext();
    assertThat(place.form().field(PieceField.REMARK).textProperty().get()).isEmpty();
  }

  @Test
  void whoeverHasNotSaidWhoTheyAreIsAsked() {
    session.studentProperty().set(null);
    place.logOwn();
    assertThat(Objects.requireNonNull(session.wishProperty().get()).place()).isEqualTo("today");
  }
}
