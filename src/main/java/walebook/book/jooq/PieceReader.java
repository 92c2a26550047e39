package walebook.book.jooq;

import static walebook.book.jooq.made.Tables.TEST_PIECE;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import org.jooq.Field;
import org.jooq.Select;
import org.jooq.SelectField;
import org.jspecify.annotations.Nullable;
import walebook.record.Broke;
import walebook.record.ClothUse;
import walebook.record.FaultSeen;
import walebook.record.Fold;
import walebook.record.Grain;
import walebook.record.How;
import walebook.record.Keyed;
import walebook.record.MachineKind;
import walebook.record.Measure;
import walebook.record.Method;
import walebook.record.NeedlePoint;
import walebook.record.Parent;
import walebook.record.PieceOutcome;
import walebook.record.Pull;
import walebook.record.PullReading;
import walebook.record.SeamEnd;
import walebook.record.Seen;
import walebook.record.Setting;
import walebook.record.Stamp;
import walebook.record.Step;
import walebook.record.TestPiece;
import walebook.record.Whose;

/**
 * Reads whole pieces straight off rows of {@link #COLUMNS}. What many rows share, as whose they are
 * and how the machine was set, is found by its key and made once; jOOQ's own records, which convert
 * each value and note whether it was changed, are gone round: they took most of the time of a long
 * run.
 */
final class PieceReader {
  private static final Map<String, Integer> PLACES = places();

  /** The table's columns in their order, then what rows share as keys. */
  static final List<SelectField<?>> COLUMNS = columns();

  private static final int WHOSE = PLACES.size() + 1;
  private static final int SET = PLACES.size() + 2;
  private static final int HOW = PLACES.size() + 3;

  private final Map<UUID, List<PullReading>> pulls;
  private final Map<UUID, List<FaultSeen>> faults;
  private final Map<String, UUID> ids = new HashMap<>();
  private final Map<String, LocalDate> days = new HashMap<>();
  private final Map<String, Whose> whose = new HashMap<>();
  private final Map<String, SetUp> sets = new HashMap<>();
  private final Map<String, Measured> measured = new HashMap<>();

  /** Cloth and machine. */
  private record SetUp(ClothUse cloth, Setting setting) {}

  /** How it was measured, and what gave. */
  private record Measured(
      @Nullable Broke broke, How how, @Nullable UUID by, @Nullable LocalDate on) {}

  PieceReader(Map<UUID, List<PullReading>> pulls, Map<UUID, List<FaultSeen>> faults) {
    this.pulls = pulls;
    this.faults = faults;
  }

  private static Map<String, Integer> places() {
    Map<String, Integer> places = new HashMap<>();
    for (Field<?> each : TEST_PIECE.fields()) {
      places.put(each.getName(), places.size() + 1);
    }
    return Map.copyOf(places);
  }

  private static List<SelectField<?>> columns() {
    List<SelectField<?>> columns = new ArrayList<>(List.of(TEST_PIECE.fields()));
    columns.add(
        SharedKey.of(
            TEST_PIECE.CLASS_ID, TEST_PIECE.STUDENT_ID, TEST_PIECE.LESSON_ID, TEST_PIECE.SEWN_ON));
    columns.add(
        SharedKey.of(
            TEST_PIECE.CLOTH_ID,
            TEST_PIECE.GRAIN,
            TEST_PIECE.LAYERS,
            TEST_PIECE.METHOD,
            TEST_PIECE.MACHINE_ID,
            TEST_PIECE.MACHINE_KIND,
            TEST_PIECE.STITCH_TYPE,
            TEST_PIECE.STITCH_NAME,
            TEST_PIECE.DIAL_WIDTH,
            TEST_PIECE.DIAL_LENGTH,
            TEST_PIECE.SEWN_WIDTH_MM,
            TEST_PIECE.SEWN_LENGTH_MM,
            TEST_PIECE.NEEDLE_POINT,
            TEST_PIECE.NEEDLE_NM,
            TEST_PIECE.THREAD,
            TEST_PIECE.PRESSURE,
            TEST_PIECE.PRESSURE_DIAL,
            TEST_PIECE.TENSION,
            TEST_PIECE.TENSION_DIAL,
            TEST_PIECE.DIFFERENTIAL_FEED,
            TEST_PIECE.STABILISER,
            TEST_PIECE.HEM_METHOD));
    columns.add(
        SharedKey.of(
            TEST_PIECE.BROKE,
            TEST_PIECE.FOLD,
            TEST_PIECE.PULL,
            TEST_PIECE.LOAD_G,
            TEST_PIECE.HOLD_S,
            TEST_PIECE.REST_S,
            TEST_PIECE.MEASURED_BY,
            TEST_PIECE.MEASURED_ON));
    return List.copyOf(columns);
  }

