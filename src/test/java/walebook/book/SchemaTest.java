package walebook.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.book.DemoBook;
import walebook.book.sqlite.Migrations;
import walebook.book.sqlite.SqliteLink;

/** The promises that every table keeps, and that the scripts are those of the folder. */
class SchemaTest {
  @TempDir Path folder;

  @Test
  void theScriptsAreThoseOfTheFolder() throws Exception {
    try (Stream<Path> files = Files.list(Path.of("migrations"))) {
      assertThat(files.map(each -> each.getFileName().toString()).sorted())
          .containsExactlyElementsOf(Migrations.SCRIPTS);
    }
  }

  @Test
  void everyTableIsStrictAndStamped() throws Exception {
    Path file = folder.resolve("new.walebook");
    Migrations.apply(file);
    try (Connection link = SqliteLink.migrator(file)) {
      List<String> tables =
          RawRows.column(
              link,
              "SELECT name FROM pragma_table_list WHERE schema = 'main' AND type = 'table'"
                  + " AND name NOT LIKE 'sqlite_%'");
      assertThat(tables).hasSizeGreaterThan(15);
      assertThat(
              RawRows.column(
                  link,
                  "SELECT name FROM pragma_table_list WHERE schema = 'main'"
                      + " AND type = 'table' AND strict = 0 AND name NOT LIKE 'sqlite_%'"))
          .isEmpty();
      for (String table : tables) {
        assertThat(RawRows.column(link, "SELECT name FROM pragma_table_info('" + table + "')"))
            .as(table)
            .contains("id", "created_at", "changed_at", "row_version");
      }
    }
  }

  @Test
  void aNewFileSaysWhoseItIsAndOfWhichShape() throws Exception {
    Path file = folder.resolve("new.walebook");
    Migrations.apply(file);
    try (Connection link = SqliteLink.migrator(file)) {
      assertThat(SqliteLink.ask(link, "PRAGMA application_id"))
          .isEqualTo(String.valueOf(SqliteLink.APPLICATION_ID));
      assertThat(Migrations.shapeOf(link)).isEqualTo(Migrations.newest());
    }
  }

  @Test
  void aFilledBookHasNoBrokenReference() throws Exception {
    Path file = folder.resolve("demo.walebook");
    DemoBook.copyTo(file);
    try (Connection link = SqliteLink.migrator(file)) {
      assertThat(SqliteLink.ask(link, "PRAGMA foreign_key_check")).isEmpty();
      assertThat(SqliteLink.ask(link, "PRAGMA integrity_check")).isEqualTo("ok");
    }
  }

  @Test
  void durabilityIsAsPromised() throws Exception {
    Path file = folder.resolve("new.walebook");
    Migrations.apply(file);
    try (Connection writer = SqliteLink.writer(file)) {
      assertThat(SqliteLink.ask(writer, "PRAGMA journal_mode")).isEqualTo("wal");
      assertThat(SqliteLink.ask(writer, "PRAGMA synchronous")).isEqualTo("2");
      assertThat(SqliteLink.ask(writer, "PRAGMA foreign_keys")).isEqualTo("1");
    }
  }
}
