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
 * Reads whole pieces straight off rows of {@link PieceRow#COLUMNS}. What many rows share, as whose
 * they are and how the machine was set, is found by its words and made once; jOOQ's own records,
 * which convert each value and note whether it was changed, are gone round: they took most of the
 * time of a long run.
 */
final class PieceReader {
  private static final int GAUGE = PieceRow.place(TEST_PIECE.GAUGE_MM);
  private static final int EDGE_BEFORE = PieceRow.place(TEST_PIECE.EDGE_BEFORE_MM);
  private static final int EDGE_SEWN = PieceRow.place(TEST_PIECE.EDGE_SEWN_MM);
  private static final int EDGE_PRESSED = PieceRow.place(TEST_PIECE.EDGE_PRESSED_MM);
  private static final int END = PieceRow.place(TEST_PIECE.END_MM);
  private static final int RELEASED = PieceRow.place(TEST_PIECE.RELEASED_MM);
  private static final int NEED = PieceRow.place(TEST_PIECE.NEED_PERCENT);
  private static final int MINUTES = PieceRow.place(TEST_PIECE.SEWING_MINUTES);
  private static final int GRADE = PieceRow.place(TEST_PIECE.GRADE);
  private static final int CREATED = PieceRow.place(TEST_PIECE.CREATED_AT);
  private static final int CHANGED = PieceRow.place(TEST_PIECE.CHANGED_AT);
  private static final int VERSION = PieceRow.place(TEST_PIECE.ROW_VERSION);

  private final Known known;
  private final Map<UUID, List<PullReading>> pulls;
  private final Map<UUID, List<FaultSeen>> faults;

  /** Cloth and machine. */
  private record SetUp(ClothUse cloth, Setting setting) {}

  /** How it was measured, and what came of it in a word. */
  private record Measured(
      @Nullable SeamEnd end,
      @Nullable PieceOutcome outcome,
      @Nullable Broke broke,
      How how,
      @Nullable UUID by,
      @Nullable LocalDate on) {}

  /** What rows share, kept from one reading to the next as long as it is not too much. */
  static final class Known {
    private static final int MOST = 5_000;

    private final Map<String, Whose> whose = new HashMap<>();
    private final Map<String, SetUp> sets = new HashMap<>();
    private final Map<String, Measured> measured = new HashMap<>();

    private static <T> void keep(Map<String, T> known, String key, T thing) {
      if (known.size() == MOST) {
        known.clear();
      }
      known.put(key, thing);
    }
  }

  PieceReader(Known known, Map<UUID, List<PullReading>> pulls, Map<UUID, List<FaultSeen>> faults) {
    this.known = known;
    this.pulls = pulls;
    this.faults = faults;
  }

  List<TestPiece> all(Select<?> query) {
    List<TestPiece> pieces = new ArrayList<>();
    try (ResultSet found = query.fetchResultSet()) {
      PieceRow row = new PieceRow(found);
      while (row.next()) {
        pieces.add(piece(row));
      }
    } catch (SQLException e) {
      throw Trouble.of(e);
    }
    return pieces;
  }

  private TestPiece piece(PieceRow row) throws SQLException {
    String[] own = row.own();
    UUID id = UUID.fromString(own[0]);
    UUID planned = key(own[2]);
    UUID parent = key(own[3]);
    SetUp set = set(row);
    Measured measured = measured(row);
    return new TestPiece(
        id,
        own[1],
        whose(row, planned),
        set.cloth(),
        set.setting(),
        measure(row, measured, pulls.getOrDefault(id, List.of())),
        new Seen(grade(row), measured.outcome(), faults.getOrDefault(id, List.of()), row.remark()),
        parent == null ? null : new Parent(parent, row.text(TEST_PIECE.CHANGED_FACTOR)),
        new Stamp(
            Instant.ofEpochMilli(row.whole(CREATED)),
            Instant.ofEpochMilli(row.whole(CHANGED)),
            row.whole(VERSION)));
  }

  private static @Nullable UUID key(@Nullable String text) {
    return text == null || text.isEmpty() ? null : UUID.fromString(text);
  }

  private Whose whose(PieceRow row, @Nullable UUID planned) {
    Whose all = known.whose.get(row.whose());
    if (all == null) {
      String[] parts = row.whose().split(SharedKey.BETWEEN, -1);
      all =
          new Whose(
              UUID.fromString(parts[0]),
              UUID.fromString(parts[1]),
              key(parts[2]),
              null,
              LocalDate.parse(parts[3]));
      Known.keep(known.whose, row.whose(), all);
    }
    return planned == null
        ? all
        : new Whose(all.classId(), all.studentId(), all.lessonId(), planned, all.sewnOn());
  }

  private SetUp set(PieceRow row) throws SQLException {
    SetUp set = known.sets.get(row.set());
    if (set == null) {
      ClothUse cloth =
          new ClothUse(
              UUID.fromString(row.text(TEST_PIECE.CLOTH_ID)),
              Keyed.of(Grain.class, row.text(TEST_PIECE.GRAIN)),
              (int) row.whole(PieceRow.place(TEST_PIECE.LAYERS)));
      set = new SetUp(cloth, setting(row));
      Known.keep(known.sets, row.set(), set);
    }
    return set;
  }

  private Measured measured(PieceRow row) throws SQLException {
    Measured measured = known.measured.get(row.measured());
    if (measured == null) {
      String on = row.word(TEST_PIECE.MEASURED_ON);
      measured =
          new Measured(
              Keyed.find(SeamEnd.class, row.word(TEST_PIECE.SEAM_END)),
              Keyed.find(PieceOutcome.class, row.word(TEST_PIECE.OUTCOME)),
              Keyed.find(Broke.class, row.word(TEST_PIECE.BROKE)),
              new How(
                  Keyed.find(Fold.class, row.word(TEST_PIECE.FOLD)),
                  Keyed.find(Pull.class, row.word(TEST_PIECE.PULL)),
                  row.number(TEST_PIECE.LOAD_G),
                  row.number(TEST_PIECE.HOLD_S),
                  row.number(TEST_PIECE.REST_S)),
              key(row.word(TEST_PIECE.MEASURED_BY)),
              on == null ? null : LocalDate.parse(on));
      Known.keep(known.measured, row.measured(), measured);
    }
    return measured;
  }

  private static @Nullable Integer grade(PieceRow row) throws SQLException {
    Double grade = row.number(GRADE);
    return grade == null ? null : Integer.valueOf(grade.intValue());
  }

  private static Setting setting(PieceRow row) throws SQLException {
    Double nm = row.number(TEST_PIECE.NEEDLE_NM);
    NeedlePoint point = Keyed.find(NeedlePoint.class, row.word(TEST_PIECE.NEEDLE_POINT));
    return new Setting(
        Keyed.of(Method.class, row.text(TEST_PIECE.METHOD)),
        key(row.word(TEST_PIECE.MACHINE_ID)),
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

  private static Measure measure(PieceRow row, Measured shared, List<PullReading> several)
      throws SQLException {
    return new Measure(
        row.number(GAUGE),
        row.number(EDGE_BEFORE),
        row.number(EDGE_SEWN),
        row.number(EDGE_PRESSED),
        several.isEmpty() ? onePull(row, shared.end()) : several,
        shared.broke(),
        row.number(RELEASED),
        row.number(NEED),
        shared.how(),
        shared.by(),
        shared.on(),
        row.number(MINUTES));
  }

  private static List<PullReading> onePull(PieceRow row, @Nullable SeamEnd end)
      throws SQLException {
    Double length = row.number(END);
    return end == null || length == null ? List.of() : List.of(new PullReading(1, end, length));
  }
}
