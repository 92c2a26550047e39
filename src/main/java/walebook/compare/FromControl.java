package walebook.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.record.Grain;
import walebook.record.ResultLine;
import walebook.statistics.Interval;
import walebook.statistics.Summary;

/**
 * Pieces read as differences from the same student's own control, the piece that everybody sewed.
 *
 * @param factors what rows and controls are told apart by: a row names what its pieces have alike
 *     where the controls have another
 * @param same factors of the question with one level in all pieces, controls too
 * @param own each student's control
 * @param rows one for each setting, controls left out
 * @param ways how many ways the controls were sewn in, by cloth and settings
 * @param machines the controls alone, by machine and adjusted for who sewed them: whether machines
 *     can be told apart before anything is compared across them
 * @param without students who have pieces but no control with a known value
 * @param counted how many pieces count, and why the others do not
 */
public record FromControl(
    Outcome outcome,
    boolean withinMachine,
    List<Factor> factors,
    List<Comparison.FixedLevel> same,
    List<Own> own,
    List<Row> rows,
    int ways,
    FairComparison machines,
    List<String> without,
    Counted counted) {
  private static final int LEAST_STUDENTS = 3;

  /**
   * Every piece that was asked about, under the first of these that holds for it.
   *
   * @param noValue without a value of this outcome
   * @param noStretch those of them whose cloth's stretch isn't known
   * @param setAside whose value the tutor set aside
   * @param controls the controls themselves
   * @param noControl whose sewer has no control with a known value
   * @param read those read against a control
   */
  public record Counted(
      int noValue, int noStretch, int setAside, int controls, int noControl, int read) {

    public int logged() {
      return noValue + setAside + controls + noControl + read;
    }
  }

  /**
   * A student's control.
   *
   * @param mean of its values; whose control only held, also once among several times, has none
   *     here, since a mean without the furthest comes out too low
   */
  public record Own(
      UUID studentId, String who, @Nullable UUID machineId, double mean, int pieces) {}

  /**
   * A piece against its student's control.
   *
   * @param difference piece less own control, in the outcome's unit
   */
  public record Apart(Dot piece, double control, double difference) {}

  /**
   * A setting.
   *
   * @param apart every piece, the least first
   * @param perStudent mean of each student's differences, so that nobody counts twice; null where
   *     any piece only held, since a mean without the furthest comes out too low
   */
  public record Row(List<String> levels, List<Apart> apart, @Nullable Summary perStudent) {
    public Row {
      levels = List.copyOf(levels);
      apart = List.copyOf(apart);
    }

    public int students() {
      return (int) apart.stream().map(each -> each.piece().studentId()).distinct().count();
    }

    /** How many pieces only held, so that their difference is a lower bound. */
    public int bounds() {
      return (int) apart.stream().filter(each -> each.piece().atLeast()).count();
    }

    /** True with so many students that their mean could have an interval. */
    boolean isEnough() {
      return perStudent != null && perStudent.n() >= LEAST_STUDENTS;
    }

    /**
     * t-interval of the mean difference over students; null with fewer than three of them, since
     * with one degree of freedom it spans more than anything could measure, and where all of them
     * differ by the same.
     */
    public @Nullable Interval interval(double confidence) {
      return perStudent != null && isEnough() ? perStudent.tInterval(confidence) : null;
    }
  }

  public FromControl {
    factors = List.copyOf(factors);
    same = List.copyOf(same);
    own = List.copyOf(own);
    rows = List.copyOf(rows);
    without = List.copyOf(without);
  }

  /**
   * Takes each student's control off that student's pieces.
   *
   * @param controls which of the pieces are controls
   * @param question its outcome must not be a rate; within machines, a control counts only for
   *     pieces of the same machine
   */
  public static FromControl of(
      List<ResultLine> pieces,
      Set<UUID> controls,
      FairQuestion question,
      Map<UUID, Map<Grain, ClothStretch>> stretches,
      Names names,
      Set<UUID> setAside) {
    if (question.outcome().isRate()) {
      throw new IllegalArgumentException("outcome must be a value, not a rate");
    }
    return new Builder(question, stretches, names, setAside).build(pieces, controls);
  }

  /** Whose control: a student, on one machine where that is asked. */
  private record Hands(UUID studentId, @Nullable UUID machineId) {}

  private record Builder(
      FairQuestion question,
      Map<UUID, Map<Grain, ClothStretch>> stretches,
      Names names,
      Set<UUID> setAside) {

    private FromControl build(List<ResultLine> pieces, Set<UUID> controls) {
      List<ResultLine> own = pieces.stream().filter(p -> controls.contains(p.pieceId())).toList();
      List<ResultLine> others =
          pieces.stream().filter(p -> !controls.contains(p.pieceId())).toList();
      Map<Hands, List<Double>> values = new LinkedHashMap<>();
      Set<Hands> bounds = new HashSet<>();
      for (ResultLine each : own) {
        Double value = plain(each);
        if (value != null) {
          values.computeIfAbsent(hands(each), key -> new ArrayList<>()).add(value);
        }
        if (value != null && held(each)) {
          bounds.add(hands(each));
        }
      }
      values.keySet().removeAll(bounds);
      Map<Hands, Double> means = new HashMap<>();
      List<Own> shown = new ArrayList<>();
      values.forEach(
          (hands, list) -> {
            double mean = Summary.of(list).mean();
            means.put(hands, mean);
            String who = names.of(hands.studentId());
            shown.add(new Own(hands.studentId(), who, hands.machineId(), mean, list.size()));
          });
      shown.sort(Comparator.comparing(Own::who));
      Set<String> without = new TreeSet<>();
      Settings settings =
          Settings.of(
              others.stream().filter(each -> plain(each) != null).toList(),
              pieces.stream().filter(each -> plain(each) != null).toList(),
              question.factors(),
              names);
      List<Row> rows = new ArrayList<>();
      settings.cells().forEach((levels, lines) -> addRow(rows, levels, lines, means, without));
      FairQuestion byMachine =
          new FairQuestion(
              question.outcome(), List.of(Factor.MACHINE), false, null, question.confidence());
      return new FromControl(
          question.outcome(),
          question.withinMachine(),
          settings.telling(),
          settings.same(),
          shown,
          rows,
          Settings.of(plainly(own), CompareBySetting.USUAL, names).cells().size(),
          CompareFairly.of(own, byMachine, stretches, names, setAside, null),
          List.copyOf(without),
          counted(pieces, controls, means));
    }

    private List<ResultLine> plainly(List<ResultLine> some) {
      return some.stream().filter(each -> plain(each) != null && !held(each)).toList();
    }

    private Counted counted(List<ResultLine> pieces, Set<UUID> controls, Map<Hands, Double> means) {
      int noValue = 0;
      int noStretch = 0;
      int aside = 0;
      int own = 0;
      int noControl = 0;
      for (ResultLine each : pieces) {
        if (value(each) == null) {
          noValue++;
          noStretch += question.outcome().lacksStretch(each) ? 1 : 0;
        } else if (setAside.contains(each.pieceId())) {
          aside++;
        } else if (controls.contains(each.pieceId())) {
          own++;
        } else if (!means.containsKey(hands(each))) {
          noControl++;
        }
      }
      int read = pieces.size() - noValue - aside - own - noControl;
      return new Counted(noValue, noStretch, aside, own, noControl, read);
    }

    private void addRow(
        List<Row> rows,
        List<String> levels,
        List<ResultLine> lines,
        Map<Hands, Double> means,
        Set<String> without) {
      List<Apart> apart = new ArrayList<>();
      Map<UUID, List<Double>> perStudent = new TreeMap<>();
      for (ResultLine each : lines) {
        Double value = plain(each);
        Double control = means.get(hands(each));
        String who = names.of(each.studentId());
        if (value == null) {
          continue;
        }
        if (control == null) {
          without.add(who);
          continue;
        }
        Dot dot = new Dot(each.pieceId(), each.code(), each.studentId(), who, value, held(each));
        apart.add(new Apart(dot, control, value - control));
        perStudent.computeIfAbsent(each.studentId(), key -> new ArrayList<>()).add(value - control);
      }
      if (!apart.isEmpty()) {
        apart.sort(Comparator.comparingDouble(Apart::difference));
        List<Double> averages =
            perStudent.values().stream().map(list -> Summary.of(list).mean()).toList();
        boolean bound = apart.stream().anyMatch(each -> each.piece().atLeast());
        rows.add(new Row(levels, apart, bound ? null : Summary.of(averages)));
      }
    }

    private Hands hands(ResultLine piece) {
      return new Hands(
          piece.studentId(), question.withinMachine() ? piece.setTo().machineId() : null);
    }

    private boolean held(ResultLine piece) {
      return question.outcome().isOfSeam()
          && PieceResult.of(piece, CompareBySetting.stretch(stretches, piece)).held();
    }

    private @Nullable Double plain(ResultLine piece) {
      return setAside.contains(piece.pieceId()) ? null : value(piece);
    }

    private @Nullable Double value(ResultLine piece) {
      return question
          .outcome()
          .value(PieceResult.of(piece, CompareBySetting.stretch(stretches, piece)));
    }
  }
}
