package walebook.act.gather;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.assess.KeepCriteria;
import walebook.act.book.FullBook;
import walebook.book.Book;
import walebook.book.Classroom;
import walebook.book.gather.Conflict;
import walebook.book.sqlite.SqliteLink;
import walebook.book.sqlite.gather.Tables;
import walebook.problem.Answer;
import walebook.record.Criterion;
import walebook.tables.SharedTables;
import walebook.words.Words;

/** Every column of every table that a person may have to decide about is said in words. */
class SayConflictTest {
  private static final Pattern CHOICES =
      Pattern.compile("(?m)^\\s*(\\w+) \\w+.*?CHECK \\(\\1 IN \\(('[^)]*')\\)\\)");
  private static final Pattern BARE = Pattern.compile("-?[0-9.]+");
  private static final Pattern KEY = Pattern.compile("[0-9a-f]{8}-[0-9a-f-]{27}|[0-9a-f]{64}");

  @TempDir Path folder;
  private final Words words = Words.english();
  private final SayConflict say = new SayConflict(words, SharedTables.read());
  private Path file;
  private Map<String, List<String>> tables = Map.of();

  @BeforeEach
  void make() throws Exception {
    file = folder.resolve("full.walebook");
    FullBook.make(file);
    tables = Tables.decided(file);
  }

  private static Conflict about(String table, String title) {
    return new Conflict(
        UUID.randomUUID(),
        Conflict.Why.BOTH_CHANGED,
        table,
        title,
        "book",
        "file",
        List.of(),
        Instant.EPOCH);
  }

  @Test
  void everyColumnHasAMeaningAndAName() {
    Set<String> without = new TreeSet<>();
    tables.forEach(
        (table, columns) -> {
          for (String column : columns) {
            if (ConflictColumns.find(table, column) == null) {
              without.add(table + "." + column + ": meaning");
            }
            String name = "act.gather.name." + column.replace('_', '-');
            String own = "act.gather.name." + table.replace('_', '-') + name.substring(15);
            if (!words.has(name) && !words.has(own)) {
              without.add(table + "." + column + ": name");
            }
          }
        });
    assertThat(tables).containsKeys("criterion", "test_piece", "piece_pull", "garment_edge");
    assertThat(without).isEmpty();
  }

  @Test
  void everyTableHasAName() {
    assertThat(tables.keySet())
        .filteredOn(table -> words.has("act.thing." + table.replace('_', '-')))
        .as("things and parts")
        .hasSizeGreaterThan(20);
    for (String table : tables.keySet()) {
      boolean isThing = words.has("act.thing." + table.replace('_', '-'));
      boolean isPart = words.has("act.gather.name." + table.replace('_', '-'));
      assertThat(isThing || isPart).as(table).isTrue();
    }
  }

  /** What the schema allows a column to hold, and what a full book holds, is never said bare. */
  @Test
  void everyValueIsSaidInWords() throws SQLException {
    List<String> bare = new ArrayList<>();
    int said = 0;
    try (Connection link = SqliteLink.migrator(file)) {
      Map<String, Set<String>> choices = choices(link);
      for (Map.Entry<String, List<String>> table : tables.entrySet()) {
        for (String column : table.getValue()) {
          Set<String> values = new LinkedHashSet<>(held(link, table.getKey(), column));
          values.addAll(choices.getOrDefault(table.getKey() + "." + column, Set.of()));
          for (String value : values) {
            said++;
            check(table.getKey(), column, value, bare);
          }
          boolean isChoice = choices.containsKey(table.getKey() + "." + column);
          ColumnMeaning meaning = ConflictColumns.find(table.getKey(), column);
          if (isChoice && meaning == ColumnMeaning.AS_IS) {
            bare.add(table.getKey() + "." + column + " is one of a few words");
          }
        }
      }
    }
    assertThat(bare).isEmpty();
    assertThat(said).isGreaterThan(500);
  }

  private void check(String table, String column, String value, List<String> bare) {
    ColumnMeaning meaning = ConflictColumns.find(table, column);
    boolean isReference = meaning == ColumnMeaning.THING || meaning == ColumnMeaning.MACHINE;
    String text = isReference && KEY.matcher(value).matches() ? "" : value;
    String words = say.value(new Conflict.Value(table, column, text));
    boolean isTyped = meaning == ColumnMeaning.AS_IS;
    boolean isBare = !isTyped && (words.isBlank() || BARE.matcher(words).matches());
    boolean isSaid = this.words.all().containsValue(words);
    boolean isRaw = words.equals(value) && !isTyped && !isSaid && value.contains("-");
    if (isBare || isRaw || words.contains("[") || KEY.matcher(words).find()) {
      bare.add(table + "." + column + ": " + value + " is said as " + words);
    }
  }

  /** Numbers are never words that stand as they are. */
  @Test
  void aColumnOfNumbersHasAUnit() throws SQLException {
    List<String> bare = new ArrayList<>();
    try (Connection link = SqliteLink.migrator(file);
        Statement statement = link.createStatement()) {
      for (Map.Entry<String, List<String>> table : tables.entrySet()) {
        try (ResultSet rows = statement.executeQuery("PRAGMA table_info(" + table.getKey() + ")")) {
          while (rows.next()) {
            String column = rows.getString("name");
            boolean isNumber = !rows.getString("type").equals("TEXT");
            if (isNumber && table.getValue().contains(column)) {
              String one = say.value(new Conflict.Value(table.getKey(), column, "1"));
              if (BARE.matcher(one).matches()) {
                bare.add(table.getKey() + "." + column);
              }
            }
          }
        }
      }
    }
    assertThat(bare).isEmpty();
  }

