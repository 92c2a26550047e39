package walebook.act.cloth;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.act.Form;
import walebook.book.Book;
import walebook.book.Ids;
import walebook.cloth.DimensionalChange;
import walebook.compare.ClothStretch;
import walebook.problem.Answer;
import walebook.quantity.Show;
import walebook.record.ClothWash;
import walebook.record.Grain;
import walebook.record.Stamp;
import walebook.working.Working;

/**
 * Logs what a wash did to marked lengths of a cloth. Fields: wash, washed-on, and for one grain
 * grain, before, after; for a square that is marked both ways wale-before, wale-after,
 * course-before, course-after. A grain of the square with nothing typed was not marked.
 */
public final class LogWash {
  /** The grains that a square is marked along. */
  public static final List<Grain> SQUARE = List.of(Grain.WALE, Grain.COURSE);

  private static final double USUAL_LENGTH_MM = 1000;

  /** Beyond these it is asked about; common practice knows some 7 % of single jersey. */
  private static final double USUAL_SHRINKAGE = 25;

  private static final double USUAL_GROWTH = 10;

  /** Nothing that is cut can be worked out from a length that doubles. */
  private static final double MOST_GROWTH = 100;

  private final Book book;
  private final Clock clock;

  public LogWash(Book book, Clock clock) {
    this.book = book;
    this.clock = clock;
  }

  /** The field of a length of the square, before or after the wash. */
  public static String field(Grain grain, boolean after) {
    return grain.key() + (after ? "-after" : "-before");
  }

  /** How a wash's percentage comes about. */
  public static Answer<Working> working(ClothWash wash) {
    return DimensionalChange.of(wash.beforeMm(), wash.afterMm(), ClothStretch.READ_TO_MM);
  }

  /** Reads the form without saving it, for the working while typing. */
  public Answer<List<ClothWash>> read(UUID clothId, Map<String, String> typed) {
    Form form = new Form(typed, book.info().lengthUnit());
    List<Marked> marked = new ArrayList<>();
    if (typed.containsKey("grain")) {
      one(form, marked);
    } else {
      square(form, marked);
    }
    LocalDate today = LocalDate.now(clock);
    LocalDate on = form.dateUpTo(today, "washed-on");
    if (form.isRefused()) {
      return Answer.bad(form.problems());
    }
    List<ClothWash> washes = new ArrayList<>();
    for (Marked each : marked) {
      washes.add(
          new ClothWash(
              Ids.next(),
              clothId,
              each.grain(),
              each.beforeMm(),
              each.afterMm(),
              form.text("wash"),
              on == null ? today : on,
              Stamp.fresh(clock.instant())));
    }
    return new Answer.Good<>(List.copyOf(washes), form.problems());
  }

  /** Saves what was measured in one step, or says what is in the way. */
  public Answer<List<ClothWash>> save(UUID clothId, Map<String, String> typed, boolean confirmed) {
    Answer<List<ClothWash>> read = read(clothId, typed);
    if (!read.isGood() || (!read.problems().isEmpty() && !confirmed)) {
      return read.isGood() ? Answer.bad(read.problems()) : read;
    }
    return Answer.good(
        book.inOneStep(
            () -> {
              read.value().forEach(book.clothLog()::add);
              return read.value();
            }));
  }

  private record Marked(Grain grain, double beforeMm, double afterMm) {}

  private static void one(Form form, List<Marked> marked) {
    form.needed("grain");
    Grain grain = form.choice("grain", Grain.class);
    if (grain == Grain.BIAS) {
      form.refuse("grain", "choice.unknown", "wale, course");
    }
    Marked read = marked(form, grain == null ? Grain.WALE : grain, "before", "after");
    if (read != null) {
      marked.add(read);
    }
  }

  private static void square(Form form, List<Marked> marked) {
    boolean none = true;
    for (Grain grain : SQUARE) {
      String before = field(grain, false);
      String after = field(grain, true);
      if (!form.text(before).isEmpty() || !form.text(after).isEmpty()) {
        none = false;
        Marked read = marked(form, grain, before, after);
        if (read != null) {
          marked.add(read);
        }
      }
    }
    if (none) {
      form.needed(field(Grain.WALE, true));
    }
  }

  private static @Nullable Marked marked(Form form, Grain grain, String before, String after) {
    form.needed(before);
    form.needed(after);
    Double was = form.length(before, USUAL_LENGTH_MM);
    Double is = form.length(after, USUAL_LENGTH_MM);
    if (was == null || is == null) {
      return null;
    }
    double percent = 100 * (is - was) / was;
    if (percent >= MOST_GROWTH) {
      form.refuse(after, "wash.doubled", Show.mm(was));
    } else if (percent > USUAL_GROWTH) {
      form.ask(after, "wash.grew", Show.percent(percent));
    } else if (-percent > USUAL_SHRINKAGE) {
      form.ask(after, "wash.shrank", Show.percent(-percent));
    }
    return new Marked(grain, was, is);
  }
}
