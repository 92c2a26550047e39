package walebook.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import walebook.statistics.Additivity;
import walebook.statistics.Counted;
import walebook.statistics.Interval;
import walebook.statistics.Proportion;
import walebook.statistics.Summary;
import walebook.working.Message;

/**
 * What a fair comparison says in plain words. No sentence says more than the limits allow; what
 * can't be told is said to be so, with the numbers that it was tried with.
 */
public final class FairFindings {
  private static final int FEW_ROWS = 3;
  private static final int MOST_SURE = 3;
  private static final double ODD = 0.05;

  /**
   * A rule of ours: more than a fifth above the cloth's stretch strips of one cloth do not differ
   * so.
   */
  private static final double FAR_ABOVE = 120;

  private final FairComparison found;
  private final Wording wording;
  private final PairFindings pairs;
  private final List<Message> says = new ArrayList<>();

  private FairFindings(FairComparison found, Function<List<String>, String> label) {
    this.found = found;
    this.wording = new Wording(found.question().outcome(), label);
    this.pairs = new PairFindings(found, wording);
  }

  /**
   * The sentences, most important first.
   *
   * @param label a setting's levels as people read them
   */
  public static List<Message> of(FairComparison found, Function<List<String>, String> label) {
    return new FairFindings(found, label).all();
  }

  private List<Message> all() {
    if (found.isEmpty()) {
      says.add(
          Message.of(found.logged() == 0 ? "compare.found.none-logged" : "compare.found.nothing"));
      leftOut();
      return List.copyOf(says);
    }
    if (found.rows().size() == 1) {
      oneSetting(found.rows().get(0));
    } else {
      several();
    }
    found.rows().stream().filter(row -> row.bounds() > 0).limit(FEW_ROWS).forEach(this::bounds);
    care();
    says.add(
        Message.of(
            "compare.found.counted",
            Wording.count(found.pieces()),
            Wording.count(found.logged()),
            Wording.count(found.students())));
    leftOut();
    return List.copyOf(says);
  }

  private void leftOut() {
    says.addAll(wording.leftOut(found.setAside(), found.without(), found.noStretch()));
  }

  private void oneSetting(FairRow row) {
    if (row.pieces() > 1) {
      says.add(Message.of("compare.found.one-setting"));
    }
    Proportion held = row.held();
    if (found.question().outcome().isRate() && held != null) {
      rate(held);
      return;
    }
    Summary raw = row.raw();
    if (raw == null) {
      return;
    }
    Interval interval = raw.tInterval(found.question().confidence());
    if (raw.n() == 1) {
      says.add(Message.of("compare.found.one-piece", wording.value(raw.mean())));
    } else if (interval == null) {
      says.add(Message.of("compare.found.all-same", wording.value(raw.mean())));
    } else {
      Interval cut = OnScale.of(found.question().outcome()).cut(interval);
      says.add(
          Message.of(
              "compare.found.one-mean",
              wording.value(raw.mean()),
              Wording.count(raw.n()),
              wording.value(cut.low()),
              wording.value(cut.high())));
    }
  }

  private void rate(Proportion held) {
    Interval interval = held.wilson(found.question().confidence());
    says.add(
        Message.of(
            "compare.found.one-rate",
            Wording.count(held.count()),
            Wording.count(held.n()),
            Wording.percent(interval.low()),
            Wording.percent(interval.high())));
  }

