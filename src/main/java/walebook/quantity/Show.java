package walebook.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Numbers as they are shown everywhere: a decimal point whatever the machine's language, no
 * grouping, a real minus sign, no negative nought. One way of showing keeps the board, the screen,
 * the workbook's words and the command line alike.
 */
public final class Show {
  private Show() {}

  /** A number with exactly this many decimals, rounded half up. */
  public static String fixed(double value, int decimals) {
    if (!Double.isFinite(value)) {
      return "–";
    }
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    String text = rounded.abs().toPlainString();
    return rounded.signum() < 0 ? "−" + text : text;
  }

  /** A number with at most this many decimals, trailing noughts dropped. */
  public static String upTo(double value, int decimals) {
    String text = fixed(value, decimals);
    if (text.indexOf('.') < 0) {
      return text;
    }
    int end = text.length();
    while (text.charAt(end - 1) == '0') {
      end--;
    }
    return text.substring(0, text.charAt(end - 1) == '.' ? end - 1 : end);
  }

  /** A percentage with one decimal and its sign, such as {@code 52.0 %}. */
  public static String percent(double value) {
    return fixed(value, 1) + " %";
  }

  /** A length inside the program, such as {@code 152.5 mm}. */
  public static String mm(double millimetres) {
    return upTo(millimetres, 2) + " mm";
  }

  /** A length in the unit the user works in; inches and centimetres with two decimals at most. */
  public static String length(double millimetres, Unit unit) {
    return upTo(millimetres / unit.inBase(), unit == Unit.MM ? 1 : 2) + " " + unit.sign();
  }

  /** A measured value with its expanded uncertainty where one is known. */
  public static String measured(Measured measured) {
    int decimals = decimals(measured.unit());
    String sign = measured.unit().sign().isEmpty() ? "" : " " + measured.unit().sign();
    Double expanded = measured.expanded();
    String spread = expanded == null ? "" : " ± " + fixed(expanded, decimals);
    return fixed(measured.value(), decimals) + spread + sign;
  }

  private static int decimals(Unit unit) {
    return switch (unit) {
      case PERCENT, POINTS, MM, GRAM_PER_M2 -> 1;
      case COUNT, SECOND -> 0;
      default -> 2;
    };
  }
}
