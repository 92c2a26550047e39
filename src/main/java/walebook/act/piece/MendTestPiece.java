package walebook.act.piece;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.book.StaleRow;
import walebook.problem.Answer;
import walebook.problem.Problem;
import walebook.quantity.Show;
import walebook.record.Dial;
import walebook.record.Keyed;
import walebook.record.Machine;
import walebook.record.Measure;
import walebook.record.Parent;
import walebook.record.PullReading;
import walebook.record.Seen;
import walebook.record.TestPiece;

/** Corrects a piece that is in the book already: what was mistyped, or noted only later. */
public final class MendTestPiece {
  /** Asked when somebody else saved the piece since it was opened. */
  public static final String STALE = "piece.stale";

  private static final PieceField[] ENDS = {PieceField.END, PieceField.END_2, PieceField.END_3};
  private static final PieceField[] LENGTHS = {
    PieceField.END_LENGTH, PieceField.END_LENGTH_2, PieceField.END_LENGTH_3
  };

  private final Book book;
  private final Clock clock;

  public MendTestPiece(Book book, Clock clock) {
    this.book = book;
    this.clock = clock;
  }

  /** The form of a saved piece, every field as it would have been typed. */
  public static PieceEntry typed(TestPiece piece, PieceRoom room) {
    PieceEntry empty = PieceEntry.of(piece);
    PieceEntry settings = StartPiece.typed(empty, piece, room);
    Map<PieceField, String> typed = new EnumMap<>(PieceField.class);
    typed.putAll(settings.typed());
    sewn(typed, piece, room);
    if (piece.parent() != null) {
      put(typed, PieceField.OTHER_CHANGE, piece.parent().byHand());
    }
    measure(typed, piece.measure());
    seen(typed, piece.seen());
    put(typed, PieceField.SEWN_ON, piece.whose().sewnOn().toString());
    PieceEntry filled = empty;
    for (Map.Entry<PieceField, String> each : typed.entrySet()) {
      filled = filled.with(each.getKey(), each.getValue());
    }
    return filled;
  }

  /**
   * Saves a mended piece over the one in the book; where nothing is mended it stays as it is.
   *
   * @param before the piece as it was opened
   * @param confirmed what is only unlikely is right
   * @param over whatever somebody else saved meanwhile gives way
   */
  public Answer<TestPiece> save(
      TestPiece before, PieceEntry entry, PieceRoom room, boolean confirmed, boolean over) {
    Answer<TestPiece> read =
        ReadPiece.read(
            entry,
            room,
            before.whose().sewnOn(),
            clock.instant(),
            before.code(),
            parent(before, entry, room));
    if (!read.isGood()) {
      return read;
    }
    List<Problem> asks = asks(before, read);
    if (!asks.isEmpty() && !confirmed) {
      return Answer.bad(asks);
    }
    TestPiece newest = book.pieces().find(before.id());
    // Looked at first: a refused update inside a larger step would leave its mark in the history.
    if (!over && (newest == null || newest.stamp().version() != before.stamp().version())) {
      return stale();
    }
    if (newest != null && read.value().with(newest.stamp()).equals(newest)) {
      // A save that changes nothing is no change in the piece's history.
      return Answer.good(newest);
    }
    TestPiece mended =
        read.value().with(Objects.requireNonNullElse(newest, before).stamp().next(clock.instant()));
    try {
      book.pieces().update(mended);
    } catch (StaleRow e) {
      return stale();
    }
    return Answer.good(mended);
  }

  /** Days that stood so before were asked about when they were typed. */
  private List<Problem> asks(TestPiece before, Answer<TestPiece> read) {
    LocalDate today = LocalDate.now(clock);
    List<Problem> asks = new ArrayList<>(read.problems());
    asks.addAll(LogTestPiece.stillToCome(read.value(), today));
    asks.removeAll(LogTestPiece.stillToCome(before, today));
    return asks;
  }

  private static Answer<TestPiece> stale() {
    return Answer.bad(List.of(Problem.ask(STALE, LogTestPiece.whole(), "", "")));
  }