  private void several() {
    if (found.question().outcome().isRate() && extreme()) {
      return;
    }
    if (found.pairs().isEmpty()) {
      says.add(Message.of("compare.found.no-pair"));
      within();
      return;
    }
    boolean noScatter =
        found.residualSd() == null && found.pairs().stream().noneMatch(FairPair::isSure);
    Double same = sameValue();
    if (same != null) {
      says.add(Message.of("compare.found.all-same", wording.value(same)));
      within();
      apart();
      return;
    }
    Set<List<String>> single = found.ofOnePiece();
    List<FairPair> sorted =
        found.pairs().stream()
            .filter(pair -> pair.size() != FairPair.Size.NOT_COMPARABLE)
            .map(PairFindings::upwards)
            .sorted(
                Comparator.comparing((FairPair pair) -> pair.isOfAny(single))
                    .thenComparing(
                        Comparator.comparingDouble(FairFindings::nearEnd)
                            .thenComparingDouble(FairFindings::width)
                            .reversed()))
            .toList();
    if (found.rows().size() <= FEW_ROWS) {
      sorted.forEach(pair -> says.addAll(pairs.of(pair)));
    } else {
      many(sorted);
    }
    within();
    if (noScatter && found.rows().stream().anyMatch(row -> row.adjusted() != null)) {
      says.add(Message.of("compare.found.no-chance"));
    }
    apart();
  }

  /** How large the difference is at the least: below 0 where none is sure. */
  private static double nearEnd(FairPair pair) {
    return pair.isSure() && pair.low() != null ? pair.low() : -1;
  }

  private static double width(FairPair pair) {
    return pair.estimate() == null ? -1 : Math.abs(pair.estimate());
  }

  private void many(List<FairPair> sorted) {
    List<FairPair> sure = sorted.stream().filter(FairPair::isSure).toList();
    sure.stream().limit(MOST_SURE).forEach(pair -> says.addAll(pairs.of(pair)));
    if (sure.isEmpty() && !sorted.isEmpty()) {
      says.addAll(pairs.of(sorted.get(0)));
    }
    String all = Wording.count(found.pairs().size());
    String differ = Wording.count(sure.size());
    String open = Wording.count(count(sorted, FairPair.Size.CANT_TELL));
    says.add(
        found.question().matters() == null
            ? Message.of("compare.found.of-pairs", all, differ, open)
            : Message.of(
                "compare.found.of-pairs-mattering",
                all,
                differ,
                Wording.count(count(sorted, FairPair.Size.LESS)),
                open));
    if (found.pairs().size() > sorted.size()) {
      String none = Wording.count(found.pairs().size() - sorted.size());
      says.add(
          found.question().withinMachine()
              ? Message.of("compare.found.not-compared-machine", none)
              : Message.of("compare.found.not-compared", none));
    }
  }

  private static int count(List<FairPair> pairs, FairPair.Size size) {
    return (int) pairs.stream().filter(pair -> pair.size() == size).count();
  }

  /** Which settings are not compared with each other, and how they could be; nothing if all are. */
  private void within() {
    int rows = found.rows().size();
    if (found.pairs().size() == rows * (rows - 1) / 2) {
      return;
    }
    says.add(Wording.within(found.within()));
  }

  /** The value that all pieces have, or null when they differ. */
  private @Nullable Double sameValue() {
    boolean bounds = found.rows().stream().anyMatch(row -> row.bounds() > 0);
    double[] values =
        found.rows().stream().flatMapToDouble(row -> row.values().different()).distinct().toArray();
    return values.length == 1 && !bounds && !found.question().outcome().isRate()
        ? Double.valueOf(values[0])
        : null;
  }

  /** Nobody's gave, or everybody's did. */
  private boolean extreme() {
    int held = 0;
    for (FairRow row : found.rows()) {
      held += Objects.requireNonNull(row.held()).count();
    }
    int all = found.pieces();
    if (held > 0 && held < all) {
      return false;
    }
    Interval interval = new Proportion(held, all).wilson(found.question().confidence());
    says.add(
        held == 0
            ? Message.of(
                "compare.found.all-gave", Wording.count(all), Wording.percent(interval.high()))
            : Message.of(
                "compare.found.all-held", Wording.count(all), Wording.percent(1 - interval.low())));
    return true;
  }

