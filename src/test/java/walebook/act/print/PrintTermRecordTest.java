package walebook.act.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.UUID;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Classroom;
import walebook.book.Ids;
import walebook.paper.PaperSize;
import walebook.paper.ReadPdf;
import walebook.problem.Answer;
import walebook.record.Note;
import walebook.record.PhotoInfo;
import walebook.record.PieceCode;
import walebook.record.PlannedPiece;
import walebook.record.SeamEnd;
import walebook.record.TestPiece;

/** A student's term on paper. */
class PrintTermRecordTest {
  @TempDir Path folder;

  private ReadPdf print(PaperClass in, Naming naming) throws IOException {
    Path file = folder.resolve(UUID.randomUUID() + ".pdf");
    new PrintTermRecord(in.room.book, PaperClass.WORDS, PaperClass.TABLES)
        .print(in.scope(in.room.first, naming), PaperSize.A4, PaperClass.file(file))
        .value();
    return ReadPdf.of(file);
  }

  private static void photo(PaperClass in, TestPiece piece, byte[] bytes) {
    in.room
        .book
        .photos()
        .add(
            new PhotoInfo(
                Ids.next(), piece.id(), null, "", "image/jpeg", 60, 40, bytes, Classroom.FRESH),
            bytes);
  }

  private static byte[] picture(String format) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(new BufferedImage(60, 40, BufferedImage.TYPE_INT_RGB), format, out);
    return out.toByteArray();
  }

  @Test
  void piecesVerdictsPhotosAndLinesToSignStandThere() throws IOException {
    try (PaperClass in = PaperClass.in(folder)) {
      List<PlannedPiece> plan = in.plan(in.room.first, 3);
      TestPiece gave = in.log(plan.get(0), in.room.piece(SeamEnd.GAVE, 148));
      TestPiece held = in.log(plan.get(1), in.room.piece(SeamEnd.HELD, 160));
      photo(in, gave, picture("jpeg"));
      photo(in, gave, picture("png"));
      in.room
          .book
          .notes()
          .add(
              new Note(
                  Ids.next(),
                  Note.About.PIECE,
                  gave.id(),
                  "Mo",
                  "Lift the foot\nnext time",
                  Classroom.FRESH));
      photo(in, held, new byte[] {1, 2, 3});
      try (ReadPdf pdf = print(in, Naming.NAME)) {
        assertThat(pdf.text())
            .contains("Ada Pier")
            .contains("Class: Monday evening")
            .contains("Autumn")
            .contains("A seam that stretches: 2 of 3 planned pieces logged")
            .contains(PieceCode.spoken(gave.code()))
            .contains("gave at 148 mm")
            .contains("48.0 %")
            .contains("held to 160 mm")
            .contains("≥ 60.0 %")
            .contains("not met")
            .contains("slow feed")
            .contains("Note from Mo: Lift the foot next time")
            .contains("marks before 100 mm")
            .contains("could not be read")
            .contains("student tutor date");
        assertThat(pdf.images()).isEqualTo(2);
      }
    }
  }

  @Test
  void codesInThePlaceOfNamesLeaveFreeTextOut() throws IOException {
    try (PaperClass in = PaperClass.in(folder)) {
      TestPiece piece = in.log(in.plan(in.room.first, 1).get(0), in.room.piece(SeamEnd.GAVE, 148));
      in.room
          .book
          .notes()
          .add(
              new Note(
                  Ids.next(),
                  Note.About.PIECE,
                  piece.id(),
                  "Ada Pier",
                  "Pull gently",
                  Classroom.FRESH));
      try (ReadPdf pdf = print(in, Naming.CODE)) {
        assertThat(pdf.text())
            .contains("S01")
            .doesNotContain("Ada")
            .doesNotContain("Pier")
            .doesNotContain("gently")
            .doesNotContain("slow feed");
      }
    }
  }

  @Test
  void aStudentWithoutPiecesHasARecordToo() throws IOException {
    try (PaperClass in = PaperClass.in(folder);
        ReadPdf pdf = print(in, Naming.NAME)) {
      assertThat(pdf.pages()).isEqualTo(1);
      assertThat(pdf.text()).contains("No test piece has been logged yet");
    }
  }

  @Test
  void nobodysRecordIsAskedFor() {
    try (PaperClass in = PaperClass.in(folder)) {
      Path file = folder.resolve("nobody.pdf");
      Answer<Printed> answer =
          new PrintTermRecord(in.room.book, PaperClass.WORDS, PaperClass.TABLES)
              .print(in.scope(null, Naming.NAME), PaperSize.A4, PaperClass.file(file));
      assertThat(answer.problems()).extracting(each -> each.code()).containsExactly("field.needed");
      assertThat(Files.exists(file)).isFalse();
    }
  }
}
