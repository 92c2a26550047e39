package walebook.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.problem.Answer;

/** Whatever the disk does while a record is written, it is said, and nothing is left behind. */
class WorkbookFileTest {
  @TempDir Path folder;

  /** Takes so many bytes and then does what a full disk does. */
  private static final class Small extends OutputStream {
    private int left;

    Small(int left) {
      this.left = left;
    }

    @Override
    public void write(int one) throws IOException {
      if (left-- <= 0) {
        throw new IOException("No space left on device");
      }
    }
  }

  private interface Writes {
    void to(TermFacts facts, OutputStream out) throws IOException;
  }

  private static final List<Writes> FORMATS =
      List.of(
          (facts, out) ->
              TermWorkbook.write(facts, HarbourClass.WORDS, out, ExportProgress.UNHEARD),
          (facts, out) -> TermJson.write(facts, HarbourClass.WORDS, out, ExportProgress.UNHEARD));

  @Test
  void aDiskThatFailsAnywhereInTheFileIsSaid() throws IOException {
    Path place = Files.createDirectory(folder.resolve("out"));
    try (HarbourClass harbour = HarbourClass.in(folder.resolve("class.walebook"), 60)) {
      TermFacts facts = harbour.facts(false);
      for (Writes each : FORMATS) {
        for (int room : new int[] {0, 10, 3_000, 9_000, 20_000}) {
          Answer<Path> answer =
              WorkbookFile.whole(
                  place.resolve("term"), true, out -> each.to(facts, new Small(room)));
          assertThat(answer.isGood()).as("room for %d", room).isFalse();
          assertThat(answer.problems().get(0).code()).isEqualTo("sheet.not-written");
          assertThat(HarbourClass.WORDS.say(answer.problems().get(0)))
              .contains("No space left on device");
          assertThat(files(place)).isEmpty();
        }
      }
    }
  }

  @Test
  void aFolderThatGoesMeanwhileIsSaid() throws IOException {
    Path place = Files.createDirectory(folder.resolve("out"));
    Answer<Path> answer =
        WorkbookFile.whole(
            place.resolve("term.xlsx"),
            true,
            out -> {
              out.write(1);
              for (String part : files(place)) {
                Files.delete(place.resolve(part));
              }
              Files.delete(place);
            });
    assertThat(answer.isGood()).isFalse();
    assertThat(answer.problems().get(0).code()).isEqualTo("sheet.not-written");
    assertThat(place).doesNotExist();
  }

  @Test
  void aFileThatComesMeanwhileIsSpared() throws IOException {
    Path place = Files.createDirectory(folder.resolve("out"));
    Path file = place.resolve("term.xlsx");
    Answer<Path> answer =
        WorkbookFile.whole(
            file,
            false,
            out -> {
              out.write(1);
              Files.writeString(file, "somebody else's");
            });
    assertThat(answer.isGood()).isFalse();
    assertThat(answer.problems().get(0).code()).isEqualTo("sheet.exists");
    assertThat(file).hasContent("somebody else's");
    assertThat(files(place)).containsExactly("term.xlsx");
  }

  @Test
  void aFaultOfOurOwnIsNotPutOnTheDisk() {
    assertThatThrownBy(
            () ->
                WorkbookFile.whole(
                    folder.resolve("term.xlsx"),
                    true,
                    out -> {
                      throw new IllegalStateException("ours");
                    }))
        .hasMessage("ours");
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void aDeviceIsNoFile() {
    Path device = Path.of("/dev/full");
    org.junit.jupiter.api.Assumptions.assumeTrue(Files.exists(device));
    assertThat(WorkbookFile.inTheWay(device))
        .isNotNull()
        .extracting(walebook.problem.Problem::code)
        .isEqualTo("sheet.not-a-file");
  }

  private static List<String> files(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(each -> each.getFileName().toString()).toList();
    }
  }
}
