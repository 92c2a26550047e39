package walebook.act.cloth;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.act.Form;
import walebook.book.Book;
import walebook.book.Ids;
import walebook.problem.Answer;
import walebook.problem.Problem;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.record.ClothReading;
import walebook.record.CutEdge;
import walebook.record.Fold;
import walebook.record.Grain;
import walebook.record.How;
import walebook.record.Pull;
import walebook.record.Stamp;

/**
 * Logs a reading of a cloth's stretch. Fields: grain, gauge, stretched, released, rest, fold, edge,
 * pull, load, hold, cycle, measured-on, remark.
 */
public final class LogClothReading {
  private static final double USUAL_LENGTH_MM = 1000;
  private static final double USUAL_SECONDS = 7200;
  private static final double USUAL_STRETCH = 250;

  private final Book book;
  private final Clock clock;

  public LogClothReading(Book book, Clock clock) {
    this.book = book;
    this.clock = clock;
  }

  /** Whose reading it is. */
  public record Whose(
      UUID clothId, @Nullable UUID classId, @Nullable UUID lessonId, @Nullable UUID studentId) {}

  /** Reads the form without saving it, for the working while typing. */
  public Answer<ClothReading> read(Whose whose, Map<String, String> typed) {
    Form form = new Form(typed, book.info().lengthUnit());
    return read(whose, form);
  }

  /** Saves a reading, or says what is in the way. */
  public Answer<ClothReading> save(Whose whose, Map<String, String> typed, boolean confirmed) {
    Answer<ClothReading> read = read(whose, typed);
    if (!read.isGood()) {
      return read;
    }
    List<Problem> asks = new ArrayList<>();
    if (!confirmed) {
      asks.addAll(read.problems());
      asks.addAll(unlikeOthers(book, read.value()));
    }
    if (!asks.isEmpty()) {
      return Answer.bad(asks);
    }
    book.clothLog().add(read.value());
    return Answer.good(read.value());
  }

  /** What the form would ask about a reading as it stands, beside the others of its cloth. */
  public static List<Problem> asked(Book book, ClothReading reading) {
    Map<String, String> typed = new HashMap<>();
    typed.put("stretched", Show.mm(reading.stretchedMm()));
    if (reading.releasedMm() != null) {
      typed.put("released", Show.mm(reading.releasedMm()));
    }
    Form form = new Form(typed, Unit.MM);
    limits(form, reading.gaugeMm(), reading.stretchedMm(), reading.releasedMm());
    List<Problem> asks = new ArrayList<>(form.problems());
    asks.addAll(unlikeOthers(book, reading));
    return asks;
  }

  private static List<Problem> unlikeOthers(Book book, ClothReading reading) {
    List<ClothReading> others =
        book.clothLog().readingsOf(reading.clothId()).stream()
            .filter(each -> !each.id().equals(reading.id()))
            .toList();
    Problem unlike = UnlikeOthers.asked(reading, others);
    return unlike == null ? List.of() : List.of(unlike);
  }

  private Answer<ClothReading> read(Whose whose, Form form) {
    form.needed("grain");
    form.needed("gauge");
    form.needed("stretched");
    Grain grain = form.choice("grain", Grain.class);
    Double gauge = form.length("gauge", USUAL_LENGTH_MM);
    Double stretched = form.length("stretched", USUAL_LENGTH_MM);
    Double released = form.length("released", USUAL_LENGTH_MM);
    Pull pull = form.choice("pull", Pull.class);
    Double load = form.number("load", 1, 5000);
    if (pull == Pull.LOAD && load == null) {
      form.refuse("load", "field.needed", "500");
    }
    Fold fold = form.choice("fold", Fold.class);
    CutEdge edge = form.choice("edge", CutEdge.class);
    Double hold = form.number("hold", 0, USUAL_SECONDS);
    Double rest = form.number("rest", 0, USUAL_SECONDS);
    Integer cycle = form.whole("cycle", 1, 1000);
    LocalDate today = LocalDate.now(clock);
    LocalDate on = form.dateUpTo(today, "measured-on");
    limits(form, gauge, stretched, released);
    if (form.isRefused() || grain == null || gauge == null || stretched == null) {
      return Answer.bad(form.problems());
    }
    ClothReading reading =
        new ClothReading(
            Ids.next(),
            whose.clothId(),
            whose.classId(),
            whose.lessonId(),
            whose.studentId(),
            grain,
            gauge,
            stretched,
            released,
            new How(
                fold == null ? Fold.FOLDED : fold,
                pull == null ? Pull.COMFORTABLE : pull,
                load,
                hold,
                rest),
            edge == null ? CutEdge.INSIDE : edge,
            cycle == null ? 1 : cycle,
            on == null ? today : on,
            form.text("remark"),
            Stamp.fresh(clock.instant()));
    return new Answer.Good<>(reading, form.problems());
  }

  private static void limits(
      Form form, @Nullable Double gauge, @Nullable Double stretched, @Nullable Double released) {
    if (gauge != null && stretched != null) {
      if (stretched < gauge) {
        form.ask("stretched", "length.below-gauge", Show.mm(gauge));
      } else if (100 * (stretched - gauge) / gauge > USUAL_STRETCH) {
        form.ask("stretched", "stretch.unlikely", Show.percent(100 * (stretched - gauge) / gauge));
      }
    }
    if (released != null && stretched != null && released > stretched) {
      form.ask("released", "length.released-longer", Show.mm(stretched));
    }
  }
}
