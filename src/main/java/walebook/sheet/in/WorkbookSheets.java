package walebook.sheet.in;

import java.util.LinkedHashMap;
import java.util.Map;
import org.xml.sax.Attributes;
import org.xml.sax.helpers.DefaultHandler;

/** The list of sheets of a workbook and how it counts days. */
final class WorkbookSheets extends DefaultHandler {
  private final Map<String, String> relations = new LinkedHashMap<>();
  private boolean from1904;

  /** The key of each sheet's part by the sheet's name, in order. */
  Map<String, String> relations() {
    return relations;
  }

  boolean from1904() {
    return from1904;
  }

  @Override
  public void startElement(String uri, String local, String qualified, Attributes attributes) {
    if (local.equals("sheet")) {
      String name = attributes.getValue("name");
      String relation = relation(attributes);
      if (name != null && !relation.isEmpty()) {
        relations.put(name, relation);
      }
    } else if (local.equals("workbookPr")) {
      String value = attributes.getValue("date1904");
      from1904 = "1".equals(value) || "true".equals(value);
    }
  }

  private static String relation(Attributes attributes) {
    for (int i = 0; i < attributes.getLength(); i++) {
      if (attributes.getLocalName(i).equals("id") && !attributes.getURI(i).isEmpty()) {
        return attributes.getValue(i);
      }
    }
    return "";
  }
}
