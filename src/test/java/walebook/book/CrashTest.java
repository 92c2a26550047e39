package walebook.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.open.SqliteFiles;
import walebook.book.sqlite.BookCheck;
import walebook.book.sqlite.Migrations;
import walebook.record.SeamEnd;
import walebook.record.TestPiece;

/**
 * A process is killed (SIGKILL) at a random moment of a chore, over and over: every acknowledged
 * change is there, the book's check passes, nothing is half done. 36 kills by default, {@code
 * -Dwalebook.kills=200} for the long form.
 */
class CrashTest {
  private static final int KILLS = Integer.getInteger("walebook.kills", 36);
  private static final int FEW = 5;
  private static final int MANY = 60;

  /** What the process is doing when it is killed. */
  enum Chore {
    SAVE,
    MANY_IN_ONE_STEP,
    BRING_IN,
    BACK_UP,
    RESTORE,
    MIGRATE;

    /** The longest life after its start: long enough to be done once, and then some. */
    private int longestMs() {
      return this == RESTORE || this == MIGRATE || this == BRING_IN ? 1500 : 250;
    }
  }

  @TempDir Path folder;
  private OwnProcess child;
  private final Map<Chore, List<String>> said = new EnumMap<>(Chore.class);
  private Set<String> fewCodes = Set.of();
  private Set<String> manyCodes = Set.of();

  @BeforeEach
  void prepare() throws Exception {
    Path few = folder.resolve("few.walebook");
    Path many = folder.resolve("many.walebook");
    fill(few, FEW);
    fill(many, MANY);
    fewCodes = codes(few);
    manyCodes = codes(many);
    for (Chore chore : Chore.values()) {
      Path home = Files.createDirectory(home(chore));
      Files.copy(few, home.resolve("class.walebook"));
      Files.copy(few, home.resolve("few.walebook"));
      Files.copy(many, home.resolve("many.walebook"));
    }
    OlderBook.make(home(Chore.MIGRATE).resolve("old.template"), 1, few);
    Path trial = Files.createDirectory(folder.resolve("trial"));
    Files.copy(few, trial.resolve("class.walebook"));
    String once = "1";
    child =
        OwnProcess.preparedBy(
            folder.resolve("process"),
            "",
            CrashChild.class.getName(),
            Chore.BRING_IN.name(),
            trial.toString(),
            once);
  }

  private Path home(Chore chore) {
    return folder.resolve(chore.name());
  }

  private static void fill(Path file, int pieces) {
    try (Classroom room = Classroom.in(file)) {
      for (int i = 0; i < pieces; i++) {
        room.book.pieces().add(room.piece(SeamEnd.GAVE, 120 + i));
      }
    }
  }

  private static Set<String> codes(Path file) {
    try (Book book = new SqliteFiles().open(file, Classroom.CLOCK).value()) {
      return book.pieces().list(PieceFilter.ALL).stream()
          .map(TestPiece::code)
          .collect(Collectors.toCollection(TreeSet::new));
    }
  }

  @Test
  void whatWasAcknowledgedIsThereAndNothingIsHalfDone() throws Exception {
    long seed = Long.getLong("walebook.seed", new Random().nextLong());
    System.out.println("CrashTest seed " + seed + ", kills " + KILLS);
    Random random = new Random(seed);
    Map<Chore, Integer> acknowledged = new EnumMap<>(Chore.class);
    for (int i = 0; i < KILLS; i++) {
      Chore chore = Chore.values()[i % Chore.values().length];
      boolean isLate = i / Chore.values().length % 2 == 1;
      List<String> lines = life(chore, isLate, random);
      acknowledged.merge(chore, lines.size(), Integer::sum);
      said.computeIfAbsent(chore, of -> new ArrayList<>()).addAll(lines);
      after(chore, home(chore), lines);
    }
    System.out.println("CrashTest: lines acknowledged " + acknowledged);
    if (KILLS >= Chore.values().length * 4) {
      assertThat(acknowledged.values()).allMatch(lines -> lines > 0);
    }
  }

  /**
   * One process from its start to its kill; returns what it said was done.
   *
   * @param isLate whether it is killed only once it has said something, on a slow machine, too
   */
  private List<String> life(Chore chore, boolean isLate, Random random) throws Exception {
    Path errors = folder.resolve("errors.txt");
    Process process =
        child.start(errors, CrashChild.class.getName(), chore.name(), home(chore).toString());
    long lifeMicros = 1000L * random.nextInt(chore.longestMs()) + random.nextInt(1000);
    List<String> lines = new ArrayList<>();
    try (BufferedReader out = process.inputReader(StandardCharsets.UTF_8)) {
      assertThat(out.readLine()).as(Files.readString(errors)).isEqualTo("ready");
      if (isLate) {
        lines.add(Objects.requireNonNull(out.readLine(), "said nothing"));
      }
      Thread killer =
          new Thread(
              () -> {
                try {
                  TimeUnit.MICROSECONDS.sleep(lifeMicros);
                } catch (InterruptedException e) {
                  Thread.currentThread().interrupt();
                }
                process.destroyForcibly();
              });
      killer.start();
      read(out, lines);
      killer.join();
    }
    assertThat(process.waitFor()).as("killed: " + Files.readString(errors)).isEqualTo(137);
    return lines;
  }

