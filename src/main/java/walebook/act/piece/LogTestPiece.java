package walebook.act.piece;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.PieceCode;
import walebook.record.TestPiece;

/**
 * Checks a typed piece and saves it. What is only unlikely is asked about first and saved once it
 * is confirmed; what was saved is on the disk when the answer comes.
 */
public final class LogTestPiece {
  private final Book book;
  private final Clock clock;
  private final Random chance;

  /**
   * Makes the act.
   *
   * @param chance draws codes for pieces that have no label yet
   */
  public LogTestPiece(Book book, Clock clock, Random chance) {
    this.book = book;
    this.clock = clock;
    this.chance = chance;
  }

  /** Saves the piece, or says what is in the way. */
  public Answer<TestPiece> save(PieceEntry typed, PieceRoom room, boolean confirmed) {
    OneChange change = oneChange(typed, room);
    PieceEntry entry = change.equals(OneChange.GONE) ? byItself(typed) : typed;
    String code = entry.code() == null ? ReadPiece.NO_CODE : entry.code();
    Answer<TestPiece> read =
        ReadPiece.read(entry, room, LocalDate.now(clock), clock.instant(), code, change.parent());
    if (!read.isGood()) {
      return read;
    }
    List<Problem> asks =
        Stream.of(read.problems(), change.asks(), stillToCome(read.value(), LocalDate.now(clock)))
            .flatMap(List::stream)
            .toList();
    if (!asks.isEmpty() && !confirmed) {
      return Answer.bad(asks);
    }
    TestPiece piece = entry.code() == null ? coded(read.value()) : read.value();
    book.pieces().add(piece);
    return Answer.good(piece);
  }

  /** Days of a piece that are still to come: asked about, since a clock can be wrong, too. */
  static List<Problem> stillToCome(TestPiece piece, LocalDate today) {
    List<Problem> asks = new ArrayList<>();
    LocalDate sewnOn = piece.whose().sewnOn();
    LocalDate measuredOn = piece.measure().measuredOn();
    ask(asks, PieceField.SEWN_ON, sewnOn, today);
    // Left empty, the day of measuring follows the day of sewing.
    ask(asks, PieceField.MEASURED_ON, sewnOn.equals(measuredOn) ? null : measuredOn, today);
    return asks;
  }

  private static void ask(
      List<Problem> asks, PieceField field, @Nullable LocalDate day, LocalDate today) {
    if (day != null && day.isAfter(today)) {
      asks.add(
          Problem.ask("date.future", FieldReader.place(field), day.toString(), today.toString()));
    }
  }

  private OneChange oneChange(PieceEntry entry, PieceRoom room) {
    if (entry.parentId() == null) {
      return OneChange.NONE;
    }
    TestPiece parent = book.pieces().find(entry.parentId());
    return parent == null ? OneChange.GONE : OneChange.between(parent, entry, room);
  }

  /** Without a piece to have changed against, what was changed by hand goes on as a remark. */
  private static PieceEntry byItself(PieceEntry entry) {
    String byHand = entry.at(PieceField.OTHER_CHANGE).strip();
    String remark = entry.at(PieceField.REMARK).strip();
    return byHand.isEmpty()
        ? entry
        : entry.with(PieceField.REMARK, remark.isEmpty() ? byHand : remark + "; " + byHand);
  }

  private TestPiece coded(TestPiece piece) {
    return new TestPiece(
        piece.id(),
        freeCode(book, chance),
        piece.whose(),
        piece.cloth(),
        piece.setting(),
        piece.measure(),
        piece.seen(),
        piece.parent(),
        piece.stamp());
  }

  /** Draws a code that no piece has, planned or sewn. */
  public static String freeCode(Book book, Random chance) {
    String code = PieceCode.draw(chance);
    while (book.lessons().isCodeTaken(code)) {
      code = PieceCode.draw(chance);
    }
    return code;
  }

  /** A place for problems that belong to the piece as a whole. */
  static Place whole() {
    return new Place.Whole();
  }
}
