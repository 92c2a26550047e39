package walebook.garment;

import static walebook.garment.GarmentInputs.ALLOWANCE;
import static walebook.garment.GarmentInputs.ARMHOLE_TURN;
import static walebook.garment.GarmentInputs.CAP_TURN;
import static walebook.garment.GarmentInputs.OPENING;
import static walebook.garment.GarmentInputs.SEAMS;
import static walebook.garment.GarmentInputs.SEWN;
import static walebook.working.Input.Kind.LENGTH;

import java.util.List;
import walebook.working.Calculation;
import walebook.working.Input;
import walebook.working.Message;

/** What another allowance makes of girths and curves, and the overlocker's, by name. */
final class AllowanceCalculations {
  private AllowanceCalculations() {}

  static List<Calculation> all(GarmentRows rows) {
    return List.of(allowance(), curve(), neckline(rows), overlocker());
  }

  private static Calculation allowance() {
    return new Calculation(
        "allowance",
        Message.of("garment.allowance.title"),
        List.of(
            ALLOWANCE,
            SEWN,
            SEAMS,
            Input.optional("finished", LENGTH, Message.of("garment.input.finished")),
            Input.optional("body", LENGTH, Message.of("garment.input.body"))),
        given ->
            AllowanceChange.of(
                given.number("allowance"),
                given.number("sewn"),
                given.whole("seams"),
                given.numberOrNull("finished"),
                given.numberOrNull("body")));
  }

  private static Calculation curve() {
    return new Calculation(
        "curved-edge",
        Message.of("garment.curve.title"),
        List.of(ALLOWANCE, SEWN, CAP_TURN, ARMHOLE_TURN),
        given ->
            CurvedEdge.capAndArmhole(
                given.number("allowance"),
                given.number("sewn"),
                given.number("cap-turn"),
                given.number("armhole-turn")));
  }

  private static Calculation neckline(GarmentRows rows) {
    return new Calculation(
        "neckline-change",
        Message.of("garment.neck.title"),
        List.of(
            ALLOWANCE,
            SEWN,
            OPENING,
            GarmentInputs.shape(rows),
            GarmentInputs.turn(),
            Input.optional("band-length", LENGTH, Message.of("garment.input.band-length"))),
        given ->
            NecklineChange.of(
                given.number("allowance"),
                given.number("sewn"),
                given.number("opening"),
                GarmentInputs.turn(given, rows),
                given.numberOrNull("band-length")));
  }

  private static Calculation overlocker() {
    return new Calculation(
        "overlocker",
        Message.of("garment.overlocker.title"),
        List.of(
            ALLOWANCE,
            Input.required("knife", LENGTH, Message.of("garment.input.knife")),
            SEAMS,
            CAP_TURN,
            ARMHOLE_TURN),
        given ->
            Overlocker.of(
                given.number("allowance"),
                given.number("knife"),
                given.whole("seams"),
                given.number("cap-turn"),
                given.number("armhole-turn")));
  }
}
