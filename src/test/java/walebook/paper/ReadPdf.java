package walebook.paper;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.Result;
import com.google.zxing.common.GlobalHistogramBinarizer;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.awt.image.ConvolveOp;
import java.awt.image.Kernel;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.jspecify.annotations.Nullable;

/** A printed file as others see it: its text, its pages as pixels, its codes through a reader. */
public final class ReadPdf implements AutoCloseable {
  public static final int DPI = 300;
  private final PDDocument document;

  private ReadPdf(PDDocument document) {
    this.document = document;
  }

  public static ReadPdf of(byte[] bytes) throws IOException {
    return new ReadPdf(Loader.loadPDF(bytes));
  }

  public static ReadPdf of(Path file) throws IOException {
    return new ReadPdf(Loader.loadPDF(file.toFile()));
  }

  public int pages() {
    return document.getNumberOfPages();
  }

  /** All text, white space made one blank. */
  public String text() throws IOException {
    return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
  }

  /** A page's text, from 0. */
  public String text(int page) throws IOException {
    PDFTextStripper stripper = new PDFTextStripper();
    stripper.setStartPage(page + 1);
    stripper.setEndPage(page + 1);
    return stripper.getText(document).replaceAll("\\s+", " ");
  }

  /** Width and height of a page in mm. */
  public double[] sizeMm(int page) {
    PDPage at = document.getPage(page);
    return new double[] {
      at.getMediaBox().getWidth() * 25.4 / 72, at.getMediaBox().getHeight() * 25.4 / 72
    };
  }

  /** Texts kept beside outlines (ActualText of PDF 32000-1, 14.9.4). */
  public List<String> keptText() throws IOException {
    List<String> kept = new ArrayList<>();
    for (PDPage page : document.getPages()) {
      PDFMarkedContentExtractor extractor = new PDFMarkedContentExtractor();
      extractor.processPage(page);
      for (PDMarkedContent each : extractor.getMarkedContents()) {
        if (each.getActualText() != null) {
          kept.add(each.getActualText());
        }
      }
    }
    return kept;
  }

  /** Every font of every page. */
  public List<PDFont> fonts() throws IOException {
    List<PDFont> fonts = new ArrayList<>();
    for (PDPage page : document.getPages()) {
      for (COSName name : page.getResources().getFontNames()) {
        fonts.add(page.getResources().getFont(name));
      }
    }
    return fonts;
  }

  /** How many pictures the pages carry. */
  public int images() throws IOException {
    int count = 0;
    for (PDPage page : document.getPages()) {
      for (COSName name : page.getResources().getXObjectNames()) {
        count += page.getResources().isImageXObject(name) ? 1 : 0;
      }
    }
    return count;
  }

  /** Every letter's box on a page: left, top, right, base line in mm. */
  public List<double[]> letters(int page) throws IOException {
    List<double[]> boxes = new ArrayList<>();
    PDFTextStripper stripper =
        new PDFTextStripper() {
          @Override
          protected void processTextPosition(TextPosition text) {
            double mm = 25.4 / 72;
            boxes.add(
                new double[] {
                  text.getXDirAdj() * mm,
                  (text.getYDirAdj() - text.getFontSizeInPt() * 0.72) * mm,
                  (text.getXDirAdj() + text.getWidthDirAdj()) * mm,
                  text.getYDirAdj() * mm
                });
          }
        };
    stripper.setStartPage(page + 1);
    stripper.setEndPage(page + 1);
    stripper.getText(document);
    return boxes;
  }

  /** The size in points of every letter. */
  public List<Double> sizes() throws IOException {
    List<Double> sizes = new ArrayList<>();
    new PDFTextStripper() {
      @Override
      protected void processTextPosition(TextPosition text) {
        sizes.add((double) text.getFontSizeInPt());
      }
    }.getText(document);
    return sizes;
  }

  /** The numbers that an operator of the pages' content was given, the last before it. */
  public List<Double> given(String operator) throws IOException {
    List<Double> given = new ArrayList<>();
    for (PDPage page : document.getPages()) {
      COSBase last = null;
      for (Object token : new PDFStreamParser(page).parse()) {
        if (token instanceof Operator at && at.getName().equals(operator)) {
          given.add(((COSNumber) java.util.Objects.requireNonNull(last)).floatValue() * 1.0);
        }
        last = token instanceof COSBase base ? base : null;
      }
    }
    return given;
  }

