package walebook.compare.known;

import java.util.ArrayList;
import java.util.List;
import walebook.quantity.Show;
import walebook.statistics.Interval;
import walebook.statistics.Proportion;
import walebook.statistics.TwoRates;
import walebook.working.Message;

/** How a student grows, in plain words that leave luck its share. */
public final class GrowthFindings {
  private static final double CONFIDENCE = 0.95;

  private GrowthFindings() {}

  /** The sentences, period by period, then the last against the first, then what good means. */
  public static List<Message> of(Growth growth) {
    List<Message> says = new ArrayList<>();
    if (growth.periods().isEmpty()) {
      says.add(Message.of("compare.growth.nothing"));
    }
    for (Growth.Period period : growth.periods()) {
      Proportion right = period.firstTimeRight();
      says.add(
          Message.of(
              "compare.growth.period", period.name(), count(right.count()), count(right.n())));
      says.add(half(period));
    }
    TwoRates rates = growth.lastAgainstFirst();
    if (rates != null) {
      says.add(against(rates));
    }
    if (growth.notJudged() > 0) {
      says.add(Message.of("compare.growth.not-judged", count(growth.notJudged())));
    }
    if (!growth.periods().isEmpty()) {
      says.add(Message.of("compare.growth.rule"));
    }
    return List.copyOf(says);
  }

  private static Message half(Growth.Period period) {
    if (period.tooFew()) {
      return Message.of("compare.growth.few-left");
    }
    if (period.half() == null) {
      return Message.of("compare.growth.not-half");
    }
    String by = Show.fixed(period.half(), 0);
    return period.cameBy(period.half()) * 2 >= period.tries().size()
        ? Message.of("compare.growth.half", by)
        : Message.of("compare.growth.half-had", by);
  }

  /** Sure only when the interval and Fisher's exact test agree. */
  private static Message against(TwoRates rates) {
    Interval interval = rates.newcombe(CONFIDENCE);
    boolean sure = rates.fisher() < 1 - CONFIDENCE && !interval.contains(0);
    if (!sure) {
      return Message.of("compare.growth.cant-tell");
    }
    return interval.low() > 0
        ? Message.of("compare.growth.more")
        : Message.of("compare.growth.less");
  }

  private static String count(int number) {
    return String.valueOf(number);
  }
}
