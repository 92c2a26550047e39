package walebook.act.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Classroom;
import walebook.record.SeamEnd;

/**
 * A disk of four megabytes that really fills up, in a process of its own. Only a system that lets
 * anybody make such a disk (a memory disk in a name space of one's own, as Linux has) can run it.
 */
class DiskFullTest {
  @TempDir Path folder;

  @Test
  void aFullDiskIsSaidNothingIsHalfDoneAndAllThatWasSavedIsThere() throws Exception {
    Path disk = Files.createDirectory(folder.resolve("disk"));
    assumeTrue(canMount(disk), "no memory disk can be made here");
    Path student = folder.resolve("student.walebook");
    try (Classroom other = Classroom.in(student)) {
      for (int i = 0; i < 200; i++) {
        other.book.pieces().add(other.piece(SeamEnd.GAVE, 120 + i % 50));
      }
    }
    String said = run(disk, student);
    assertThat(said)
        .contains("saving full\n")
        .contains("in one go full\n")
        .contains("half of a go 0\n")
        .contains("with room again 1\n")
        .contains("unchanged true\n")
        .contains("left over []\n")
        .contains("lost 0\n")
        .contains("goes on 1\n")
        .contains("check ok\n");
    assertThat(said).containsPattern("gathering (full|unknown)\n");
    assertThat(said).containsPattern("backup book\\.no-copy /.*\n");
    assertThat(said).containsPattern("starter books full .*\n");
    assertThat(said).containsPattern("opening (good|book\\.disk-full .*)\n");
    assertThat(said).containsPattern("going back book\\.[a-z-]+ .*\n");
    assertThat(said).doesNotContain("book.damaged").doesNotContain("[problem");
  }

  private static boolean canMount(Path disk) throws IOException, InterruptedException {
    try {
      Process tried =
          new ProcessBuilder("unshare", "-Urm", "mount", "-t", "tmpfs", "tmpfs", disk.toString())
              .redirectErrorStream(true)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start();
      return tried.waitFor(20, TimeUnit.SECONDS) && tried.exitValue() == 0;
    } catch (IOException e) {
      return false;
    }
  }

  private String run(Path disk, Path student) throws Exception {
    Path out = folder.resolve("out.txt");
    Process child =
        new ProcessBuilder(
                List.of(
                    "unshare",
                    "-Urm",
                    "sh",
                    "-c",
                    "mount -t tmpfs -o size=4m tmpfs \"$1\" && shift && exec \"$@\"",
                    "sh",
                    disk.toString(),
                    Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                    "-XX:TieredStopAtLevel=1",
                    "-cp",
                    System.getProperty("java.class.path"),
                    DiskFullChild.class.getName(),
                    disk.toString(),
                    student.toString()))
            .redirectError(folder.resolve("errors.txt").toFile())
            .redirectOutput(out.toFile())
            .start();
    assertThat(child.waitFor(2, TimeUnit.MINUTES)).isTrue();
    String said = Files.readString(out, StandardCharsets.UTF_8);
    assertThat(child.exitValue())
        .as(said + Files.readString(folder.resolve("errors.txt")))
        .isZero();
    return said;
  }
}
