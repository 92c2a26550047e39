package walebook.paper;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.jspecify.annotations.Nullable;

/** One typeface of a document: read when first asked for, embedded when first set. */
final class Face {
  private final PDDocument document;
  private final String file;
  private final boolean shaped;
  private byte @Nullable [] bytes;
  private @Nullable TrueTypeFont read;
  private @Nullable CmapLookup letters;
  private @Nullable PDFont embedded;
  private @Nullable Font drawn;
  private boolean undrawable;

  /**
   * A typeface.
   *
   * @param file its resource, from the program's root
   * @param shaped true where letters change with their neighbours, so that glyphs can't be set one
   *     by one
   */
  Face(PDDocument document, String file, boolean shaped) {
    this.document = document;
    this.file = file;
    this.shaped = shaped;
  }

  boolean shaped() {
    return shaped;
  }

  /** Whether it has a glyph for a letter. */
  boolean has(int letter) throws IOException {
    CmapLookup known = letters;
    if (known == null) {
      known = font().getUnicodeCmapLookup();
      letters = known;
    }
    return known.getGlyphId(letter) != 0;
  }

  /** The typeface as the document carries it: only the glyphs that were used. */
  PDFont embedded() throws IOException {
    PDFont known = embedded;
    if (known == null) {
      known = PDType0Font.load(document, font(), true);
      embedded = known;
    }
    return known;
  }

  /** The typeface for the JDK's text layout, or null where the machine's JDK can't lay out text. */
  @Nullable Font drawn() throws IOException {
    if (drawn == null && !undrawable) {
      try {
        drawn = Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(bytes()));
      } catch (FontFormatException e) {
        throw new IOException(file, e);
      } catch (LinkageError | InternalError | IllegalStateException | NullPointerException e) {
        // A JDK without any desktop library says so in one of these ways.
        undrawable = true;
      }
    }
    return drawn;
  }

  private TrueTypeFont font() throws IOException {
    TrueTypeFont known = read;
    if (known == null) {
      known = new TTFParser().parse(new RandomAccessReadBuffer(bytes()));
      // Ligatures would be set as glyphs that no reader can turn back into letters.
      known.setEnableGsub(false);
      read = known;
    }
    return known;
  }

  private byte[] bytes() throws IOException {
    byte[] known = bytes;
    if (known == null) {
      try (InputStream in = Face.class.getResourceAsStream(file)) {
        if (in == null) {
          throw new IOException("no typeface " + file);
        }
        known = in.readAllBytes();
      }
      bytes = known;
    }
    return known;
  }
}
