package walebook.paper;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.PDDocument;

/** Tells beforehand whether a text can be printed letter for letter. */
public final class Printable {
  private Printable() {}

  /** Whether the program's typefaces have every letter of a text. */
  public static boolean shows(String text) {
    if (text.chars().allMatch(letter -> letter >= ' ' && letter < 0x17F)) {
      return true;
    }
    try (PDDocument scratch = new PDDocument()) {
      return new Faces(scratch).shows(text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
