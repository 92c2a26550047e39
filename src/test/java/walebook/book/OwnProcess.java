package walebook.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.spi.ToolProvider;

/**
 * The classes under test in a process of their own, which a test may kill. A process that is killed
 * lives hardly longer than it takes to start, so the start is prepared once: what a first run
 * loaded is kept in an archive of the JDK's (class data sharing), which halves the time.
 */
public final class OwnProcess {
  private final Path folder;
  private final String classes;
  private final Path archive;

  private OwnProcess(Path folder) {
    this.folder = folder;
    this.classes = jarred(folder);
    this.archive = folder.resolve("classes.jsa");
  }

  /**
   * Lets a first run end by itself, so that those after it start quickly.
   *
   * @param folder where the archive goes, about 60 MB; the test's own
   * @param input what the first run reads on its standard input
   * @param mainAndWords the main class and its arguments, for an end that is not an error
   */
  public static OwnProcess preparedBy(Path folder, String input, String... mainAndWords)
      throws Exception {
    OwnProcess made = new OwnProcess(Files.createDirectories(folder));
    Path typed = Files.writeString(folder.resolve("input.txt"), input, StandardCharsets.UTF_8);
    Path said = folder.resolve("first.txt");
    Process first =
        made.builder("-XX:ArchiveClassesAtExit=" + made.archive, mainAndWords)
            .redirectInput(typed.toFile())
            .redirectErrorStream(true)
            .redirectOutput(said.toFile())
            .start();
    assertThat(first.waitFor(2, TimeUnit.MINUTES)).isTrue();
    assertThat(first.exitValue()).as(Files.readString(said)).isZero();
    return made;
  }

  /**
   * Starts it; its errors go to a file.
   *
   * @param mainAndWords the main class and its arguments
   */
  public Process start(Path errors, String... mainAndWords) throws IOException {
    return builder("-XX:SharedArchiveFile=" + archive, mainAndWords)
        .redirectError(errors.toFile())
        .start();
  }

  private ProcessBuilder builder(String sharing, String... mainAndWords) {
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Xshare:auto",
                // What the JDK says of an archive would stand among the program's own lines.
                "-Xlog:disable",
                "-Dorg.jooq.no-logo=true",
                "-Dorg.jooq.no-tips=true",
                "-Djava.io.tmpdir=" + folder,
                sharing,
                "-cp",
                classes));
    command.addAll(List.of(mainAndWords));
    return new ProcessBuilder(command);
  }

  /** The class path with jars for its folders, since the archive takes no folders. */
  private static String jarred(Path folder) {
    ToolProvider jar = ToolProvider.findFirst("jar").orElseThrow();
    List<String> parts = new ArrayList<>();
    for (String part : System.getProperty("java.class.path").split(File.pathSeparator)) {
      if (Files.isDirectory(Path.of(part))) {
        String file = folder.resolve(parts.size() + ".jar").toString();
        assertThat(jar.run(System.out, System.err, "-c", "-0", "-f", file, "-C", part, "."))
            .as("jar of " + part)
            .isZero();
        parts.add(file);
      } else {
        parts.add(part);
      }
    }
    return String.join(File.pathSeparator, parts);
  }
}