  private static Set<String> held(Connection link, String table, String column)
      throws SQLException {
    Set<String> held = new LinkedHashSet<>();
    try (Statement statement = link.createStatement();
        ResultSet rows =
            statement.executeQuery(
                "SELECT DISTINCT " + column + " FROM " + table + " WHERE " + column + " <> ''")) {
      while (rows.next()) {
        held.add(rows.getString(1));
      }
    }
    return held;
  }

  private static Map<String, Set<String>> choices(Connection link) throws SQLException {
    Map<String, Set<String>> choices = new TreeMap<>();
    try (Statement statement = link.createStatement();
        ResultSet rows =
            statement.executeQuery("SELECT name, sql FROM sqlite_schema WHERE type = 'table'")) {
      while (rows.next()) {
        Matcher found = CHOICES.matcher(rows.getString(2));
        while (found.find()) {
          Set<String> allowed = new TreeSet<>();
          for (String each : found.group(2).split(",")) {
            allowed.add(each.strip().replace("'", ""));
          }
          choices.put(rows.getString(1) + "." + found.group(1), allowed);
        }
      }
    }
    assertThat(choices).hasSizeGreaterThan(20);
    return choices;
  }

  @Test
  void aThingWithoutANameIsCalledByWhatItIsAbout() {
    assertThat(say.title(about("cloth", "Grey jersey"))).isEqualTo("cloth Grey jersey");
    assertThat(say.title(about("test_piece", "K7QMXC"))).doesNotContain("K7QMXC ");
    assertThat(say.title(about("piece_check", "Grey"))).isEqualTo("a check of a piece (Grey)");
    assertThat(say.title(about("photo", ""))).isEqualTo("a photo");
  }

  @Test
  void partsStandALineEach() {
    Conflict.Field pulls =
        new Conflict.Field(
            "piece_pull",
            List.of(pull("1", "gave", "140.0"), pull("2", "held", "151.5")),
            List.of());
    assertThat(say.side(pulls.mine(), about("test_piece", "x"), pulls).lines())
        .containsExactly(
            "pull no. 1, it gave at, pulled to 140 mm",
            "pull no. 2, it held to: the cloth stopped first, pulled to 151.5 mm");
    assertThat(say.name(about("test_piece", "x"), pulls)).isEqualTo("pulls");
  }

  @Test
  void twoNumbersAreShownWithAsManyFiguresAsTellThemApart() {
    Conflict about = about("cloth_reading", "x");
    Conflict.Field length = lengths("stretched_mm", "152.0004", "152.0");
    assertThat(say.side(length.mine(), about, length)).isEqualTo("152.0004 mm");
    assertThat(say.side(length.theirs(), about, length)).isEqualTo("152 mm");
    Conflict.Field usual = lengths("stretched_mm", "152.34567", "160.5");
    assertThat(say.side(usual.mine(), about, usual)).isEqualTo("152.35 mm");
    Conflict.Field last = lengths("stretched_mm", "0.1", "0.10000000000000002");
    assertThat(say.side(last.theirs(), about, last)).isEqualTo("0.10000000000000002 mm");
    Conflict.Field pulls =
        new Conflict.Field(
            "piece_pull",
            List.of(pull("1", "gave", "140.0"), pull("2", "held", "151.5")),
            List.of(pull("1", "gave", "140.001"), pull("2", "held", "151.5")));
    assertThat(say.side(pulls.mine(), about("test_piece", "x"), pulls))
        .contains("140 mm", "151.5 mm");
    assertThat(say.side(pulls.theirs(), about("test_piece", "x"), pulls)).contains("140.001 mm");
  }

  private static Conflict.Field lengths(String column, String mine, String theirs) {
    return new Conflict.Field(
        column,
        List.of(List.of(new Conflict.Value("cloth_reading", column, mine))),
        List.of(List.of(new Conflict.Value("cloth_reading", column, theirs))));
  }

  private static List<Conflict.Value> pull(String nth, String end, String mm) {
    return List.of(
        new Conflict.Value("piece_pull", "nth", nth),
        new Conflict.Value("piece_pull", "seam_end", end),
        new Conflict.Value("piece_pull", "end_mm", mm));
  }

  /** The marks that count are kept as one number; both books changed them. */
  @Test
  void theMarksThatCountAreNamed() {
    Path tutor = folder.resolve("tutor.walebook");
    Path student = folder.resolve("student.walebook");
    try (Classroom room = Classroom.in(tutor)) {
      Criterion criterion =
          new KeepCriteria(room.book, Classroom.CLOCK)
              .add(room.schoolClass.id(), "1.1", "Chooses", "")
              .value();
      room.book.copyTo(student);
      Hall.work(student, book -> change(book, criterion, "technique finish", 20));
      change(room.book, criterion, "choice", 10);
      Hall.gather(room.book, true, student);
      Conflict open = new DecideConflicts(room.book).open().get(0);
      assertThat(say.title(open)).isEqualTo("criterion 1.1");
      assertThat(open.fields()).hasSize(1);
      Conflict.Field marks = open.fields().get(0);
      assertThat(say.name(open, marks)).isEqualTo("marks that count");
      assertThat(say.side(marks.mine(), open, marks)).isEqualTo("Choice");
      assertThat(say.side(marks.theirs(), open, marks)).isEqualTo("Technique, Finish");
      Conflict.Field all = new Conflict.Field("marks_looked_at", List.of(), List.of());
      assertThat(say.side(all.mine(), open, all)).isEqualTo("All five");
    }
  }

  private static void change(Book book, Criterion criterion, String marks, int seconds) {
    Clock clock = Clock.offset(Classroom.CLOCK, Duration.ofSeconds(seconds));
    Answer<Criterion> changed =
        new KeepCriteria(book, clock).change(criterion, criterion.code(), criterion.says(), marks);
    assertThat(changed.problems()).isEmpty();
  }
}
