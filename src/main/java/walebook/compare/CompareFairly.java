package walebook.compare;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.record.Grain;
import walebook.record.ResultLine;
import walebook.statistics.Additive;
import walebook.statistics.Proportion;
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
    Map<List<String>, List<Dot>> cells = new LinkedHashMap<>();
    settings
        .cells()
        .forEach(
            (levels, inCell) ->
                cells.put(
                    levels,
                    inCell.stream().map(dots::get).sorted(CompareFairly::byValue).toList()));
    Ground ground = new Ground(settings.telling());
    Additive model = model(cells, lines, ground);
    List<FairRow> rows = rows(cells, model);
    return new FairComparison(
        question,
        settings.telling(),
        settings.same(),
        rows,
        ground.shared(),
        model == null ? List.of() : groups(cells, model, ground),
        ComparePairs.of(rows, ground, question, model, measuring),
        (int) counting.stream().map(piece -> piece.setTo().clothId()).distinct().count(),
        counting.size(),
        (int) counting.stream().map(ResultLine::studentId).distinct().count(),
        aside,
        without,
        noStretch,
        model == null ? null : model.residualSd(),
        model == null ? null : model.additivity(),
        measuring);
  }

  private static int byValue(Dot left, Dot right) {
    int order = Double.compare(left.value(), right.value());
    return order == 0 ? left.code().compareTo(right.code()) : order;
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

  /** The model over settings of which every value is known; null when there are none. */
  private @Nullable Additive model(
      Map<List<String>, List<Dot>> cells, Map<UUID, ResultLine> lines, Ground ground) {
    if (question.outcome().isRate()) {
      return null;
    }
    List<Response> responses = new ArrayList<>();
    int compared = 0;
    for (var cell : cells.entrySet()) {
      if (cell.getValue().stream().noneMatch(Dot::atLeast)) {
        compared++;
        String level = name(cell.getKey());
        cell.getValue()
            .forEach(dot -> responses.add(new Response(block(dot, lines), level, dot.value())));
      }
    }
    int pairs = Math.max(1, ground.pairs(cells.keySet()));
    double each = 1 - (1 - question.confidence()) / pairs;
    return compared == 0 ? null : Additive.of(responses, question.confidence(), each);
  }

  private String block(Dot dot, Map<UUID, ResultLine> lines) {
    String student = dot.studentId().toString();
    ResultLine line = lines.get(dot.pieceId());
    return question.withinMachine() && line != null
        ? student + BETWEEN + line.setTo().machineId()
        : student;
  }

  static String name(List<String> levels) {
    return String.join(String.valueOf(BETWEEN), levels);
  }

  private List<FairRow> rows(Map<List<String>, List<Dot>> cells, @Nullable Additive model) {
    double all = 1 - (1 - question.confidence()) / Math.max(1, cells.size());
    OnScale scale = OnScale.of(question.outcome());
    List<FairRow> rows = new ArrayList<>();
    cells.forEach(
        (levels, dots) -> {
          boolean exact = dots.stream().noneMatch(Dot::atLeast);
          boolean seam = question.outcome().isOfSeam();
          boolean rate = question.outcome().isRate();
          rows.add(
              new FairRow(
                  levels,
                  dots,
                  exact && !rate ? Summary.of(dots.stream().map(Dot::value).toList()) : null,
                  model == null ? null : scale.cut(model.mean(name(levels))),
                  seam ? Lasting.of(dots, all) : null,
                  seam || rate ? held(dots) : null));
        });
    return rows;
  }

  private Proportion held(List<Dot> dots) {
    boolean rate = question.outcome().isRate();
    long held = dots.stream().filter(dot -> rate ? dot.value() == 1 : dot.atLeast()).count();
    return new Proportion((int) held, dots.size());
  }

  private static List<FairComparison.Group> groups(
      Map<List<String>, List<Dot>> cells, Additive model, Ground ground) {
    List<FairComparison.Group> groups = new ArrayList<>();
    for (List<String> linked : model.groups()) {
      Map<String, List<List<String>>> byCloth = new LinkedHashMap<>();
      for (List<String> levels : cells.keySet()) {
        if (linked.contains(name(levels))) {
          byCloth.computeIfAbsent(ground.cloth(levels), key -> new ArrayList<>()).add(levels);
        }
      }
      byCloth.forEach(
          (cloth, settings) -> {
            List<String> students =
                settings.stream()
                    .flatMap(levels -> cells.getOrDefault(levels, List.of()).stream())
                    .map(Dot::who)
                    .distinct()
                    .sorted()
                    .toList();
            groups.add(new FairComparison.Group(cloth, settings, students));
          });
    }
    return groups;
  }
}
