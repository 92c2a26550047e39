package walebook.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import walebook.statistics.Proportion;
import walebook.working.Message;

/** What may be said of two settings. */
final class PairFindings {
  private final FairComparison found;
  private final Wording wording;

  PairFindings(FairComparison found, Wording wording) {
    this.found = found;
    this.wording = wording;
  }

  /** The pair with the higher one first. */
  static FairPair upwards(FairPair pair) {
    Double estimate = pair.estimate();
    boolean down = estimate == null ? pair.high() != null && pair.high() < 0 : estimate < 0;
    return down ? pair.turned() : pair;
  }

  List<Message> of(FairPair pair) {
    List<Message> says = new ArrayList<>();
    switch (pair.basis()) {
      case RATES -> says.add(rates(pair));
      case MEDIANS -> says.add(medians(pair));
      case ADJUSTED_MEANS -> means(pair, says);
      case NONE -> {}
    }
    if (pair.morePieces() != null) {
      says.add(Message.of("compare.found.more", Wording.count(pair.morePieces())));
    }
    return says;
  }

  private void means(FairPair pair, List<Message> says) {
    String first = wording.setting(pair.first());
    String second = wording.setting(pair.second());
    double estimate = Objects.requireNonNull(pair.estimate());
    if (pair.low() == null || pair.high() == null) {
      says.add(noLimits(first, second, n(pair.first()), n(pair.second()), estimate));
      return;
    }
    String apart = wording.apart(estimate);
    String low = wording.apart(pair.low());
    String high = wording.apart(pair.high());
    String unit = wording.unit();
    String matters = matters();
    String many = n(pair.first());
    String others = n(pair.second());
    if (found.question().outcome() == Outcome.TIME && pair.size() != FairPair.Size.CANT_TELL) {
      says.add(times(pair, new String[] {first, second, apart, low, high, matters, many, others}));
    } else {
      says.add(
          means(pair, new String[] {first, second, apart, low, high, unit, matters, many, others}));
    }
    onOnePiece(pair, says);
    MeasuringError measuring = found.measuring();
    if (measuring != null && Boolean.TRUE.equals(pair.onlyMeasuring())) {
      double limit = measuring.limit(pieces(pair.first()), pieces(pair.second()));
      says.add(Message.of("compare.found.only-measuring", wording.apart(limit), unit));
    }
  }

  /** Without limits there are too few pieces, or the many there are don't scatter. */
  private Message noLimits(
      String first, String second, String many, String others, double estimate) {
    return found.residualSd() == null
        ? Message.of("compare.found.no-limits", first, second, many, others)
        : Message.of(
            "compare.found.no-scatter",
            first,
            second,
            many,
            others,
            wording.apart(estimate),
            wording.unit());
  }

  private static Message means(FairPair pair, String[] numbers) {
    return switch (pair.size()) {
      case MORE -> Message.of("compare.mean.more", numbers);
      case LESS -> Message.of("compare.mean.less", numbers);
      case DIFFERS -> Message.of("compare.mean.differs", numbers);
      case DIFFERS_MAYBE_LITTLE -> Message.of("compare.mean.maybe", numbers);
      case CANT_TELL, NOT_COMPARABLE -> Message.of("compare.mean.cant-tell", numbers);
    };
  }

  /** One piece has no scatter of its own: what is claimed of it leans on the others'. */
  private void onOnePiece(FairPair pair, List<Message> says) {
    boolean first = pieces(pair.first()) == 1;
    boolean second = pieces(pair.second()) == 1;
    if (pair.size() == FairPair.Size.CANT_TELL || !(first || second)) {
      return;
    }
    says.add(
        first && second
            ? Message.of("compare.found.on-one-each")
            : Message.of(
                "compare.found.on-one-piece",
                wording.setting(first ? pair.first() : pair.second())));
  }

  /** A time is longer or shorter rather than higher or lower. */
  private static Message times(FairPair pair, String[] numbers) {
    return switch (pair.size()) {
      case MORE -> Message.of("compare.time.more", numbers);
      case LESS -> Message.of("compare.time.less", numbers);
      case DIFFERS_MAYBE_LITTLE -> Message.of("compare.time.maybe", numbers);
      case DIFFERS, CANT_TELL, NOT_COMPARABLE -> Message.of("compare.time.differs", numbers);
    };
  }

  private Message rates(FairPair pair) {
    Proportion first = held(pair.first());
    Proportion second = held(pair.second());
    String[] counts = {
      wording.setting(pair.first()),
      Wording.count(first.count()),
      Wording.count(first.n()),
      wording.setting(pair.second()),
      Wording.count(second.count()),
      Wording.count(second.n()),
      wording.orDash(pair.low()),
      wording.orDash(pair.high()),
      matters()
    };
    return switch (pair.size()) {
      case MORE -> Message.of("compare.rate.more", counts);
      case LESS -> Message.of("compare.rate.less", counts);
      case DIFFERS -> Message.of("compare.rate.differs", counts);
      case DIFFERS_MAYBE_LITTLE -> Message.of("compare.rate.maybe", counts);
      case CANT_TELL, NOT_COMPARABLE -> Message.of("compare.rate.cant-tell", counts);
    };
  }

  private Message medians(FairPair pair) {
    String first = wording.setting(pair.first());
    String second = wording.setting(pair.second());
    String least = wording.orDash(pair.low());
    String[] numbers = {
      first, second, least, wording.unit(), matters(), n(pair.first()), n(pair.second())
    };
    return switch (pair.size()) {
      case MORE -> Message.of("compare.median.more", numbers);
      case LESS -> Message.of("compare.median.less", numbers);
      case DIFFERS -> Message.of("compare.median.differs", numbers);
      case DIFFERS_MAYBE_LITTLE -> Message.of("compare.median.maybe", numbers);
      case CANT_TELL, NOT_COMPARABLE -> Message.of("compare.median.cant-tell", numbers);
    };
  }

  private String matters() {
    Double matters = found.question().matters();
    return matters == null ? "–" : wording.apart(matters);
  }

  private String n(List<String> levels) {
    return Wording.count(pieces(levels));
  }

  private int pieces(List<String> levels) {
    return row(levels).pieces();
  }

  private Proportion held(List<String> levels) {
    return Objects.requireNonNull(row(levels).held());
  }

  private FairRow row(List<String> levels) {
    @Nullable FairRow row = found.row(levels);
    return Objects.requireNonNull(row);
  }
}
