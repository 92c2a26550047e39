package walebook.paper;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.junit.jupiter.api.Test;

/** What the document's own reader finds is held against what the JDK's finds in the PNG. */
class GreyPngTest {
  private static List<Path> ofThePacks() throws IOException {
    try (Stream<Path> all = Files.walk(Path.of("lesson-packs"))) {
      return all.filter(each -> each.toString().endsWith(".png")).sorted().toList();
    }
  }

  @Test
  void everyPictureOfThePacksStandsOnThePageAsItIs() throws IOException {
    List<Path> pictures = ofThePacks();
    assertThat(pictures).hasSizeGreaterThan(20);
    for (Path each : pictures) {
      byte[] png = Files.readAllBytes(each);
      BufferedImage there = onPage(png);
      BufferedImage here = ImageIO.read(new ByteArrayInputStream(png));
      assertThat(there.getWidth()).isEqualTo(here.getWidth());
      assertThat(there.getHeight()).isEqualTo(here.getHeight());
      assertThat(dots(there)).as(each.toString()).isEqualTo(dots(here));
    }
  }

  /** Written into a document and read back from its bytes. */
  private static BufferedImage onPage(byte[] png) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (PDDocument document = new PDDocument()) {
      PDPage page = new PDPage();
      document.addPage(page);
      PDImageXObject image = requireNonNull(GreyPng.of(document, png));
      try (PDPageContentStream out = new PDPageContentStream(document, page)) {
        out.drawImage(image, 0, 0);
      }
      document.save(bytes);
    }
    try (PDDocument back = Loader.loadPDF(bytes.toByteArray())) {
      var resources = back.getPage(0).getResources();
      var name = resources.getXObjectNames().iterator().next();
      return ((PDImageXObject) resources.getXObject(name)).getImage();
    }
  }

  private static int[] dots(BufferedImage image) {
    int[] dots = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    for (int i = 0; i < dots.length; i++) {
      dots[i] &= 0xffffff;
    }
    return dots;
  }

  @Test
  void coloursAndOtherFilesAreLeftToTheLibrary() throws IOException {
    try (PDDocument document = new PDDocument()) {
      for (String kind : List.of("png", "jpg")) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(8, 8, BufferedImage.TYPE_INT_RGB), kind, bytes);
        assertThat(GreyPng.of(document, bytes.toByteArray())).as(kind).isNull();
      }
      assertThat(GreyPng.of(document, new byte[0])).isNull();
    }
  }

  @Test
  void aDamagedOneIsNoPicture() throws IOException {
    byte[] png = Files.readAllBytes(ofThePacks().get(0));
    byte[] cut = Arrays.copyOf(png, png.length / 2);
    byte[] headless = Arrays.copyOf(png, 20);
    headless[11] = 0;
    byte[] torn = png.clone();
    Arrays.fill(torn, 200, 400, (byte) 0x55);
    try (PDDocument document = new PDDocument()) {
      assertThat(GreyPng.of(document, cut)).isNull();
      assertThat(GreyPng.of(document, headless)).isNull();
      assertThatThrownBy(() -> GreyPng.of(document, torn)).isInstanceOf(IOException.class);
    }
    try (Sheets sheets = Sheets.upright(PaperSize.A4)) {
      assertThat(sheets.image(torn, "torn.png")).isNull();
    }
  }
}
