package walebook.garment;

import static walebook.garment.GarmentInputs.BODY;
import static walebook.garment.GarmentInputs.FINISHED;
import static walebook.garment.GarmentInputs.STRETCH;
import static walebook.garment.GarmentInputs.STRETCH_U;
import static walebook.working.Input.Kind.LENGTH;
import static walebook.working.Input.Kind.LENGTHS;
import static walebook.working.Input.Kind.PERCENT;

import java.util.List;
import walebook.working.Calculation;
import walebook.working.Input;
import walebook.working.Message;

/** Details, drafting with negative ease, length lost and washing first, by name. */
final class DraftCalculations {
  private static final Input WANTED =
      Input.required("wanted", LENGTH, Message.of("garment.input.wanted"));

  private DraftCalculations() {}

  static List<Calculation> all() {
    return List.of(locked(), draft(), lost(), wash());
  }

  private static Calculation locked() {
    return new Calculation(
        "locked-span",
        Message.of("garment.locked.title"),
        List.of(
            Input.required("line", LENGTH, Message.of("garment.input.line")),
            Input.required("motifs", LENGTHS, Message.of("garment.input.motifs")),
            Input.optional("gaps", LENGTHS, Message.of("garment.input.gaps")),
            Input.choice("sewn-as", List.of("joined", "single"), Message.of("garment.input.as")),
            STRETCH,
            STRETCH_U,
            Input.optional("need", PERCENT, Message.of("garment.input.need"))),
        given ->
            FitCalculations.after(
                GarmentInputs.needs(given),
                () ->
                    LockedSpan.of(
                        given.number("line"),
                        given.list("motifs"),
                        given.list("gaps"),
                        given.word("sewn-as").equals("joined"),
                        GarmentInputs.stretch(given),
                        given.numberOrNull("need"))));
  }

  private static Calculation draft() {
    return new Calculation(
        "negative-ease",
        Message.of("garment.draft.title"),
        List.of(BODY, Input.required("strain", PERCENT, Message.of("garment.input.strain"))),
        given -> NegativeEase.of(given.number("body"), given.number("strain")));
  }

  private static Calculation lost() {
    return new Calculation(
        "length-lost",
        Message.of("garment.lost.title"),
        List.of(
            Input.usual("before", LENGTH, "100", Message.of("garment.input.before")),
            Input.required("sideways", LENGTH, Message.of("garment.input.sideways")),
            WANTED,
            Input.usual("read-to", LENGTH, "1", Message.of("garment.input.read-to"))),
        given ->
            LengthLost.of(
                given.number("before"),
                given.number("sideways"),
                given.number("wanted"),
                given.number("read-to")));
  }

  private static Calculation wash() {
    return new Calculation(
        "wash-first",
        Message.of("garment.wash.title"),
        List.of(
            FINISHED,
            Input.required("round-change", PERCENT, Message.of("garment.input.round-change")),
            WANTED,
            Input.required("along-change", PERCENT, Message.of("garment.input.along-change"))),
        given ->
            WashFirst.of(
                given.number("finished"),
                given.number("round-change"),
                given.number("wanted"),
                given.number("along-change")));
  }
}
