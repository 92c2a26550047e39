package walebook.act.classroom;

import java.time.Clock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import walebook.act.Form;
import walebook.act.cloth.LogClothReading;
import walebook.act.piece.MeasureLimits;
import walebook.act.piece.PieceField;
import walebook.book.Book;
import walebook.book.Ids;
import walebook.compare.ClothStretch;
import walebook.compare.ReadingsThatCount;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.By;
import walebook.record.ClothReading;
import walebook.record.MarkedValue;
import walebook.record.Measure;
import walebook.record.PullReading;
import walebook.record.Seen;
import walebook.record.TestPiece;

/**
 * Puts one number of a piece or a reading right; what stood there is kept in the history. Fields of
 * a seam's stretch: gauge, end-length; of an edge change: edge-before, edge-sewn, edge-pressed; of
 * a look: grade; of a cloth's stretch: gauge, stretched, released.
 */
public final class CorrectReading {
  private static final double USUAL_MM = 1000;

  private final Book book;
  private final Clock clock;

  public CorrectReading(Book book, Clock clock) {
    this.book = book;
    this.clock = clock;
  }

  /** The fields that a value hangs on, the usual one first. */
  public static List<String> fields(MarkedValue value) {
    return switch (value) {
      case SEAM_STRETCH -> List.of("end-length", "gauge");
      case EDGE_CHANGE -> List.of("edge-pressed", "edge-sewn", "edge-before");
      case GRADE -> List.of("grade");
      case CLOTH_STRETCH -> List.of("stretched", "gauge", "released");
    };
  }

  /**
   * What stands in the fields that a value hangs on.
   *
   * @return lengths in mm, a look as its grade; without those that are not noted
   */
  public Map<String, Double> standing(MarkedValue value, UUID targetId) {
    Map<String, Double> standing = new HashMap<>();
    for (String field : fields(value)) {
      Double number =
          value.isOfCloth()
              ? standing(book.clothLog().find(targetId), field)
              : standing(book.pieces().find(targetId), field);
      if (number != null) {
        standing.put(field, number);
      }
    }
    return standing;
  }

  private static @Nullable Double standing(@Nullable ClothReading reading, String field) {
    if (reading == null) {
      return null;
    }
    return switch (field) {
      case "gauge" -> Double.valueOf(reading.gaugeMm());
      case "stretched" -> Double.valueOf(reading.stretchedMm());
      default -> reading.releasedMm();
    };
  }

  private static @Nullable Double standing(@Nullable TestPiece piece, String field) {
    if (piece == null) {
      return null;
    }
    Measure measure = piece.measure();
    PullReading counting = measure.counting();
    return switch (field) {
      case "gauge" -> measure.gaugeMm();
      case "edge-before" -> measure.edgeBeforeMm();
      case "edge-sewn" -> measure.edgeSewnMm();
      case "edge-pressed" -> measure.edgePressedMm();
      case "end-length" -> counting == null ? null : Double.valueOf(counting.endMm());
      default -> whole(piece.seen().grade());
    };
  }

  /**
   * Saves the right number, or says what is in the way.
   *
   * @param typed the right one, as typed, lengths in the book's unit unless one is named
   * @param confirmed true when what is unlikely was asked about and is so
   * @return the step by which it can be taken back
   */
  public Answer<UUID> correct(
      MarkedValue value, UUID targetId, String field, String typed, boolean confirmed, By by) {
    return inStep(value, targetId, field, typed, confirmed, by, Ids.next());
  }

  /** Takes a correction back. */
  public Answer<UUID> undo(UUID stepId, By by) {
    return MarkReading.undo(book, stepId, by);
  }

  boolean isThere(MarkedValue value, UUID targetId) {
    return value.isOfCloth()
        ? book.clothLog().find(targetId) != null
        : book.pieces().find(targetId) != null;
  }

  Answer<UUID> inStep(
      MarkedValue value,
      UUID targetId,
      String field,
      String typed,
      boolean confirmed,
      By by,
      UUID step) {
    if (!fields(value).contains(field)) {
      return Answer.bad(
          Problem.refuse(
              "choice.unknown", Place.field("field"), field, String.join(", ", fields(value))));
    }
    Form form = new Form(Map.of(field, typed), book.info().lengthUnit());
    form.needed(field);
    Double number =
        value == MarkedValue.GRADE ? whole(form.whole(field, 1, 5)) : form.length(field, USUAL_MM);
    if (form.isRefused() || number == null) {
      return Answer.bad(form.problems());
    }
    List<Problem> asks = new ArrayList<>(form.problems());
    return value.isOfCloth()
        ? reading(targetId, field, number, asks, confirmed, by, step)
        : piece(targetId, field, number, asks, confirmed, by, step);
  }