  List<TestPiece> all(Select<?> query) {
    List<TestPiece> pieces = new ArrayList<>();
    try (ResultSet found = query.fetchResultSet()) {
      Row row = new Row(found);
      while (found.next()) {
        pieces.add(piece(row));
      }
    } catch (SQLException e) {
      throw Trouble.of(e);
    }
    return pieces;
  }

  private TestPiece piece(Row row) throws SQLException {
    UUID id = UUID.fromString(row.text(TEST_PIECE.ID));
    UUID parent = row.own(TEST_PIECE.PARENT_ID);
    SetUp set = set(row);
    return new TestPiece(
        id,
        row.text(TEST_PIECE.CODE),
        whose(row),
        set.cloth(),
        set.setting(),
        measure(row, pulls.getOrDefault(id, List.of())),
        new Seen(
            grade(row),
            Keyed.find(PieceOutcome.class, row.word(TEST_PIECE.OUTCOME)),
            faults.getOrDefault(id, List.of()),
            row.text(TEST_PIECE.REMARK)),
        parent == null ? null : new Parent(parent, row.text(TEST_PIECE.CHANGED_FACTOR)),
        new Stamp(
            Instant.ofEpochMilli(row.whole(TEST_PIECE.CREATED_AT)),
            Instant.ofEpochMilli(row.whole(TEST_PIECE.CHANGED_AT)),
            row.whole(TEST_PIECE.ROW_VERSION)));
  }

  private Whose whose(Row row) throws SQLException {
    String key = row.key(WHOSE);
    Whose known = whose.get(key);
    if (known == null) {
      known =
          new Whose(
              row.id(TEST_PIECE.CLASS_ID),
              row.id(TEST_PIECE.STUDENT_ID),
              row.key(TEST_PIECE.LESSON_ID),
              null,
              row.day(row.text(TEST_PIECE.SEWN_ON)));
      whose.put(key, known);
    }
    UUID planned = row.own(TEST_PIECE.PLANNED_ID);
    return planned == null
        ? known
        : new Whose(known.classId(), known.studentId(), known.lessonId(), planned, known.sewnOn());
  }

  private SetUp set(Row row) throws SQLException {
    String key = row.key(SET);
    SetUp known = sets.get(key);
    if (known == null) {
      ClothUse cloth =
          new ClothUse(
              row.id(TEST_PIECE.CLOTH_ID),
              Keyed.of(Grain.class, row.text(TEST_PIECE.GRAIN)),
              (int) row.whole(TEST_PIECE.LAYERS));
      known = new SetUp(cloth, setting(row));
      sets.put(key, known);
    }
    return known;
  }

  private Measured measured(Row row) throws SQLException {
    String key = row.key(HOW);
    Measured known = measured.get(key);
    if (known == null) {
      String on = row.word(TEST_PIECE.MEASURED_ON);
      known =
          new Measured(
              Keyed.find(Broke.class, row.word(TEST_PIECE.BROKE)),
              new How(
                  Keyed.find(Fold.class, row.word(TEST_PIECE.FOLD)),
                  Keyed.find(Pull.class, row.word(TEST_PIECE.PULL)),
                  row.number(TEST_PIECE.LOAD_G),
                  row.number(TEST_PIECE.HOLD_S),
                  row.number(TEST_PIECE.REST_S)),
              row.key(TEST_PIECE.MEASURED_BY),
              on == null ? null : row.day(on));
      measured.put(key, known);
    }
    return known;
  }

  private static @Nullable Integer grade(Row row) throws SQLException {
    Double grade = row.number(TEST_PIECE.GRADE);
    return grade == null ? null : Integer.valueOf(grade.intValue());
  }

