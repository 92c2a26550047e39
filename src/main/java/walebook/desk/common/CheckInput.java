package walebook.desk.common;

import java.math.BigDecimal;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.ReadNumber;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.working.Input;

/** One input of a calculation while it is being filled in. */
public final class CheckInput {
  /** Dials, callipers and rulers tell these in mm, whatever unit cloth is measured in. */
  private static final Set<String> ALWAYS_MM = Set.of("width", "length", "thickness", "read-to");

  private final Input input;
  private final Unit unit;
  private final @Nullable NumberEntry number;
  private final FormFields.Field text = new FormFields.Field();

  /**
   * An input with its usual value filled in.
   *
   * @param lengths what a length without a unit means
   */
  public CheckInput(Input input, Unit lengths) {
    this.input = input;
    this.unit = ALWAYS_MM.contains(input.name()) ? Unit.MM : lengths;
    this.number =
        switch (input.kind()) {
          case LENGTH -> NumberEntry.length(unit, input.name());
          case PERCENT, NUMBER -> NumberEntry.plain(input.name());
          case WHOLE -> NumberEntry.whole(input.name());
          case CHOICE, NUMBERS, LENGTHS -> null;
        };
    reset();
  }

  public Input input() {
    return input;
  }

  /** The sign behind the label; empty for what has none. */
  public String sign() {
    return switch (input.kind()) {
      case LENGTH -> unit.sign();
      case PERCENT -> Unit.PERCENT.sign();
      case NUMBER, WHOLE, CHOICE, NUMBERS, LENGTHS -> "";
    };
  }

  /** The number being typed; null for a choice and for several numbers. */
  public @Nullable NumberEntry number() {
    return number;
  }

  /** The chosen word, or several numbers as typed. */
  public FormFields.Field text() {
    return text;
  }

  public boolean isEmpty() {
    return typed().isBlank();
  }

  /** Puts the usual value back, or empties the field. */
  public void reset() {
    String usual = input.usual();
    if (number == null) {
      text.text().set(usual == null ? "" : usual);
    } else if (usual == null) {
      number.put(null);
    } else {
      // Usual values are written in mm; the field stands in the user's unit.
      double value = ReadNumber.plain(usual, Place.field(input.name())).value();
      number.textProperty().set(shown(value));
      number.settle();
    }
  }

  private String shown(double value) {
    return input.kind() == Input.Kind.LENGTH
        ? Show.upTo(value / unit.inBase(), 3)
        : Show.upTo(value, 3);
  }

  /** As a calculation reads it: lengths in plain mm, what cannot be read as it was typed. */
  public String typed() {
    if (number == null) {
      String now = text.text().get();
      return now == null ? "" : now;
    }
    Double value = number.value();
    return value == null ? number.textProperty().get() : BigDecimal.valueOf(value).toPlainString();
  }

  public boolean isPlaceOf(Problem problem) {
    return problem.place().equals(Place.field(input.name()));
  }

  /** Shows what the calculation has against it, or that it has nothing. */
  public void problem(@Nullable Problem now) {
    Problem shown = isEmpty() ? null : now;
    if (number == null) {
      text.problem().set(shown);
    } else {
      number.outside(shown);
    }
  }

  /** Calls back after each change. */
  public void onChange(Runnable changed) {
    if (number == null) {
      text.text().addListener((from, old, now) -> changed.run());
    } else {
      number.textProperty().addListener((from, old, now) -> changed.run());
    }
  }
}
