package walebook.desk.pieces;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.piece.DraftPhotos;
import walebook.act.piece.KeepDraft;
import walebook.act.piece.PieceEntry;
import walebook.act.piece.PieceField;
import walebook.act.piece.ReadyPhoto;
import walebook.book.PieceFilter;
import walebook.desk.LastFirst;
import walebook.desk.PlannedClass;
import walebook.desk.common.Background;
import walebook.desk.common.Session;
import walebook.desk.common.Task;
import walebook.desk.common.Worker;
import walebook.quantity.Unit;
import walebook.record.TestPiece;

class PhotosViewModelTest {
  @TempDir Path folder;

  private Path photo() throws IOException {
    Path file = folder.resolve("seam.png");
    ImageIO.write(new BufferedImage(30, 20, BufferedImage.TYPE_INT_RGB), "png", file.toFile());
    return file;
  }

  @Test
  void aPickedPhotoIsKeptWithThePiece() throws IOException {
    try (PlannedClass made = PlannedClass.in(folder.resolve("a.walebook"), 1)) {
      Session session = made.sitting(Worker.sameThread(), new PlannedClass.OneFile(photo()));
      LogFormViewModel form = new LogFormViewModel(session, Unit.MM, piece -> {});
      form.begin(
          Objects.requireNonNull(
              new LoadForm(session)
                  .planned(made.room.schoolClass.id(), made.room.first.id(), made.planned(0))));
      form.photos().pick();
      form.field(PieceField.END).textProperty().set("held");
      form.field(PieceField.END_LENGTH).textProperty().set("155");
      form.save();
      TestPiece piece = made.room.book.pieces().list(PieceFilter.ALL).get(0);
      assertThat(made.room.book.photos().ofPiece(piece.id()))
          .singleElement()
          .satisfies(info -> assertThat(info.widthPx()).isEqualTo(30));
    }
  }

  /** A draft that could not be written, as on a full disk, counts as kept by nobody. */
  @Test
  void aPhotoWhoseDraftFailedIsKeptTheNextTime() throws IOException {
    try (PlannedClass made = PlannedClass.in(folder.resolve("c.walebook"), 1)) {
      FullDisk disk = new FullDisk();
      Session session = made.sitting(disk, new PlannedClass.OneFile(photo()));
      LogFormViewModel form = new LogFormViewModel(session, Unit.MM, piece -> {});
      form.begin(
          Objects.requireNonNull(
              new LoadForm(session)
                  .planned(made.room.schoolClass.id(), made.room.first.id(), made.planned(0))));
      form.field(PieceField.REMARK).textProperty().set("wavy");
      form.photos().pick();
      disk.full = true;
      assertThatThrownBy(form::keepDraft).hasRootCauseMessage("disk full");
      assertThat(made.room.book.drafts().of("piece")).isEmpty();
      disk.full = false;
      form.keepDraft();
      assertThat(photosInDraft(made)).hasSize(1);
      form.photos().pick();
      disk.full = true;
      assertThatThrownBy(form::keepDraft).hasRootCauseMessage("disk full");
      form.rest();
      assertThat(photosInDraft(made)).hasSize(2);
      LogFormViewModel later =
          new LogFormViewModel(
              made.sitting(Worker.sameThread(), PlannedClass.OneFile.NONE), Unit.MM, piece -> {});
      later.begin(
          Objects.requireNonNull(
              new LoadForm(session)
                  .planned(made.room.schoolClass.id(), made.room.first.id(), made.planned(0))));
      assertThat(later.photos().photos()).hasSize(2);
      assertThat(later.field(PieceField.REMARK).textProperty().get()).isEqualTo("wavy");
    }
  }

  private static List<ReadyPhoto> photosInDraft(PlannedClass made) {
    PieceEntry entry =
        Objects.requireNonNull(
            new KeepDraft(made.room.book).find(made.room.first.id(), made.planned(0)));
    return new DraftPhotos(made.room.book).find(entry);
  }

  /** Work at once, or none of it while the disk is full. */
  private static final class FullDisk implements Background {
    private boolean full;

    @Override
    public <T> Task run(Work<T> work, Consumer<T> done, Consumer<Throwable> failed) {
      Work<T> tried =
          progress -> {
            if (full) {
              throw new IOException("disk full");
            }
            return work.run(progress);
          };
      return Worker.sameThread().run(tried, done, failed);
    }
  }

  @Test
  void aWrongFileIsToldAndTheOthersStay() throws IOException {
    Path text = Files.writeString(folder.resolve("notes.txt"), "no picture");
    try (PlannedClass made = PlannedClass.in(folder.resolve("b.walebook"), 1)) {
      Session session = made.sitting(Worker.sameThread(), PlannedClass.OneFile.NONE);
      PhotosViewModel photos = new PhotosViewModel(session, () -> {});
      photos.add(List.of(photo(), text));
      assertThat(photos.photos()).hasSize(1);
      assertThat(Objects.requireNonNull(photos.problemProperty().get()).code())
          .isEqualTo("photo.not-a-photo");
      photos.pick();
      photos.remove(photos.photos().get(0));
      assertThat(photos.photos()).isEmpty();
    }
  }

  private static FormStart start(PlannedClass made, Session session, int place) {
    return Objects.requireNonNull(
        new LoadForm(session)
            .planned(made.room.schoolClass.id(), made.room.first.id(), made.planned(place)));
  }

  /** A large photo takes its time; whose piece it is doesn't change meanwhile. */
  @Test
  void aPhotoStillBeingReadGoesWithThePieceItWasPickedForOrWithNone() throws IOException {
    try (PlannedClass made = PlannedClass.in(folder.resolve("late.walebook"), 1)) {
      LastFirst work = new LastFirst();
      Session session = made.sitting(work.worker(), new PlannedClass.OneFile(photo()));
      LogFormViewModel form = new LogFormViewModel(session, Unit.MM, piece -> {});
      form.begin(start(made, session, 0));
      form.photos().pick();
      form.begin(start(made, session, 1));
      work.workAll();
      assertThat(form.photos().photos()).isEmpty();
      form.photos().pick();
      form.field(PieceField.END).textProperty().set("held");
      form.field(PieceField.END_LENGTH).textProperty().set("155");
      form.save();
      form.save();
      work.workAll();
      TestPiece piece =
          assertThat(made.room.book.pieces().list(PieceFilter.ALL)).singleElement().actual();
      assertThat(made.room.book.photos().ofPiece(piece.id())).hasSize(1);
    }
  }

  /** Whoever pressed Save before the file was read is told first that it is no photo. */
  @Test
  void aSaveThatWaitsForAPhotoIsNoneWhereTheFileIsNoPhoto() throws IOException {
    Path text = Files.writeString(folder.resolve("notes.txt"), "no picture");
    try (PlannedClass made = PlannedClass.in(folder.resolve("wait.walebook"), 1)) {
      LastFirst work = new LastFirst();
      Session session = made.sitting(work.worker(), new PlannedClass.OneFile(text));
      LogFormViewModel form = new LogFormViewModel(session, Unit.MM, piece -> {});
      form.begin(start(made, session, 0));
      form.field(PieceField.END).textProperty().set("held");
      form.field(PieceField.END_LENGTH).textProperty().set("155");
      form.photos().pick();
      form.save();
      work.workAll();
      assertThat(made.room.book.pieces().list(PieceFilter.ALL)).isEmpty();
      assertThat(form.photos().problemProperty().get()).isNotNull();
      form.save();
      work.workAll();
      assertThat(made.room.book.pieces().list(PieceFilter.ALL)).hasSize(1);
    }
  }
}
