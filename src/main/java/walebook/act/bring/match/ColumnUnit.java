package walebook.act.bring.match;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import walebook.act.piece.PieceField;

/** Units that people write into headers, and what they make of a number. */
public final class ColumnUnit {
  private static final double MM_PER_INCH = 25.4;

  private ColumnUnit() {}

  /** The unit's usual sign, or an empty text where none is meant. */
  public static String sign(String written) {
    return switch (written.strip().toLowerCase(Locale.ROOT)) {
      case "mm", "millimetre", "millimetres", "millimeter", "millimeters" -> "mm";
      case "cm", "centimetre", "centimetres", "centimeter", "centimeters" -> "cm";
      case "m", "metre", "metres", "meter", "meters" -> "m";
      case "in", "in.", "inch", "inches", "\"", "″" -> "in";
      case "%", "percent", "per cent" -> "%";
      case "g", "gram", "grams", "gramme", "grammes" -> "g";
      case "kg" -> "kg";
      case "s", "sec", "secs", "second", "seconds" -> "s";
      case "min", "mins", "minute", "minutes" -> "min";
      default -> "";
    };
  }

  /** True for a unit of length, which is written behind the number and read with it. */
  public static boolean isLength(String unit) {
    return unit.equals("mm") || unit.equals("cm") || unit.equals("m") || unit.equals("in");
  }

  /**
   * What a number is multiplied with to be in the field's own unit; null where the unit is none of
   * the field's.
   */
  public static @Nullable Double factor(String field, String unit) {
    return switch (field) {
      case "load" -> one(unit, "g", "kg", 1000);
      case "hold", "rest" -> one(unit, "s", "min", 60);
      case "minutes" ->
          switch (unit) {
            case "min" -> 1.0;
            case "s" -> 1.0 / 60;
            default -> null;
          };
      case "need", "elastane" -> unit.equals("%") ? Double.valueOf(1) : null;
      case "sewn-width", "sewn-length", "dial-width", "dial-length" ->
          switch (unit) {
            case "mm" -> 1.0;
            case "cm" -> 10.0;
            case "in" -> MM_PER_INCH;
            default -> null;
          };
      default -> null;
    };
  }

  /** True when a column of this field can be in this unit; no unit is always right. */
  public static boolean fits(BringField field, String unit) {
    return unit.isEmpty()
        || (field.kind() == PieceField.Kind.LENGTH
            ? isLength(unit)
            : factor(field.key(), unit) != null);
  }

  private static @Nullable Double one(String unit, String own, String larger, double times) {
    if (unit.equals(own)) {
      return 1.0;
    }
    return unit.equals(larger) ? Double.valueOf(times) : null;
  }
}