  private static @Nullable Double whole(@Nullable Integer number) {
    return number == null ? null : Double.valueOf(number);
  }

  private Answer<UUID> reading(
      UUID id, String field, double mm, List<Problem> asks, boolean confirmed, By by, UUID step) {
    ClothReading was = book.clothLog().find(id);
    if (was == null) {
      return Answer.bad(MarkReading.notThere(id));
    }
    ClothReading right =
        new ClothReading(
            was.id(),
            was.clothId(),
            was.classId(),
            was.lessonId(),
            was.measuredBy(),
            was.grain(),
            field.equals("gauge") ? mm : was.gaugeMm(),
            field.equals("stretched") ? mm : was.stretchedMm(),
            field.equals("released") ? Double.valueOf(mm) : was.releasedMm(),
            was.how(),
            was.edge(),
            was.cycle(),
            was.measuredOn(),
            was.remark(),
            was.stamp().next(clock.instant()));
    asks.addAll(LogClothReading.asked(book, right));
    if (!asks.isEmpty() && !confirmed) {
      return Answer.bad(asks);
    }
    book.clothLog().update(right, by, "reading.correct", step);
    return Answer.good(step);
  }

  private Answer<UUID> piece(
      UUID id,
      String field,
      double number,
      List<Problem> asks,
      boolean confirmed,
      By by,
      UUID step) {
    TestPiece was = book.pieces().find(id);
    if (was == null) {
      return Answer.bad(MarkReading.notThere(id));
    }
    if (field.equals("end-length") && was.measure().counting() == null) {
      return Answer.bad(Problem.refuse("correct.no-pull", Place.field(field), was.code(), ""));
    }
    Seen seen = was.seen();
    TestPiece right =
        field.equals("grade")
            ? was.with(new Seen((int) number, seen.outcome(), seen.faults(), seen.remark()))
            : was.with(measure(was.measure(), field, number));
    asks.addAll(asked(right, field));
    if (!asks.isEmpty() && !confirmed) {
      return Answer.bad(asks);
    }
    book.pieces().update(right.with(was.stamp().next(clock.instant())), by, "piece.correct", step);
    return Answer.good(step);
  }

  /** What the log form asks of the lengths that hang on the one put right, and of no others. */
  private List<Problem> asked(TestPiece right, String field) {
    Set<Place> hanging =
        switch (field) {
          case "gauge", "end-length" -> places(PieceField.END_LENGTH, PieceField.RELEASED);
          case "edge-before" -> places(PieceField.EDGE_SEWN, PieceField.EDGE_PRESSED);
          case "edge-sewn" -> places(PieceField.EDGE_SEWN);
          case "edge-pressed" -> places(PieceField.EDGE_PRESSED);
          default -> Set.of();
        };
    if (hanging.isEmpty()) {
      return List.of();
    }
    ClothStretch stretch =
        ReadingsThatCount.stretchOf(book, right.cloth().clothId()).get(right.cloth().grain());
    return MeasureLimits.asked(right, stretch).stream()
        .filter(each -> hanging.contains(each.place()))
        .toList();
  }

  private static Set<Place> places(PieceField... fields) {
    return Arrays.stream(fields)
        .map(each -> Place.field(each.key()))
        .collect(Collectors.toUnmodifiableSet());
  }

  private static Measure measure(Measure was, String field, double mm) {
    return new Measure(
        field.equals("gauge") ? Double.valueOf(mm) : was.gaugeMm(),
        field.equals("edge-before") ? Double.valueOf(mm) : was.edgeBeforeMm(),
        field.equals("edge-sewn") ? Double.valueOf(mm) : was.edgeSewnMm(),
        field.equals("edge-pressed") ? Double.valueOf(mm) : was.edgePressedMm(),
        field.equals("end-length") ? pulls(was, mm) : was.pulls(),
        was.broke(),
        was.releasedMm(),
        was.needPercent(),
        was.how(),
        was.measuredBy(),
        was.measuredOn(),
        was.sewingMinutes());
  }

  /** The pull that speaks for the piece is the one that was odd. */
  private static List<PullReading> pulls(Measure was, double mm) {
    PullReading counting = was.counting();
    List<PullReading> pulls = new ArrayList<>();
    for (PullReading each : was.pulls()) {
      pulls.add(each.equals(counting) ? new PullReading(each.nth(), each.end(), mm) : each);
    }
    return pulls;
  }
}
