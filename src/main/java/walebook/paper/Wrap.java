package walebook.paper;

import java.io.IOException;
import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Breaks text into lines that fit a width. */
final class Wrap {
  private final Ink ink;
  private final Type type;
  private final double widthMm;
  private final double space;
  private final List<String> lines = new ArrayList<>();
  private final StringBuilder line = new StringBuilder();
  private double used;

  private Wrap(Ink ink, Type type, double widthMm) throws IOException {
    this.ink = ink;
    this.type = type;
    this.widthMm = widthMm;
    this.space = ink.width(" ", type);
  }

  /** The lines of a text; a word that is too long by itself is broken between letters. */
  static List<String> lines(Ink ink, String text, Type type, double widthMm) throws IOException {
    Wrap wrap = new Wrap(ink, type, widthMm);
    for (String part : text.split("\\R", -1)) {
      for (String word : part.strip().split("\\s+", -1)) {
        wrap.add(word);
      }
      wrap.end();
    }
    return wrap.lines;
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

  private void add(String word) throws IOException {
    double wide = ink.width(word, type);
    if (!line.isEmpty() && used + space + wide <= widthMm) {
      line.append(' ').append(word);
      used += space + wide;
      return;
    }
    if (!line.isEmpty()) {
      end();
    }
    if (wide <= widthMm) {
      line.append(word);
      used = wide;
      return;
    }
    for (String cluster : clusters(word)) {
      double one = ink.width(cluster, type);
      if (!line.isEmpty() && used + one > widthMm) {
        end();
      }
      line.append(cluster);
      used += one;
    }
  }

  private void end() {
    lines.add(line.toString());
    line.setLength(0);
    used = 0;
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
