package walebook.paper;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.jspecify.annotations.Nullable;
import walebook.lesson.PackPicture;

/** Pages of one document, all of one size. */
final class Sheets implements AutoCloseable {
  private final PDDocument document = new PDDocument();
  private final Faces faces = new Faces(document);
  private final List<PDPageContentStream> open = new ArrayList<>();
  private final List<Ink> inks = new ArrayList<>();
  private final Map<String, @Nullable PDImageXObject> pictures = new HashMap<>();
  private final double widthMm;
  private final double heightMm;

  private Sheets(PaperSize size, boolean across) {
    this.widthMm = across ? size.heightMm() : size.widthMm();
    this.heightMm = across ? size.widthMm() : size.heightMm();
  }

  static Sheets upright(PaperSize size) {
    return new Sheets(size, false);
  }

  static Sheets across(PaperSize size) {
    return new Sheets(size, true);
  }

  double widthMm() {
    return widthMm;
  }

  double heightMm() {
    return heightMm;
  }

  Faces faces() {
    return faces;
  }

  /** A new page behind the others. */
  Ink page() throws IOException {
    PDPage page = new PDPage(new PDRectangle(Ink.points(widthMm), Ink.points(heightMm)));
    document.addPage(page);
    PDPageContentStream out = new PDPageContentStream(document, page);
    open.add(out);
    Ink ink = new Ink(out, faces, heightMm);
    inks.add(ink);
    return ink;
  }

  int count() {
    return inks.size();
  }

  /** A page already begun, from 0: all stay open until the document is written. */
  Ink page(int index) {
    return inks.get(index);
  }

  /** Throws the pages away, to draw them anew in another size. */
  void again() throws IOException {
    for (PDPageContentStream each : open) {
      each.close();
    }
    open.clear();
    inks.clear();
    while (document.getNumberOfPages() > 0) {
      document.removePage(0);
    }
  }

  /** A pack's picture, read once however often its page is drawn; null when it can't be read. */
  @Nullable PDImageXObject kept(PackPicture picture) {
    return pictures.computeIfAbsent(
        picture.fileName(), name -> image(picture.content(), picture.fileName()));
  }

  /** A picture, or null when the bytes are none that can be read. */
  @Nullable PDImageXObject image(byte[] bytes, String name) {
    try {
      PDImageXObject grey = GreyPng.of(document, bytes);
      return grey == null ? PDImageXObject.createFromByteArray(document, bytes, name) : grey;
    } catch (IOException | IllegalArgumentException e) {
      return null;
    }
  }

  /** Letters that no typeface has, by number. */
  Set<Integer> lacking() {
    return faces.lacking();
  }

  /** Writes the document; nothing can be added after it. */
  void write(OutputStream to, String title) throws IOException {
    for (PDPageContentStream each : open) {
      each.close();
    }
    open.clear();
    PDDocumentInformation about = new PDDocumentInformation();
    about.setTitle(title);
    about.setCreator("Walebook");
    document.setDocumentInformation(about);
    document.getDocumentCatalog().setLanguage("en");
    document.save(to);
  }

  @Override
  public void close() throws IOException {
    for (PDPageContentStream each : open) {
      each.close();
    }
    document.close();
  }
}
