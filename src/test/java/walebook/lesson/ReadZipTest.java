package walebook.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import walebook.problem.Answer;
import walebook.problem.Problem;
import walebook.words.Words;

/** Zips: a pack goes out and comes back the same; what climbs out, explodes or lies is refused. */
class ReadZipTest {
  private static final ReadPack READ = new ReadPack();
  private static final Words WORDS = Words.english();
  private static final int NAME_AT_DIRECTORY = 46;

  @TempDir Path folder;

  @Test
  void everyBuiltInPackComesBackTheSame() throws IOException {
    for (PackSource each : BuiltInPacks.all()) {
      LessonPack pack = READ.read(each).value();
      byte[] zip = zip(pack);
      assertThat(zip).isEqualTo(zip(pack));
      Answer<LessonPack> back = ReadZip.of("any.zip", zip).flatMap(READ::read);
      assertThat(back.problems()).isEmpty();
      assertThat(back.value()).isEqualTo(pack);
    }
  }

  /** Read with the JDK's file system for zips, which shares no code with the streams. */
  @Test
  void anotherReaderFindsThePacksFolder() throws IOException {
    LessonPack pack = READ.read(GoodPack.with("lesson.md", GoodPack.text("lesson.md"))).value();
    Path file = Files.write(folder.resolve("a.zip"), zip(pack));
    try (FileSystem inside = FileSystems.newFileSystem(file)) {
      Path yaml = inside.getPath("/" + GoodPack.NAME + "/pack.yaml");
      assertThat(Files.readString(yaml)).isEqualTo(pack.files().packYaml());
    }
  }

  @Test
  void filesWithoutAFolderTakeTheirNameFromTheZip() throws IOException {
    byte[] zip = zip(prefixed(""));
    assertThat(ReadZip.of("flat-on-rib.zip", zip).value().name()).isEqualTo("flat-on-rib");
    assertThat(ReadZip.of("flat-on-rib.zip", zip).flatMap(READ::read).isGood()).isTrue();
  }

  @Test
  void whatSystemsLeaveBehindIsPassedOver() throws IOException {
    Map<String, byte[]> files = prefixed("flat-on-rib/");
    files.put("flat-on-rib/", new byte[0]);
    files.put("__MACOSX/flat-on-rib/._pack.yaml", new byte[] {1});
    files.put("flat-on-rib/.DS_Store", new byte[] {1});
    assertThat(ReadZip.of("a.zip", zip(files)).flatMap(READ::read).problems()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "../evil.md",
        "flat-on-rib/../../evil.md",
        "/etc/evil.md",
        "C:/evil.md",
        "c:evil.md",
        "..\\evil.md",
        "flat-on-rib\\evil.md",
        "flat-on-rib/./evil.md",
        "flat-on-rib//evil.md",
        "flat-on-rib/..",
        "flat-on-rib/e\u0000vil.md",
        "flat-on-rib/e\nvil\n.md"
      })
  void aNameThatLeadsOutIsRefused(String name) throws IOException {
    Map<String, byte[]> files = prefixed("flat-on-rib/");
    files.put(name, new byte[] {1});
    Problem problem = refused(zip(files)).get(0);
    assertThat(problem.code()).isEqualTo("pack.zip-outside");
    assertThat(problem.found()).doesNotContain("\n", "\u0000");
  }

  @Test
  void foldersInsideAndSeveralPacksAreRefused() throws IOException {
    Map<String, byte[]> files = prefixed("flat-on-rib/");
    files.put("flat-on-rib/pictures/deep.png", new byte[] {1});
    assertThat(codes(zip(files))).containsExactly("pack.zip-nested");
    Map<String, byte[]> two = prefixed("flat-on-rib/");
    two.put("two-cloths/pack.yaml", new byte[] {1});
    assertThat(codes(zip(two))).containsExactly("pack.zip-folders");
    assertThat(codes(zip(Map.of()))).containsExactly("pack.zip-empty");
  }

  @Test
  void aFileTwiceIsRefusedAlsoInOtherCapitals() throws IOException {
    Map<String, byte[]> files = prefixed("flat-on-rib/");
    files.put("flat-on-rib/LESSON.md", new byte[] {1});
    assertThat(codes(zip(files))).containsExactly("pack.zip-twice");
    byte[] patched = zip(prefixed("flat-on-rib/"));
    swap(patched, "flat-on-rib/marks.png", "flat-on-rib/marks.svg");
    assertThat(codes(patched)).containsExactly("pack.zip-twice");
  }

  /** Upper half of the external attributes on Unix: 0120000 is a link (POSIX, sys/stat.h). */
  @Test
  void aLinkIsRefused() throws IOException {
    byte[] zip = zip(prefixed("flat-on-rib/"));
    int entry = directoryEntry(zip, "flat-on-rib/lesson.md");
    zip[entry + 5] = 3;
    zip[entry + 41] = (byte) 0xa0;
    assertThat(codes(zip)).containsExactly("pack.zip-link");
  }

  /** Bit 0 of the flags says that an entry is encrypted (APPNOTE.TXT 4.4.4). */
  @Test
  void aLockedZipIsRefused() throws IOException {
    byte[] zip = zip(prefixed("flat-on-rib/"));
    int flags = directoryEntry(zip, "flat-on-rib/lesson.md") + 8;
    zip[flags] = (byte) (zip[flags] | 1);
    assertThat(codes(zip)).containsExactly("pack.zip-encrypted");
  }

