package walebook.lesson;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import javax.xml.stream.Location;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;

/**
 * Whether a drawing (SVG 1.1) is only a drawing: well-formed, told by a title and a description,
 * with no script, no document type and nothing fetched from elsewhere.
 */
final class CheckSvg {
  private static final Set<String> REFUSED =
      Set.of(
          "script",
          "foreignobject",
          "image",
          "iframe",
          "audio",
          "video",
          "a",
          "style",
          "set",
          "animate",
          "handler",
          "feimage");

  private final String file;
  private final List<Problem> problems = new ArrayList<>();
  private final Set<String> told = new HashSet<>();

  private CheckSvg(String file) {
    this.file = file;
  }

  static List<Problem> check(String file, byte[] svg) {
    Answer<String> text = PlainText.of(file, svg, PackLimits.PICTURE_BYTES);
    if (!text.isGood()) {
      return text.problems();
    }
    CheckSvg check = new CheckSvg(file);
    check.read(text.value());
    return List.copyOf(check.problems);
  }

  private void read(String svg) {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    try {
      XMLStreamReader reader = factory.createXMLStreamReader(new StringReader(svg));
      boolean root = true;
      while (reader.hasNext()) {
        int event = reader.next();
        if (event == XMLStreamConstants.DTD || event == XMLStreamConstants.PROCESSING_INSTRUCTION) {
          refuse(
              "pack.svg-unsafe",
              reader.getLocation(),
              event == XMLStreamConstants.DTD ? "<!DOCTYPE" : "<?",
              "");
        } else if (event == XMLStreamConstants.START_ELEMENT) {
          if (root && !reader.getLocalName().equals("svg")) {
            refuse("pack.svg-root", reader.getLocation(), reader.getLocalName(), "svg");
          }
          root = false;
          element(reader);
        }
      }
      untold("title");
      untold("desc");
    } catch (XMLStreamException e) {
      // The parser words it in the language of the system, so only its place is told.
      refuse("pack.svg-broken", e.getLocation(), "", "");
    }
  }

  private void element(XMLStreamReader reader) {
    String name = reader.getLocalName().toLowerCase(Locale.ROOT);
    told.add(name);
    if (REFUSED.contains(name)) {
      refuse("pack.svg-unsafe", reader.getLocation(), "<" + name, "");
    }
    for (int i = 0; i < reader.getAttributeCount(); i++) {
      String attribute = reader.getAttributeLocalName(i).toLowerCase(Locale.ROOT);
      String value = reader.getAttributeValue(i).strip().toLowerCase(Locale.ROOT);
      boolean reference = attribute.equals("href") || attribute.equals("src");
      if (attribute.startsWith("on")
          || (reference && !value.startsWith("#"))
          || value.replace(" ", "").replace("url(#", "").contains("url(")) {
        refuse("pack.svg-unsafe", reader.getLocation(), attribute + "=" + value, "");
      }
    }
  }

  private void untold(String element) {
    if (!told.contains(element)) {
      Place place = new Place.Spot(file, 1, 1, "");
      problems.add(Problem.refuse("pack.svg-untold", place, "", "<" + element + ">"));
    }
  }

  private void refuse(String code, Location at, String found, String wanted) {
    Place place = new Place.Spot(file, at.getLineNumber(), at.getColumnNumber(), "");
    problems.add(Problem.refuse(code, place, ReadRuns.firstLine(found), wanted));
  }
}
