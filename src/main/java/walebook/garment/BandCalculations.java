package walebook.garment;

import static walebook.garment.GarmentInputs.BAND_LENGTH;
import static walebook.garment.GarmentInputs.OPENING;
import static walebook.garment.GarmentInputs.OVER;
import static walebook.garment.GarmentInputs.STRETCH_MAYBE;
import static walebook.garment.GarmentInputs.STRETCH_U;
import static walebook.working.Input.Kind.LENGTH;
import static walebook.working.Input.Kind.LENGTHS;
import static walebook.working.Input.Kind.NUMBER;
import static walebook.working.Input.Kind.NUMBERS;
import static walebook.working.Input.Kind.WHOLE;

import java.util.List;
import walebook.working.Calculation;
import walebook.working.Given;
import walebook.working.Input;
import walebook.working.Message;

/** Bands and their marks, by name. */
final class BandCalculations {
  private static final Input RATIO =
      Input.required("ratio", NUMBER, Message.of("garment.input.ratio"));
  private static final Input WIDTH =
      Input.required("band-width", LENGTH, Message.of("garment.input.band-width"));

  private BandCalculations() {}

  static List<Calculation> all(GarmentRows rows) {
    return List.of(band(rows), flat(rows), over(), quarters(), segments());
  }

  private static Calculation band(GarmentRows rows) {
    return new Calculation(
        "band",
        Message.of("garment.band.title"),
        List.of(
            OPENING,
            RATIO,
            WIDTH,
            Input.usual("join", LENGTH, "6", Message.of("garment.input.join")),
            Input.usual("edge", LENGTH, "6", Message.of("garment.input.edge")),
            Input.choice(
                "place", List.of("neck", "cuff", "waist"), Message.of("garment.input.place")),
            STRETCH_MAYBE,
            STRETCH_U),
        given ->
            plan(given)
                .then(
                    () ->
                        BandLength.of(
                            new BandPlan(
                                given.number("opening"),
                                given.number("ratio"),
                                given.number("band-width"),
                                given.number("join"),
                                given.number("edge")),
                            BandRatio.Place.of(given.word("place")),
                            GarmentInputs.stretchOrNull(given),
                            rows.bandRatios(),
                            rows.comfort())));
  }

  private static GarmentNeeds plan(Given given) {
    return shape(GarmentInputs.needs(given), given)
        .notNegative("join", given.number("join"), "6 mm")
        .notNegative("edge", given.number("edge"), "6 mm");
  }

  private static GarmentNeeds shape(GarmentNeeds needs, Given given) {
    return needs
        .girth("opening", given.number("opening"))
        .share("ratio", given.number("ratio"), 0.3, 1.5)
        .positive("band-width", given.number("band-width"), "20 mm");
  }

  private static Calculation flat(GarmentRows rows) {
    return new Calculation(
        "band-flat",
        Message.of("garment.flat.title"),
        List.of(
            OPENING,
            RATIO,
            WIDTH,
            GarmentInputs.shape(rows),
            GarmentInputs.turn(),
            Input.optional("slope", NUMBER, Message.of("garment.input.slope"))),
        given ->
            shape(new GarmentNeeds(), given)
                .between("slope", slope(given), 0, 90)
                .between("turn", turn(given, rows), 0, 2 * Math.PI)
                .then(
                    () ->
                        BandFlat.of(
                            new BandPlan(
                                given.number("opening"),
                                given.number("ratio"),
                                given.number("band-width"),
                                0,
                                0),
                            turn(given, rows),
                            rows.bandFits())));
  }

  /** A slope that is given counts instead of shape and turn. */
  private static double turn(Given given, GarmentRows rows) {
    return given.numberOrNull("slope") == null
        ? GarmentInputs.turn(given, rows)
        : BandFlat.turn(slope(given));
  }

  private static double slope(Given given) {
    Double slope = given.numberOrNull("slope");
    return slope == null ? 0 : slope;
  }

  private static Calculation over() {
    return new Calculation(
        "band-over",
        Message.of("garment.over.title"),
        List.of(BAND_LENGTH, OVER, STRETCH_MAYBE, STRETCH_U),
        given ->
            GarmentInputs.needs(given)
                .positive("band-length", given.number("band-length"), "450 mm")
                .girth("over", given.number("over"))
                .then(
                    () ->
                        BandOverHead.of(
                            given.number("band-length"),
                            given.number("over"),
                            GarmentInputs.stretchOrNull(given))));
  }

  private static Calculation quarters() {
    return new Calculation(
        "quarter-marks",
        Message.of("garment.quarters.title"),
        List.of(
            OPENING,
            BAND_LENGTH,
            Input.usual("parts", WHOLE, "4", Message.of("garment.input.parts")),
            Input.optional("shoulder", LENGTH, Message.of("garment.input.shoulder"))),
        given ->
            QuarterMarks.worked(
                given.number("opening"),
                given.number("band-length"),
                given.whole("parts"),
                given.numberOrNull("shoulder")));
  }

  private static Calculation segments() {
    return new Calculation(
        "segment-marks",
        Message.of("garment.segments.title"),
        List.of(
            OPENING,
            BAND_LENGTH,
            Input.required("segments", LENGTHS, Message.of("garment.input.segments")),
            Input.optional("weights", NUMBERS, Message.of("garment.input.weights"))),
        given ->
            SegmentMarks.worked(
                given.list("segments"),
                given.list("weights"),
                given.number("opening"),
                given.number("band-length")));
  }
}
