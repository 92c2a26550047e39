package walebook.act.assess;

import java.time.Clock;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.act.Form;
import walebook.book.Book;
import walebook.book.Ids;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.Unit;
import walebook.record.CheckedBy;
import walebook.record.Help;
import walebook.record.Marking;
import walebook.record.PieceCheck;
import walebook.record.Stamp;

/** Keeps how a piece was looked over, by its student or by the tutor. */
public final class CheckPiece {
  /** Field of the help that was given. */
  public static final String HELP = "help-given";

  /** Field of the day; empty for today. */
  public static final String DAY = "checked-on";

  private final Book book;
  private final Clock clock;

  public CheckPiece(Book book, Clock clock) {
    this.book = book;
    this.clock = clock;
  }

  /** The field of a mark. */
  public static String field(Marking marking) {
    return switch (marking) {
      case CHOICE -> "choice-mark";
      case TECHNIQUE -> "technique-mark";
      case PERFORMANCE -> "performance-mark";
      case FINISH -> "finish-mark";
      case REASONING -> "reasoning-mark";
    };
  }

  /** A check as it stands in the fields. */
  public static Map<String, String> typed(@Nullable PieceCheck check) {
    Map<String, String> typed = new HashMap<>();
    if (check != null) {
      check.marks().forEach((marking, mark) -> typed.put(field(marking), mark.toString()));
      Help help = check.help();
      typed.put(HELP, help == null ? "" : help.key());
    }
    return typed;
  }

  /** Saves a check in the place of the one before; a field left empty is one not looked at. */
  public Answer<PieceCheck> check(UUID pieceId, CheckedBy by, Map<String, String> typed) {
    Form form = new Form(typed, Unit.MM);
    Map<Marking, Integer> marks = new EnumMap<>(Marking.class);
    for (Marking each : Marking.values()) {
      Integer mark = form.whole(field(each), 0, Marking.MOST);
      if (mark != null) {
        marks.put(each, mark);
      }
    }
    Help help = form.choice(HELP, Help.class);
    LocalDate today = LocalDate.now(clock);
    LocalDate day = form.dateUpTo(today, DAY);
    if (form.isRefused()) {
      return Answer.bad(form.problems());
    }
    return book.inOneStep(
        () -> {
          PieceCheck before = book.assessments().check(pieceId, by);
          if (before == null && marks.isEmpty() && help == null) {
            return Answer.bad(
                Problem.refuse("check.nothing", Place.field(field(Marking.CHOICE)), "", "0 – 3"));
          }
          return Answer.good(kept(before, pieceId, by, marks, help, day));
        });
  }

  private PieceCheck kept(
      @Nullable PieceCheck before,
      UUID pieceId,
      CheckedBy by,
      Map<Marking, Integer> marks,
      @Nullable Help help,
      @Nullable LocalDate day) {
    boolean sameDay = before != null && (day == null || day.equals(before.checkedOn()));
    if (before != null && sameDay && before.marks().equals(marks) && before.help() == help) {
      return before;
    }
    PieceCheck check =
        new PieceCheck(
            before == null ? Ids.next() : before.id(),
            pieceId,
            by,
            marks,
            help,
            day == null ? LocalDate.now(clock) : day,
            before == null ? Stamp.fresh(clock.instant()) : before.stamp().next(clock.instant()));
    book.assessments().keep(check);
    return check;
  }
}
