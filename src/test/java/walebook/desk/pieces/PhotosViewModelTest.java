package walebook.desk.pieces;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.piece.PieceField;
import walebook.book.PieceFilter;
import walebook.desk.PlannedClass;
import walebook.desk.common.Session;
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
}
