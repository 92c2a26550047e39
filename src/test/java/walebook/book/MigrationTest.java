package walebook.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.Connection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import walebook.book.open.SqliteFiles;
import walebook.book.sqlite.Backups;
import walebook.book.sqlite.Migrations;
import walebook.book.sqlite.SqliteLink;
import walebook.record.SeamEnd;
import walebook.record.TestPiece;

/** A book of an older shape is copied first, then brought to the newest with its rows intact. */
class MigrationTest {
  @TempDir Path folder;

  /** The columns that each table has now. */
  private static Map<String, String> columns(Connection link) throws Exception {
    Map<String, String> all = new LinkedHashMap<>();
    for (String table : RawRows.tables(link)) {
      all.put(
          table,
          String.join(
              " || '|' || ",
              RawRows.column(
                  link,
                  "SELECT 'quote(\"' || name || '\")' FROM pragma_table_info('" + table + "')")));
    }
    return all;
  }

  /** Every row in the named columns of the named tables, written out. */
  private static Map<String, List<String>> rows(Path file, Map<String, String> columns)
      throws Exception {
    Map<String, List<String>> all = new LinkedHashMap<>();
    try (Connection link = SqliteLink.migrator(file)) {
      for (Map.Entry<String, String> each : columns.entrySet()) {
        String table = each.getKey();
        all.put(
            table,
            RawRows.column(link, "SELECT " + each.getValue() + " FROM " + table + " ORDER BY id"));
      }
    }
    return all;
  }

  static IntStream olderShapes() {
    return IntStream.range(1, Migrations.newest());
  }

  @ParameterizedTest(name = "shape {0}")
  @MethodSource("olderShapes")
  void aBookOfAnOlderShapeIsCopiedAndBroughtUpWithItsRowsIntact(int shape) throws Exception {
    Path today = folder.resolve("today.walebook");
    TestPiece piece;
    try (Classroom room = Classroom.in(today)) {
      piece = room.piece(SeamEnd.GAVE, 131);
      room.book.pieces().add(piece);
    }
    Path old = OlderBook.make(folder.resolve("old.walebook"), shape, today);
    Map<String, String> tables;
    try (Connection link = SqliteLink.migrator(old)) {
      tables = columns(link);
    }
    assertThat(tables).containsKey("test_piece");
    Map<String, List<String>> before = rows(old, tables);
    assertThat(before.get("test_piece")).hasSize(1);
    try (Book book = new SqliteFiles().open(old, Classroom.CLOCK).value()) {
      assertThat(book.pieces().find(piece.id())).isEqualTo(Classroom.inShape(piece, shape));
      assertThat(book.students().all()).hasSize(2);
      assertThat(book.garments().all()).isEmpty();
      assertThat(book.packShelf().all()).isEmpty();
    }
    assertThat(rows(old, tables)).isEqualTo(before);
    try (Connection link = SqliteLink.migrator(old)) {
      assertThat(Migrations.shapeOf(link)).isEqualTo(Migrations.newest());
      assertThat(SqliteLink.ask(link, "PRAGMA integrity_check")).isEqualTo("ok");
    }
    Path copy =
        Backups.list(old).stream()
            .map(BookCopy::file)
            .filter(each -> each.toString().contains("-before-shape-" + Migrations.newest()))
            .findFirst()
            .orElseThrow();
    try (Connection link = SqliteLink.migrator(copy)) {
      assertThat(Migrations.shapeOf(link)).isEqualTo(shape);
    }
    assertThat(rows(copy, tables)).isEqualTo(before);
  }
}
