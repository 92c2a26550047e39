package walebook.act.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.book.DemoBook;
import walebook.book.Book;
import walebook.paper.LabelGrid;
import walebook.paper.PaperSize;
import walebook.paper.ReadPdf;
import walebook.record.SchoolClass;
import walebook.record.Student;

/** Every kind of page of the demo class, held against what a copier and poor eyes need. */
class CopyProofTest {
  /** Points in a line of 0.3 mm. */
  private static final double THIN = 0.3 * 72 / 25.4;

  @TempDir Path folder;

  @Test
  void noHairlineNoPaleGreyNoTinyLetter() throws IOException {
    for (Path file : everything()) {
      try (ReadPdf pdf = ReadPdf.of(file)) {
        String name = file.getFileName().toString();
        assertThat(pdf.given("w")).as(name).allMatch(width -> width > THIN - 0.001);
        for (String grey : new String[] {"g", "G"}) {
          assertThat(pdf.given(grey)).as(name).allMatch(white -> white <= 0.6 || white == 1);
        }
        assertThat(pdf.given("rg")).as(name).isEmpty();
        assertThat(pdf.given("RG")).as(name).isEmpty();
        assertThat(pdf.given("Tf")).as(name).isNotEmpty().allMatch(points -> points > 7.99);
      }
    }
  }

  private List<Path> everything() {
    List<Path> files = new ArrayList<>();
    try (Book book = DemoBook.open(folder.resolve("demo.walebook"))) {
      SchoolClass of = book.classes().all().get(0);
      var lessons = book.lessons().of(of.id());
      Student student = book.enrolments().studentsOf(of.id()).get(0);
      PrintScope last =
          new PrintScope(of.id(), lessons.get(lessons.size() - 1).id(), null, Naming.NAME);
      PrintScope one = new PrintScope(of.id(), null, student.id(), Naming.NAME);
      var words = PaperClass.WORDS;
      var tables = PaperClass.TABLES;
      files.add(file("marks"));
      new PrintMarks(book, words, java.time.ZoneOffset.UTC)
          .print(one, PaperSize.A4, PaperClass.file(file("marks")))
          .value();
      files.add(file("labels"));
      new PrintLabels(book, words, tables)
          .print(last, LabelGrid.COMMON.get(2), 1, true, PaperClass.file(file("labels")))
          .value();
      files.add(file("cards"));
      new PrintCards(book, words, tables)
          .print(last, PaperSize.LETTER, PaperClass.file(file("cards")))
          .value();
      files.add(file("grid"));
      new PrintWallGrid(book, words, tables)
          .print(last, PaperSize.A4, PaperClass.file(file("grid")))
          .value();
      files.add(file("plan"));
      new PrintPlan(book, words, tables)
          .print(last, PaperSize.A4, PaperClass.file(file("plan")))
          .value();
      files.add(file("hand-out"));
      new PrintHandOut(words)
          .print(book, lessons.get(0), PaperSize.A4, PaperClass.file(file("hand-out")))
          .value();
      files.add(file("kit"));
      new PrintKit(words)
          .ofLesson(
              book,
              lessons.get(lessons.size() - 1),
              tables,
              PaperSize.A4,
              PaperClass.file(file("kit")))
          .value();
      files.add(file("record"));
      new PrintTermRecord(book, words, tables)
          .print(one, PaperSize.A4, PaperClass.file(file("record")))
          .value();
    }
    return files;
  }

  private Path file(String name) {
    return folder.resolve(name + ".pdf");
  }
}
