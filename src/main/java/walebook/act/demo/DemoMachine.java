package walebook.act.demo;

import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.record.MachineKind;
import walebook.record.StepDial;

/**
 * An invented machine; what it sews is not what its dials say.
 *
 * @param widthShare sewn width over the dial's number; null where there is no such dial
 * @param lengthShare sewn length over the dial's number
 * @param hold how its seams fare against the room's: under 1 for a tight needle thread
 */
record DemoMachine(
    int number,
    String name,
    MachineKind kind,
    List<String> stitches,
    @Nullable Double widthShare,
    double lengthShare,
    double hold,
    @Nullable Double needleToKnifeMm,
    boolean feeds,
    StepDial pressure,
    StepDial tension) {
  private static final List<String> PLAIN = List.of("301", "304", "301-twin", "triple-straight");
  private static final List<String> MORE =
      List.of("301", "304", "301-twin", "triple-straight", "three-step", "overlock-look");
  private static final StepDial TENSION = new StepDial("3", "4", "5");

  static final List<DemoMachine> ALL =
      List.of(
          sewing(1, "by the window", MORE, 0.96, 0.95, 1.02, new StepDial("1", "2", "3")),
          sewing(2, "by the door", PLAIN, 0.90, 1.06, 1.00, new StepDial("1", "2", "3")),
          sewing(3, "long table, left", MORE, 1.02, 0.98, 0.92, new StepDial("2", "4", "6")),
          sewing(4, "long table, right", PLAIN, 0.93, 0.88, 1.00, StepDial.UNKNOWN),
          sewing(5, "under the clock", MORE, 1.00, 1.00, 1.05, new StepDial("1", "3", "5")),
          new DemoMachine(
              6,
              "overlocker",
              MachineKind.OVERLOCKER,
              List.of("503", "504", "514"),
              null,
              0.97,
              1,
              5.8,
              true,
              StepDial.UNKNOWN,
              TENSION),
          new DemoMachine(
              7,
              "coverstitch",
              MachineKind.COVERSTITCH,
              List.of("401", "406"),
              null,
              1.03,
              1,
              null,
              true,
              StepDial.UNKNOWN,
              TENSION));

  private static DemoMachine sewing(
      int number,
      String name,
      List<String> stitches,
      double width,
      double length,
      double hold,
      StepDial pressure) {
    return new DemoMachine(
        number,
        name,
        MachineKind.SEWING,
        stitches,
        width,
        length,
        hold,
        null,
        false,
        pressure,
        TENSION);
  }

  static DemoMachine numbered(int number) {
    return ALL.get(number - 1);
  }
}
