package walebook.act.bring;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.bring.match.BringWhat;
import walebook.act.bring.match.DayOrder;
import walebook.book.Classroom;
import walebook.problem.Answer;
import walebook.record.By;
import walebook.sheet.in.MadeWorkbook;
import walebook.tables.SharedTables;
import walebook.words.Words;

/**
 * Spoiled spreadsheets through the whole way in: each is brought in or refused with a sentence, in
 * bounded time, and the book holds what it held unless something was brought in. What was brought
 * in is taken back each time, and nothing of it is left.
 */
class FuzzBringTest {
  private static final int FILES = Integer.getInteger("walebook.mutants", 2000);
  private static final long MOST_NANOS = 10_000_000_000L;

  /** The library tells of every broken file with a stack of calls; two thousand say nothing. */
  private static final Logger LIBRARY = Logger.getLogger("org.apache.poi");

  private static final Words WORDS = Words.english();
  private static final SharedTables TABLES = SharedTables.read();
  private static final Set<String> GROWS =
      Set.of("change_log", "row_added", "step_mirror", "draft", "draft_field");

  private static final String PIECES_TEXT =
      "Student;Date;Fabric;Grain;Stitch;Width;Length;Needle;Gauge (cm);Result;Stretched to"
          + " (cm);Grade;Notes\n"
          + "Ada Pier;5.10.2026;Grey jersey;crosswise;304;2,5;2,5;jersey"
          + " 75/11;10;gave;14,2;4;fine\n"
          + "S02;6.10.2026;Grey jersey;wale;zigzag;3;2;stretch 90/14;10;held;15;3;=1+1\n";
  private static final String ROSTER_TEXT =
      "Name,Code,Tier\nNuur Ebb,S11,core\n\"Quay, Bo\",S12,\nליאור גל,S13,own\n🧵 Reed,,standard\n";

  private static final byte[] PIECES =
      MadeWorkbook.of(
          "Samples",
          new Object[] {
            "Student",
            "Date",
            "Fabric",
            "Grain",
            "Stitch",
            "Width",
            "Length",
            "Needle",
            "Gauge (mm)",
            "Result",
            "Stretched to (mm)",
            "Grade",
            "Notes"
          },
          new Object[] {
            "Ada Pier",
            LocalDate.of(2026, 10, 5),
            "Grey jersey",
            "course",
            304,
            2.5,
            2.5,
            "jersey 75",
            100,
            "gave",
            142,
            4,
            "fine"
          },
          new Object[] {
            "Bo Quay",
            "3/4/2026",
            "grey jersey",
            "bias",
            "301",
            "",
            2,
            "",
            100,
            "held",
            150.5,
            3,
            "+44"
          });
  private static final byte[] ROSTER =
      MadeWorkbook.of(
          "Class",
          new Object[] {"Name", "Code", "Tier"},
          new Object[] {"Nuur Ebb", "S11", "core"},
          new Object[] {"ליאור גל", "", "own"});

  /** What stands beside the pieces, each with a sound row. */
  private static final Map<BringWhat, byte[]> LOGS =
      Map.of(
          BringWhat.CLOTHS,
          MadeWorkbook.of(
              "Cloths",
              new Object[] {"Name", "Kind", "Fibre", "Mass (g/m²)", "Cloth width (cm)", "Curls"},
              new Object[] {"Nebel-Rib נ", "1x1 rib", "cotton", 210.5, 150, "yes"}),
          BringWhat.READINGS,
          MadeWorkbook.of(
              "Readings",
              new Object[] {"Cloth", "Grain", "Date", "L0 (mm)", "L1 (mm)", "Pull", "Remark"},
              new Object[] {
                "Grey jersey", "course", LocalDate.of(2026, 10, 5), 100, 152.5, "firm", "+44"
              }),
          BringWhat.WASHES,
          MadeWorkbook.of(
              "Washes",
              new Object[] {"Cloth", "Grain", "Date", "Before (cm)", "After (cm)", "Wash"},
              new Object[] {"grey jersey", "wale", "5.10.2026", 50, 47.5, "40 °C"}),
          BringWhat.NOTES,
          MadeWorkbook.of(
              "Notes",
              new Object[] {"About", "Which", "From", "Note"},
              new Object[] {"cloth", "Grey jersey", "Ada Pier", "=1+1 נור"}));

  private final Map<BringWhat, Integer> brought = new EnumMap<>(BringWhat.class);
  private int refused;
  private int rowsOnly;

  @TempDir Path folder;

  @BeforeAll
  static void quiet() {
    LIBRARY.setLevel(Level.OFF);
  }

  @Test
  void everySpoiledFileEndsInSuccessOrASentenceAndTheBookStaysWhole() throws Exception {
    long seed = new Random().nextLong();
    System.out.println("FuzzBringTest seed " + seed + ", files " + FILES);
    Random random = new Random(seed);
    Mutator mutator = new Mutator(random);
    Path file = folder.resolve("a.walebook");
    try (Classroom room = Classroom.in(file);
        BookContent content = new BookContent(file)) {
      String steady = content.hash(GROWS);
      for (int i = 0; i < FILES; i++) {
        BringWhat what = kind(random);
        boolean text = !what.isLog() && random.nextInt(3) == 0;
        byte[] good = good(what, text);
        byte[] spoiled = text ? mutator.text(good) : mutator.workbook(good);
        // A commit waits for the disk, so in the short form half of the files are only tried.
        boolean forReal = FILES > 2000 || random.nextBoolean();
        one(room, content, steady, what, spoiled, forReal, "seed " + seed + ", file " + i);
      }
      assertThat(brought).containsOnlyKeys(BringWhat.values());
      assertThat(refused).isPositive();
      System.out.println(
          "FuzzBringTest: brought in "
              + brought
              + ", rows refused "
              + rowsOnly
              + ", files refused "
              + refused);
    }
  }

