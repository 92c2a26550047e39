package walebook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.book.DemoBook;
import walebook.paper.ReadPdf;

/** Paper from the command line, read back. */
class PrintCommandTest {
  @TempDir Path folder;

  private static Ran print(Path book, String what, Path file, String... more) {
    List<String> args = new ArrayList<>(List.of("print", what, "--out", file.toString()));
    args.addAll(List.of(more));
    return Ran.on(book, args.toArray(String[]::new));
  }

  private Path demo() {
    Path book = folder.resolve("demo.walebook");
    DemoBook.copyTo(book);
    return book;
  }

  @Test
  void eachKindIsPrinted() throws IOException {
    Path book = demo();
    for (String what : List.of("labels", "cards", "grid", "plan", "hand-out", "kit", "marks")) {
      Path file = folder.resolve(what + ".pdf");
      Ran ran = print(book, what, file);
      assertThat(ran.exit()).as(ran.err()).isZero();
      try (ReadPdf pdf = ReadPdf.of(file)) {
        assertThat(pdf.pages()).isPositive();
        assertThat(pdf.text()).isNotBlank();
      }
      assertThat(ran.out()).contains("Printed to " + file);
    }
    Path record = folder.resolve("record.pdf");
    assertThat(print(book, "record", record, "--student", "S02", "--names", "code").exit())
        .isZero();
    try (ReadPdf pdf = ReadPdf.of(record)) {
      assertThat(pdf.text()).contains("S02").doesNotContain("Tamoun");
    }
  }

  @Test
  void gridPaperAndStartAreTaken() throws IOException {
    Path book = demo();
    Path file = folder.resolve("labels.pdf");
    Ran ran =
        print(
            book,
            "labels",
            file,
            "--paper",
            "letter",
            "--start",
            "30",
            "--names",
            "initials",
            "--student",
            "S01",
            "--json");
    assertThat(ran.exit()).isZero();
    assertThat(ran.out()).contains("\"pages\" : 2");
    try (ReadPdf pdf = ReadPdf.of(file)) {
      assertThat(pdf.text()).contains("A. B.").doesNotContain("Anouk");
    }
  }

  @Test
  void whatIsWrongIsSaidAndNothingIsWritten() throws IOException {
    Path book = demo();
    Path file = Files.writeString(folder.resolve("mine.pdf"), "mine");
    refused(print(book, "plan", file), "--replace");
    refused(print(book, "plan", folder.resolve("plan.txt")), ".pdf");
    Path other = folder.resolve("a.pdf");
    refused(print(book, "labels", other, "--grid", "4x4"), "3x7, 3x8, 5x13, 3x10");
    refused(print(book, "labels", other, "--start", "99"), "99");
    refused(print(book, "plan", other, "--paper", "a3"), "a4, letter");
    refused(print(book, "garment", other, "--garment", "none"), "none");
    refused(print(book, "record", other), "student");
    assertThat(Files.readString(file)).isEqualTo("mine");
    assertThat(other).doesNotExist();
    assertThat(print(book, "plan", file, "--replace").exit()).isZero();
  }

  private static void refused(Ran ran, String says) {
    assertThat(ran.exit()).isEqualTo(Exit.REFUSED.code());
    assertThat(ran.err()).contains(says);
  }
}
