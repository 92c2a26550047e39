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
 * Reads whole pieces straight off rows that hold every column of the table in its order. Keys, days
 * and words that stand in many rows are made once; jOOQ's own records, which convert each value and
 * note whether it was changed, are gone round: they took most of the time of a long run.
 */
final class PieceReader {
  private static final Map<String, Integer> PLACES = places();

  private final Map<UUID, List<PullReading>> pulls;
  private final Map<UUID, List<FaultSeen>> faults;
  private final Map<String, UUID> ids = new HashMap<>();
  private final Map<String, LocalDate> days = new HashMap<>();

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
    UUID parent = row.key(TEST_PIECE.PARENT_ID);
    return new TestPiece(
        id,
        row.text(TEST_PIECE.CODE),
        new Whose(
            row.id(TEST_PIECE.CLASS_ID),
            row.id(TEST_PIECE.STUDENT_ID),
            row.key(TEST_PIECE.LESSON_ID),
            row.key(TEST_PIECE.PLANNED_ID),
            row.day(row.text(TEST_PIECE.SEWN_ON))),
        new ClothUse(
            row.id(TEST_PIECE.CLOTH_ID),
            Keyed.of(Grain.class, row.text(TEST_PIECE.GRAIN)),
            (int) row.whole(TEST_PIECE.LAYERS)),
        setting(row),
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

  private static Measure measure(Row row, List<PullReading> several) throws SQLException {
    String measured = row.word(TEST_PIECE.MEASURED_ON);
    return new Measure(
        row.number(TEST_PIECE.GAUGE_MM),
        row.number(TEST_PIECE.EDGE_BEFORE_MM),
        row.number(TEST_PIECE.EDGE_SEWN_MM),
        row.number(TEST_PIECE.EDGE_PRESSED_MM),
        several.isEmpty() ? onePull(row) : several,
        Keyed.find(Broke.class, row.word(TEST_PIECE.BROKE)),
        row.number(TEST_PIECE.RELEASED_MM),
        row.number(TEST_PIECE.NEED_PERCENT),
        new How(
            Keyed.find(Fold.class, row.word(TEST_PIECE.FOLD)),
            Keyed.find(Pull.class, row.word(TEST_PIECE.PULL)),
            row.number(TEST_PIECE.LOAD_G),
            row.number(TEST_PIECE.HOLD_S),
            row.number(TEST_PIECE.REST_S)),
        row.key(TEST_PIECE.MEASURED_BY),
        measured == null ? null : row.day(measured),
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
      double value = row.getDouble(place(column));
      return row.wasNull() ? null : value;
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
