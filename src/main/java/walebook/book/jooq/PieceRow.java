package walebook.book.jooq;

import static walebook.book.jooq.made.Tables.TEST_PIECE;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jooq.Field;
import org.jooq.SelectField;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;

/**
 * The row of a piece that the cursor stands on. All its words come as one text in four parts, since
 * each text that is fetched costs as much as several numbers: its own keys, whose it is, how it was
 * measured, how the machine was set.
 */
final class PieceRow {
  private static final Map<String, Integer> PLACES = places();
  private static final int REMARK = place(TEST_PIECE.REMARK);

  /** The parts as one, then the table's columns in their order. */
  static final List<SelectField<?>> COLUMNS = columns();

  private final ResultSet row;
  private String own = "";
  private String whose = "";
  private String measured = "";
  private String set = "";

  PieceRow(ResultSet row) {
    this.row = row;
  }

  private static Map<String, Integer> places() {
    Map<String, Integer> places = new HashMap<>();
    for (Field<?> each : TEST_PIECE.fields()) {
      places.put(each.getName(), places.size() + 2);
    }
    return Map.copyOf(places);
  }

  private static List<SelectField<?>> columns() {
    List<SelectField<?>> columns = new ArrayList<>();
    columns.add(
        SharedKey.together(
            SharedKey.plain(
                TEST_PIECE.ID, TEST_PIECE.CODE, TEST_PIECE.PLANNED_ID, TEST_PIECE.PARENT_ID),
            SharedKey.plain(
                TEST_PIECE.CLASS_ID,
                TEST_PIECE.STUDENT_ID,
                TEST_PIECE.LESSON_ID,
                TEST_PIECE.SEWN_ON),
            SharedKey.of(
                TEST_PIECE.SEAM_END,
                TEST_PIECE.OUTCOME,
                TEST_PIECE.BROKE,
                TEST_PIECE.FOLD,
                TEST_PIECE.PULL,
                TEST_PIECE.LOAD_G,
                TEST_PIECE.HOLD_S,
                TEST_PIECE.REST_S,
                TEST_PIECE.MEASURED_BY,
                TEST_PIECE.MEASURED_ON),
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
                TEST_PIECE.HEM_METHOD)));
    for (Field<?> each : TEST_PIECE.fields()) {
      // Nothing takes less time to fetch than no words.
      columns.add(
          each.equals(TEST_PIECE.REMARK) ? DSL.nullif(TEST_PIECE.REMARK, DSL.inline("")) : each);
    }
    return List.copyOf(columns);
  }

  /** Where a column of the table stands. */
  static int place(Field<?> column) {
    Integer place = PLACES.get(column.getName());
    if (place == null) {
      throw new IllegalArgumentException("no column of a piece: " + column);
    }
    return place;
  }

  /** Steps to the next row; false when there is none. */
  boolean next() throws SQLException {
    if (!row.next()) {
      return false;
    }
    String[] parts = SharedKey.apart(text(1), 4);
    own = parts[0];
    whose = parts[1];
    measured = parts[2];
    set = parts[3];
    return true;
  }

  /** Key, code, planned piece and parent, the last two empty where there is none. */
  String[] own() {
    return own.split(SharedKey.BETWEEN, -1);
  }

  /** Class, student, lesson and day; the lesson empty where there is none. */
  String whose() {
    return whose;
  }

  /** Equal where all is that says how it was measured, and what came of it in a word. */
  String measured() {
    return measured;
  }

  /** Equal where cloth and machine are. */
  String set() {
    return set;
  }

  @Nullable String word(Field<?> column) throws SQLException {
    return row.getString(place(column));
  }

  String text(Field<?> column) throws SQLException {
    return text(place(column));
  }

  private String text(int place) throws SQLException {
    String text = row.getString(place);
    if (text == null) {
      throw new SQLException("nothing in column " + place);
    }
    return text;
  }

  /** Empty where nothing was remarked. */
  String remark() throws SQLException {
    String remark = row.getString(REMARK);
    return remark == null ? "" : remark;
  }

  @Nullable Double number(Field<?> column) throws SQLException {
    return number(place(column));
  }

  @Nullable Double number(int place) throws SQLException {
    double value = row.getDouble(place);
    return value == 0 && row.wasNull() ? null : Double.valueOf(value);
  }

  long whole(int place) throws SQLException {
    return row.getLong(place);
  }
}