  /** What was changed against the piece before is worked out anew: a setting may be mended. */
  private @Nullable Parent parent(TestPiece before, PieceEntry entry, PieceRoom room) {
    Parent was = before.parent();
    TestPiece first = was == null ? null : book.pieces().find(was.pieceId());
    return first == null ? was : OneChange.between(first, entry, room).parent();
  }

  /** Sewn sizes only where they were measured: the others follow from the dial. */
  private static void sewn(Map<PieceField, String> typed, TestPiece piece, PieceRoom room) {
    Machine machine = room.machine(piece.setting().machineId());
    own(
        typed,
        PieceField.SEWN_WIDTH,
        piece.setting().sewnWidthMm(),
        follows(machine, Dial.WIDTH, piece.setting().dialWidth()));
    own(
        typed,
        PieceField.SEWN_LENGTH,
        piece.setting().sewnLengthMm(),
        follows(machine, Dial.LENGTH, piece.setting().dialLength()));
  }

  private static @Nullable Double follows(
      @Nullable Machine machine, Dial what, @Nullable Double dial) {
    Double card = machine == null || dial == null ? null : machine.sewn(what, dial);
    return card == null ? dial : card;
  }

  private static void own(
      Map<PieceField, String> typed,
      PieceField field,
      @Nullable Double sewn,
      @Nullable Double follows) {
    if (sewn != null && !sewn.equals(follows)) {
      put(typed, field, Show.upTo(sewn, 3));
    }
  }

  /** Lengths, ends and how it was measured, as they would have been typed. */
  static void measure(Map<PieceField, String> typed, Measure measure) {
    length(typed, PieceField.GAUGE, measure.gaugeMm());
    length(typed, PieceField.EDGE_BEFORE, measure.edgeBeforeMm());
    length(typed, PieceField.EDGE_SEWN, measure.edgeSewnMm());
    length(typed, PieceField.EDGE_PRESSED, measure.edgePressedMm());
    length(typed, PieceField.RELEASED, measure.releasedMm());
    for (int i = 0; i < Math.min(ENDS.length, measure.pulls().size()); i++) {
      PullReading pull = measure.pulls().get(i);
      put(typed, ENDS[i], pull.end().key());
      length(typed, LENGTHS[i], pull.endMm());
    }
    put(typed, PieceField.BROKE, key(measure.broke()));
    put(typed, PieceField.FOLD, key(measure.how().fold()));
    put(typed, PieceField.PULL, key(measure.how().pull()));
    put(typed, PieceField.LOAD, number(measure.how().loadG()));
    put(typed, PieceField.HOLD, number(measure.how().holdS()));
    put(typed, PieceField.REST, number(measure.how().restS()));
    UUID by = measure.measuredBy();
    LocalDate on = measure.measuredOn();
    put(typed, PieceField.MEASURED_BY, by == null ? "" : by.toString());
    put(typed, PieceField.MEASURED_ON, on == null ? "" : on.toString());
    put(typed, PieceField.MINUTES, number(measure.sewingMinutes()));
  }

  private static void seen(Map<PieceField, String> typed, Seen seen) {
    put(typed, PieceField.GRADE, seen.grade() == null ? "" : String.valueOf(seen.grade()));
    put(typed, PieceField.FAULTS, FaultText.write(seen.faults()));
    put(typed, PieceField.OUTCOME, key(seen.outcome()));
    put(typed, PieceField.REMARK, seen.remark());
  }

  private static void put(Map<PieceField, String> typed, PieceField field, String text) {
    if (!text.isEmpty()) {
      typed.put(field, text);
    }
  }

  private static void length(Map<PieceField, String> typed, PieceField field, @Nullable Double mm) {
    put(typed, field, mm == null ? "" : Show.upTo(mm, 5) + " mm");
  }

  private static String number(@Nullable Double value) {
    return value == null ? "" : Show.upTo(value, 3);
  }

  private static String key(@Nullable Keyed choice) {
    return choice == null ? "" : choice.key();
  }
}