  private static Setting setting(Row row) throws SQLException {
    Double nm = row.number(TEST_PIECE.NEEDLE_NM);
    NeedlePoint point = Keyed.find(NeedlePoint.class, row.word(TEST_PIECE.NEEDLE_POINT));
    return new Setting(
        Keyed.of(Method.class, row.text(TEST_PIECE.METHOD)),
        row.key(TEST_PIECE.MACHINE_ID),
        Keyed.of(MachineKind.class, row.text(TEST_PIECE.MACHINE_KIND)),
        row.text(TEST_PIECE.STITCH_TYPE),
        row.text(TEST_PIECE.STITCH_NAME),
        row.number(TEST_PIECE.DIAL_WIDTH),
        row.number(TEST_PIECE.DIAL_LENGTH),
        row.number(TEST_PIECE.SEWN_WIDTH_MM),
        row.number(TEST_PIECE.SEWN_LENGTH_MM),
        point == null || nm == null ? null : new walebook.record.Needle(point, nm.intValue()),
        row.text(TEST_PIECE.THREAD),
        Keyed.find(Step.class, row.word(TEST_PIECE.PRESSURE)),
        row.text(TEST_PIECE.PRESSURE_DIAL),
        Keyed.find(Step.class, row.word(TEST_PIECE.TENSION)),
        row.text(TEST_PIECE.TENSION_DIAL),
        row.number(TEST_PIECE.DIFFERENTIAL_FEED),
        row.text(TEST_PIECE.STABILISER),
        row.text(TEST_PIECE.HEM_METHOD));
  }

  private Measure measure(Row row, List<PullReading> several) throws SQLException {
    Measured shared = measured(row);
    return new Measure(
        row.number(TEST_PIECE.GAUGE_MM),
        row.number(TEST_PIECE.EDGE_BEFORE_MM),
        row.number(TEST_PIECE.EDGE_SEWN_MM),
        row.number(TEST_PIECE.EDGE_PRESSED_MM),
        several.isEmpty() ? onePull(row) : several,
        shared.broke(),
        row.number(TEST_PIECE.RELEASED_MM),
        row.number(TEST_PIECE.NEED_PERCENT),
        shared.how(),
        shared.by(),
        shared.on(),
        row.number(TEST_PIECE.SEWING_MINUTES));
  }

  private static List<PullReading> onePull(Row row) throws SQLException {
    SeamEnd end = Keyed.find(SeamEnd.class, row.word(TEST_PIECE.SEAM_END));
    Double length = row.number(TEST_PIECE.END_MM);
    return end == null || length == null ? List.of() : List.of(new PullReading(1, end, length));
  }

  private static int place(Field<?> column) {
    Integer place = PLACES.get(column.getName());
    if (place == null) {
      throw new IllegalArgumentException("no column of a piece: " + column);
    }
    return place;
  }

  private static <T> T shared(Map<String, T> known, String text, Function<String, T> read) {
    T found = known.get(text);
    if (found == null) {
      found = read.apply(text);
      known.put(text, found);
    }
    return found;
  }

  /** The row that the cursor stands on. */
  private final class Row {
    private final ResultSet row;

    Row(ResultSet row) {
      this.row = row;
    }

    @Nullable String word(Field<?> column) throws SQLException {
      return row.getString(place(column));
    }

    String text(Field<?> column) throws SQLException {
      String text = row.getString(place(column));
      if (text == null) {
        throw new SQLException("nothing in " + column.getName());
      }
      return text;
    }

    @Nullable Double number(Field<?> column) throws SQLException {
      Object value = row.getObject(place(column));
      return value == null ? null : Double.valueOf(((Number) value).doubleValue());
    }

    /** One of the keys behind the columns. */
    String key(int place) throws SQLException {
      String key = row.getString(place);
      if (key == null) {
        throw new SQLException("nothing in key " + place);
      }
      return key;
    }

    /** A key that no other row has. */
    @Nullable UUID own(Field<?> column) throws SQLException {
      String text = word(column);
      return text == null ? null : UUID.fromString(text);
    }

    long whole(Field<?> column) throws SQLException {
      return row.getLong(place(column));
    }

    UUID id(Field<?> column) throws SQLException {
      return shared(ids, text(column), UUID::fromString);
    }

    @Nullable UUID key(Field<?> column) throws SQLException {
      String text = word(column);
      return text == null ? null : shared(ids, text, UUID::fromString);
    }

    LocalDate day(String text) {
      return shared(days, text, LocalDate::parse);
    }
  }
}
