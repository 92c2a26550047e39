package walebook.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import walebook.quantity.Unit;
import walebook.words.Words;
import walebook.working.Message;
import walebook.working.Verdict;

class SvgTest {
  private static final Words WORDS = Words.english();

  static List<Drawing> drawings() {
    List<Drawing> all = new ArrayList<>();
    for (FaultKind kind : FaultKind.values()) {
      all.add(new FaultPicture(kind));
    }
    for (Verdict verdict : Verdict.values()) {
      all.add(new VerdictMark(verdict));
    }
    for (StitchForm form : StitchForm.values()) {
      all.add(new StitchPicture(form, 3, 2));
    }
    all.add(new IntervalBar(7, 9, 45.3, 93.7));
    all.add(new IntervalBar(0, 0, 0, 0));
    GaugeReading held = new GaugeReading(100.0, 150.0, GaugeReading.How.HELD, 103.0, 200.0, 205.0);
    all.add(new GaugePicture(held, Unit.INCH));
    List<DotRow.Dot> dots = List.of(new DotRow.Dot(10, true), new DotRow.Dot(12, false));
    List<DotRow> rows = new ArrayList<>();
    for (int series = 0; series < 5; series++) {
      rows.add(new DotRow("<&\"> " + series, dots, 11.0, 9.0, 13.0, series));
    }
    all.add(new DotPlot("seam stretch, %", rows, 15.0));
    return all;
  }

  @ParameterizedTest
  @MethodSource("drawings")
  void isXmlWithEveryShapeAndATitle(Drawing drawing) throws Exception {
    Picture picture = drawing.at(drawing.ownWidth(), WORDS);
    Document read = parse(Svg.of(picture, Palette.LIGHT, WORDS));
    Element svg = read.getDocumentElement();
    assertThat(svg.getNamespaceURI()).isEqualTo("http://www.w3.org/2000/svg");
    int elements = svg.getElementsByTagName("*").getLength();
    assertThat(elements).isEqualTo(picture.shapes().size() + 1);
    String title = svg.getElementsByTagName("title").item(0).getTextContent();
    assertThat(title).isEqualTo(WORDS.say(picture.says())).doesNotContain("[");
    assertThat(svg.getAttribute("width")).doesNotContain(",");
  }

  @Test
  void keepsTextsThatLookLikeMarkup() throws Exception {
    String odd = "a < b & \"c\" > d\u0001";
    Picture picture =
        new Sketch()
            .text(0, 0, odd, Shape.Anchor.START, Role.INK)
            .picture(10, 10, Message.of("drawing.dots.pieces"));
    Document read = parse(Svg.of(picture, Palette.PRINT, WORDS));
    String back = read.getElementsByTagName("text").item(0).getTextContent();
    assertThat(back).isEqualTo("a < b & \"c\" > d");
  }

  private static Document parse(String svg) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
    factory.setNamespaceAware(true);
    byte[] bytes = svg.getBytes(StandardCharsets.UTF_8);
    return factory.newDocumentBuilder().parse(new ByteArrayInputStream(bytes));
  }
}
