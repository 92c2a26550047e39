package walebook.desk.common;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Map;

/** Letters as anybody's keyboard has them, so that a name is found without its marks. */
public final class PlainLetters {
  /** Those that Unicode does not take apart into a letter and its mark. */
  private static final Map<String, String> WHOLE =
      Map.of(
          "ı", "i", "ø", "o", "ł", "l", "đ", "d", "ð", "d", "ß", "ss", "æ", "ae", "œ", "oe", "þ",
          "th");

  private PlainLetters() {}

  /** The text in small letters without accents, and with plain letters for those of one sign. */
  public static String of(String text) {
    String plain =
        Normalizer.normalize(text.strip().toLowerCase(Locale.ROOT), Normalizer.Form.NFD)
            .replaceAll("\\p{M}+", "");
    for (Map.Entry<String, String> each : WHOLE.entrySet()) {
      plain = plain.replace(each.getKey(), each.getValue());
    }
    return plain;
  }
}
