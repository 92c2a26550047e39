package walebook.act.card;

import java.time.Clock;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.act.piece.LogTestPiece;
import walebook.act.piece.PieceEntry;
import walebook.act.piece.PieceRoom;
import walebook.book.Book;
import walebook.problem.Answer;
import walebook.problem.Problem;
import walebook.record.PieceCode;
import walebook.record.PlannedPiece;
import walebook.record.TestPiece;

/**
 * Saves all good cards in one step, each checked as a piece logged in the form is; the others are
 * answered with what is in their way.
 */
public final class LogCards {
  private final Book book;
  private final LogTestPiece log;

  /**
   * Makes the act.
   *
   * @param chance draws codes for pieces that have no label
   */
  public LogCards(Book book, Clock clock, Random chance) {
    this.book = book;
    this.log = new LogTestPiece(book, clock, chance);
  }

  /**
   * Saves what can be saved.
   *
   * @param confirmed what was asked about before, by the piece's key; when nothing new comes up it
   *     is taken as a yes
   * @return an answer for each card, by the piece's key
   */
  public Map<UUID, Answer<TestPiece>> save(
      List<PieceEntry> cards, PieceRoom room, Map<UUID, List<Problem>> confirmed) {
    Map<UUID, String> codes = new LinkedHashMap<>();
    cards.forEach(each -> codes.put(each.pieceId(), each.code() == null ? "" : each.code()));
    Map<UUID, Problem> clashes = CardClashes.codes(codes);
    return book.inOneStep(
        () -> {
          Map<UUID, Answer<TestPiece>> answers = new LinkedHashMap<>();
          for (PieceEntry each : cards) {
            Problem clash = clashes.get(each.pieceId());
            answers.put(
                each.pieceId(),
                clash == null
                    ? one(each, room, confirmed.getOrDefault(each.pieceId(), List.of()))
                    : Answer.bad(clash));
          }
          return answers;
        });
  }

  private Answer<TestPiece> one(PieceEntry typed, PieceRoom room, List<Problem> confirmed) {
    PieceEntry card = bareCode(typed);
    TestPiece saved = book.pieces().find(card.pieceId());
    if (saved != null) {
      return Answer.good(saved);
    }
    Problem taken = taken(card);
    if (taken != null) {
      return Answer.bad(taken);
    }
    List<Problem> within = CardClashes.within(card);
    if (!within.isEmpty()) {
      return Answer.bad(within);
    }
    Answer<TestPiece> answer = log.save(card, room, false);
    boolean onlyAsks = answer.problems().stream().noneMatch(Problem::refuses);
    return !answer.isGood() && onlyAsks && new HashSet<>(confirmed).containsAll(answer.problems())
        ? log.save(card, room, true)
        : answer;
  }

  private static PieceEntry bareCode(PieceEntry card) {
    String code = card.code();
    return new PieceEntry(
        card.pieceId(),
        card.classId(),
        card.studentId(),
        card.lessonId(),
        card.plannedId(),
        code == null || code.isBlank() ? null : PieceCode.bare(code),
        card.parentId(),
        card.typed());
  }

  private @Nullable Problem taken(PieceEntry card) {
    String code = card.code();
    if (code == null) {
      return null;
    }
    if (book.pieces().byCode(code) != null) {
      return CardClashes.code("code.logged", PieceCode.spoken(code));
    }
    PlannedPiece planned = book.lessons().plannedByCode(code);
    boolean ofAnother = planned != null && !planned.id().equals(card.plannedId());
    return ofAnother ? CardClashes.code("card.code-planned", PieceCode.spoken(code)) : null;
  }
}
