package walebook.seam;

import static walebook.working.Input.Kind.LENGTH;
import static walebook.working.Input.Kind.NUMBER;
import static walebook.working.Input.Kind.NUMBERS;
import static walebook.working.Input.Kind.PERCENT;
import static walebook.working.Input.Kind.WHOLE;

import java.util.List;
import java.util.stream.Stream;
import walebook.problem.Answer;
import walebook.working.Calculation;
import walebook.working.Given;
import walebook.working.Input;
import walebook.working.Message;
import walebook.working.Working;

/** The calculations on stitches and test pieces that can be run by name. */
public final class SeamCalculations {
  private static final Input GAUGE =
      Input.usual("gauge", LENGTH, "100", Message.of("seam.input.gauge"));
  private static final Input READ_TO =
      Input.usual("read-to", LENGTH, "1", Message.of("seam.input.read-to"));
  private static final Input STITCH_LENGTH =
      Input.required("length", LENGTH, Message.of("seam.input.length"));
  private static final Input STEPS =
      Input.usual("steps", WHOLE, "1", Message.of("seam.input.steps"));
  private static final Input END =
      Input.choice("end", List.of("gave", "held"), Message.of("seam.input.end"));

  private SeamCalculations() {}

  /** All of them, in the order a lesson takes them. */
  public static List<Calculation> all(SeamRows rows) {
    return Stream.concat(
            Stream.of(
                zigzag(), zigzagWidth(), density(), stretch(), share(), check(), edge(rows), fit()),
            NotionCalculations.all(rows).stream())
        .toList();
  }

  private static Calculation zigzag() {
    return new Calculation(
        "zigzag",
        Message.of("seam.zigzag.title"),
        List.of(
            Input.usual("width", LENGTH, "0", Message.of("seam.input.width")),
            STITCH_LENGTH,
            STEPS,
            Input.choice("dial", List.of("drop", "full"), Message.of("seam.input.dial")),
            Input.usual("thickness", LENGTH, "0", Message.of("seam.input.thickness")),
            Input.usual("thread-stretch", PERCENT, "0", Message.of("seam.input.thread-stretch"))),
        given ->
            ZigzagStretch.of(
                given.number("width"),
                given.number("length"),
                given.whole("steps"),
                given.word("dial").equals("full"),
                given.number("thickness"),
                given.number("thread-stretch")));
  }

  private static Calculation zigzagWidth() {
    return new Calculation(
        "zigzag-width",
        Message.of("seam.width.title"),
        List.of(
            Input.required("target", PERCENT, Message.of("seam.input.target")),
            STITCH_LENGTH,
            STEPS),
        given ->
            RequiredWidth.of(given.number("target"), given.number("length"), given.whole("steps")));
  }

  private static Calculation density() {
    return new Calculation(
        "stitch-density",
        Message.of("seam.density.title"),
        List.of(STITCH_LENGTH),
        given -> StitchDensity.of(given.number("length")));
  }

  private static Calculation stretch() {
    return new Calculation(
        "seam-stretch",
        Message.of("seam.stretch.title"),
        List.of(
            GAUGE,
            Input.required("reached", LENGTH, Message.of("seam.input.reached")),
            END,
            READ_TO),
        given ->
            SeamStretch.of(
                given.number("gauge"),
                given.number("reached"),
                SeamEnd.of(given.word("end")),
                given.number("read-to")));
  }

  private static Calculation share() {
    return new Calculation(
        "seam-share",
        Message.of("seam.share.title"),
        List.of(
            Input.required("seam-stretch", PERCENT, Message.of("seam.input.seam-stretch")),
            END,
            Input.required("cloth-stretch", PERCENT, Message.of("seam.input.cloth-stretch"))),
        given ->
            SeamShare.of(
                given.number("seam-stretch"),
                SeamEnd.of(given.word("end")),
                given.number("cloth-stretch")));
  }

  private static Calculation check() {
    return new Calculation(
        "seam-check",
        Message.of("seam.pass.title"),
        List.of(
            Input.required("seam-stretch", PERCENT, Message.of("seam.input.seam-stretch")),
            Input.usual("seam-u", NUMBER, "0.5", Message.of("seam.input.seam-u")),
            END,
            Input.optional("cloth-stretch", PERCENT, Message.of("seam.input.cloth-stretch")),
            Input.usual("cloth-u", NUMBER, "0.5", Message.of("seam.input.cloth-u")),
            Input.optional("need", PERCENT, Message.of("seam.input.need"))),
        SeamCalculations::checked);
  }

  private static Answer<Working> checked(Given given) {
    Needs needs =
        new Needs()
            .notNegative("seam-stretch", given.number("seam-stretch"), "60 %")
            .notNegative("seam-u", given.number("seam-u"), "0.5")
            .notNegative("cloth-u", given.number("cloth-u"), "0.5");
    if (needs.failed()) {
      return Answer.bad(needs.problems());
    }
    return Answer.good(
        PassRule.of(
            new PassQuestion(
                given.number("seam-stretch"),
                given.number("seam-u"),
                SeamEnd.of(given.word("end")),
                given.numberOrNull("cloth-stretch"),
                given.number("cloth-u"),
                given.numberOrNull("need"))));
  }

  private static Calculation edge(SeamRows rows) {
    return new Calculation(
        "edge-change",
        Message.of("seam.edge.title"),
        List.of(
            Input.usual("before", LENGTH, "100", Message.of("seam.input.before")),
            Input.required("sewn", LENGTH, Message.of("seam.input.sewn")),
            Input.optional("pressed", LENGTH, Message.of("seam.input.pressed")),
            READ_TO),
        given ->
            EdgeChange.of(
                given.number("before"),
                given.number("sewn"),
                given.numberOrNull("pressed"),
                given.number("read-to"),
                rows.growth()));
  }

  private static Calculation fit() {
    return new Calculation(
        "seam-fit",
        Message.of("seam.fit.title"),
        List.of(
            Input.required("geometry", NUMBERS, Message.of("seam.input.geometry")),
            Input.required("measured", NUMBERS, Message.of("seam.input.measured")),
            Input.usual("held", WHOLE, "0", Message.of("seam.input.held")),
            Input.optional("at", PERCENT, Message.of("seam.input.at"))),
        given ->
            ExtensionFit.of(given.list("geometry"), given.list("measured"), given.whole("held"))
                .map(fit -> fit.working(given.numberOrNull("at"))));
  }
}
