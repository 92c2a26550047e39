package walebook.sheet.in;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;

/** Text in columns: RFC 4180 and what people really have. */
class ReadSeparatedTest {
  @TempDir Path folder;

  private Answer<InGrid> read(byte[] bytes) {
    Path file = MadeWorkbook.file(folder, "a.csv", bytes);
    return ReadTables.read(file, "");
  }

  private static List<List<String>> texts(Answer<InGrid> answer) {
    return answer.value().rows().stream()
        .map(row -> row.cells().stream().map(InCell::text).toList())
        .toList();
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static List<String> told(Answer<InGrid> answer) {
    Problem told = answer.value().remarks().get(0);
    return List.of(told.found(), told.wanted());
  }

  @Test
  void theExamplesOfTheStandard() {
    // RFC 4180, section 2, rules 1, 5, 6 and 7.
    assertThat(texts(read(utf8("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n"))))
        .containsExactly(List.of("aaa", "bbb", "ccc"), List.of("zzz", "yyy", "xxx"));
    assertThat(texts(read(utf8("\"aaa\",\"b \r\nbb\",\"ccc\"\r\nzzz,yyy,xxx"))))
        .containsExactly(List.of("aaa", "b \r\nbb", "ccc"), List.of("zzz", "yyy", "xxx"));
    assertThat(texts(read(utf8("\"aaa\",\"b\"\"bb\",\"ccc\""))))
        .containsExactly(List.of("aaa", "b\"bb", "ccc"));
  }

  @Test
  void theSeparatorIsGuessedAndToldWhateverTheDecimalSign() {
    Answer<InGrid> semicolons = read(utf8("Gauge;Reached\n100,5;142,0\n98;150,5\n"));
    assertThat(texts(semicolons)).contains(List.of("100,5", "142,0"));
    assertThat(told(semicolons)).containsExactly("UTF-8", ";");
    assertThat(told(read(utf8("a\tb, c\td\n1\t2\t3\n")))).containsExactly("UTF-8", "→");
    assertThat(texts(read(utf8("sep=;\na;b,c\n")))).containsExactly(List.of("a", "b,c"));
  }

  @Test
  void theEncodingIsGuessedAndTold() {
    String text = "Name,Stoff\nÇağla,Grüner Jersey\n";
    ByteArrayOutputStream marked = new ByteArrayOutputStream();
    marked.writeBytes(new byte[] {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF});
    marked.writeBytes(utf8(text));
    assertThat(texts(read(marked.toByteArray())).get(0)).containsExactly("Name", "Stoff");
    ByteArrayOutputStream wide = new ByteArrayOutputStream();
    wide.writeBytes(new byte[] {(byte) 0xFF, (byte) 0xFE});
    wide.writeBytes(text.getBytes(StandardCharsets.UTF_16LE));
    Answer<InGrid> utf16 = read(wide.toByteArray());
    assertThat(told(utf16)).containsExactly("UTF-16", ",");
    assertThat(texts(utf16).get(1)).containsExactly("Çağla", "Grüner Jersey");
    Answer<InGrid> windows =
        read("Name;Stoff\nGiò;5 € für Grün\n".getBytes(Charset.forName("windows-1252")));
    assertThat(told(windows)).containsExactly("Windows-1252", ";");
    assertThat(texts(windows).get(1)).containsExactly("Giò", "5 € für Grün");
  }

  @Test
  void whatLooksLikeAFormulaIsWordsAndItsGuardIsTakenOff() {
    assertThat(texts(read(utf8("=1+1,'=1+1,+44 20,'quoted,-\n"))))
        .containsExactly(List.of("=1+1", "=1+1", "+44 20", "'quoted", "-"));
  }

  @Test
  void rowsAreNumberedAsASpreadsheetShowsThem() {
    assertThat(read(utf8("a,b\n\n,\nc,d\n")).value().rows())
        .extracting(InRow::number)
        .containsExactly(1, 4);
  }

  @Test
  void quotesThatNeverEndNameTheirLine() {
    Problem problem = read(utf8("a,b\n\"c,d\ne,f\n")).problems().get(0);
    assertThat(problem.code()).isEqualTo("in.bad-quotes");
    assertThat(problem.place()).isInstanceOf(Place.Spot.class);
  }

  @Test
  void oneRowTooManyIsRefused() {
    byte[] rows = new byte[2 * ((1 << 20) + 1)];
    for (int i = 0; i < rows.length; i += 2) {
      rows[i] = 'a';
      rows[i + 1] = '\n';
    }
    assertThat(read(rows).problems()).extracting(Problem::code).containsExactly("in.too-many-rows");
  }
}
