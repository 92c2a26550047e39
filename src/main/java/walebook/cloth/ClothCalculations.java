package walebook.cloth;

import static walebook.working.Input.Kind.LENGTH;
import static walebook.working.Input.Kind.NUMBER;
import static walebook.working.Input.Kind.NUMBERS;
import static walebook.working.Input.Kind.PERCENT;

import java.util.List;
import walebook.quantity.Unit;
import walebook.working.Calculation;
import walebook.working.Input;
import walebook.working.Message;

/** The calculations on cloth that can be run by name. */
public final class ClothCalculations {
  private static final Input GAUGE =
      Input.usual("gauge", LENGTH, "100", Message.of("cloth.input.gauge"));
  private static final Input STRETCHED =
      Input.required("stretched", LENGTH, Message.of("cloth.input.stretched"));
  private static final Input RELEASED =
      Input.required("released", LENGTH, Message.of("cloth.input.released"));
  private static final Input READ_TO =
      Input.usual("read-to", LENGTH, "1", Message.of("cloth.input.read-to"));

  private ClothCalculations() {}

  /**
   * All of them, in the order a lesson takes them.
   *
   * @param balanceBands the reference table of stretch balance
   */
  public static List<Calculation> all(List<BalanceBand> balanceBands) {
    return List.of(
        stretch(),
        growth(),
        recovery(),
        repeats(),
        decision(),
        balance(balanceBands),
        mass(),
        massUnits(),
        wash(),
        cut());
  }

  private static Calculation stretch() {
    return new Calculation(
        "stretch",
        Message.of("cloth.stretch.title"),
        List.of(GAUGE, STRETCHED, READ_TO),
        given ->
            Stretch.of(given.number("gauge"), given.number("stretched"), given.number("read-to")));
  }

  private static Calculation growth() {
    return new Calculation(
        "growth",
        Message.of("cloth.growth.title"),
        List.of(
            GAUGE,
            Input.optional("stretched", LENGTH, Message.of("cloth.input.stretched")),
            RELEASED,
            READ_TO),
        given ->
            Growth.of(
                given.number("gauge"),
                given.numberOrNull("stretched"),
                given.number("released"),
                given.number("read-to")));
  }

  private static Calculation recovery() {
    return new Calculation(
        "recovery",
        Message.of("cloth.recovery.title"),
        List.of(GAUGE, STRETCHED, RELEASED, READ_TO),
        given ->
            Recovery.of(
                given.number("gauge"),
                given.number("stretched"),
                given.number("released"),
                given.number("read-to")));
  }

  private static Calculation repeats() {
    return new Calculation(
        "repeats",
        Message.of("cloth.repeats.title"),
        List.of(
            Input.required("readings", NUMBERS, Message.of("cloth.input.readings")),
            Input.usual("confidence", PERCENT, "95", Message.of("cloth.input.confidence"))),
        given -> Repeats.of(given.list("readings"), Unit.RATIO, given.number("confidence")));
  }

  private static Calculation decision() {
    return new Calculation(
        "enough-stretch",
        Message.of("cloth.decision.title"),
        List.of(
            Input.required("stretch", PERCENT, Message.of("cloth.input.stretch")),
            Input.required("uncertainty", PERCENT, Message.of("cloth.input.uncertainty")),
            Input.required("need", PERCENT, Message.of("cloth.input.need"))),
        given ->
            Decision.of(
                given.number("stretch"), given.number("uncertainty"), given.number("need")));
  }

  private static Calculation balance(List<BalanceBand> bands) {
    return new Calculation(
        "balance",
        Message.of("cloth.balance.title"),
        List.of(
            Input.required("wale", PERCENT, Message.of("cloth.input.wale")),
            Input.required("course", PERCENT, Message.of("cloth.input.course"))),
        given -> StretchBalance.of(given.number("wale"), given.number("course"), bands));
  }

  private static Calculation mass() {
    return new Calculation(
        "mass",
        Message.of("cloth.mass.title"),
        List.of(
            Input.required("mass", NUMBER, Message.of("cloth.input.mass")),
            Input.usual("side-a", LENGTH, "100", Message.of("cloth.input.side-a")),
            Input.usual("side-b", LENGTH, "100", Message.of("cloth.input.side-b")),
            Input.usual("scale-to", NUMBER, "0.1", Message.of("cloth.input.scale-to")),
            READ_TO),
        given ->
            ClothMass.of(
                given.number("mass"),
                given.number("side-a"),
                given.number("side-b"),
                given.number("scale-to"),
                given.number("read-to")));
  }

  private static Calculation massUnits() {
    return new Calculation(
        "mass-units",
        Message.of("cloth.mass-units.title"),
        List.of(
            Input.required("mass", NUMBER, Message.of("cloth.input.area-mass")),
            Input.choice("in", List.of("g/m2", "oz/yd2"), Message.of("cloth.input.in"))),
        given -> ClothMass.converted(given.number("mass"), given.word("in").equals("oz/yd2")));
  }

  private static Calculation wash() {
    return new Calculation(
        "wash-change",
        Message.of("cloth.wash.title"),
        List.of(
            Input.required("before", LENGTH, Message.of("cloth.input.before-wash")),
            Input.required("after", LENGTH, Message.of("cloth.input.after-wash")),
            READ_TO),
        given ->
            DimensionalChange.of(
                given.number("before"), given.number("after"), given.number("read-to")));
  }

  private static Calculation cut() {
    return new Calculation(
        "cut-length",
        Message.of("cloth.cut.title"),
        List.of(
            Input.required("wanted", LENGTH, Message.of("cloth.input.wanted")),
            Input.required("change", PERCENT, Message.of("cloth.input.change"))),
        given -> CutLength.of(given.number("wanted"), given.number("change")));
  }
}
