package walebook.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import walebook.act.book.MakeDemoBook;
import walebook.book.Book;
import walebook.book.Classroom;
import walebook.book.open.SqliteFiles;
import walebook.record.Lesson;

/** The kit in the workbook, read by a reader of others' make, is what the list to buy by says. */
class KitSheetTest {
  private static final JsonMapper JSON = new JsonMapper();

  @TempDir Path folder;

  private record Asked(String lesson, List<String> args) {}

  @Test
  void eachLessonsRowsAreThoseOfItsKit() throws IOException {
    Path file = folder.resolve("demo.walebook");
    List<Asked> asked = new ArrayList<>();
    try (Book book =
        new MakeDemoBook(new SqliteFiles(), Classroom.CLOCK)
            .make(file, MakeDemoBook.SEED)
            .value()) {
      for (Lesson lesson : book.lessons().of(book.classes().all().get(0).id())) {
        asked.add(ask(book, lesson, file));
      }
    }
    // 8.50 for a metre of the first lesson's first cloth, wherever that cloth is needed.
    List<String> priced = new ArrayList<>(asked.get(0).args());
    priced.addAll(List.of("--price", "a=8.50", "--keep-prices"));
    run(priced.toArray(String[]::new));
    Path out = folder.resolve("term.xlsx");
    run("export", "--book", file.toString(), "--to", out.toString());
    List<Row> rows = rows(out);
    int at = 1;
    int laid = 0;
    double cost = 0;
    for (Asked each : asked) {
      JsonNode kit = JSON.readTree(run(each.args().toArray(String[]::new)));
      int plans = 0;
      for (JsonNode line : kit.get("lines")) {
        Row row = rows.get(at++);
        assertThat(row.getCellText(0)).isEqualTo(each.lesson());
        assertThat(row.getCellText(1)).isEqualTo(line.get("what").asString());
        same(row, 2, line.get("perStudent"));
        same(row, 3, line.get("forClass"));
        assertThat(row.getCellText(4)).isEqualTo(line.get("unit").asString());
        if (line.get("kind").asString().equals("cloth")) {
          JsonNode plan = kit.get("cloths").get(plans++).get("plan");
          same(row, 5, plan.get("alongMm"));
          laid++;
        } else {
          assertThat(row.getCellText(5)).isEmpty();
        }
        same(row, 6, line.get("price"));
        same(row, 7, line.get("cost"));
      }
      cost += kit.get("cost").asDouble();
      if (kit.get("cost").asDouble() > 0) {
        assertThat(rows.get(at++).getCellText(1))
            .isEqualTo(
                "Together %.2f. Lines without a price: %d."
                    .formatted(kit.get("cost").asDouble(), kit.get("unpriced").asInt()));
      }
      for (JsonNode remark : kit.get("remarks")) {
        assertThat(rows.get(at++).getCellText(1)).isEqualTo(remark.asString());
      }
    }
    assertThat(at).isEqualTo(rows.size()).isGreaterThan(5);
    assertThat(laid).isPositive();
    assertThat(kitsTogether(out)).isCloseTo(cost, within(1e-9)).isPositive();
  }

  private static double kitsTogether(Path file) throws IOException {
    try (ReadableWorkbook workbook = new ReadableWorkbook(file.toFile())) {
      return workbook.findSheet("Term").orElseThrow().read().stream()
          .filter(each -> each.getCellText(0).equals("Kits, cost together"))
          .findFirst()
          .orElseThrow()
          .getCellAsNumber(1)
          .orElseThrow()
          .doubleValue();
    }
  }

  private static void same(Row row, int column, JsonNode wanted) {
    if (wanted.isNull()) {
      assertThat(row.getCellText(column)).isEmpty();
    } else {
      assertThat(row.getCellAsNumber(column).orElseThrow().doubleValue())
          .isCloseTo(wanted.asDouble(), within(1e-9));
    }
  }

  private static Asked ask(Book book, Lesson lesson, Path file) {
    UUID of = book.classes().all().get(0).id();
    int number = book.lessons().of(of).indexOf(lesson) + 1;
    List<String> args =
        List.of(
            "kit", "list", "--book", file.toString(), "--lesson", String.valueOf(number), "--json");
    return new Asked(lesson.title(), args);
  }

  private static List<Row> rows(Path file) throws IOException {
    try (ReadableWorkbook workbook = new ReadableWorkbook(file.toFile())) {
      return workbook.findSheet("Kit").orElseThrow().read();
    }
  }

  private static String run(String... args) {
    Ran ran = Ran.of(args);
    assertThat(ran.exit()).as(ran.err()).isZero();
    return ran.out();
  }
}
