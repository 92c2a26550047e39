package walebook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.book.MakeDemoBook;
import walebook.book.Classroom;
import walebook.book.open.SqliteFiles;
import walebook.paper.ReadPdf;
import walebook.words.Words;

/** Paper from the command line, read back. */
class PrintCommandTest {
  @TempDir Path folder;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();
  private final Terminal terminal =
      new Terminal(
          new BufferedReader(new StringReader("")),
          new PrintStream(out, true, StandardCharsets.UTF_8),
          new PrintStream(err, true, StandardCharsets.UTF_8),
          Words.english(),
          Classroom.CLOCK,
          new Random(5));

  private int print(Path book, String what, Path file, String... more) {
    List<String> args =
        new ArrayList<>(
            List.of("print", what, "--book", book.toString(), "--out", file.toString()));
    args.addAll(List.of(more));
    return RunCommand.run(terminal, args.toArray(String[]::new));
  }

  private Path demo() {
    Path book = folder.resolve("demo.walebook");
    new MakeDemoBook(new SqliteFiles(), Classroom.CLOCK)
        .make(book, MakeDemoBook.SEED)
        .value()
        .close();
    return book;
  }

  @Test
  void eachKindIsPrinted() throws IOException {
    Path book = demo();
    for (String what : List.of("labels", "cards", "grid", "plan", "hand-out", "kit", "marks")) {
      Path file = folder.resolve(what + ".pdf");
      assertThat(print(book, what, file)).as(err.toString(StandardCharsets.UTF_8)).isZero();
      try (ReadPdf pdf = ReadPdf.of(file)) {
        assertThat(pdf.pages()).isPositive();
        assertThat(pdf.text()).isNotBlank();
      }
      assertThat(out.toString(StandardCharsets.UTF_8)).contains("Printed to " + file);
    }
    Path record = folder.resolve("record.pdf");
    assertThat(print(book, "record", record, "--student", "S02", "--names", "code")).isZero();
    try (ReadPdf pdf = ReadPdf.of(record)) {
      assertThat(pdf.text()).contains("S02").doesNotContain("Tamoun");
    }
  }

  @Test
  void gridPaperAndStartAreTaken() throws IOException {
    Path book = demo();
    Path file = folder.resolve("labels.pdf");
    int exit =
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
    assertThat(exit).isZero();
    assertThat(out.toString(StandardCharsets.UTF_8)).contains("\"pages\" : 2");
    try (ReadPdf pdf = ReadPdf.of(file)) {
      assertThat(pdf.text()).contains("A. B.").doesNotContain("Anouk");
    }
  }

  @Test
  void whatIsWrongIsSaidAndNothingIsWritten() throws IOException {
    Path book = demo();
    Path file = Files.writeString(folder.resolve("mine.pdf"), "mine");
    assertThat(print(book, "plan", file)).isEqualTo(1);
    assertThat(print(book, "plan", folder.resolve("plan.txt"))).isEqualTo(1);
    assertThat(print(book, "labels", folder.resolve("a.pdf"), "--grid", "4x4")).isEqualTo(1);
    assertThat(print(book, "labels", folder.resolve("a.pdf"), "--start", "99")).isEqualTo(1);
    assertThat(print(book, "plan", folder.resolve("a.pdf"), "--paper", "a3")).isEqualTo(1);
    assertThat(print(book, "garment", folder.resolve("a.pdf"), "--garment", "none")).isEqualTo(1);
    assertThat(print(book, "record", folder.resolve("a.pdf"))).isEqualTo(1);
    assertThat(Files.readString(file)).isEqualTo("mine");
    assertThat(Files.exists(folder.resolve("a.pdf"))).isFalse();
    assertThat(err.toString(StandardCharsets.UTF_8))
        .contains("--replace")
        .contains(".pdf")
        .contains("3x7, 3x8, 5x13, 3x10")
        .contains("a4, letter");
    assertThat(print(book, "plan", file, "--replace")).isZero();
  }
}
