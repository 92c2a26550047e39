package walebook.act.piece;

import java.util.List;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.Lesson;
import walebook.record.PieceCode;
import walebook.record.PlannedPiece;
import walebook.record.TestPiece;

/**
 * Finds a piece by what its label says: the code, typed in any case with or without its hyphen, or
 * the key that its square code holds, as a scanner types it.
 */
public final class FindByCode {
  /** The field that problems name. */
  public static final String FIELD = "code";

  private static final Pattern KEY =
      Pattern.compile(
          "[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}", Pattern.CASE_INSENSITIVE);
  private static final int CODE_SIGNS = 6;
  private static final int MOST_NEAR = 3;

  private final Book book;

  public FindByCode(Book book) {
    this.book = book;
  }

  /** What a label belongs to. */
  public sealed interface Found {
    /** A piece that was sewn and logged. */
    record Sewn(TestPiece piece) implements Found {}

    /** A piece of a plan that is not logged yet, in the class of its lesson. */
    record Planned(PlannedPiece piece, UUID classId) implements Found {}
  }

  /** The piece, or why none was found. */
  public Answer<Found> find(String typed) {
    String text = typed.strip();
    if (text.isEmpty()) {
      return bad("code.empty", "", "");
    }
    Matcher key = KEY.matcher(text);
    if (key.find()) {
      return byKey(UUID.fromString(key.group()), text);
    }
    String bare = PieceCode.bare(text);
    if (PieceCode.isCode(bare)) {
      Found found = byCode(bare);
      return found == null ? gone(bare) : Answer.good(found);
    }
    if (PieceCode.isMistyped(bare)) {
      return mistyped(bare);
    }
    return bare.length() > 2 * CODE_SIGNS
        ? bad("code.not-a-code", text, "")
        : bad("code.length", text, Integer.toString(bare.length()));
  }

  private Answer<Found> byKey(UUID key, String typed) {
    TestPiece sewn = book.pieces().find(key);
    if (sewn != null) {
      return Answer.good(new Found.Sewn(sewn));
    }
    PlannedPiece planned = book.lessons().planned(key);
    if (planned == null) {
      return bad("code.unknown", typed, "");
    }
    Found found = byCode(planned.code());
    return found == null ? gone(planned.code()) : Answer.good(found);
  }

  private @Nullable Found byCode(String code) {
    TestPiece sewn = book.pieces().byCode(code);
    if (sewn != null) {
      return new Found.Sewn(sewn);
    }
    PlannedPiece planned = book.lessons().plannedByCode(code);
    if (planned == null || planned.dropped()) {
      return null;
    }
    Lesson lesson = book.lessons().find(planned.lessonId());
    return lesson == null ? null : new Found.Planned(planned, lesson.classId());
  }

  private Answer<Found> gone(String code) {
    PlannedPiece planned = book.lessons().plannedByCode(code);
    boolean dropped = planned != null && planned.dropped();
    return bad(dropped ? "code.dropped" : "code.unknown", PieceCode.spoken(code), "");
  }

  /** The check sign says that a sign is wrong; the book says which codes it can have been. */
  private Answer<Found> mistyped(String bare) {
    List<String> near =
        PieceCode.near(bare).stream()
            .filter(each -> byCode(each) != null)
            .limit(MOST_NEAR)
            .map(PieceCode::spoken)
            .toList();
    String shown = PieceCode.spoken(bare);
    return near.isEmpty()
        ? bad("code.sign-wrong", shown, "")
        : bad("code.sign-wrong-near", shown, String.join(", ", near));
  }

  private static Answer<Found> bad(String code, String found, String wanted) {
    return Answer.bad(Problem.refuse(code, Place.field(FIELD), found, wanted));
  }
}
