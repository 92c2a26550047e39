package walebook.compare;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.record.Grain;
import walebook.record.ResultLine;
import walebook.statistics.Additive;
import walebook.statistics.Counted;
import walebook.statistics.Response;
import walebook.statistics.Summary;

/**
 * Compares settings with allowance for who sewed what: {@code value = student + setting + error} by
 * least squares. A piece that only held is a lower bound: where a setting has one, nothing of it is
 * averaged, and the product-limit estimate speaks for it. A student's hands are taken to do alike
 * on all cloths, so that what they sewed on one tells of them on another.
 */
public final class CompareFairly {
  private static final char BETWEEN = '\u001f';

  private final FairQuestion question;
  private final Names names;

  private CompareFairly(FairQuestion question, Names names) {
    this.question = question;
    this.names = names;
  }

  /**
   * The comparison.
   *
   * @param pieces lines of the pieces asked about
   * @param stretches what is known of each cloth's stretch
   * @param setAside pieces whose value the tutor set aside
   * @param measuring what measuring alone makes; null when not known
   */
  public static FairComparison of(
      List<ResultLine> pieces,
      FairQuestion question,
      Map<UUID, Map<Grain, ClothStretch>> stretches,
      Names names,
      Set<UUID> setAside,
      @Nullable MeasuringError measuring) {
    return new CompareFairly(question, names).compare(pieces, stretches, setAside, measuring);
  }

  private FairComparison compare(
      List<ResultLine> pieces,
      Map<UUID, Map<Grain, ClothStretch>> stretches,
      Set<UUID> setAside,
      @Nullable MeasuringError measuring) {
    Map<UUID, ResultLine> lines = new HashMap<>();
    IdentityHashMap<ResultLine, Dot> dots = new IdentityHashMap<>();
    List<ResultLine> counting = new ArrayList<>();
    int aside = 0;
    int without = 0;
    int noStretch = 0;
    for (ResultLine piece : pieces) {
      Dot dot = dot(piece, stretches);
      if (dot == null) {
        without++;
        noStretch += question.outcome().lacksStretch(piece) ? 1 : 0;
      } else if (setAside.contains(piece.pieceId())) {
        aside++;
      } else {
        counting.add(piece);
        if (question.withinMachine()) {
          lines.put(piece.pieceId(), piece);
        }
        dots.put(piece, dot);
      }
    }
    Settings settings = Settings.of(counting, question.factors(), names);
    Map<List<String>, CompareCells.Cell> cells = new LinkedHashMap<>();
    settings
        .cells()
        .forEach(
            (levels, inCell) ->
                cells.put(
                    levels, cell(inCell.stream().map(dots::get).sorted(Dot.BY_VALUE).toList())));
    CompareCells.Count count =
        new CompareCells.Count(
            (int) counting.stream().map(piece -> piece.setTo().clothId()).distinct().count(),
            counting.size(),
            (int) counting.stream().map(ResultLine::studentId).distinct().count(),
            aside,
            without,
            noStretch);
    return new CompareCells(question, settings, cells)
        .compare(
            (known, each) -> fit(cells, known, lines, each),
            some -> sewers(cells, some),
            count,
            measuring);
  }

  private CompareCells.Cell cell(List<Dot> dots) {
    Counted values = new Counted();
    Counted lowerBounds = new Counted();
    dots.forEach(dot -> (dot.atLeast() ? lowerBounds : values).add(dot.value()));
    boolean averaged = lowerBounds.isEmpty() && !question.outcome().isRate();
    return new CompareCells.Cell(
        values,
        lowerBounds,
        (int) dots.stream().map(Dot::studentId).distinct().count(),
        averaged ? Summary.of(dots.stream().map(Dot::value).toList()) : null,
        dots);
  }

  private @Nullable Dot dot(ResultLine piece, Map<UUID, Map<Grain, ClothStretch>> stretches) {
    PieceResult result = PieceResult.of(piece, CompareBySetting.stretch(stretches, piece));
    Double value = question.outcome().value(result);
    return value == null
        ? null
        : new Dot(
            piece.pieceId(),
            piece.code(),
            piece.studentId(),
            names.of(piece.studentId()),
            value,
            question.outcome().isOfSeam() && result.held());
  }

  private Additive fit(
      Map<List<String>, CompareCells.Cell> cells,
      List<List<String>> known,
      Map<UUID, ResultLine> lines,
      double each) {
    List<Response> responses = new ArrayList<>();
    for (List<String> levels : known) {
      String level = CompareCells.name(levels);
      for (Dot dot : Objects.requireNonNull(cells.get(levels)).dots()) {
        responses.add(new Response(block(dot, lines), level, dot.value()));
      }
    }
    return Additive.of(responses, question.confidence(), each);
  }

  private String block(Dot dot, Map<UUID, ResultLine> lines) {
    String student = dot.studentId().toString();
    ResultLine line = lines.get(dot.pieceId());
    return question.withinMachine() && line != null
        ? student + BETWEEN + line.setTo().machineId()
        : student;
  }

  private static List<String> sewers(
      Map<List<String>, CompareCells.Cell> cells, List<List<String>> settings) {
    return settings.stream()
        .flatMap(levels -> Objects.requireNonNull(cells.get(levels)).dots().stream())
        .map(Dot::who)
        .distinct()
        .sorted()
        .toList();
  }
}
