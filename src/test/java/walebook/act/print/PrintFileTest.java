package walebook.act.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.paper.LabelGrid;
import walebook.paper.PaperProgress;
import walebook.paper.PaperSize;
import walebook.paper.ReadPdf;
import walebook.problem.Answer;

/** A file appears whole or not at all, and never in the place of another unasked. */
class PrintFileTest {
  @TempDir Path folder;

  private static Answer<Printed> labels(PaperClass in, PrintFile file) {
    return new PrintLabels(in.room.book, PaperClass.WORDS, PaperClass.TABLES)
        .print(in.scope(null, Naming.NAME), LabelGrid.COMMON.get(0), 1, false, file);
  }

  private static List<String> codes(Answer<?> answer) {
    return answer.problems().stream().map(each -> each.code()).toList();
  }

  private List<String> files() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(each -> each.getFileName().toString())
          .filter(each -> !each.startsWith("class.walebook"))
          .toList();
    }
  }

  @Test
  void aFileThatIsThereStaysUnlessReplacingIsAskedFor() throws IOException {
    try (PaperClass in = PaperClass.in(folder)) {
      in.plan(in.room.first, 1);
      Path file = Files.writeString(folder.resolve("labels.pdf"), "mine");
      assertThat(codes(labels(in, PaperClass.file(file)))).containsExactly("sheet.exists");
      assertThat(Files.readString(file)).isEqualTo("mine");
      PrintFile replace = new PrintFile(file, true, PaperProgress.UNHEARD);
      assertThat(labels(in, replace).value().pages()).isEqualTo(1);
      try (ReadPdf pdf = ReadPdf.of(file)) {
        assertThat(pdf.pages()).isEqualTo(1);
      }
      assertThat(files()).containsExactly("labels.pdf");
    }
  }

  @Test
  void stoppingLeavesNothingBehind() throws IOException {
    try (PaperClass in = PaperClass.in(folder)) {
      in.plan(in.room.first, 30);
      List<Double> heard = new ArrayList<>();
      PaperProgress stop =
          share -> {
            heard.add(share);
            if (share > 0.5) {
              throw new CancellationException();
            }
          };
      PrintFile file = new PrintFile(folder.resolve("labels.pdf"), false, stop);
      assertThatThrownBy(() -> labels(in, file)).isInstanceOf(CancellationException.class);
      assertThat(heard).hasSize(16).isSorted();
      assertThat(files()).isEmpty();
    }
  }

  @Test
  void whatIsInTheWayIsNamed() throws IOException {
    try (PaperClass in = PaperClass.in(folder)) {
      Path other = folder.resolve("labels.txt");
      Path missing = folder.resolve("nowhere").resolve("labels.pdf");
      Path directory = Files.createDirectory(folder.resolve("folder.pdf"));
      assertThat(codes(labels(in, PaperClass.file(other)))).containsExactly("print.no-pdf-name");
      assertThat(codes(labels(in, PaperClass.file(missing)))).containsExactly("sheet.no-folder");
      assertThat(codes(labels(in, PaperClass.file(directory)))).containsExactly("print.is-folder");
    }
  }

  @Test
  void aStartBeyondTheSheetIsRefused() {
    try (PaperClass in = PaperClass.in(folder)) {
      Answer<Printed> answer =
          new PrintLabels(in.room.book, PaperClass.WORDS, PaperClass.TABLES)
              .print(
                  in.scope(null, Naming.NAME),
                  LabelGrid.COMMON.get(0),
                  22,
                  false,
                  PaperClass.file(folder.resolve("labels.pdf")));
      assertThat(codes(answer)).containsExactly("number.outside");
      assertThat(answer.problems().get(0).wanted()).isEqualTo("1 – 21");
    }
  }

  @Test
  void gridsAreFoundByNameOrByTheirMeasures() {
    assertThat(ChooseGrid.of(Map.of(), PaperSize.A4).value().key()).isEqualTo("3x7");
    assertThat(ChooseGrid.of(Map.of(), PaperSize.LETTER).value().key()).isEqualTo("3x10");
    assertThat(ChooseGrid.of(Map.of("grid", "5x13"), PaperSize.A4).value().perSheet())
        .isEqualTo(65);
    LabelGrid free =
        ChooseGrid.of(
                Map.of("columns", "3", "rows", "9", "left", "1.5 cm", "gap-across", "3"),
                PaperSize.A4)
            .value();
    assertThat(free.widthMm()).isEqualTo((210 - 30 - 6) / 3.0);
    assertThat(free.heightMm()).isEqualTo(33);
    assertThat(codes(ChooseGrid.of(Map.of("grid", "4x4"), PaperSize.A4)))
        .containsExactly("print.grid");
    assertThat(codes(ChooseGrid.of(Map.of("columns", "9", "rows", "30"), PaperSize.A4)))
        .containsExactly("print.grid-too-small");
    assertThat(codes(ChooseGrid.of(Map.of("columns", "x", "rows", "0"), PaperSize.A4)))
        .containsExactly("number.not-a-number", "number.outside");
  }
}
