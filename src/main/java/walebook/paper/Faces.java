package walebook.paper;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.jspecify.annotations.Nullable;

/**
 * The typefaces of a document, one behind the other: a letter is set in the first that has it. A
 * letter that none has is remembered, and stands on the page as {@link #LACKING}.
 */
final class Faces {
  /** What stands for a letter that no typeface has: to be seen, not a silent box. */
  static final String LACKING = "[?]";

  private static final String OWN = "/walebook/desk/fonts/AtkinsonHyperlegibleNext_";
  private static final String BEHIND = "/walebook/paper/fonts/";
  private static final String[] SCRIPTS = {
    "Arabic",
    "Hebrew",
    "Devanagari",
    "Bengali",
    "Gurmukhi",
    "Gujarati",
    "Tamil",
    "Telugu",
    "Kannada",
    "Malayalam",
    "Sinhala",
    "Thai",
    "Lao",
    "Khmer",
    "Myanmar"
  };
  private static final String[] PLAIN_SCRIPTS = {"Ethiopic", "Armenian", "Georgian"};

  private final List<Face> regular = new ArrayList<>();
  private final List<Face> bold = new ArrayList<>();
  private final Set<Integer> lacking = new TreeSet<>();
  private final Map<String, Double> widths = new HashMap<>();
  private final Map<String, Double> boldWidths = new HashMap<>();

  Faces(PDDocument document) {
    regular.add(new Face(document, OWN + "400Regular.ttf", false));
    bold.add(new Face(document, OWN + "700Bold.ttf", false));
    regular.add(new Face(document, BEHIND + "NotoSans-Regular.ttf", false));
    bold.add(new Face(document, BEHIND + "NotoSans-Bold.ttf", false));
    List<Face> scripts = new ArrayList<>();
    for (String script : SCRIPTS) {
      scripts.add(new Face(document, BEHIND + "NotoSans" + script + "-Regular.ttf", true));
    }
    for (String script : PLAIN_SCRIPTS) {
      scripts.add(new Face(document, BEHIND + "NotoSans" + script + "-Regular.ttf", false));
    }
    scripts.add(new Face(document, BEHIND + "DroidSansFallback.ttf", false));
    regular.addAll(scripts);
    bold.addAll(scripts);
  }

  /** The first typeface with all letters of a cluster, or null. */
  @Nullable Face of(String cluster, boolean heavy) throws IOException {
    for (Face face : heavy ? bold : regular) {
      if (hasAll(face, cluster)) {
        return face;
      }
    }
    return null;
  }

  /** The width of a text at a size of one point, in points; words come back often. */
  double width(String text, boolean heavy) throws IOException {
    Map<String, Double> known = heavy ? boldWidths : widths;
    Double width = known.get(text);
    if (width == null) {
      width = 0.0;
      for (SetText each : new SplitText(this, heavy).of(text)) {
        width += each.width();
      }
      known.put(text, width);
    }
    return width;
  }

  /** Whether every letter of a text can be printed. */
  boolean shows(String text) throws IOException {
    return new SplitText(this, false)
        .of(text).stream().noneMatch(each -> each.text().contains(LACKING));
  }

  void lacks(String cluster) {
    cluster.codePoints().forEach(lacking::add);
  }

  /** Letters that were asked for and that no typeface has. */
  Set<Integer> lacking() {
    return Set.copyOf(lacking);
  }

  /** Joiners and the marks that choose a variant may be missing without harm. */
  private static boolean hasAll(Face face, String cluster) throws IOException {
    for (int letter : cluster.codePoints().toArray()) {
      boolean silent =
          letter == 0x200C || letter == 0x200D || (letter >= 0xFE00 && letter <= 0xFE0F);
      if (!silent && !face.has(letter)) {
        return false;
      }
    }
    return true;
  }

  /** For tests: every typeface's resource. */
  static List<String> files() {
    return Stream.concat(
            Stream.of(
                OWN + "400Regular.ttf",
                OWN + "700Bold.ttf",
                BEHIND + "NotoSans-Regular.ttf",
                BEHIND + "NotoSans-Bold.ttf",
                BEHIND + "DroidSansFallback.ttf"),
            Stream.concat(Stream.of(SCRIPTS), Stream.of(PLAIN_SCRIPTS))
                .map(script -> BEHIND + "NotoSans" + script + "-Regular.ttf"))
        .toList();
  }
}