  public BufferedImage page(int page) {
    return page(page, DPI);
  }

  public BufferedImage page(int page, int dpi) {
    try {
      return new PDFRenderer(document).renderImageWithDPI(page, dpi, ImageType.GRAY);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A copier's work: a little smaller, blurred, specked, then black or white. */
  public static BufferedImage photocopy(BufferedImage page, long seed) {
    int wide = (int) (page.getWidth() * 0.98);
    int high = (int) (page.getHeight() * 0.98);
    BufferedImage small = new BufferedImage(page.getWidth(), page.getHeight(), page.getType());
    Graphics2D pen = small.createGraphics();
    pen.setColor(Color.WHITE);
    pen.fillRect(0, 0, small.getWidth(), small.getHeight());
    pen.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    pen.drawImage(page, 0, 0, wide, high, null);
    pen.dispose();
    float[] ninth = new float[9];
    java.util.Arrays.fill(ninth, 1 / 9f);
    BufferedImage blurred = new ConvolveOp(new Kernel(3, 3, ninth)).filter(small, null);
    Random specks = new Random(seed);
    for (int y = 0; y < blurred.getHeight(); y++) {
      for (int x = 0; x < blurred.getWidth(); x++) {
        double grey = blurred.getRaster().getSample(x, y, 0) + specks.nextGaussian() * 40;
        blurred.getRaster().setSample(x, y, 0, grey < 128 ? 0 : 255);
      }
    }
    return softened(blurred);
  }

  /** A reader's lens is never quite sharp, which is what takes single specks away. */
  private static BufferedImage softened(BufferedImage copy) {
    float[] weights = {
      1 / 16f, 2 / 16f, 1 / 16f, 2 / 16f, 4 / 16f, 2 / 16f, 1 / 16f, 2 / 16f, 1 / 16f
    };
    return new ConvolveOp(new Kernel(3, 3, weights)).filter(copy, null);
  }

  /** What a reader makes of a part of a page, in mm; null when it finds no code. */
  public static @Nullable String code(
      BufferedImage page, double x, double y, double wide, double high, double scale) {
    double pixels = DPI / 25.4 * scale;
    int left = Math.max(0, (int) (x * pixels));
    int top = Math.max(0, (int) (y * pixels));
    BufferedImage part =
        page.getSubimage(
            left,
            top,
            Math.min((int) (wide * pixels), page.getWidth() - left),
            Math.min((int) (high * pixels), page.getHeight() - top));
    String nearBy = look(part, 1);
    return nearBy == null ? look(part, 0.66) : nearBy;
  }

  /** A hand-held reader looks more than once, from more than one distance. */
  private static @Nullable String look(BufferedImage part, double size) {
    int wide = (int) (part.getWidth() * size);
    int high = (int) (part.getHeight() * size);
    BufferedImage seen = new BufferedImage(wide, high, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D pen = seen.createGraphics();
    pen.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    pen.drawImage(part, 0, 0, wide, high, null);
    pen.dispose();
    int[] rgb = seen.getRGB(0, 0, wide, high, null, 0, wide);
    RGBLuminanceSource light = new RGBLuminanceSource(wide, high, rgb);
    String local = read(new BinaryBitmap(new HybridBinarizer(light)));
    return local == null ? read(new BinaryBitmap(new GlobalHistogramBinarizer(light))) : local;
  }

  private static @Nullable String read(BinaryBitmap bitmap) {
    try {
      Result read =
          new QRCodeReader()
              .decode(
                  bitmap,
                  Map.of(
                      DecodeHintType.TRY_HARDER,
                      true,
                      DecodeHintType.POSSIBLE_FORMATS,
                      List.of(BarcodeFormat.QR_CODE)));
      return read.getText();
    } catch (ReaderException e) {
      return null;
    }
  }

  @Override
  public void close() throws IOException {
    document.close();
  }
}
