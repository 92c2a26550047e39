package walebook.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where codes were chosen, no name is left anywhere in the file. */
class CodesOnlyTest {

  @Test
  void noPartOfTheFileHoldsAName(@TempDir Path folder) throws IOException {
    try (HarbourClass harbour = HarbourClass.in(folder.resolve("class.walebook"), 20)) {
      for (int i = 0; i < HarbourClass.NAMES.size(); i++) {
        String name = HarbourClass.NAMES.get(i);
        harbour.sew(i, "sewn with " + name.toUpperCase(Locale.ROOT) + "'s machine");
        harbour.sew(i, Normalizer.normalize("like " + name + ".", Normalizer.Form.NFD));
        harbour.sew(i, "by\u00a0" + name.replace(" ", "\n") + "; seen by " + HarbourClass.TUTOR);
      }
      Map<String, String> parts =
          Parts.of(harbour.export(folder.resolve("codes.xlsx"), false).value());
      assertThat(parts).containsKeys("docProps/core.xml", "xl/worksheets/sheet5.xml");
      parts.forEach(CodesOnlyTest::holdsNoName);
      assertThat(parts.get("xl/worksheets/sheet5.xml"))
          .contains("sewn with S01's machine")
          .contains("seen by the tutor");
    }
  }

  @Test
  void namesAreThereWhenTheyAreWanted(@TempDir Path folder) throws IOException {
    try (HarbourClass harbour = HarbourClass.in(folder.resolve("class.walebook"), 60)) {
      Map<String, String> parts =
          Parts.of(harbour.export(folder.resolve("names.xlsx"), true).value());
      String pieces = parts.get("xl/worksheets/sheet5.xml");
      assertThat(pieces).contains(HarbourClass.NAMES);
      assertThat(parts.get("xl/sharedStrings.xml")).contains(HarbourClass.TUTOR);
      String user = System.getProperty("user.name");
      assertThat(parts.get("docProps/core.xml")).doesNotContain(">" + user + "<");
      assertThat(parts.get("docProps/core.xml")).contains("Term record: Evening");
    }
  }

  private static void holdsNoName(String part, String xml) {
    String plain =
        Normalizer.normalize(xml, Normalizer.Form.NFC)
            .toLowerCase(Locale.ROOT)
            .replaceAll("(?U)\\s+", " ");
    for (String name : HarbourClass.NAMES) {
      assertThat(plain).as(part).doesNotContain(name.toLowerCase(Locale.ROOT));
    }
    assertThat(plain).as(part).doesNotContain(HarbourClass.TUTOR.toLowerCase(Locale.ROOT));
  }
}
