package walebook.sheet;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/** The parts of a workbook's zip as text, with references to signs resolved. */
final class Parts {
  private static final Pattern REFERENCE = Pattern.compile("&#(x?)([0-9A-Fa-f]+);");

  private Parts() {}

  static Map<String, String> of(Path file) throws IOException {
    Map<String, String> parts = new TreeMap<>();
    try (ZipFile zip = new ZipFile(file.toFile())) {
      for (ZipEntry entry : Collections.list(zip.entries())) {
        byte[] content = zip.getInputStream(entry).readAllBytes();
        parts.put(entry.getName(), resolved(new String(content, StandardCharsets.UTF_8)));
      }
    }
    return parts;
  }

  private static String resolved(String xml) {
    return REFERENCE
        .matcher(xml)
        .replaceAll(
            hit ->
                java.util.regex.Matcher.quoteReplacement(
                    Character.toString(
                        Integer.parseInt(hit.group(2), hit.group(1).isEmpty() ? 10 : 16))));
  }
}
