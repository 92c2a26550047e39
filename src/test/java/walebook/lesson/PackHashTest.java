package walebook.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class PackHashTest {
  @Test
  void lineEndingsDoNotCount() {
    Map<String, byte[]> windows = GoodPack.files();
    for (String file : new String[] {"pack.yaml", "lesson.md", "test-piece.svg"}) {
      windows.put(file, GoodPack.text(file).replace("\n", "\r\n").getBytes(StandardCharsets.UTF_8));
    }
    LessonPack plain = new ReadPack().read(new PackBytes(GoodPack.NAME, GoodPack.files())).value();
    LessonPack turned = new ReadPack().read(new PackBytes(GoodPack.NAME, windows)).value();
    assertThat(turned.files().contentHash()).isEqualTo(plain.files().contentHash());
    assertThat(turned.plan()).isEqualTo(plain.plan());
  }

  @Test
  void aLetterANameAndAPictureCount() {
    String plain = PackHash.of(files("lesson.md", "a"));
    assertThat(PackHash.of(files("lesson.md", "b"))).isNotEqualTo(plain);
    assertThat(PackHash.of(files("lesson2.md", "a"))).isNotEqualTo(plain);
    assertThat(PackHash.of(files("a.png", "a\r\n")))
        .isNotEqualTo(PackHash.of(files("a.png", "a\n")));
    assertThat(plain).hasSize(64).matches("[0-9a-f]+");
  }

  @Test
  void namesAndContentsDoNotRunTogether() {
    assertThat(PackHash.of(files("ab", "c"))).isNotEqualTo(PackHash.of(files("a", "bc")));
  }

  /** SHA-256 of the empty message: FIPS 180-4, as in NIST's example values. */
  @Test
  void ofNothingIsThePublishedValue() {
    assertThat(PackHash.of(new TreeMap<>()))
        .isEqualTo("e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
  }

  private static SortedMap<String, byte[]> files(String name, String content) {
    return new TreeMap<>(Map.of(name, content.getBytes(StandardCharsets.UTF_8)));
  }
}