  private void apart() {
    Set<String> apart = found.apartOn();
    if (apart.isEmpty()) {
      return;
    }
    Map<String, List<FairComparison.Group>> byCloth =
        found.groups().stream()
            .collect(
                Collectors.groupingBy(
                    FairComparison.Group::cloth, LinkedHashMap::new, Collectors.toList()));
    byCloth.forEach(
        (cloth, groups) -> {
          if (apart.contains(cloth)) {
            apart(cloth, groups);
          }
        });
    says.add(Message.of(apart.contains("") ? "compare.found.no-best" : "compare.found.no-best-on"));
  }

  private void apart(String cloth, List<FairComparison.Group> groups) {
    String many = Wording.count(groups.size());
    boolean machine = found.question().withinMachine();
    says.add(
        cloth.isEmpty()
            ? Message.of(machine ? "compare.found.groups-machine" : "compare.found.groups", many)
            : Message.of(
                machine ? "compare.found.groups-machine-on" : "compare.found.groups-on",
                many,
                cloth));
    for (FairComparison.Group group : groups) {
      says.add(
          Message.of(
              "compare.found.group",
              Wording.names(group.settings().stream().map(wording::setting).toList()),
              Wording.names(group.students())));
    }
  }

  private void bounds(FairRow row) {
    Lasting lasting = Objects.requireNonNull(row.lasting());
    double most = Objects.requireNonNull(lasting.mostHeld());
    String name = wording.setting(row.levels());
    String held = Wording.count(row.bounds());
    String n = Wording.count(row.pieces());
    if (row.pieces() == 1) {
      says.add(Message.of("compare.found.none-gave-one", name, wording.value(most)));
    } else if (lasting.gave() == 0) {
      says.add(Message.of("compare.found.none-gave", name, n, wording.value(most)));
    } else if (lasting.median() == null) {
      says.add(Message.of("compare.found.no-median", name, held, n, wording.value(most)));
    } else {
      says.add(Message.of("compare.found.median", name, held, n, wording.value(lasting.median())));
    }
  }

  private void care() {
    if (found.mixesCloths()) {
      says.add(Message.of("compare.found.cloths-mixed", Wording.count(found.cloths())));
    }
    boolean adjusted = found.rows().stream().anyMatch(row -> row.adjusted() != null);
    if (found.students() == 1 && found.pieces() > 1) {
      says.add(Message.of("compare.found.one-student"));
    } else if (found.pieces() > found.students() && (!adjusted || found.rows().size() == 1)) {
      says.add(Message.of("compare.found.hands"));
    }
    if (found.pairs().stream().anyMatch(p -> p.isSure() || p.size() == FairPair.Size.LESS)) {
      says.add(Message.of(limits()));
    }
    if (found.pairs().stream().anyMatch(OnScale.of(found.question().outcome())::isBeyond)) {
      says.add(Message.of("compare.found.off-scale"));
    }
    if (found.question().outcome() == Outcome.SEAM_SHARE) {
      farAbove();
    }
    if (found.question().outcome() == Outcome.TIME && found.pieces() > 1) {
      says.add(Message.of("compare.found.minutes"));
    }
    Additivity additivity = found.additivity();
    if (additivity != null && additivity.p() < ODD) {
      says.add(Message.of("compare.found.not-alike"));
    }
  }

  /** A seam that held stopped where its cloth stops, so it can't have gone far beyond. */
  private void farAbove() {
    int above = 0;
    double most = 0;
    for (FairRow row : found.rows()) {
      Counted held = row.lowerBounds();
      for (double each : held.different().filter(value -> value > FAR_ABOVE).toArray()) {
        above += held.timesOf(each);
        most = Math.max(most, each);
      }
    }
    if (above > 0) {
      says.add(Message.of("compare.found.held-above", Wording.count(above), wording.value(most)));
    }
  }

  /** How far limits go: only means are allowed for who sewed. */
  private String limits() {
    if (found.question().outcome().isRate()) {
      return "compare.found.limits-alone";
    }
    return found.rows().size() > FEW_ROWS ? "compare.found.sure" : "compare.found.limits";
  }
}
