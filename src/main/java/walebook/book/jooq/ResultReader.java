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

  /** Lines, then planned piece and, if asked for, worst fault; true when all were told. */
  boolean each(Select<?> query, boolean withFault, BiConsumer<ResultLine, DoneLine> to) {
    try (ResultSet row = query.fetchResultSet()) {
      while (row.next()) {
        Whose of = whose(row);
        ResultLine line = line(row, of, withFault ? row.getInt(LINE + 2) : 0);
        to.accept(
            line,
            new DoneLine(
                line.pieceId(),
                line.code(),
                line.studentId(),
                of.lessonId(),
                planned(row.getString(LINE + 1)),
                line.sewnOn()));
      }
    } catch (SQLException e) {
      throw Trouble.of(e);
    }
    return true;
  }

  private @Nullable UUID lesson(@Nullable String id) {
    return id == null ? null : shared(ids, id, UUID::fromString);
  }

  private static @Nullable UUID planned(@Nullable String id) {
    return id == null ? null : UUID.fromString(id);
  }

  private ResultLine line(ResultSet row) throws SQLException {
    return line(row, whose(row), null);
  }

  /** With a worst fault that is known already, or to be looked up. */
  private ResultLine line(ResultSet row, Whose of, @Nullable Integer worst) throws SQLException {
    UUID id = UUID.fromString(row.getString(1));
    Double edgeBefore = number(row, 21);
    Double pressed = number(row, 23);
    Double edgeAfter = pressed == null ? number(row, 22) : pressed;
    Double grade = number(row, 24);
    return new ResultLine(
        id,
        row.getString(2),
        of.classId(),
        of.studentId(),
        of.sewnOn(),
        setTo(row),
        Keyed.find(SeamEnd.class, row.getString(18)),
        ResultLine.changePercent(number(row, 19), number(row, 20)),
        ResultLine.changePercent(edgeBefore, edgeAfter),
        grade == null ? null : Integer.valueOf(grade.intValue()),
        number(row, 25),
        worst == null ? faults.getOrDefault(id, 0) : worst);
  }

  /** Without the planned piece, which only one piece has. */
  private Whose whose(ResultSet row) throws SQLException {
    String key = row.getString(LINE - 1);
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
      whose.put(key, known);
    }
    return known;
  }

  private SetTo setTo(ResultSet row) throws SQLException {
    String key = row.getString(LINE);
    SetTo known = settings.get(key);
    if (known == null) {
      String machine = row.getString(17);
      known =
          new SetTo(
              UUID.fromString(row.getString(6)),
              Keyed.of(Grain.class, row.getString(7)),
              row.getString(8),
              number(row, 9),
              number(row, 10),
              needle(row.getString(11), number(row, 12)),
              row.getString(13),
              number(row, 14),
              Keyed.find(Step.class, row.getString(15)),
              row.getString(16),
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
    Object value = row.getObject(column);
    return value == null ? null : Double.valueOf(((Number) value).doubleValue());
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