  @Test
  void whatExplodesIsStoppedWhateverItClaims() throws IOException {
    Map<String, byte[]> files = prefixed("flat-on-rib/");
    files.put("flat-on-rib/lesson.md", new byte[50 * 1024 * 1024]);
    byte[] bomb = zip(files);
    assertThat(bomb.length).isLessThan(100 * 1024);
    assertThat(codes(bomb)).containsExactly("pack.zip-explodes");
    int entry = directoryEntry(bomb, "flat-on-rib/lesson.md");
    bomb[entry + 24] = 1;
    bomb[entry + 25] = 0;
    bomb[entry + 26] = 0;
    bomb[entry + 27] = 0; // claims a size of one byte
    assertThat(codes(bomb)).containsExactly("pack.zip-explodes");
    // Hidden files are passed over, yet cost as much.
    Map<String, byte[]> hidden = prefixed("flat-on-rib/");
    hidden.put("flat-on-rib/.hidden", new byte[50 * 1024 * 1024]);
    assertThat(codes(zip(hidden))).containsExactly("pack.zip-explodes");
  }

  @Test
  void sizesAndNumbersAreLimited() throws IOException {
    byte[] noise = new byte[3 * 1024 * 1024];
    new Random(4).nextBytes(noise);
    Map<String, byte[]> files = prefixed("flat-on-rib/");
    files.put("flat-on-rib/big.png", noise);
    assertThat(codes(zip(files))).containsExactly("pack.zip-too-big");
    Map<String, byte[]> many = prefixed("flat-on-rib/");
    for (int i = 0; i <= PackLimits.ZIP_ENTRIES; i++) {
      many.put("flat-on-rib/n" + i + ".png", new byte[] {1});
    }
    assertThat(codes(zip(many))).containsExactly("pack.too-many-files");
    Map<String, byte[]> all = prefixed("flat-on-rib/");
    for (int i = 0; i < 17; i++) {
      all.put("flat-on-rib/n" + i + ".png", java.util.Arrays.copyOf(noise, 2 * 1024 * 1024));
    }
    assertThat(codes(zip(all))).containsExactly("pack.zip-too-big");
  }

  @Test
  void whatIsNoZipIsSaid() throws IOException {
    assertThat(codes("no zip at all".getBytes(StandardCharsets.UTF_8)))
        .containsExactly("pack.not-a-zip");
    assertThat(codes(new byte[0])).containsExactly("pack.not-a-zip");
    byte[] good = zip(prefixed("flat-on-rib/"));
    assertThat(codes(java.util.Arrays.copyOf(good, good.length / 2)))
        .containsExactly("pack.not-a-zip");
    assertThat(ReadZip.of(folder.resolve("none.zip")).problems())
        .extracting(Problem::code)
        .containsExactly("pack.no-zip");
  }

  /** A thousand zips with bytes changed at random: a pack or problems in words, never a crash. */
  @Test
  void bentZipsNeverCrash() throws IOException {
    byte[] good = zip(prefixed("flat-on-rib/"));
    Random random = new Random(12);
    for (int i = 0; i < 1000; i++) {
      byte[] bent = good.clone();
      for (int change = random.nextInt(8); change >= 0; change--) {
        bent[random.nextInt(bent.length)] = (byte) random.nextInt(256);
      }
      byte[] cut =
          random.nextInt(5) == 0
              ? java.util.Arrays.copyOf(bent, random.nextInt(bent.length))
              : bent;
      Answer<LessonPack> answer = ReadZip.of("flat-on-rib.zip", cut).flatMap(READ::read);
      for (Problem each : answer.problems()) {
        assertThat(WORDS.say(each)).doesNotContain("[problem.");
      }
    }
  }

  private static List<Problem> refused(byte[] zip) {
    Answer<PackSource> answer = ReadZip.of("flat-on-rib.zip", zip);
    assertThat(answer.isGood()).isFalse();
    answer.problems().forEach(each -> assertThat(WORDS.say(each)).doesNotContain("[problem."));
    return answer.problems();
  }

  private static List<String> codes(byte[] zip) {
    return refused(zip).stream().map(Problem::code).toList();
  }

  private static Map<String, byte[]> prefixed(String folder) throws IOException {
    Map<String, byte[]> files = new LinkedHashMap<>();
    BrokenPacks.base("flat-on-rib").forEach((name, content) -> files.put(folder + name, content));
    return files;
  }

  private static byte[] zip(LessonPack pack) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    WriteZip.write(pack.about().name(), pack.files(), out);
    return out.toByteArray();
  }

  private static byte[] zip(Map<String, byte[]> files) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      for (Map.Entry<String, byte[]> each : files.entrySet()) {
        zip.putNextEntry(new ZipEntry(each.getKey()));
        zip.write(each.getValue());
        zip.closeEntry();
      }
    }
    return out.toByteArray();
  }

  /** Where the central directory's record of a file begins. */
  private static int directoryEntry(byte[] zip, String name) {
    return new String(zip, StandardCharsets.ISO_8859_1).lastIndexOf(name) - NAME_AT_DIRECTORY;
  }

  private static void swap(byte[] zip, String name, String other) {
    byte[] with = other.getBytes(StandardCharsets.ISO_8859_1);
    String all = new String(zip, StandardCharsets.ISO_8859_1);
    for (int at = all.indexOf(name); at >= 0; at = all.indexOf(name, at + 1)) {
      System.arraycopy(with, 0, zip, at, with.length);
    }
  }
}
