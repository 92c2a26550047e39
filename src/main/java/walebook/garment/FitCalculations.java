package walebook.garment;

import static walebook.garment.GarmentInputs.BODY;
import static walebook.garment.GarmentInputs.FINISHED;
import static walebook.garment.GarmentInputs.STRETCH;
import static walebook.garment.GarmentInputs.STRETCH_MAYBE;
import static walebook.garment.GarmentInputs.STRETCH_U;
import static walebook.garment.GarmentInputs.WEAR;
import static walebook.working.Input.Kind.LENGTH;
import static walebook.working.Input.Kind.NUMBER;
import static walebook.working.Input.Kind.PERCENT;

import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import walebook.problem.Answer;
import walebook.working.Calculation;
import walebook.working.Given;
import walebook.working.Input;
import walebook.working.Message;
import walebook.working.Working;

/** Ease, the share of stretch used, the pattern's gauge and which way round, by name. */
final class FitCalculations {
  private FitCalculations() {}

  static List<Calculation> all(GarmentRows rows) {
    return List.of(ease(rows), used(rows), gauge(), way(rows));
  }

  private static Calculation ease(GarmentRows rows) {
    return new Calculation(
        "ease",
        Message.of("garment.ease.title"),
        List.of(BODY, FINISHED),
        given -> Ease.of(given.number("body"), given.number("finished"), rows.fits()));
  }

  private static Calculation used(GarmentRows rows) {
    return new Calculation(
        "stretch-used",
        Message.of("garment.used.title"),
        List.of(BODY, FINISHED, STRETCH, STRETCH_U, WEAR),
        given ->
            after(
                GarmentInputs.needs(given),
                () ->
                    StretchUsed.of(
                        given.number("body"),
                        given.number("finished"),
                        GarmentInputs.stretch(given),
                        Wear.of(given.word("wear")),
                        rows.comfort())));
  }

  private static Calculation gauge() {
    return new Calculation(
        "pattern-gauge",
        Message.of("garment.gauge.title"),
        List.of(
            Input.usual("gauge-from", LENGTH, "100", Message.of("garment.input.gauge-from")),
            Input.required("gauge-to", LENGTH, Message.of("garment.input.gauge-to")),
            STRETCH_MAYBE,
            STRETCH_U),
        given ->
            after(
                GarmentInputs.needs(given),
                () ->
                    GaugeNeed.of(
                        given.number("gauge-from"),
                        given.number("gauge-to"),
                        GarmentInputs.stretchOrNull(given))));
  }

  private static Calculation way(GarmentRows rows) {
    return new Calculation(
        "which-way",
        Message.of("garment.way.title"),
        List.of(
            BODY,
            FINISHED,
            Input.optional("course", PERCENT, Message.of("garment.input.course")),
            Input.usual("course-u", NUMBER, "0.5", Message.of("garment.input.stretch-u")),
            Input.optional("wale", PERCENT, Message.of("garment.input.wale")),
            Input.usual("wale-u", NUMBER, "0.5", Message.of("garment.input.stretch-u")),
            Input.optional("requirement", PERCENT, Message.of("garment.input.requirement")),
            WEAR),
        given -> after(wayNeeds(given), () -> wayOf(given, rows)));
  }

  private static GarmentNeeds wayNeeds(Given given) {
    GarmentNeeds needs =
        new GarmentNeeds()
            .notNegative("course-u", given.number("course-u"), "0.5")
            .notNegative("wale-u", given.number("wale-u"), "0.5");
    Double course = given.numberOrNull("course");
    if (course != null) {
      needs.notNegative("course", course, "50 %");
    }
    Double wale = given.numberOrNull("wale");
    if (wale != null) {
      needs.notNegative("wale", wale, "20 %");
    }
    Double requirement = given.numberOrNull("requirement");
    if (requirement != null) {
      needs.notNegative("requirement", requirement, "50 %");
    }
    return needs;
  }

  private static Answer<Working> wayOf(Given given, GarmentRows rows) {
    Double requirement = given.numberOrNull("requirement");
    return WhichWay.of(
        given.number("body"),
        given.number("finished"),
        requirement == null ? null : new GaugeNeed(100, 100 + requirement),
        new ClothStretch(grain(given, "wale", "wale-u"), grain(given, "course", "course-u")),
        Wear.of(given.word("wear")),
        rows.comfort());
  }

  private static @Nullable GrainStretch grain(Given given, String name, String uncertainty) {
    Double stretch = given.numberOrNull(name);
    return stretch == null ? null : new GrainStretch(stretch, given.number(uncertainty));
  }

  /** Goes on to a calculation whose inputs can only be built from sound numbers. */
  static Answer<Working> after(GarmentNeeds needs, Supplier<Answer<Working>> work) {
    return needs.failed() ? Answer.bad(needs.problems()) : work.get();
  }
}
