package walebook.garment;

import static walebook.working.Input.Kind.LENGTH;
import static walebook.working.Input.Kind.NUMBER;
import static walebook.working.Input.Kind.PERCENT;
import static walebook.working.Input.Kind.WHOLE;

import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.working.Given;
import walebook.working.Input;
import walebook.working.Message;

/** Inputs that several calculations on garments ask for, and how they are read. */
final class GarmentInputs {
  static final Input BODY = Input.required("body", LENGTH, Message.of("garment.input.body"));
  static final Input FINISHED =
      Input.required("finished", LENGTH, Message.of("garment.input.finished"));
  static final Input STRETCH =
      Input.required("stretch", PERCENT, Message.of("garment.input.stretch"));
  static final Input STRETCH_MAYBE =
      Input.optional("stretch", PERCENT, Message.of("garment.input.stretch"));
  static final Input STRETCH_U =
      Input.usual("stretch-u", NUMBER, "0.5", Message.of("garment.input.stretch-u"));
  static final Input WEAR =
      Input.choice("wear", List.of("day", "sport"), Message.of("garment.input.wear"));
  static final Input ALLOWANCE =
      Input.required("allowance", LENGTH, Message.of("garment.input.allowance"));
  static final Input SEWN = Input.required("sewn", LENGTH, Message.of("garment.input.sewn"));
  static final Input SEAMS = Input.usual("seams", WHOLE, "2", Message.of("garment.input.seams"));
  static final Input CAP_TURN =
      Input.usual("cap-turn", NUMBER, "100", Message.of("garment.input.cap-turn"));
  static final Input ARMHOLE_TURN =
      Input.usual("armhole-turn", NUMBER, "170", Message.of("garment.input.armhole-turn"));
  static final Input OPENING =
      Input.required("opening", LENGTH, Message.of("garment.input.opening"));
  static final Input OVER = Input.required("over", LENGTH, Message.of("garment.input.over"));
  static final Input BAND_LENGTH =
      Input.required("band-length", LENGTH, Message.of("garment.input.band-length"));

  private GarmentInputs() {}

  /** The neck shape, whose turn is in the table; a turn that is given counts instead. */
  static Input shape(GarmentRows rows) {
    return Input.choice(
        "shape",
        rows.neckShapes().stream().map(NeckShape::key).toList(),
        Message.of("garment.input.shape"));
  }

  static Input turn() {
    return Input.optional("turn", NUMBER, Message.of("garment.input.turn"));
  }

  static double turn(Given given, GarmentRows rows) {
    Double turn = given.numberOrNull("turn");
    return turn == null ? rows.turn(given.word("shape")) : turn;
  }

  /** Numbers of a stretch that cannot be: told at their fields. */
  static GarmentNeeds needs(Given given) {
    GarmentNeeds needs = new GarmentNeeds();
    Double stretch = given.numberOrNull("stretch");
    if (stretch != null) {
      needs.notNegative("stretch", stretch, "50 %");
    }
    return needs.notNegative("stretch-u", given.number("stretch-u"), "0.5");
  }

  /** The stretch that was given, or null; its numbers are checked by {@link #needs}. */
  static @Nullable GrainStretch stretchOrNull(Given given) {
    Double stretch = given.numberOrNull("stretch");
    return stretch == null ? null : new GrainStretch(stretch, given.number("stretch-u"));
  }

  static GrainStretch stretch(Given given) {
    return new GrainStretch(given.number("stretch"), given.number("stretch-u"));
  }
}
