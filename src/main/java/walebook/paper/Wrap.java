package walebook.paper;

import java.io.IOException;
import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Breaks text into lines that fit a width. */
final class Wrap {
  private Wrap() {}

  /** The lines of a text; a word that is too long by itself is broken between letters. */
  static List<String> lines(Ink ink, String text, Type type, double widthMm) throws IOException {
    List<String> lines = new ArrayList<>();
    for (String part : text.split("\\R", -1)) {
      StringBuilder line = new StringBuilder();
      for (String word : part.strip().split("\\s+", -1)) {
        add(ink, word, type, widthMm, line, lines);
      }
      lines.add(line.toString());
    }
    return lines;
  }

  /** At most so many lines, the last ending in an ellipsis where something is left out. */
  static List<String> lines(Ink ink, String text, Type type, double widthMm, int most)
      throws IOException {
    List<String> all = lines(ink, text, type, widthMm);
    if (all.size() <= most) {
      return all;
    }
    List<String> kept = new ArrayList<>(all.subList(0, Math.max(0, most)));
    if (most > 0) {
      kept.set(most - 1, cut(ink, kept.get(most - 1) + "…", type, widthMm));
    }
    return kept;
  }

  /** The text, its end replaced by an ellipsis where it is too wide. */
  static String cut(Ink ink, String text, Type type, double widthMm) throws IOException {
    if (ink.width(text, type) <= widthMm) {
      return text;
    }
    List<String> clusters = clusters(text);
    for (int keep = clusters.size() - 1; keep > 0; keep--) {
      String cut = String.join("", clusters.subList(0, keep)).replaceAll("[\\s….,;]+$", "") + "…";
      if (ink.width(cut, type) <= widthMm) {
        return cut;
      }
    }
    return "";
  }

  private static void add(
      Ink ink, String word, Type type, double widthMm, StringBuilder line, List<String> lines)
      throws IOException {
    String longer = line.isEmpty() ? word : line + " " + word;
    if (ink.width(longer, type) <= widthMm) {
      line.setLength(0);
      line.append(longer);
      return;
    }
    if (!line.isEmpty()) {
      lines.add(line.toString());
      line.setLength(0);
    }
    if (ink.width(word, type) <= widthMm) {
      line.append(word);
      return;
    }
    for (String cluster : clusters(word)) {
      if (!line.isEmpty() && ink.width(line + cluster, type) > widthMm) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(cluster);
    }
  }

  private static List<String> clusters(String text) {
    List<String> all = new ArrayList<>();
    BreakIterator breaks = BreakIterator.getCharacterInstance(Locale.ROOT);
    breaks.setText(text);
    int from = breaks.first();
    for (int to = breaks.next(); to != BreakIterator.DONE; from = to, to = breaks.next()) {
      all.add(text.substring(from, to));
    }
    return all;
  }
}
