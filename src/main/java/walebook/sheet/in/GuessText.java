package walebook.sheet.in;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * A text file as text: its encoding and its separator are guessed and told, since neither is said
 * in the file.
 *
 * @param encoding name of the encoding
 */
record GuessText(String text, String encoding, char separator) {
  private static final char[] SEPARATORS = {';', '\t', ','};
  private static final int LINES = 30;
  private static final Charset WINDOWS = Charset.forName("windows-1252");

  static GuessText of(byte[] bytes) {
    if (begins(bytes, 0xEF, 0xBB, 0xBF)) {
      return of(new String(bytes, 3, bytes.length - 3, StandardCharsets.UTF_8), "UTF-8");
    }
    if (begins(bytes, 0xFF, 0xFE)) {
      return of(new String(bytes, 2, bytes.length - 2, StandardCharsets.UTF_16LE), "UTF-16");
    }
    if (begins(bytes, 0xFE, 0xFF)) {
      return of(new String(bytes, 2, bytes.length - 2, StandardCharsets.UTF_16BE), "UTF-16");
    }
    try {
      CharBuffer text =
          StandardCharsets.UTF_8
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPORT)
              .decode(ByteBuffer.wrap(bytes));
      return of(text.toString(), "UTF-8");
    } catch (CharacterCodingException e) {
      return of(new String(bytes, WINDOWS), "Windows-1252");
    }
  }

  private static boolean begins(byte[] bytes, int... mark) {
    for (int i = 0; i < mark.length; i++) {
      if (bytes.length <= i || (bytes[i] & 0xFF) != mark[i]) {
        return false;
      }
    }
    return true;
  }

  private static GuessText of(String text, String encoding) {
    return new GuessText(text, encoding, separator(text));
  }

  private static char separator(String text) {
    if (text.regionMatches(true, 0, "sep=", 0, 4) && text.length() > 4) {
      char named = text.charAt(4);
      if (named == ',' || named == ';' || named == '\t') {
        return named;
      }
    }
    char best = ',';
    double most = 0;
    for (char each : SEPARATORS) {
      double score = score(text, each);
      if (score > most) {
        most = score;
        best = each;
      }
    }
    return best;
  }

  /** How many stand in a line, if lines agree; commas inside numbers rarely do. */
  private static double score(String text, char separator) {
    List<Integer> counts = counts(text, separator);
    if (counts.isEmpty() || counts.get(0) == 0) {
      return 0;
    }
    long agree = counts.stream().filter(each -> each.equals(counts.get(0))).count();
    return counts.get(0) * (double) agree / counts.size();
  }

  private static List<Integer> counts(String text, char separator) {
    List<Integer> counts = new ArrayList<>();
    boolean quoted = false;
    int count = 0;
    boolean any = false;
    for (int i = 0; i < text.length() && counts.size() < LINES; i++) {
      char sign = text.charAt(i);
      quoted ^= sign == '"';
      if (sign == '\n' && !quoted) {
        if (any) {
          counts.add(count);
        }
        count = 0;
        any = false;
      } else {
        any |= sign > ' ';
        count += sign == separator && !quoted ? 1 : 0;
      }
    }
    if (any && counts.size() < LINES) {
      counts.add(count);
    }
    return counts;
  }
}
