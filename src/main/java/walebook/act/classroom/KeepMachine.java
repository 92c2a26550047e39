package walebook.act.classroom;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import walebook.act.Form;
import walebook.book.Book;
import walebook.book.Ids;
import walebook.problem.Answer;
import walebook.quantity.ReadNumber;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.record.Dial;
import walebook.record.DialReading;
import walebook.record.Machine;
import walebook.record.MachineKind;
import walebook.record.Stamp;
import walebook.record.StepDial;

/**
 * Adds a machine to the room or changes its card. Fields: machine-number, machine-name,
 * machine-kind, stitches (keys parted by blanks), needle-to-knife, pressure-lower, -normal,
 * -higher, tension-lower, -normal, -higher, feed-least, feed-most, dial-lengths and dial-widths
 * (pairs such as {@code 2.5=2.2}, parted by blanks), remark, retired.
 */
public final class KeepMachine {
  // A comma within a number is a decimal comma; one at a pair's end parts it from the next.
  private static final String BETWEEN_PAIRS = "[\\s;]+|,(?=\\s|$)[\\s;]*";

  private final Book book;
  private final Clock clock;

  public KeepMachine(Book book, Clock clock) {
    this.book = book;
    this.clock = clock;
  }

  /**
   * Saves a card.
   *
   * @param before the machine as it was, or null for a new one
   */
  public Answer<Machine> keep(
      @Nullable Machine before, Map<String, String> typed, boolean confirmed) {
    Form form = new Form(typed, Unit.MM);
    form.needed("machine-number");
    form.needed("machine-kind");
    Integer number = form.whole("machine-number", 1, 999);
    MachineKind kind = form.choice("machine-kind", MachineKind.class);
    if (number != null && isTaken(number, before)) {
      form.refuse("machine-number", "number.taken", "");
    }
    Double knife = form.length("needle-to-knife", 15);
    Double feedLeast = form.number("feed-least", 0.1, 1);
    Double feedMost = form.number("feed-most", 0.1, 4);
    if (feedLeast != null && feedMost != null && feedLeast > feedMost) {
      form.refuse("feed-most", "number.too-small", Show.upTo(feedLeast, 2));
    }
    List<DialReading> dials = new ArrayList<>();
    dials.addAll(dials(form, "dial-lengths", Dial.LENGTH));
    dials.addAll(dials(form, "dial-widths", Dial.WIDTH));
    if (form.isRefused()
        || number == null
        || kind == null
        || (!form.problems().isEmpty() && !confirmed)) {
      return Answer.bad(form.problems());
    }
    Stamp stamp =
        before == null ? Stamp.fresh(clock.instant()) : before.stamp().next(clock.instant());
    Machine machine =
        new Machine(
            before == null ? Ids.next() : before.id(),
            number,
            form.text("machine-name"),
            kind,
            words(form.text("stitches")),
            kind == MachineKind.OVERLOCKER ? knife : null,
            dial(form, "pressure"),
            dial(form, "tension"),
            feedLeast,
            feedMost,
            dials,
            form.text("remark"),
            Boolean.TRUE.equals(form.yes("retired")),
            stamp);
    if (before == null) {
      book.machines().add(machine);
    } else {
      book.machines().update(machine);
    }
    return Answer.good(machine);
  }

  private boolean isTaken(int number, @Nullable Machine before) {
    return book.machines().all().stream()
        .anyMatch(
            each -> each.number() == number && (before == null || !each.id().equals(before.id())));
  }

  private static StepDial dial(Form form, String what) {
    return new StepDial(
        form.text(what + "-lower"), form.text(what + "-normal"), form.text(what + "-higher"));
  }

  private static List<String> words(String text) {
    return text.isBlank()
        ? List.of()
        : Arrays.stream(text.strip().split("[\\s;]+")).distinct().toList();
  }

  /** Reads pairs of dial number and sewn mm. */
  private List<DialReading> dials(Form form, String field, Dial what) {
    List<DialReading> dials = new ArrayList<>();
    for (String pair : form.text(field).strip().split(BETWEEN_PAIRS, -1)) {
      if (pair.isBlank()) {
        continue;
      }
      String[] sides = pair.split("=", -1);
      Double dial = sides.length == 2 ? number(sides[0]) : null;
      Double sewn = sides.length == 2 ? number(sides[1]) : null;
      if (dial == null || sewn == null || dial < 0 || sewn < 0) {
        form.refuse(field, "dial.pair", pair, "2.5=2.2");
      } else {
        dials.add(new DialReading(Ids.next(), null, what, dial, sewn, LocalDate.now(clock)));
      }
    }
    return dials;
  }

  private static @Nullable Double number(String text) {
    var read = ReadNumber.plain(text, new walebook.problem.Place.Whole());
    return read.isGood() ? read.value() : null;
  }
}