  /** Reads whole lines; one that the kill cut counts as not said. */
  private static void read(BufferedReader out, List<String> lines) throws IOException {
    StringBuilder line = new StringBuilder();
    try {
      for (int sign = out.read(); sign >= 0; sign = out.read()) {
        if (sign == '\n') {
          lines.add(line.toString());
          line.setLength(0);
        } else {
          line.append((char) sign);
        }
      }
    } catch (IOException e) {
      // With the process its stream may be closed in the middle of a read: that is the kill.
      assertThat(e).hasMessageMatching("(?i).*(stream closed|bad file descriptor).*");
    }
  }

  private void after(Chore chore, Path home, List<String> lines) throws Exception {
    Path file = home.resolve("class.walebook");
    switch (chore) {
      case SAVE -> assertThat(codes(file)).containsAll(all(chore, "saved "));
      case MANY_IN_ONE_STEP, BRING_IN -> steps(file, lines);
      case BACK_UP -> {
        assertThat(codes(file)).containsAll(all(chore, "saved "));
        backups(home, file, lines);
      }
      case RESTORE -> restored(file);
      case MIGRATE -> migrated(home, lines);
    }
    assertThat(BookCheck.of(file).kind()).isEqualTo(BookCheck.Kind.WHOLE);
  }

  private List<String> all(Chore chore, String begin) {
    return with(said.getOrDefault(chore, List.of()), begin);
  }

  private static List<String> with(List<String> lines, String begin) {
    return lines.stream()
        .filter(line -> line.startsWith(begin))
        .map(line -> line.substring(begin.length()))
        .toList();
  }

  private static void steps(Path file, List<String> lines) {
    Set<String> there = codes(file);
    for (String each : with(lines, "done ")) {
      assertThat(there).containsAll(List.of(each.split(" ")));
    }
    for (String each : with(lines, "begun ")) {
      List<String> batch = List.of(each.split(" "));
      assertThat(batch.stream().filter(there::contains).count())
          .as("a step is in the book whole or not at all")
          .isIn(0L, (long) CrashChild.BATCH);
    }
  }

  /** A finished copy is whole and holds what was saved before it was begun. */
  private static void backups(Path home, Path file, List<String> lines) throws Exception {
    List<String> before = new ArrayList<>();
    List<String> atBegin = new ArrayList<>();
    for (String line : lines) {
      if (line.startsWith("saved ")) {
        before.add(line.substring("saved ".length()));
      } else {
        Path copy = Path.of(line.substring("copied ".length()));
        assertThat(BookCheck.of(copy).kind()).isEqualTo(BookCheck.Kind.WHOLE);
        Path apart = Files.copy(copy, home.resolve("apart.walebook"));
        assertThat(codes(apart)).containsAll(atBegin);
        Files.delete(apart);
        atBegin = new ArrayList<>(before);
      }
    }
    try (Stream<Path> copies = Files.list(Path.of(file + ".backups"))) {
      for (Path each : copies.filter(one -> one.toString().endsWith(".walebook")).toList()) {
        assertThat(BookCheck.of(each).kind()).as(each.toString()).isEqualTo(BookCheck.Kind.WHOLE);
        // What was looked at need not be looked at after the next kill.
        Files.delete(each);
      }
    }
  }

  /** The book is one of the two states between which it goes to and fro, never a third. */
  private void restored(Path file) throws Exception {
    assertThat(codes(file)).isIn(fewCodes, manyCodes);
    try (Stream<Path> copies = Files.list(Path.of(file + ".backups"))) {
      for (Path each : copies.filter(one -> one.toString().endsWith(".walebook")).toList()) {
        assertThat(BookCheck.of(each).kind()).as(each.toString()).isEqualTo(BookCheck.Kind.WHOLE);
        Files.delete(each);
      }
    }
  }

  private void migrated(Path home, List<String> lines) throws Exception {
    for (String each : with(lines, "migrated ")) {
      assertThat(BookCheck.of(Path.of(each)).shape()).isEqualTo(Migrations.newest());
    }
    try (Stream<Path> files = Files.list(home)) {
      for (Path each :
          files.filter(one -> one.toString().matches(".*/old-[^/]*\\.walebook")).toList()) {
        assertThat(BookCheck.of(each).kind()).isEqualTo(BookCheck.Kind.WHOLE);
        assertThat(codes(each)).isEqualTo(fewCodes);
        assertThat(BookCheck.of(each).shape()).isEqualTo(Migrations.newest());
        Files.delete(each);
      }
    }
  }
}
