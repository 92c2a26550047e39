package walebook.paper;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.text.Bidi;
import java.text.BreakIterator;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.jspecify.annotations.Nullable;

/**
 * Splits a line of text into stretches in the order in which they stand on the page (Unicode
 * Standard Annex 9), each in the first typeface that has its letters. Where letters change with
 * their neighbours the JDK's text layout draws them.
 */
final class SplitText {
  /** Layout at this size, then scaled: outlines are exact enough by far. */
  private static final float EM = 1000;

  /** What a working writes between before and after, in signs that the typefaces have. */
  private static final String ARROW = "–›";

  private static final FontRenderContext CONTEXT =
      new FontRenderContext(new AffineTransform(), true, true);

  private final Faces faces;
  private final boolean bold;

  SplitText(Faces faces, boolean bold) {
    this.faces = faces;
    this.bold = bold;
  }

  List<SetText> of(String text) throws IOException {
    String clean = clean(text);
    List<SetText> set = new ArrayList<>();
    if (!Bidi.requiresBidi(clean.toCharArray(), 0, clean.length())) {
      run(clean, false, set);
      return set;
    }
    Bidi bidi = new Bidi(clean, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT);
    int count = bidi.getRunCount();
    byte[] levels = new byte[count];
    Integer[] order = new Integer[count];
    for (int i = 0; i < count; i++) {
      levels[i] = (byte) bidi.getRunLevel(i);
      order[i] = i;
    }
    Bidi.reorderVisually(levels, 0, order, 0, count);
    for (int i : order) {
      String run = clean.substring(bidi.getRunStart(i), bidi.getRunLimit(i));
      run(run, bidi.getRunLevel(i) % 2 == 1, set);
    }
    return set;
  }

  /** Composed, one blank for any, nothing that is no letter. */
  private static String clean(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFC)
        .replaceAll("\\s", " ")
        .replace("→", ARROW)
        .replaceAll(
            "[\\p{Cc}\\p{Co}\\p{Cs}\\x{200E}\\x{200F}\\x{202A}-\\x{202E}\\x{2066}-\\x{2069}]", "");
  }

  private void run(String text, boolean rightToLeft, List<SetText> set) throws IOException {
    BreakIterator clusters = BreakIterator.getCharacterInstance(Locale.ROOT);
    clusters.setText(text);
    List<SetText> found = new ArrayList<>();
    StringBuilder same = new StringBuilder();
    @Nullable Face now = null;
    boolean nowShaped = false;
    int from = clusters.first();
    for (int to = clusters.next(); to != BreakIterator.DONE; from = to, to = clusters.next()) {
      String cluster = text.substring(from, to);
      Face face = now != null && nowShaped && cluster.equals(" ") ? now : face(cluster);
      boolean shaped = face != null && needsLayout(face, cluster);
      if (face == null) {
        faces.lacks(cluster);
        cluster = Faces.LACKING;
        face = face(cluster);
      }
      boolean together = face == now && (shaped || (cluster.equals(" ") && nowShaped)) == nowShaped;
      if (!together) {
        end(same, now, nowShaped, rightToLeft, found);
        now = face;
        nowShaped = shaped;
      }
      same.append(cluster);
    }
    end(same, now, nowShaped, rightToLeft, found);
    if (rightToLeft) {
      java.util.Collections.reverse(found);
    }
    set.addAll(found);
  }

  private @Nullable Face face(String cluster) throws IOException {
    return faces.of(cluster, bold);
  }

  /** A mark that no composed letter has must be laid over its letter by the layout as well. */
  private static boolean needsLayout(Face face, String cluster) {
    return face.shaped() || cluster.codePointCount(0, cluster.length()) > 1;
  }

  private void end(
      StringBuilder same,
      @Nullable Face face,
      boolean shaped,
      boolean rightToLeft,
      List<SetText> set)
      throws IOException {
    if (same.isEmpty() || face == null) {
      return;
    }
    String text = same.toString();
    same.setLength(0);
    Font drawn = shaped ? face.drawn() : null;
    if (drawn != null) {
      set.add(outline(text, drawn, rightToLeft));
    } else if (shaped) {
      faces.lacks(text);
      run(Faces.LACKING, false, set);
    } else {
      String inOrder = rightToLeft ? new StringBuilder(text).reverse().toString() : text;
      PDFont font = face.embedded();
      set.add(new SetText.Letters(inOrder, font, font.getStringWidth(inOrder) / 1000));
    }
  }

  private static SetText outline(String text, Font face, boolean rightToLeft) {
    char[] letters = text.toCharArray();
    int flags = rightToLeft ? Font.LAYOUT_RIGHT_TO_LEFT : Font.LAYOUT_LEFT_TO_RIGHT;
    GlyphVector laid =
        face.deriveFont(EM).layoutGlyphVector(CONTEXT, letters, 0, letters.length, flags);
    AffineTransform small = AffineTransform.getScaleInstance(1 / EM, -1 / EM);
    Path2D outline = new Path2D.Double(laid.getOutline(), small);
    double width = laid.getGlyphPosition(laid.getNumGlyphs()).getX() / EM;
    return new SetText.Outline(text, outline, width);
  }
}
