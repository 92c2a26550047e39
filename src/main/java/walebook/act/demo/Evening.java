package walebook.act.demo;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import walebook.record.Stamp;

/**
 * One evening of the demo's term.
 *
 * @param week from 0
 * @param pack name of the pack that is taught
 * @param cloths the room's cloth for each slot of the pack's plan
 * @param pulls asked for on each piece
 */
record Evening(int week, String pack, String title, Map<String, DemoCloth> cloths, int pulls) {
  private static final LocalDate FIRST = LocalDate.of(2026, 9, 14);
  private static final String STRETCH = "measuring-stretch";
  private static final String SEAM = "seam-that-stretches";

  static final List<Evening> ALL =
      List.of(
          new Evening(
              0,
              STRETCH,
              "Measuring stretch and recovery",
              Map.of("a", DemoCloth.INTERLOCK, "b", DemoCloth.RIB, "c", DemoCloth.JERSEY),
              1),
          new Evening(
              1,
              SEAM,
              "A seam that stretches: jersey and rib",
              Map.of("a", DemoCloth.JERSEY, "b", DemoCloth.RIB),
              1),
          new Evening(
              2,
              STRETCH,
              "Measuring again: do we measure alike?",
              Map.of("a", DemoCloth.TERRY, "b", DemoCloth.RIB, "c", DemoCloth.SWIM),
              1),
          new Evening(
              3,
              SEAM,
              "A seam that stretches: interlock and terry",
              Map.of("a", DemoCloth.INTERLOCK, "b", DemoCloth.TERRY),
              1),
          new Evening(
              4,
              SEAM,
              "A seam that stretches: swim cloth and rib, three pulls",
              Map.of("a", DemoCloth.SWIM, "b", DemoCloth.RIB),
              3),
          new Evening(
              5,
              SEAM,
              "A seam that stretches: jersey and swim cloth",
              Map.of("a", DemoCloth.JERSEY, "b", DemoCloth.SWIM),
              1));

  static LocalDate termStart() {
    return FIRST;
  }

  static LocalDate termEnd() {
    return FIRST.plusWeeks(ALL.size()).minusDays(3);
  }

  boolean isLast() {
    return week == ALL.size() - 1;
  }

  boolean measuresCloth() {
    return pack.equals(STRETCH);
  }

  LocalDate date() {
    return FIRST.plusWeeks(week);
  }

  /** The stamp of what was written down that evening. */
  Stamp stamp(int minute) {
    Instant begins = date().atTime(18, 30).toInstant(ZoneOffset.UTC);
    return Stamp.fresh(begins.plusSeconds(60L * minute));
  }
}
