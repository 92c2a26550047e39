package walebook.desk.pieces;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.history.SayChange;
import walebook.act.history.StepBack;
import walebook.act.piece.PieceField;
import walebook.act.piece.ReadyPhoto;
import walebook.book.PieceFilter;
import walebook.desk.LastFirst;
import walebook.desk.PlannedClass;
import walebook.desk.common.Session;
import walebook.desk.common.Wish;
import walebook.desk.common.Worker;
import walebook.quantity.Unit;
import walebook.record.SeamEnd;
import walebook.record.TestPiece;
import walebook.seam.Factor;
import walebook.seam.NextTry;
import walebook.seam.Remedy;
import walebook.words.Words;

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

  private void logFirst(String remark) {
    place.logNext();
    place.form().field(PieceField.END).textProperty().set("held");
    place.form().field(PieceField.END_LENGTH).textProperty().set("155");
    place.form().field(PieceField.REMARK).textProperty().set(remark);
    place.form().save();
  }

  /** As the window's undo and redo do it. */
  private void turn(boolean redo) {
    StepBack act = new StepBack(session.book(), new SayChange(session.book(), words(), false));
    UUID student = Objects.requireNonNull(session.studentProperty().get()).id();
    if (redo) {
      act.redo(Objects.requireNonNull(act.redo(student)), session.by());
    } else {
      act.undo(Objects.requireNonNull(act.undo(student)), session.by());
    }
    session.changed();
  }

  private Words words() {
    return session.words();
  }

  private String remark() {
    return place.form().field(PieceField.REMARK).textProperty().get();
  }

  @Test
  void takingASavedPieceBackBringsTheFormWithAllThatWasTyped() {
    logFirst("thread shredded");
    turn(false);
    assertThat(made.room.book.pieces().list(PieceFilter.ALL)).isEmpty();
    assertThat(place.modeProperty().get()).isEqualTo(PiecesViewModel.Mode.FORM);
    assertThat(remark()).isEqualTo("thread shredded");
    assertThat(place.form().field(PieceField.END_LENGTH).textProperty().get()).isEqualTo("155");
    assertThat(place.form().noteProperty().get()).contains("taken back").contains("typed");
    place.toList();
    place.logNext();
    assertThat(remark()).isEqualTo("thread shredded");
    place.form().save();
    assertThat(made.room.book.pieces().list(PieceFilter.ALL)).hasSize(1);
    assertThat(place.modeProperty().get()).isEqualTo(PiecesViewModel.Mode.PIECE);
  }

  @Test
  void oneUndoTakesBackThePieceWithItsPhotosAndTheFormHasThemAgain() throws Exception {
    Path photo = folder.resolve("seam.png");
    ImageIO.write(new BufferedImage(8, 8, BufferedImage.TYPE_INT_RGB), "png", photo.toFile());
    place.logNext();
    place.form().photos().add(List.of(photo));
    place.form().field(PieceField.END).textProperty().set("held");
    place.form().field(PieceField.END_LENGTH).textProperty().set("155");
    place.form().save();
    turn(false);
    assertThat(made.room.book.pieces().list(PieceFilter.ALL)).isEmpty();
    assertThat(place.form().photos().photos()).hasSize(1);
    place.form().save();
    TestPiece again = made.room.book.pieces().list(PieceFilter.ALL).get(0);
    assertThat(made.room.book.photos().ofPiece(again.id())).hasSize(1);
  }

  @Test
  void aBinnedPieceComesBackAndItsSaveIsTakenBackWithTheForm() {
    logFirst("thread shredded");
    UUID id = Objects.requireNonNull(place.piece().pieceProperty().get()).id();
    place.bin(id);
    assertThat(place.modeProperty().get()).isEqualTo(PiecesViewModel.Mode.LIST);
    assertThat(made.room.book.drafts().of("piece")).as("binned, not taken back").isEmpty();
    assertThat(place.noticeProperty().get().says()).contains("bin");
    turn(false);
    assertThat(place.noticeProperty().get().says()).as("no longer true").isEmpty();
    assertThat(made.room.book.pieces().find(id)).isNotNull();
    turn(false);
    assertThat(made.room.book.pieces().find(id)).isNull();
    place.logNext();
    assertThat(remark()).isEqualTo("thread shredded");
  }

  @Test
  void aPieceWhoseBinIsEmptiedLeavesNoDraft() {
    logFirst("spoiled");
    place.bin(Objects.requireNonNull(place.piece().pieceProperty().get()).id());
    made.room.book.bin().empty(session.by());
    session.changed();
    assertThat(made.room.book.drafts().of("piece")).isEmpty();
  }

  @Test
  void oneUndoTakesBackAMendingWithThePhotoAddedToIt() throws Exception {
    Path photo = folder.resolve("seam.png");
    ImageIO.write(new BufferedImage(8, 8, BufferedImage.TYPE_INT_RGB), "png", photo.toFile());
    logFirst("first");
    UUID id = Objects.requireNonNull(place.piece().pieceProperty().get()).id();
    place.mend(id);
    place.form().photos().add(List.of(photo));
    place.form().field(PieceField.REMARK).textProperty().set("second");
    place.form().save();
    assertThat(made.room.book.photos().ofPiece(id)).hasSize(1);
    turn(false);
    TestPiece back = Objects.requireNonNull(made.room.book.pieces().find(id));
    assertThat(back.seen().remark()).isEqualTo("first");
    assertThat(made.room.book.photos().ofPiece(id)).isEmpty();
    turn(true);
    assertThat(made.room.book.photos().ofPiece(id)).hasSize(1);
    assertThat(Objects.requireNonNull(made.room.book.pieces().find(id)).seen().remark())
        .isEqualTo("second");
  }

  @Test
  void doingItAgainShowsThePieceAndWhatWasTypedSinceWaitsAsItsMending() {
    logFirst("first");
    turn(false);
    turn(true);
    assertThat(place.modeProperty().get()).isEqualTo(PiecesViewModel.Mode.PIECE);
    turn(false);
    assertThat(remark()).isEqualTo("first");
    place.form().field(PieceField.REMARK).textProperty().set("second");
    turn(true);
    assertThat(place.form().titleProperty().get()).contains("mending");
    assertThat(remark()).isEqualTo("second");
    place.form().save();
    assertThat(made.room.book.pieces().list(PieceFilter.ALL)).hasSize(1);
  }

  private List<Path> photos(int count) throws Exception {
    List<Path> files = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Path file = folder.resolve("seam-" + i + ".png");
      BufferedImage image = new BufferedImage(8 + i, 8, BufferedImage.TYPE_INT_RGB);
      ImageIO.write(image, "png", file.toFile());
      files.add(file);
    }
    return files;
  }

  private List<Integer> widths() {
    return place.form().photos().photos().stream().map(ReadyPhoto::widthPx).toList();
  }

  /** The window starts anew, as after a crash; the files on the stick are gone. */
  private void crash() {
    place = new PiecesViewModel(session, Unit.MM);
  }

  @Test
  void photosOfAHalfTypedPieceAreThereAgainAfterACrash() throws Exception {
    List<Path> files = photos(2);
    place.logNext();
    place.form().photos().add(files);
    place.form().keepDraft();
    for (Path each : files) {
      Files.delete(each);
    }
    crash();
    place.logNext();
    assertThat(widths()).containsExactly(8, 9);
    assertThat(place.form().photos().photos().get(1).name()).isEqualTo("seam-1.png");
    place.form().photos().remove(place.form().photos().photos().get(0));
    place.rest();
    crash();
    place.logNext();
    assertThat(widths()).containsExactly(9);
    place.form().field(PieceField.END).textProperty().set("held");
    place.form().field(PieceField.END_LENGTH).textProperty().set("155");
    place.form().save();
    TestPiece saved = made.room.book.pieces().list(PieceFilter.ALL).get(0);
    assertThat(made.room.book.photos().ofPiece(saved.id())).hasSize(1);
    assertThat(made.room.book.drafts().of("piece-photos")).isEmpty();
  }

  @Test
  void photosOfAFormThatIsThrownAwayGoWithIt() throws Exception {
    place.logNext();
    place.form().photos().add(photos(1));
    place.toList();
    assertThat(made.room.book.drafts().of("piece-photos")).hasSize(1);
    place.logNext();
    place.discard();
    assertThat(made.room.book.drafts().of("piece-photos")).isEmpty();
    place.logNext();
    assertThat(widths()).isEmpty();
  }

  @Test
  void photosChosenWhileMendingWaitToo() throws Exception {
    logFirst("first");
    UUID id = Objects.requireNonNull(place.piece().pieceProperty().get()).id();
    place.mend(id);
    place.form().photos().add(photos(1));
    place.toList();
    crash();
    place.mend(id);
    assertThat(widths()).containsExactly(8);
    place.form().save();
    assertThat(made.room.book.photos().ofPiece(id)).hasSize(1);
    assertThat(made.room.book.drafts().of("piece-photos")).isEmpty();
    place.mend(id);
    assertThat(widths()).isEmpty();
  }

  @Test
  void photosOfAPieceTakenBackOutlastACrashAndAnotherForm() throws Exception {
    place.logNext();
    place.form().photos().add(photos(1));
    place.form().field(PieceField.END).textProperty().set("held");
    place.form().field(PieceField.END_LENGTH).textProperty().set("155");
    place.form().save();
    place.logNext();
    turn(false);
    place.toList();
    crash();
    session.wish(new Wish("pieces", Wish.What.LOG_PLANNED, made.planned(0)));
    assertThat(widths()).containsExactly(8);
  }

  @Test
  void aPhotoAddedSinceThePieceWasTakenBackWaitsAsItsMendingWhenItIsBack() throws Exception {
    List<Path> files = photos(2);
    place.logNext();
    place.form().photos().add(files.subList(0, 1));
    place.form().field(PieceField.END).textProperty().set("held");
    place.form().field(PieceField.END_LENGTH).textProperty().set("155");
    place.form().save();
    turn(false);
    assertThat(widths()).containsExactly(8);
    place.form().photos().add(files.subList(1, 2));
    turn(true);
    assertThat(place.form().titleProperty().get()).contains("mending");
    assertThat(widths()).containsExactly(9);
    place.form().save();
    TestPiece saved = made.room.book.pieces().list(PieceFilter.ALL).get(0);
    assertThat(made.room.book.photos().ofPiece(saved.id())).hasSize(2);
  }

  @Test
  void aPieceTakenBackWhileAnotherIsTypedWaitsAsADraft() {
    logFirst("first");
    place.logNext();
    place.form().field(PieceField.REMARK).textProperty().set("of the second");
    turn(false);
    assertThat(remark()).isEqualTo("of the second");
    place.toList();
    session.wish(new Wish("pieces", Wish.What.LOG_PLANNED, made.planned(0)));
    assertThat(remark()).isEqualTo("first");
  }

  @Test
  void aPieceOfEarlierThatIsTakenBackLeavesTheListAndASentence() {
    logFirst("first");
    UUID id = Objects.requireNonNull(place.piece().pieceProperty().get()).id();
    PiecesViewModel later = new PiecesViewModel(session, Unit.MM);
    later.open(id);
    turn(false);
    assertThat(later.modeProperty().get()).isEqualTo(PiecesViewModel.Mode.LIST);
    assertThat(later.noticeProperty().get().says()).contains("taken back");
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
  void aLikelyCauseLeadsToTheNextPieceWithItsOneChange() {
    place.logNext();
    place.form().field(PieceField.PRESSURE).textProperty().set("higher");
    place.form().field(PieceField.END).textProperty().set("held");
    place.form().field(PieceField.END_LENGTH).textProperty().set("155");
    assertThat(place.form().causesProperty().get()).isEmpty();
    place.form().faults().choose("wavy-seam");
    CauseCard card = place.form().causesProperty().get().get(0);
    CauseCard.Line first = card.likely().get(0);
    // Common practice: a foot that presses too hard waves a seam, and is let up one step.
    assertThat(first.says()).contains("presses too hard");
    assertThat(first.why()).contains("higher");
    place.form().saveThen(Objects.requireNonNull(first.next()));
    assertThat(made.room.book.pieces().list(PieceFilter.ALL)).hasSize(1);
    assertThat(place.modeProperty().get()).isEqualTo(PiecesViewModel.Mode.FORM);
    assertThat(place.form().field(PieceField.PRESSURE).textProperty().get()).isEqualTo("normal");
    assertThat(place.form().field(PieceField.PRESSURE).changedProperty().get()).contains("higher");
    assertThat(place.form().moreOpenProperty().get()).isTrue();
    assertThat(place.form().inHand()).isEqualTo(PieceField.PRESSURE);
    assertThat(place.form().changeProperty().get()).contains("foot pressure");
    assertThat(place.form().noteProperty().get()).contains("less pressure");
  }

  @Test
  void aFormWhosePieceBeforeIsTakenBackSaysSoAndKeepsWhatWasChanged() {
    logFirst("first");
    TestPiece first = made.room.book.pieces().list(PieceFilter.ALL).get(0);
    place.again(first.id());
    LogFormViewModel form = place.form();
    form.field(PieceField.OTHER_CHANGE).textProperty().set("walking foot");
    form.field(PieceField.END).textProperty().set("held");
    form.field(PieceField.END_LENGTH).textProperty().set("150");
    turn(false);
    assertThat(place.modeProperty().get()).isEqualTo(PiecesViewModel.Mode.FORM);
    assertThat(form.wholeProperty().get()).contains("is taken back");
    turn(true);
    assertThat(form.wholeProperty().get()).isEmpty();
    assertThat(form.noteProperty().get()).isEmpty();
    turn(false);
    form.save();
    assertThat(made.room.book.pieces().list(PieceFilter.ALL)).isEmpty();
    assertThat(form.wholeProperty().get()).contains("not in the book any more");
    form.save();
    List<TestPiece> all = made.room.book.pieces().list(PieceFilter.ALL);
    assertThat(all).hasSize(1);
    assertThat(all.get(0).parent()).isNull();
    assertThat(all.get(0).seen().remark()).isEqualTo("walking foot");
  }

  @Test
  void aDraftThatChangesSomethingStaysAndTheChangeAskedForIsOnlyNamed() {
    TestPiece piece = made.room.piece(SeamEnd.GAVE, 140);
    made.room.book.pieces().add(piece);
    place.again(piece.id());
    place.form().field(PieceField.DIAL_WIDTH).textProperty().set("4");
    place.toList();
    Remedy remedy = new Remedy("shorter stitch", Factor.LENGTH, Remedy.Direction.DOWN, "0.5 mm");
    place.again(piece.id(), new NextTry(remedy, "2.5", "2", ""));
    assertThat(place.form().field(PieceField.DIAL_WIDTH).textProperty().get()).isEqualTo("4");
    assertThat(place.form().field(PieceField.DIAL_LENGTH).textProperty().get()).isEqualTo("2.5");
    assertThat(place.form().noteProperty().get()).contains("shorter stitch: 2.5 → 2");
  }

  @Test
  void aSavedPieceIsMendedInTheFormAndNothingTypedIsLost() {
    TestPiece piece = made.room.piece(SeamEnd.GAVE, 140);
    made.room.book.pieces().add(piece);
    place.open(piece.id());
    place.mend(piece.id());
    assertThat(place.form().titleProperty().get()).contains("mending");
    place.form().field(PieceField.END_LENGTH).textProperty().set("14");
    place.toList();
    place.mend(piece.id());
    assertThat(place.form().field(PieceField.END_LENGTH).textProperty().get()).isEqualTo("14");
    place.form().field(PieceField.END_LENGTH).textProperty().set("146");
    place.form().save();
    if (place.form().askingProperty().get()) {
      place.form().save();
    }
    assertThat(place.modeProperty().get()).isEqualTo(PiecesViewModel.Mode.PIECE);
    TestPiece mended = Objects.requireNonNull(made.room.book.pieces().find(piece.id()));
    assertThat(mended.measure().pulls().get(0).endMm()).isEqualTo(146);
    assertThat(mended.code()).isEqualTo(piece.code());
    assertThat(made.room.book.pieces().list(PieceFilter.ALL)).hasSize(1);
    place.mend(piece.id());
    assertThat(place.form().field(PieceField.END_LENGTH).textProperty().get()).isEqualTo("146");
  }

  @Test
  void aDialBeyondTheMachinesCardIsSaidToBeGuessed() {
    place.logNext();
    place.form().field(PieceField.DIAL_LENGTH).textProperty().set("4");
    place.form().field(PieceField.END).textProperty().set("held");
    place.form().field(PieceField.END_LENGTH).textProperty().set("155");
    place.form().save();
    WholePiece shown = Objects.requireNonNull(place.piece().pieceProperty().get());
    // The card was read at 2.5 alone, 2.2 mm: drawn on to 4 it makes 3.52 mm.
    assertThat(shown.settings())
        .extracting(WholePiece.Line::value)
        .anyMatch(each -> each.startsWith("4 on the dial, 3.52 mm guessed"));
  }

  @Test
  void layersAreCountedInWords() {
    place.logNext();
    assertThat(place.form().settingsSaysProperty().get()).contains("2 layers");
    place.form().field(PieceField.LAYERS).textProperty().set("1");
    assertThat(place.form().settingsSaysProperty().get()).contains("one layer");
  }

  @Test
  void whoeverHasNotSaidWhoTheyAreIsAsked() {
    session.studentProperty().set(null);
    place.logOwn();
    assertThat(Objects.requireNonNull(session.wishProperty().get()).place()).isEqualTo("today");
  }

  @Test
  void theNextPieceOfWhoSatHereBeforeIsNotOffered() {
    LastFirst work = new LastFirst();
    Session later = made.sitting(work.worker(), PlannedClass.OneFile.NONE);
    PiecesViewModel pieces = new PiecesViewModel(later, Unit.MM);
    later.studentProperty().set(made.room.second);
    work.workAll();
    assertThat(pieces.nextProperty().get()).isNull();
    later.studentProperty().set(made.room.first);
    later.studentProperty().set(null);
    work.workAll();
    assertThat(pieces.nextProperty().get()).isNull();
  }
}
