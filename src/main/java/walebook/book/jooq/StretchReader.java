package walebook.book.jooq;

import static walebook.book.jooq.made.Tables.CLOTH_READING;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jooq.Select;
import org.jooq.SelectField;
import org.jspecify.annotations.Nullable;
import walebook.record.CutEdge;
import walebook.record.Fold;
import walebook.record.Grain;
import walebook.record.Keyed;
import walebook.record.Pull;
import walebook.record.StretchReading;

/** Reads stretches straight off the rows; what many have alike is read once, as with pieces. */
final class StretchReader {
  static final List<SelectField<?>> COLUMNS =
      List.of(
          CLOTH_READING.ID,
          CLOTH_READING.MEASURED_BY,
          CLOTH_READING.GAUGE_MM,
          CLOTH_READING.STRETCHED_MM,
          SharedKey.of(
              CLOTH_READING.CLOTH_ID,
              CLOTH_READING.LESSON_ID,
              CLOTH_READING.GRAIN,
              CLOTH_READING.FOLD,
              CLOTH_READING.CUT_EDGE,
              CLOTH_READING.PULL,
              CLOTH_READING.LOAD_G),
          CLOTH_READING.CLOTH_ID,
          CLOTH_READING.LESSON_ID,
          CLOTH_READING.GRAIN,
          CLOTH_READING.FOLD,
          CLOTH_READING.CUT_EDGE,
          CLOTH_READING.PULL,
          CLOTH_READING.LOAD_G);

  private final Map<String, UUID> people = new HashMap<>();
  private final Map<String, StretchReading.Like> alike = new HashMap<>();

  List<StretchReading> all(Select<?> query) {
    List<StretchReading> readings = new ArrayList<>();
    try (ResultSet row = query.fetchResultSet()) {
      while (row.next()) {
        readings.add(
            new StretchReading(
                UUID.fromString(row.getString(1)),
                like(row),
                by(row.getString(2)),
                row.getDouble(3),
                row.getDouble(4)));
      }
    } catch (SQLException e) {
      throw Trouble.of(e);
    }
    return readings;
  }

  private @Nullable UUID by(@Nullable String id) {
    return id == null ? null : people.computeIfAbsent(id, UUID::fromString);
  }

  private StretchReading.Like like(ResultSet row) throws SQLException {
    String key = row.getString(5);
    StretchReading.Like known = alike.get(key);
    if (known == null) {
      String lesson = row.getString(7);
      double load = row.getDouble(12);
      Double loadG = row.wasNull() ? null : Double.valueOf(load);
      known =
          new StretchReading.Like(
              UUID.fromString(row.getString(6)),
              lesson == null ? null : UUID.fromString(lesson),
              Keyed.of(Grain.class, row.getString(8)),
              Keyed.of(Fold.class, row.getString(9)),
              Keyed.of(CutEdge.class, row.getString(10)),
              Keyed.of(Pull.class, row.getString(11)),
              loadG);
      alike.put(key, known);
    }
    return known;
  }
}