  @Test
  void whatUnpacksWithoutEndIsRefusedBeforeItIsHeld() throws Exception {
    Path file = folder.resolve("b.walebook");
    try (Classroom room = Classroom.in(file);
        BookContent content = new BookContent(file)) {
      String steady = content.hash(Set.of());
      Map<String, Integer> megabytes =
          Map.of(
              "xl/sharedStrings.xml", 66,
              "xl/styles.xml", 6,
              "xl/worksheets/sheet1.xml", 260);
      for (Map.Entry<String, Integer> each : megabytes.entrySet()) {
        Path bomb = MadeWorkbook.file(folder, "bomb.xlsx", bomb(each.getKey(), each.getValue()));
        assertThat(bomb)
            .as("small before it is unpacked")
            .satisfies(path -> assertThat(Files.size(path)).isLessThan(1 << 20));
        Answer<SpreadsheetFile> opened =
            new ReadSpreadsheet(room.book, WORDS).open(bomb, BringWhat.PIECES);
        assertThat(opened.problems())
            .as(each.getKey())
            .extracting(problem -> problem.code())
            .containsExactly("in.unpacks-too-large");
      }
      assertThat(content.hash(Set.of())).isEqualTo(steady);
    }
  }

  /** So many MB of nothing in one part: a thousandth of that packed. */
  private static byte[] bomb(String part, int megabytes) throws IOException {
    Map<String, byte[]> parts = MadeWorkbook.parts(PIECES);
    parts.remove(part);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      for (Map.Entry<String, byte[]> each : parts.entrySet()) {
        zip.putNextEntry(new ZipEntry(each.getKey()));
        zip.write(each.getValue());
      }
      zip.putNextEntry(new ZipEntry(part));
      byte[] blanks = new byte[1 << 20];
      for (int i = 0; i < megabytes; i++) {
        zip.write(blanks);
      }
    }
    return out.toByteArray();
  }

  /** Half of them are pieces. */
  private static BringWhat kind(Random random) {
    BringWhat[] all = BringWhat.values();
    return random.nextBoolean() ? BringWhat.PIECES : all[random.nextInt(all.length)];
  }

  private static byte[] good(BringWhat what, boolean text) {
    return switch (what) {
      case PIECES -> text ? PIECES_TEXT.getBytes(StandardCharsets.UTF_8) : PIECES;
      case ROSTER -> text ? ROSTER_TEXT.getBytes(StandardCharsets.UTF_8) : ROSTER;
      default -> Objects.requireNonNull(LOGS.get(what));
    };
  }

  private void one(
      Classroom room,
      BookContent content,
      String steady,
      BringWhat what,
      byte[] bytes,
      boolean forReal,
      String which)
      throws Exception {
    Path file = MadeWorkbook.file(folder, "spoiled.xlsx", bytes);
    long begin = System.nanoTime();
    Answer<Trial> answer = bring(room, file, what, forReal);
    assertThat(System.nanoTime() - begin).as(which).isLessThan(MOST_NANOS);
    if (!answer.isGood()) {
      refused++;
      answer
          .problems()
          .forEach(each -> assertThat(WORDS.say(each)).as(which).doesNotContain("[problem"));
    } else if (answer.value().stepId() == null) {
      rowsOnly++;
    } else {
      brought.merge(what, 1, Integer::sum);
      assertThat(content.hash(GROWS)).as(which).isNotEqualTo(steady);
      new UndoBringIn(room.book).undo(answer.value().stepId(), By.NOBODY).value();
    }
    assertThat(content.hash(GROWS)).as(which).isEqualTo(steady);
    Files.delete(file);
  }

  private static Answer<Trial> bring(Classroom room, Path file, BringWhat what, boolean forReal) {
    ReadSpreadsheet read = new ReadSpreadsheet(room.book, WORDS);
    return read.open(file, what)
        .flatMap(opened -> read.read(opened, opened.usual(), what))
        .flatMap(
            sheet -> {
              BringPlan plan =
                  new BringPlan(
                      what,
                      sheet,
                      read.guess(sheet, what),
                      room.schoolClass.id(),
                      room.first.id(),
                      DayOrder.DAY_FIRST,
                      true,
                      true);
              Answer<Trial> tried =
                  new TryRows(room.book, TABLES, WORDS, Classroom.CLOCK, new Random(1)).of(plan);
              if (!tried.isGood()) {
                return tried;
              }
              assertThat(tried.value().stepId()).isNull();
              if (!forReal) {
                return tried;
              }
              Random chance = new Random(1);
              Answer<Trial> done =
                  switch (what) {
                    case PIECES ->
                        new BringInPieces(room.book, TABLES, WORDS, Classroom.CLOCK, chance)
                            .bring(plan, By.NOBODY);
                    case ROSTER ->
                        new BringInRoster(room.book, TABLES, WORDS, Classroom.CLOCK, chance)
                            .bring(plan, By.NOBODY);
                    case CLOTHS, READINGS, WASHES, NOTES ->
                        new BringInLog(room.book, TABLES, WORDS, Classroom.CLOCK, chance)
                            .bring(plan, By.NOBODY);
                  };
              assertThat(done.value().fates())
                  .as("what is foretold is what comes")
                  .isEqualTo(tried.value().fates());
              return done;
            });
  }
}
