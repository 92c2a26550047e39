package walebook.desk.common;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Locale;
import walebook.book.BookTrouble;

/**
 * An unexpected fault as it is shown and logged.
 *
 * @param code short, and the same each time the same fault comes from the same place
 * @param details for those who carry the work on
 * @param trouble what the disk did, in the book's word for it; empty when it was something else
 */
public record FaultReport(String code, String details, String trouble) {
  private static final String LETTERS = "ACDEFGHJKLMNPQRTUVWXY34679";
  private static final int LENGTH = 5;
  private static final String OURS = "walebook.";

  /** Describes a fault; the code comes from its kind and the method of ours it arose in. */
  public static FaultReport of(Throwable fault) {
    StringWriter trace = new StringWriter();
    fault.printStackTrace(new PrintWriter(trace));
    return new FaultReport(code(fault), trace.toString(), trouble(fault));
  }

  private static String trouble(Throwable fault) {
    Throwable each = fault;
    for (int depth = 0; depth < 20 && each != null; depth++) {
      if (each instanceof BookTrouble named) {
        return named.code();
      }
      each = each.getCause();
    }
    return "";
  }

  private static String code(Throwable fault) {
    Throwable root = fault;
    for (int depth = 0; depth < 20 && root.getCause() != null; depth++) {
      root = root.getCause();
    }
    String place = "";
    for (StackTraceElement frame : root.getStackTrace()) {
      if (frame.getClassName().startsWith(OURS)) {
        place = frame.getClassName() + "." + frame.getMethodName();
        break;
      }
    }
    String key = root.getClass().getName() + "@" + place;
    long rest = Integer.toUnsignedLong(key.toLowerCase(Locale.ROOT).hashCode());
    StringBuilder code = new StringBuilder();
    for (int i = 0; i < LENGTH; i++) {
      code.append(LETTERS.charAt((int) (rest % LETTERS.length())));
      rest /= LETTERS.length();
    }
    return code.toString();
  }
}
