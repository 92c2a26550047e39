package walebook.book.jooq;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jooq.Select;
import org.jspecify.annotations.Nullable;
import walebook.record.DoneLine;
import walebook.record.Grain;
import walebook.record.Keyed;
import walebook.record.Needle;
import walebook.record.NeedlePoint;
import walebook.record.ResultLine;
import walebook.record.SeamEnd;
import walebook.record.SetTo;
import walebook.record.Step;
import walebook.record.Whose;

/**
 * Reads lines straight off the rows in the order of {@link JooqResults#COLUMNS}. A class's pieces
 * share most of their words and keys: each is read once and kept, and jOOQ's own records, made one
 * for each row, are gone round.
 */
final class ResultReader {
  private static final int LINE = JooqResults.COLUMNS.size();

  /**
   * Rows that share a student stand near each other: of all of a school's only so many are kept.
   */
  private static final int MOST_WHOSE = 2000;

  private final Map<UUID, Integer> faults;
  private final Map<String, UUID> ids = new HashMap<>();
  private final Map<String, LocalDate> dates = new HashMap<>();
  private final Map<String, Whose> whose = new HashMap<>();
  private final Map<String, SetTo> settings = new HashMap<>();

  ResultReader(Map<UUID, Integer> faults) {
    this.faults = faults;
  }

  List<ResultLine> all(Select<?> query) {
    List<ResultLine> lines = new ArrayList<>();
    try (ResultSet row = query.fetchResultSet()) {
      while (row.next()) {
        lines.add(line(row));
      }
    } catch (SQLException e) {
      throw Trouble.of(e);
    }
    return lines;
  }

  /** Key, code, student, lesson, planned piece, day; true when all were told. */
  boolean done(Select<?> query, Consumer<DoneLine> to) {
    try (ResultSet row = query.fetchResultSet()) {
      while (row.next()) {
        to.accept(
            new DoneLine(
                UUID.fromString(row.getString(1)),
                row.getString(2),
                shared(ids, row.getString(3), UUID::fromString),
                lesson(row.getString(4)),
                planned(row.getString(5)),
                shared(dates, row.getString(6), LocalDate::parse)));
      }
    } catch (SQLException e) {
      throw Trouble.of(e);
    }
    return true;
  }

  /** Lines, then, if asked for, the worst fault; true when all were told. */
  boolean each(Select<?> query, boolean withFault, BiConsumer<ResultLine, DoneLine> to) {
    try (ResultSet row = query.fetchResultSet()) {
      while (row.next()) {
        Keys keys = new Keys(row);
        Whose of = whose(keys.whose);
        ResultLine line = line(row, keys, of, withFault ? row.getInt(LINE + 1) : 0);
        to.accept(
            line,
            new DoneLine(
                line.pieceId(),
                line.code(),
                line.studentId(),
                of.lessonId(),
                keys.planned(),
                line.sewnOn()));
      }
    } catch (SQLException e) {
      throw Trouble.of(e);
    }
    return true;
  }

  /** The three keys of a row. */
  private static final class Keys {
    private final String[] own;
    private final String whose;
    private final String setTo;

    Keys(ResultSet row) throws SQLException {
      String[] keys = SharedKey.apart(row.getString(1), 3);
      own = keys[0].split(SharedKey.BETWEEN, -1);
      whose = keys[1];
      setTo = keys[2];
    }

    UUID id() {
      return UUID.fromString(own[0]);
    }

    String code() {
      return own[1];
    }

    @Nullable UUID planned() {
      return own[2].isEmpty() ? null : UUID.fromString(own[2]);
    }

    @Nullable SeamEnd end() {
      return Keyed.find(SeamEnd.class, own[3]);
    }
  }

  private @Nullable UUID lesson(@Nullable String id) {
    return id == null ? null : shared(ids, id, UUID::fromString);
  }

  private static @Nullable UUID planned(@Nullable String id) {
    return id == null ? null : UUID.fromString(id);
  }

  private ResultLine line(ResultSet row) throws SQLException {
    Keys keys = new Keys(row);
    return line(row, keys, whose(keys.whose), null);
  }

  /** With a worst fault that is known already, or to be looked up. */
  private ResultLine line(ResultSet row, Keys keys, Whose of, @Nullable Integer worst)
      throws SQLException {
    UUID id = keys.id();
    Double grade = number(row, 18);
    return new ResultLine(
        id,
        keys.code(),
        of.classId(),
        of.studentId(),
        of.sewnOn(),
        setTo(row, keys.setTo),
        keys.end(),
        ResultLine.changePercent(number(row, 14), number(row, 15)),
        ResultLine.changePercent(number(row, 16), number(row, 17)),
        grade == null ? null : Integer.valueOf(grade.intValue()),
        number(row, 19),
        worst == null ? faults.getOrDefault(id, 0) : worst);
  }

  /** Without the planned piece, which only one piece has. */
  private Whose whose(String key) {
    Whose known = whose.get(key);
    if (known == null) {
      String[] parts = key.split(SharedKey.BETWEEN, -1);
      known =
          new Whose(
              UUID.fromString(parts[0]),
              UUID.fromString(parts[1]),
              parts[3].isEmpty() ? null : UUID.fromString(parts[3]),
              null,
              LocalDate.parse(parts[2]));
      if (whose.size() >= MOST_WHOSE) {
        whose.clear();
      }
      whose.put(key, known);
    }
    return known;
  }

  private SetTo setTo(ResultSet row, String key) throws SQLException {
    SetTo known = settings.get(key);
    if (known == null) {
      String machine = row.getString(13);
      known =
          new SetTo(
              UUID.fromString(row.getString(2)),
              Keyed.of(Grain.class, row.getString(3)),
              row.getString(4),
              number(row, 5),
              number(row, 6),
              needle(row.getString(7), number(row, 8)),
              row.getString(9),
              number(row, 10),
              Keyed.find(Step.class, row.getString(11)),
              row.getString(12),
              machine == null ? null : UUID.fromString(machine));
      settings.put(key, known);
    }
    return known;
  }

  private static @Nullable Needle needle(@Nullable String point, @Nullable Double nm) {
    NeedlePoint found = Keyed.find(NeedlePoint.class, point);
    return found == null || nm == null ? null : new Needle(found, nm.intValue());
  }

  private static @Nullable Double number(ResultSet row, int column) throws SQLException {
    double value = row.getDouble(column);
    return value == 0 && row.wasNull() ? null : Double.valueOf(value);
  }

  private static <T> T shared(Map<String, T> known, String text, Function<String, T> read) {
    T found = known.get(text);
    if (found == null) {
      found = read.apply(text);
      known.put(text, found);
    }
    return found;
  }
}
